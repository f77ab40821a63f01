using CsCheck;
using Shaduf.Workshop;

namespace Shaduf.Trades.Tests.Workshop;

public sealed class BarPlanTests
{
    private const double TinyMm = 1e-6;

    private static readonly Gen<(CutPart[] Parts, double KerfMm, double TrimMm)> Orders = Gen.Select(
        Gen.Select(Gen.Int[100, 59500], Gen.Int[1, 12]).Array[1, 12],
        Gen.Int[0, 50],
        Gen.Int[0, 400],
        (parts, kerf, trim) =>
            (
                parts.Select((part, at) => new CutPart($"P{at}", part.Item1 / 10.0, part.Item2)).ToArray(),
                kerf / 10.0,
                trim / 10.0
            )
    );

    [Fact]
    public void Every_part_is_cut_as_often_as_asked() =>
        Orders.Sample(order =>
        {
            var plan = BarPlan.FirstFitDecreasing(order.Parts, 6000, order.KerfMm, order.TrimMm);
            var cut = plan.Bars.SelectMany(bar => bar.Pieces).CountBy(piece => piece.Mark).ToDictionary();
            Assert.Equal(order.Parts.ToDictionary(part => part.Mark, part => part.Count), cut);
        });

    [Fact]
    public void No_bar_is_longer_than_its_stock_and_every_millimetre_is_accounted_for() =>
        Orders.Sample(order =>
        {
            var plan = BarPlan.FirstFitDecreasing(order.Parts, 6000, order.KerfMm, order.TrimMm);
            foreach (var bar in plan.Bars)
            {
                var partsMm = bar.Pieces.Sum(piece => piece.LengthMm);
                var leftMm = 6000 - order.TrimMm - partsMm - (bar.Pieces.Count - 1) * order.KerfMm;
                Assert.True(leftMm >= -TinyMm);
                Assert.Equal(Math.Max(0, leftMm - order.KerfMm), bar.RemainderMm, TinyMm);
            }
        });

    [Fact]
    public void Bounds_are_never_above_the_plan_and_no_two_bars_would_go_into_one() =>
        Orders.Sample(order =>
        {
            var plan = BarPlan.FirstFitDecreasing(order.Parts, 6000, order.KerfMm, order.TrimMm);
            Assert.InRange(plan.GapCount, 0, plan.BarCount);
            Assert.True(plan.PairingBoundCount >= plan.LengthBoundCount);
            var takenMm = plan.Bars.Select(bar => bar.Pieces.Sum(piece => piece.LengthMm + order.KerfMm)).ToList();
            for (var i = 1; i < takenMm.Count; i++)
            {
                Assert.True(takenMm[i - 1] + takenMm[i] > 6000 - order.TrimMm + order.KerfMm);
            }
        });

    [Fact]
    public void The_order_of_the_list_does_not_matter()
    {
        CutPart[] parts = [new("B", 1200, 3), new("A", 1200, 2), new("C", 2500, 4)];
        Assert.Equal(Written(parts), Written([.. parts.Reverse()]));
    }

    [Fact]
    public void Parts_fill_a_bar_to_its_end_without_a_last_kerf()
    {
        var plan = BarPlan.FirstFitDecreasing([new("A", 1998, 3)], 6000, kerfMm: 3, endTrimMm: 0);
        Assert.Equal(1, plan.BarCount);
        Assert.Equal(0, plan.Bars[0].RemainderMm);
        Assert.Equal(2, BarPlan.FirstFitDecreasing([new("A", 1998.1, 3)], 6000, 3, 0).BarCount);
    }

    [Fact]
    public void Long_parts_lie_alone_and_the_pairing_bound_knows()
    {
        var plan = BarPlan.FirstFitDecreasing([new("A", 3100, 10)], 6000, kerfMm: 3, endTrimMm: 10);
        Assert.Equal(10, plan.BarCount);
        Assert.Equal(6, plan.LengthBoundCount);
        Assert.Equal(10, plan.PairingBoundCount);
        Assert.Equal(0, plan.GapCount);
    }

    [Fact]
    public void A_part_longer_than_the_bar_is_refused_by_its_mark()
    {
        var trouble = Assert.Throws<ArgumentException>(() =>
            BarPlan.FirstFitDecreasing([new("F1", 2000, 1), new("C7", 5995, 1)], 6000, kerfMm: 3, endTrimMm: 10)
        );
        Assert.Contains("C7", trouble.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_parts_need_no_bars() => Assert.Equal(0, BarPlan.FirstFitDecreasing([], 6000, 3, 10).BarCount);

    [Fact]
    public void Refuses_nan_and_no_count()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BarPlan.FirstFitDecreasing([], double.NaN, 3, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BarPlan.FirstFitDecreasing([], 6000, double.NaN, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BarPlan.FirstFitDecreasing([], 6000, 3, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            BarPlan.FirstFitDecreasing([new("A", double.NaN, 1)], 6000, 3, 0)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => BarPlan.FirstFitDecreasing([new("A", 100, 0)], 6000, 3, 0));
    }

    private static string Written(CutPart[] parts) =>
        string.Join(
            " | ",
            BarPlan
                .FirstFitDecreasing(parts, 6000, 3, 10)
                .Bars.Select(bar => string.Join(' ', bar.Pieces.Select(piece => piece.Mark)))
        );
}
