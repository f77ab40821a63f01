using Shaduf.Parts;
using Shaduf.Workshop;

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

    /// <summary>A part that was not spliced, and one that the saw would eat: told, and the rest is cut all the same.</summary>
    [Fact]
    public void A_part_that_no_bar_gives_is_told_and_the_rest_is_cut()
    {
        var section = new Section("SHS50x3", Outline.SquareTube, 50, 3, 4.2, 190, 6000, 5990);
        Part Piece(string mark, double mm) =>
            new(mark, "tube", section, new(mm, mm, 0, 0, new(0, 0, 0), new(mm, 0, 0)), []);
        SteelLot[] lots = [new("racks", new("rack", [Piece("A", 7000), Piece("B", 1200), Piece("D", 4)], []), 2)];
        var workshop = new WorkshopBrief(5, 10, [], []);
        var troubles = CutPlans.Troubles(lots, workshop);
        Assert.Equal(2, troubles.Count);
        Assert.Contains("part A is 7000 mm long and the longest bar less its end trim 5990 mm: splice it", troubles[0]);
        Assert.Contains("part D is 4 mm long and the saw eats 5 mm", troubles[1]);
        var plan = Assert.Single(
            CutPlans.Of(lots, workshop, s_design.File.Prices, (_, order) => CutPlan.Cheapest(order))
        );
        Assert.Equal(["B", "B"], plan.Plan.Bars.SelectMany(bar => bar.Pieces).Select(piece => piece.Mark));
    }

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
    [InlineData("hilltop-village")]
    [InlineData("homestead")]
    [InlineData("river-terrace")]
    public void Chlorine_is_bought_for_source_main_and_tank(string name)
    {
        var design = Station.Tests.Examples.DesignOf(name);
        var bought = design.Takeoff.Lines.Single(line => line.Item == "chlorine").Quantity;
        var needed = Disinfection.Of(design).Sum(dose => dose.ProductG) / 1000;
        Assert.InRange(bought, needed, needed + 0.1);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_item_is_known_with_its_unit(string name)
    {
        var design = name.Length == 0 ? s_design : Tests.Examples.DesignOf(name);
        Assert.All(
            design.Takeoff.Lines.Where(line =>
                line.AgreedSum is null && !line.Item.EndsWith("-not-found", StringComparison.Ordinal)
            ),
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
            // Which tube a pole is made of depends on its wind: the cut plans name it.
            .Concat(LightColumnSize.All.Select(size => size.Name))
            .ToHashSet();
        Assert.All(PriceItems.General.Keys, item => Assert.Contains(item, taken));
    }
}
