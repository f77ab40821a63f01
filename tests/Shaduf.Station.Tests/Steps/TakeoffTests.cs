using Shaduf.Parts;

namespace Shaduf.Station.Tests;

public sealed class TakeoffTests
{
    private static readonly Design s_design = SmallDesign.Of();

    [Fact]
    public void Every_piece_of_every_part_is_cut_exactly_once()
    {
        var wanted = s_design.Works.SawnLots.SelectMany(lot =>
            lot.Steel.Parts.SelectMany(part =>
                    part.PiecesMm.Select(
                        (mm, i) =>
                            (
                                part.Section.Name,
                                Math.Ceiling(mm + (i == part.PiecesMm.Count - 1 ? BeyondMm(part) : 0) - 1e-6)
                            )
                    )
                )
                .SelectMany(piece => Enumerable.Repeat(piece, lot.Count))
        );
        var cut = s_design.Takeoff.BarPlans.SelectMany(plan =>
            plan.Plan.Bars.SelectMany(bar => bar.Pieces).Select(piece => (plan.Section.Name, piece.LengthMm))
        );
        Assert.Equal(wanted.Order(), cut.Order());
    }

    // Where both ends of a tube lean the same way, the bar from first to last point is longer than any edge.
    private static double BeyondMm(Part part) =>
        part.Section.Outline == Outline.SquareTube
            ? part.Shape.AlongBarMm(part.Section.SideMm) - part.Shape.LongPointMm
            : 0;

    [Fact]
    public void No_bar_is_cut_beyond_its_length() =>
        Assert.All(
            s_design.Takeoff.BarPlans,
            plan =>
                Assert.All(
                    plan.Plan.Bars,
                    bar =>
                        Assert.True(
                            bar.Pieces[^1].ToMm + s_design.Brief.Rack.Workshop.EndTrimMm <= bar.Stock.LengthMm + 1e-6
                        )
                )
        );

    [Fact]
    public void The_bill_is_the_sum_of_its_lines_and_the_offer_builds_on_it()
    {
        Assert.Equal(
            s_design.Bill.Lines.Sum(line => line.Amount ?? 0),
            s_design.Bill.Direct + s_design.Bill.Preliminaries
        );
        Assert.All(s_design.Bill.Lines, line => Assert.InRange(line.Quantity.WasteShare, -1e-2, 200));
        Assert.All(s_design.Bill.Lines.Where(line => line.UnitRate is null), line => Assert.Null(line.Amount));
        Assert.Equal(s_design.Bill.Lines.All(line => line.UnitRate is not null), s_design.Offer.Complete);
        Assert.All(
            s_design.Bill.Lines.Where(line => line.UnitRate is not null),
            line =>
                Assert.Equal(
                    Math.Round(
                        (decimal)line.Quantity.Quantity * line.UnitRate!.Value,
                        2,
                        MidpointRounding.AwayFromZero
                    ),
                    line.Amount
                )
        );
        var offer = s_design.Offer;
        Assert.Equal(
            offer.Direct + offer.Preliminaries + offer.Contingency + offer.Overhead + offer.Profit + offer.Tax,
            offer.Total
        );
    }

    public static TheoryData<string> Examples => [.. Tests.Examples.Names, ""];

    /// <summary>What a takeoff names is a card or stands in the table of items, in the same unit: else a rate could not be checked.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_item_is_known_with_its_unit(string name)
    {
        var design = name.Length == 0 ? s_design : Tests.Examples.DesignOf(name);
        Assert.All(
            design.Takeoff.Lines.Where(line => !line.Item.EndsWith("-not-found", StringComparison.Ordinal)),
            line => Assert.Equal(line.Unit, PriceItems.UnitOf(line.Item, design.File.Shelf))
        );
    }

    [Fact]
    public void Every_item_of_the_table_is_taken_off_somewhere()
    {
        var taken = Tests
            .Examples.Names.Select(Tests.Examples.DesignOf)
            .Append(s_design)
            .Append(IntakeTests.OnRaft.Value)
            .Append(SmallDesign.Of(brief => brief["rack"]!["type"] = "clamped-rails"))
            .SelectMany(design => design.Takeoff.Lines)
            .Concat(ManyStrings.TakeoffOf(ManyStrings.Choice(11, 4), ManyStrings.Rewired(11, 4)))
            .Select(line => line.Item)
            .Concat(LifeCycle.SetItems)
            .ToHashSet();
        Assert.All(PriceItems.General.Keys, item => Assert.Contains(item, taken));
    }
}
