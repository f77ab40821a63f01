using Shaduf.Money;
using Shaduf.Parts;

namespace Shaduf.Station.Tests;

public sealed class CutPlansTests
{
    private static readonly Design s_plain = SmallDesign.Of();

    [Fact]
    public void Every_plan_of_a_station_is_proved()
    {
        Assert.All(s_plain.Takeoff.BarPlans, plan => Assert.True(plan.Plan.IsProven, plan.Section.Name));
        Assert.Contains(
            s_plain.Findings,
            finding => finding.Id == "workshop/cut-plan" && finding.Status == Shaduf.Working.FindingStatus.Holds
        );
    }

    [Fact]
    public void Ends_that_lean_the_same_way_take_more_of_the_bar_than_any_edge()
    {
        Cut brace = new(1879, 1879, 25.5, 25.5, new(0, 0, 0), new(0, 1879, 0));
        Assert.Equal(1879 + (50 * Math.Tan(25.5 * Math.PI / 180)), brace.AlongBarMm(50), 1e-6);
        Cut strut = new(500, 500 - (2 * 40 * Math.Tan(Math.PI / 6)), 30, 30, new(0, 0, 0), new(0, 500, 0));
        Assert.Equal(500, strut.AlongBarMm(40), 1e-6);
    }

    [Fact]
    public void Offcuts_of_the_yard_are_used_and_not_billed()
    {
        var section = Tube(s_plain).Section;
        var design = With(new(3, 10, [new(section.Name, section.BarMm, 2)], []));
        Assert.Equal(2, Tube(design).OffcutCount);
        // Nested ends may save one more.
        Assert.True(Bought(design) <= Bought(s_plain) - 2);
    }

    [Fact]
    public void A_longer_bar_is_bought_where_the_book_has_a_good_rate_and_told_where_it_has_none()
    {
        var name = Tube(s_plain).Section.Name;
        WorkshopBrief workshop = new(3, 10, [], [new(name, 12_000)]);
        var unpriced = With(workshop);
        Assert.Contains(unpriced.Findings, finding => finding.Id == "workshop/other-bars");
        Assert.Equal(Bought(s_plain), Bought(unpriced));
        var priced = With(workshop, ($"{name}-12m", 1));
        Assert.DoesNotContain(priced.Findings, finding => finding.Id == "workshop/other-bars");
        Assert.Contains(priced.Takeoff.Lines, line => line.Item == $"{name}-12m" && line.Quantity > 0);
    }

    [Fact]
    public void A_wider_slot_and_more_trim_are_taken_off_every_bar()
    {
        var design = With(new(8, 60, [], []));
        Assert.All(
            design.Takeoff.BarPlans.SelectMany(plan => plan.Plan.Bars),
            bar => Assert.True(bar.Pieces[^1].ToMm <= bar.Stock.LengthMm - 60 + 1e-6)
        );
        Assert.DoesNotContain(design.Survey.Assumptions, each => each.Id is "kerf" or "end-trim");
        Assert.Contains(s_plain.Survey.Assumptions, each => each.Id == "kerf");
    }

    private static SectionPlan Tube(Design design) =>
        design.Takeoff.BarPlans.First(plan => plan.Section.Name == design.Works.Rack.Sections.Tube.Name);

    private static int Bought(Design design) => Tube(design).Bought.Sum(bar => bar.Count);

    private static Design With(WorkshopBrief workshop, params (string Item, decimal Amount)[] rates)
    {
        var file = SmallDesign.File();
        var prices = file.Prices;
        var all = prices.Rates.Values.Concat(rates.Select(rate => new Rate(rate.Item, "nr", rate.Amount, "")));
        return DesignRun.Run(
            file with
            {
                Brief = file.Brief with { Rack = file.Brief.Rack with { Workshop = workshop } },
                Prices = prices with { Rates = all.ToDictionary(rate => rate.Item) },
            }
        );
    }
}
