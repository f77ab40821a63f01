using System.Text.Json.Nodes;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

public sealed class TestedWellTests
{
    private static readonly (string Time, string Drawdown)[] s_readings =
    [
        ("1 h", "7.5 m"),
        ("10 h", "8.5 m"),
        ("100 h", "9.5 m"),
    ];

    /// <summary>A metre for each tenfold of time at 6 m3/h: log10(8) m more at 6 m3/h after a day of eight hours.</summary>
    [Fact]
    public void A_long_test_lowers_the_level_of_the_day_and_of_the_season()
    {
        var short_ = SmallDesign.File();
        var long_ = SmallDesign.File(AddLongTest);
        var (before, after) = (Survey.Of(short_.Brief), Survey.Of(long_.Brief));
        Assert.Equal(
            TestedOf(before).Day.DrawdownM(6 / 3600.0) + Math.Log10(8),
            TestedOf(after).Day.DrawdownM(6 / 3600.0),
            5e-10
        );
        var demand = DemandYear.Of(long_.Brief, after);
        var sum = Enumerable.Range(1, 149).Sum(day => Math.Log10(1 + (8 / (24.0 * day))));
        var well = (Well)Source.Of(long_.Brief, after, demand);
        Assert.Equal(demand.M3PerDay.Max() / 8 / 6 * sum, well.SeasonM, 5e-10);
        Assert.Equal(32 + well.SeasonM, well.RestDryM, 5e-10);
    }

    [Theory]
    [InlineData("drillersFigure", "8 m3/h", 4, "drillers-figure")]
    [InlineData("bucketTest", null, 0.6 * 0.2 / 60 * 3600, "bucket-test")]
    public void Without_a_test_a_cautious_share_is_taken_and_looked_at(
        string field,
        string? value,
        double yieldM3PerH,
        string assumption
    )
    {
        var file = SmallDesign.File(brief =>
        {
            var source = brief["source"]!.AsObject();
            foreach (var test in new[] { "testedYield", "steps", "drillersFigure" })
            {
                source.Remove(test);
            }

            source[field] = value is null
                ? new JsonObject { ["volume"] = "200 L", ["time"] = "60 s" }
                : JsonValue.Create(value);
        });
        var survey = Survey.Of(file.Brief);
        Assert.Equal(yieldM3PerH, TestedOf(survey).YieldM3PerH, 5e-10);
        Assert.Equal(FindingStatus.Look, survey.Assumptions.Single(each => each.Id == assumption).Best);
    }

    [Fact]
    public void A_screen_holds_the_level_and_the_pump_up()
    {
        var file = SmallDesign.File(brief =>
        {
            var source = brief["source"]!.AsObject();
            source.Remove("pumpSetting");
            source["screens"] = new JsonArray(new JsonObject { ["top"] = "35 m", ["bottom"] = "50 m" });
        });
        var survey = Survey.Of(file.Brief);
        var well = (Well)Source.Of(file.Brief, survey, DemandYear.Of(file.Brief, survey));

        // Three metres of drawdown are left above the screen.
        Assert.Equal(35, well.LowestLevelM, 5e-10);
        Assert.Equal(35, well.PumpingLevelM, 5e-7);
        Assert.Contains(well.Notes, note => note.What == "largest flow that may be drawn");
        Assert.True(well.YieldM3PerH < 3.9);
    }

    [Theory]
    [InlineData("testedYield", "7 m3/h", "more than the long test held")]
    [InlineData("screens", "95 m", "below the bottom")]
    public void What_contradicts_itself_is_said(string field, string value, string problem)
    {
        var trouble = Assert.Throws<BadInputException>(() =>
            SmallDesign.File(brief =>
            {
                AddLongTest(brief);
                brief["source"]![field] =
                    field == "screens"
                        ? new JsonArray(new JsonObject { ["top"] = "70 m", ["bottom"] = value })
                        : JsonValue.Create(value);
            })
        );
        Assert.Contains(problem, trouble.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_hangs_is_weighed_and_every_fitting_of_the_head_is_priced()
    {
        var design = SmallDesign.Of();
        var build = Assert.IsType<WellBuild>(design.Works.Source);
        var (hung, riser) = (build.Hung, design.Choice.Lift.Foot);
        Assert.Equal(riser.LengthM * riser.Card.MassKgPerM * 1.02, hung.PipeKg, 5e-7);
        Assert.Equal(hung.PumpKg + hung.PipeKg + hung.WaterKg + hung.CableKg + hung.RopeKg, hung.TotalKg, 5e-10);
        Assert.True(build.HoistT * 9.80665 >= 1.3 * hung.TotalKg * 9.80665 / 1000);
        var items = design.Takeoff.Lines.Select(line => line.Item).ToHashSet();
        Assert.All(
            SourceFitting.OfWellhead.Where(fitting => fitting.Item.Length > 0),
            fitting => Assert.Contains(fitting.Item, items)
        );
        Assert.DoesNotContain(
            design.Bill.Lines,
            line => line.Quantity.Section == Money.BillSection.SourceAndPump && line.Amount is null
        );
    }

    [Fact]
    public void A_season_that_drains_the_source_is_the_limit_that_binds()
    {
        var design = SmallDesign.Of(brief =>
        {
            AddLongTest(brief);
            brief["uses"]!["people"]!["count"] = 60000;
            brief["uses"]!["people"]!["each"] = "50 L/d";
        });
        var well = Assert.IsType<Well>(design.Source);
        Assert.Equal("yield", design.Sizing.Limit!.Kind);
        Assert.Equal(well.YieldM3PerH * TestedWell.PumpingH, design.Sizing.Limit.Allowed, 5e-10);
        Assert.Equal(design.Demand.M3PerDay.Max(), design.Sizing.Limit.Value, 5e-10);
    }

    private static TestedWell TestedOf(Survey survey) => ((WellSurvey)survey.Source).Tested;

    private static void AddLongTest(JsonNode brief)
    {
        var source = brief["source"]!.AsObject();
        source["constantTest"] = new JsonObject
        {
            ["flow"] = "6 m3/h",
            ["readings"] = new JsonArray([
                .. s_readings.Select(reading => new JsonObject
                {
                    ["time"] = reading.Time,
                    ["drawdown"] = reading.Drawdown,
                }),
            ]),
        };
    }
}
