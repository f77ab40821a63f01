using System.Text.Json.Nodes;
using Shaduf.Sun;
using Shaduf.Water;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>Open water with a surface pump: levels, suction head, what may be taken, and what is built.</summary>
public sealed class IntakeTests
{
    /// <summary>The small station with a flood that drowns its bank.</summary>
    internal static readonly Lazy<Design> OnRaft = new(() => SmallDesign.Of(brief => Beside(brief)["flood"] = "402 m"));

    private static readonly Lazy<Design> s_river = new(() => SmallDesign.Of(brief => _ = Beside(brief)));

    /// <summary>
    /// Ground 400 m, so the shaft at 400.3 m, over the flood of 398 m; 5.3 m over the lowest water of 395 m, and at 395 m above
    /// sea 6 - 1.1 x 0.395 = 5.57 m are trusted: on the bank. Strainer: the deeper of 0.3 m over the bottom of 393 m and 1 m under
    /// the water, 394 m.
    /// </summary>
    [Fact]
    public void Levels_follow_the_calculation_by_hand()
    {
        var intake = Assert.IsType<Intake>(s_river.Value.Source);
        Assert.Equal(PumpStand.Bank, intake.Survey.Stand);
        Assert.Equal(400.3, intake.Survey.PumpM, 5e-10);
        Assert.Equal(394, intake.StrainerM, 5e-10);
        Assert.Equal(5, intake.RestDryM, 5e-10);
        Assert.Equal(5, intake.LevelM(9), 5e-10);
        Assert.Equal(8, intake.YieldM3PerH, 5e-10);
    }

    /// <summary>FAO-56 at 395 m: 96.68 kPa; water of 25 degC: 3.169 kPa and 997.05 kg/m3, so 9.564 m, less lift and losses.</summary>
    [Fact]
    public void The_suction_head_offered_follows_the_calculation_by_hand()
    {
        var build = Assert.IsType<IntakeBuild>(s_river.Value.Works.Source);
        var january = build.Months(s_river.Value.Choice.Pump)[0];
        Assert.Equal(5.3, january.LiftM, 5e-10);
        Assert.Equal(9.564 - 5.3 - january.LossM, january.AvailableM, 0.01);
        var required = s_river.Value.Choice.Pump.BesideWater.Npsh.RequiredM(build.FlowM3PerH / 3600);
        Assert.Equal(Math.Max(required + 0.5, 1.3 * required), january.NeededM, 5e-10);
        Assert.Equal(FindingStatus.Holds, Found(s_river.Value, "source/npsh").Status);
    }

    [Fact]
    public void Water_that_drowns_the_bank_is_drawn_from_a_raft()
    {
        var design = OnRaft.Value;
        var intake = Assert.IsType<Intake>(design.Source);
        Assert.Equal(PumpStand.Raft, intake.Survey.Stand);
        Assert.Equal(IntakeSurvey.OnRaftM, intake.Survey.LiftM(3), 5e-10);
        Assert.Contains(design.Takeoff.Lines, line => line.Item == "pump-raft");
        Assert.Equal(
            design.Survey["motor-cable"] + intake.Survey.HoseM,
            design.Works.Electrics.MotorCable.Duty.LengthM,
            5e-10
        );
    }

    [Fact]
    public void A_bank_under_the_flood_is_stopped_when_the_brief_wants_it()
    {
        var design = SmallDesign.Of(brief =>
        {
            var surface = Beside(brief);
            surface["flood"] = "402 m";
            surface["pump"] = "bank";
        });
        var finding = Found(design, "source/flood");
        Assert.Equal(FindingStatus.Stop, finding.Status);
        Assert.Equal(402.5, finding.Limit!.Value, 5e-10);
        Assert.Contains("raise it by 1.5 m", finding.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pump_that_cavitates_is_stopped_and_told_how_much_lower_it_must_stand()
    {
        var design = SmallDesign.Of(brief =>
        {
            var surface = Beside(brief);
            surface["pump"] = "bank";
            surface["pumpLevel"] = "403.5 m";
        });
        var finding = Found(design, "source/npsh");
        Assert.Equal(FindingStatus.Stop, finding.Status);
        var shortM = finding.Limit!.Value - finding.Value!.Value;
        Assert.Contains(FormattableString.Invariant($"must stand {shortM:0.0} m lower"), finding.Says);
        Assert.Equal(FindingStatus.Stop, Found(design, "source/suction-lift").Status);
        Assert.Contains("cavitates", design.Sizing.Verdicts.Single().Outcome, StringComparison.Ordinal);
        Assert.Equal("cavitation", design.Sizing.Limit!.Kind);
    }

    [Fact]
    public void No_day_takes_more_than_it_may_and_the_tank_loses_no_litre()
    {
        var design = SmallDesign.Of(brief =>
        {
            var surface = Beside(brief);
            surface["mayTakePerDay"] = "6 m3/d";
            surface["months"] = new JsonObject
            {
                ["mar"] = new JsonObject { ["mayTakePerDay"] = "3 m3/d", ["mayTakePerHour"] = "0.5 m3/h" },
            };
        });
        var limits = design.Source.Limits;
        foreach (var (day, hours) in design.Trace.PumpedM3.Chunk(24).Index())
        {
            var month = YearCalendar.MonthOf(24 * day);
            Assert.True(hours.Sum() <= limits.DayM3[month] + 1e-9);
            Assert.True(hours.Max() <= limits.HourM3[month] + 1e-9);
        }

        Assert.Equal(3, limits.DayM3[2], 5e-10);
        Assert.Equal(6, limits.DayM3[3], 5e-10);
        var year = design.Year;
        Assert.Equal(year.EndM3 - year.StartM3, year.PumpedM3.Sum() - year.DeliveredM3.Sum(), 0.001);
        Assert.True(year.PumpableM3[2] <= 31 * 3 + 1e-9);
    }

    /// <summary>A limit in one month alone, a month without water, a pipe that strangles the pump.</summary>
    [Theory]
    [InlineData("0 m3/d", "1 m", 1)]
    [InlineData("4 m3/d", "50 m", 100)]
    public void Odd_but_accepted_water_gives_a_sound_design(string may, string lengthM, int valves)
    {
        var design = SmallDesign.Of(brief =>
        {
            var surface = Beside(brief);
            surface.Remove("mayTakePerDay");
            surface["mayTakePerHour"] = "500 m3/h";
            surface["months"] = new JsonObject { ["may"] = new JsonObject { ["mayTakePerDay"] = may } };
            surface["suction"] = new JsonObject
            {
                ["length"] = lengthM,
                ["fittings"] = new JsonArray(new JsonObject { ["kind"] = "globe valve open", ["count"] = valves }),
            };
        });
        Sound.Assert(design);
        Assert.True(double.IsFinite(Found(design, "source/licence").Limit!.Value));
    }

    [Fact]
    public void A_month_that_may_give_too_little_is_named_with_what_is_asked()
    {
        var design = SmallDesign.Of(brief => Beside(brief)["mayTakePerDay"] = "2 m3/d");
        var limit = design.Sizing.Limit!;
        Assert.Equal("licence", limit.Kind);
        Assert.Equal(2, limit.Allowed, 5e-10);
        Assert.Equal(design.Demand.M3PerDay.Max(), limit.Value, 5e-10);
        Assert.Contains("2 m3 a day may be taken", Found(design, "sizing/limit").Says, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_built_is_priced_and_nothing_of_a_borehole_is()
    {
        var lines = s_river.Value.Bill.Lines;
        var items = lines.Select(line => line.Quantity.Item).ToHashSet();
        Assert.All(
            SourceFitting.OfIntake.Where(fitting => fitting.Item.Length > 0),
            fitting => Assert.Contains(fitting.Item, items)
        );
        Assert.DoesNotContain(lines, line => line.Amount is null);
        Assert.Empty(items.Intersect(["riser-clamp", "well-cover", "safety-rope", "cable-splice", "cooling-shroud"]));
        Assert.DoesNotContain(s_river.Value.Findings, finding => finding.Id == "source/pump-fit");
    }

    [Fact]
    public void A_kind_of_water_and_its_level_are_enough()
    {
        var design = SmallDesign.Of(brief =>
        {
            brief["lift"]!.AsObject().Remove("riser");
            brief["source"] = new JsonObject
            {
                ["surface"] = new JsonObject { ["water"] = "pond", ["normal"] = "397 m" },
            };
        });
        Sound.Assert(design);
        string[] taken = ["lowest-water", "flood", "bed", "may-take", "hottest-water", "suction-length"];
        Assert.All(taken, id => Assert.Contains(design.Survey.Assumptions, each => each.Id == id));
        Assert.Equal(FindingStatus.Unchecked, Found(design, "source/licence").Status);
    }

    [Theory]
    [InlineData("lowest", "397 m", "source.surface.lowest", "contradicts")]
    [InlineData("flood", "395 m", "source.surface.flood", "contradicts")]
    [InlineData("bed", "395.5 m", "source.surface.bed", "contradicts")]
    [InlineData("normal", "420 m", "source.surface.normal", "needs no pump")]
    [InlineData("normal", "401 m", "source.surface.normal", "above the pump's place")]
    [InlineData("pumpLevel", "390 m", "source.surface.pumpLevel", "under the lowest water")]
    [InlineData("mayTakePerHour", "0 m3/h", "source.surface.mayTakePerHour", "out of range")]
    [InlineData("depth", "20 m", "source.surface.depth", "no such field")]
    public void Bad_levels_are_an_error_with_its_place(string field, string value, string place, string says) =>
        Refused(
            brief =>
            {
                var surface = Beside(brief);
                surface.Remove(field == "normal" ? "flood" : "months");
                surface[field] = value;
            },
            place,
            says
        );

    [Fact]
    public void What_belongs_to_a_borehole_is_refused_beside_open_water()
    {
        Refused(
            brief =>
            {
                _ = Beside(brief);
                brief["source"]!["restLevel"] = "30 m";
            },
            "source.restLevel",
            "beside source.surface"
        );
        Refused(
            brief =>
            {
                _ = Beside(brief);
                brief["lift"]!["riser"] = "gi-50";
            },
            "lift.riser",
            "hangs on no riser"
        );
    }

    [Fact]
    public void A_bank_that_no_pump_can_draw_to_is_refused() =>
        Refused(
            brief =>
            {
                var surface = Beside(brief);
                surface["pump"] = "bank";
                surface["pumpLevel"] = "410 m";
            },
            "source.surface.pumpLevel",
            "15 m above the lowest water"
        );

    private static void Refused(Action<JsonNode> change, string field, string says)
    {
        var trouble = Assert.Throws<BadInputException>(() => SmallDesign.File(change));
        Assert.Contains(trouble.Errors, error => error.Field == field && error.ToString().Contains(says));
    }

    private static Finding Found(Design design, string id) => design.Findings.Single(finding => finding.Id == id);

    // The small station with a river in the place of its borehole.
    private static JsonObject Beside(JsonNode brief)
    {
        brief["lift"]!.AsObject().Remove("riser");
        var surface = new JsonObject
        {
            ["water"] = "river",
            ["normal"] = "396 m",
            ["lowest"] = "395 m",
            ["flood"] = "398 m",
            ["bed"] = "393 m",
            ["mayTakePerHour"] = "8 m3/h",
            ["mayTakePerDay"] = "40 m3/d",
            ["suction"] = new JsonObject { ["length"] = "10 m" },
        };
        brief["source"] = new JsonObject { ["surface"] = surface, ["waterTemperature"] = "25 degC" };
        return surface;
    }
}
