using CsCheck;
using Shaduf.Workshop;

namespace Shaduf.Trades.Tests.Workshop;

public sealed class CutPlanTests
{
    private const double TinyMm = 1e-6;

    private static readonly Gen<CutOrder> Orders = Gen.Select(
        Gen.Select(Gen.Int[10, 5950], Gen.Int[1, 6], Gen.Int[0, 600], Gen.Int[0, 600], Gen.Bool).Array[1, 5],
        Gen.Int[0, 5],
        Gen.Int[0, 40],
        Gen.Select(Gen.Int[1000, 12000], Gen.Int[0, 40], Gen.Int[1, 3]).Array[0, 3],
        (parts, kerf, trim, offcuts) =>
            new CutOrder(
                [
                    .. parts.Select(
                        (part, at) =>
                            new CutPart($"P{at}", part.Item1, part.Item2)
                            {
                                StartDeg = part.Item3 / 100 * 10,
                                EndDeg = part.Item4 / 100 * 10,
                                IsTrapezoid = part.Item5,
                            }
                    ),
                ],
                [new(6000, 30), .. offcuts.Select(each => new BarStock(each.Item1, each.Item2, each.Item3))],
                kerf,
                trim
            )
    );

    [Fact]
    public void Every_part_is_cut_as_often_as_asked_and_no_offcut_more_often_than_it_lies_there() =>
        Orders.Sample(order =>
        {
            foreach (var plan in Plans(order))
            {
                var cut = plan.Bars.SelectMany(bar => bar.Pieces).CountBy(piece => piece.Mark).ToDictionary();
                Assert.Equal(order.Parts.ToDictionary(part => part.Mark, part => part.Count), cut);
                Assert.All(
                    order.Stock.Index().Where(bar => bar.Item.IsOffcut),
                    bar =>
                        Assert.True(
                            plan.Bars.Count(used => used.Stock == bar.Item)
                                <= order.Stock.Where(other => other == bar.Item).Sum(other => other.Count)
                        )
                );
            }
        });

    [Fact]
    public void No_bar_is_longer_than_its_stock_and_every_millimetre_is_accounted_for() =>
        Orders.Sample(order =>
        {
            foreach (var bar in Plans(order).SelectMany(plan => plan.Bars))
            {
                var usableMm = bar.Stock.LengthMm - order.EndTrimMm;
                Assert.True(bar.Pieces[^1].ToMm <= usableMm + TinyMm);
                Assert.Equal(Math.Max(0, usableMm - bar.Pieces[^1].ToMm - order.KerfMm), bar.RemainderMm, TinyMm);
                Assert.All(
                    bar.Pieces.Zip(bar.Pieces.Skip(1)),
                    pair => Assert.Equal(pair.First.ToMm + order.KerfMm, pair.Second.FromMm, TinyMm)
                );
            }
        });

    [Fact]
    public void The_cheapest_plan_is_never_dearer_than_the_quick_one_nor_cheaper_than_its_bound() =>
        Orders.Sample(order =>
        {
            var (plan, quick) = (CutPlan.Cheapest(order), CutPlan.FirstFit(order));
            Assert.InRange(plan.Cost, plan.BoundCost, quick.Cost);
            Assert.True(quick.BoundCost <= plan.BoundCost);
        });

    [Fact]
    public void Nesting_is_never_dearer_and_neighbours_that_share_a_cut_lean_alike() =>
        Orders.Sample(order =>
        {
            var nested = CutPlan.Cheapest(
                order with
                {
                    Parts = [.. order.Parts.Select(part => part with { NestWidthMm = 50 })],
                }
            );
            Assert.True(nested.Cost <= CutPlan.Cheapest(order).Cost);
            foreach (var bar in nested.Bars)
            {
                Assert.True(bar.Pieces[^1].ToMm <= bar.Stock.LengthMm - order.EndTrimMm + TinyMm);
                foreach (var (before, after) in bar.Pieces.Zip(bar.Pieces.Skip(1)).Where(pair => pair.Second.IsNested))
                {
                    Assert.Equal(before.EndDeg, after.StartDeg, 0.05);
                    Assert.NotEqual(before.EndsLongAbove, after.StartsLongAbove);
                    AssertKerf(before, after, order.KerfMm, widthMm: 50);
                }
            }
        });

    // Square to the cut, a kerf lies between both pieces: along each edge of the tube it is the kerf over the cosine.
    private static void AssertKerf(CutPiece before, CutPiece after, double kerfMm, double widthMm)
    {
        var angle = before.EndDeg * Math.PI / 180;
        var shortMm = widthMm * Math.Tan(angle);
        var (aboveEnd, aboveStart) = before.EndsLongAbove
            ? (before.ToMm, after.FromMm + shortMm)
            : (before.ToMm - shortMm, after.FromMm);
        Assert.Equal(kerfMm / Math.Cos(angle), aboveStart - aboveEnd, 1e-6);
    }

    [Fact]
    public void Longer_offcuts_are_left_without_another_bar()
    {
        CutOrder order = new([new("A", 2900, 2), new("B", 1500, 2), new("C", 1000, 1)], [new(6000, 30)], 3, 10);
        var plan = CutPlan.Cheapest(order);
        Assert.Equal(2, plan.BarCount);
        Assert.Equal(2, plan.LeastBarCount);
        Assert.True(plan.KeptOffcutsMm > 1500, $"{plan.KeptOffcutsMm}");
    }

    [Fact]
    public void Bars_of_the_yard_are_used_before_any_is_bought()
    {
        BarStock[] stock = [new(6000, 30), new(2500, 0, 2)];
        var plan = CutPlan.Cheapest(new([new("A", 1200, 8)], stock, 3, 10));
        Assert.Equal(30, plan.Cost);
        Assert.Equal(2, plan.Bars.Count(bar => bar.Stock.IsOffcut));
        Assert.True(plan.IsProven);
    }

    [Fact]
    public void A_longer_bar_is_bought_where_it_is_cheaper_and_the_shorter_one_for_the_rest()
    {
        var plan = CutPlan.Cheapest(new([new("A", 2390, 7)], [new(6000, 30), new(12_000, 58)], 3, 10));
        Assert.Equal(58 + 30, plan.Cost);
        Assert.True(plan.IsProven);
        Assert.Null(plan.LeastBarCount);
    }

    [Fact]
    public void The_order_of_the_list_does_not_matter_and_every_run_gives_the_same_plan() =>
        Orders.Sample(order =>
            Assert.Equal(
                Written(CutPlan.Cheapest(order)),
                Written(CutPlan.Cheapest(order with { Parts = [.. order.Parts.Reverse()] }))
            )
        );

    [Fact]
    public void Parts_fill_a_bar_to_its_end_without_a_last_kerf()
    {
        var plan = CutPlan.Cheapest(Of(new CutPart("A", 1998, 3)));
        Assert.Equal(1, plan.BarCount);
        Assert.Equal(0, plan.Bars[0].RemainderMm);
        Assert.Equal(2, CutPlan.Cheapest(Of(new CutPart("A", 1998.1, 3))).BarCount);
    }

    [Fact]
    public void Long_parts_lie_alone_and_the_bound_knows()
    {
        var plan = CutPlan.Cheapest(Of(new CutPart("A", 3100, 10)));
        Assert.Equal(10, plan.LeastBarCount);
        Assert.True(plan.IsProven);
    }

    [Fact]
    public void Thousands_of_parts_are_planned_with_their_gap()
    {
        var parts = Enumerable.Range(0, 60).Select(i => new CutPart($"P{i:00}", 310 + (i * i % 37 * 71), 40)).ToArray();
        var plan = CutPlan.Cheapest(Of(parts));
        Assert.Equal(2400, plan.Bars.Sum(bar => bar.Pieces.Count));
        Assert.InRange(plan.GapCost, 0, 1);
    }

    [Fact]
    public void Bad_orders_are_refused_by_the_mark()
    {
        AssertRefused(Of(new CutPart("F1", 2000, 1), new("C7", 6001, 1)), "C7 is 6001 mm long and the longest bar");
        AssertRefused(Of(new CutPart("F1", 2000, 1), new("C8", 2, 1)), "C8 is 2 mm long and the saw eats 3 mm");
        AssertRefused(Of(new CutPart("F1", 2000, 0)), "F1 is asked for no times");
        AssertRefused(Of(new CutPart("F1", 2000, 1), new("F1", 2100, 1)), "F1 stands for 2 parts");
        AssertRefused(new([new("F1", 2000, 1)], [new(6000, 1, 3)], 3, 0), "no length of bar");
        AssertRefused(
            Of([.. Enumerable.Range(0, 11).Select(i => new CutPart($"P{i}", 500, 10_000))]),
            "more than 100000"
        );
    }

    [Fact]
    public void No_parts_need_no_bars() => Assert.Equal(0, CutPlan.Cheapest(Of()).BarCount);

    [Fact]
    public void Refuses_nan_and_figures_out_of_range()
    {
        AssertOut(Of(new CutPart("A", double.NaN, 1)));
        AssertOut(Of(new CutPart("A", 100, -1)));
        AssertOut(Of(new CutPart("A", 100, 1) { StartDeg = double.NaN }));
        AssertOut(Of(new CutPart("A", 100, 1)) with { KerfMm = double.NaN });
        AssertOut(Of(new CutPart("A", 100, 1)) with { EndTrimMm = double.NaN });
        AssertOut(new([], [new(double.NaN, 1)], 3, 10));
        AssertOut(new([], [new(6000, -1)], 3, 10));
    }

    private static CutOrder Of(params CutPart[] parts) => new(parts, [new(6000, 1)], KerfMm: 3, EndTrimMm: 0);

    private static CutPlan[] Plans(CutOrder order) => [CutPlan.Cheapest(order), CutPlan.FirstFit(order)];

    private static void AssertRefused(CutOrder order, string says)
    {
        Assert.Contains(order.Troubles(), trouble => trouble.Contains(says, StringComparison.Ordinal));
        Assert.Throws<ArgumentException>(() => CutPlan.Cheapest(order));
        Assert.Throws<ArgumentException>(() => CutPlan.FirstFit(order));
    }

    private static void AssertOut(CutOrder order) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CutPlan.Cheapest(order));

    private static string Written(CutPlan plan) =>
        string.Join(" | ", plan.Bars.Select(bar => $"{bar.Stock.LengthMm} {bar.Pattern}"));
}
