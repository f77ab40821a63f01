using Shaduf.Money;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>Solar against diesel, storage and harder years, on the small station.</summary>
public sealed class LifeCycleTests
{
    private static readonly Design s_design = SmallDesign.Of();

    [Fact]
    public void The_set_lifts_the_years_water_in_the_hours_it_runs()
    {
        var set = s_design.LifeCycle.Set!;
        Assert.Equal(s_design.Year.DeliveredM3.Sum(), set.HoursPerYear * set.FlowM3PerH, 5e-7);
        Assert.InRange(set.LoadShare, 0.01, 1 / DieselSet.StartFactor);

        // Never less than the line at no load, never more than at full load.
        Assert.InRange(set.FuelLPerYear / set.HoursPerYear, 0.08145 * set.RatedKW, (0.08145 + 0.246) * set.RatedKW);
    }

    [Fact]
    public void Solar_and_diesel_share_all_but_the_solar_part_and_the_set()
    {
        var life = s_design.LifeCycle;
        Assert.Empty(life.Unpriced);
        Assert.Equal(s_design.Bill.Direct + s_design.Bill.Preliminaries, life.Solar.Plan.Capital);
        var solarOnly = s_design
            .Bill.Lines.Where(line =>
                "DEFGH".Contains((char)line.Quantity.Section, StringComparison.Ordinal)
                && s_design.File.Shelf.Find<CableCard>(line.Quantity.Item) is not { Use: CableUse.Motor }
            )
            .Sum(line => line.Amount ?? 0);
        var rates = s_design.File.Prices.Rates;
        Assert.Equal(
            life.Solar.Plan.Capital
                - solarOnly
                + (rates["generator-kw"].Amount * (decimal)life.Set!.RatedKW)
                + rates["generator-house"].Amount,
            life.Diesel!.Plan.Capital
        );
        Assert.Equal(0, life.Solar.Plan.FuelPerYear);
        Assert.Equal(rates["diesel"].Amount * (decimal)life.Set.FuelLPerYear, life.Diesel.Plan.FuelPerYear);
    }

    [Fact]
    public void Break_even_is_where_the_costs_cross_for_good()
    {
        var life = s_design.LifeCycle;
        var (solar, diesel) = (life.Solar.Cumulative, life.Diesel!.Cumulative);
        Assert.Equal(life.YearCount + 1, solar.Count);
        var year = life.BreakEvenYear!.Value;
        Assert.All(Enumerable.Range(year, life.YearCount + 1 - year), at => Assert.True(solar[at] <= diesel[at]));
        Assert.True(year == 0 || solar[year - 1] > diesel[year - 1]);
        Assert.True(life.BreakEvenByFuel.Dearer <= year);
        Assert.True((life.BreakEvenByFuel.Half ?? int.MaxValue) >= year);
    }

    [Fact]
    public void Without_a_rate_for_diesel_the_comparison_is_not_made_and_says_so()
    {
        var file = SmallDesign.File();
        var rates = file.Prices.Rates.Where(rate => rate.Key != "diesel").ToDictionary();
        var design = DesignRun.Run(file with { Prices = file.Prices with { Rates = rates } });
        Assert.Null(design.LifeCycle.Diesel);
        Assert.Equal(["diesel"], design.LifeCycle.Unpriced);
        var finding = design.Findings.Single(each => each.Id == "money/life-cycle");
        Assert.Equal(FindingStatus.Unchecked, finding.Status);
        Assert.Contains("diesel", finding.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Harder_years_are_run_as_they_say()
    {
        var (design, years) = (s_design, s_design.Sensitivity.Years.ToDictionary(year => year.Id));
        Assert.Equal(["design", "dull", "dry", "dirty", "later"], s_design.Sensitivity.Years.Select(year => year.Id));
        Assert.Equal(design.Year.WorstShare, years["design"].WorstShare);
        foreach (var id in new[] { "dry", "dirty", "later" })
        {
            Assert.True(years[id].YearShare <= years["design"].YearShare + 1e-9, id);
        }

        Assert.Equal(20, design.Sensitivity.SeededShares.Count);
        Assert.Equal(design.Sensitivity.SeededShares.Order(), design.Sensitivity.SeededShares);
        Assert.Equal(design.Sensitivity.SeededShares[1], years["dull"].WorstShare, 5e-10);

        // The dirty array by hand: soiling 0.97 replaced by 0.85.
        var inputs = design.Sizing.Inputs(design.Demand);
        var dirty = YearRun.Run(inputs with { ModulesKept = inputs.ModulesKept / 0.97 * 0.85 });
        Assert.Equal(dirty.WorstShare, years["dirty"].WorstShare, 5e-10);
    }

    [Fact]
    public void Storage_is_told_by_its_days_its_day_and_its_overflow()
    {
        var findings = s_design.Findings.ToDictionary(finding => finding.Id);
        Assert.Equal(
            s_design.Choice.UsefulM3 / s_design.Demand.M3PerDay.Max(),
            findings["tank/autonomy"].Value!.Value,
            5e-10
        );
        Assert.InRange(findings["tank/mass-curve"].Limit!.Value, 0.1, s_design.Demand.M3PerDay.Max());
        var overflow = findings["tank/overflow"];
        Assert.Equal(FindingStatus.Holds, overflow.Status);
        Assert.True(overflow.Value >= overflow.Limit);

        // The tap has more than it needs, so the stand may be as low as that excess.
        var tap = s_design.Works.Taps.Taps.Single();
        Assert.Equal(Math.Max(0, 0.5 + 5 - tap.ResidualM), findings["tank/stand"].Limit!.Value, 5e-10);
    }
}
