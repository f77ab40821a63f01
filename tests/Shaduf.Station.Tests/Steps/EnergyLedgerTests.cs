using Shaduf.Sun;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

public sealed class EnergyLedgerTests
{
    private static readonly Lazy<Design> Small = new(() => DesignRun.Run(SmallDesign.File(_ => { })));

    private static EnergyLedger Ledger => Small.Value.Ledger;

    [Fact]
    public void The_shares_multiplied_out_are_the_end_over_the_beginning()
    {
        var product = 1.0;
        for (var row = 0; row < Ledger.Rows.Count; row++)
        {
            product *= Ledger.KeptShare(row);
        }

        Assert.Equal(Ledger.WholeShare, product, 1e-15);
        Assert.Equal(Ledger.Rows[^1].KWh, Ledger.Rows[0].KWh * product, 1e-9);
    }

    [Fact]
    public void Months_add_up_and_nothing_is_lost_below_nothing()
    {
        foreach (var row in Ledger.Rows)
        {
            Assert.Equal(12, row.KWhByMonth.Length);
            Assert.Equal(row.KWh, row.KWhByMonth.Sum(), 1e-9);
            Assert.All(row.KWhByMonth, kWh => Assert.True(kWh >= 0 && double.IsFinite(kWh)));
        }
    }

    [Fact]
    public void Only_tilt_light_and_cold_may_gain()
    {
        for (var row = 1; row < Ledger.Rows.Count; row++)
        {
            if (Ledger.Rows[row].Id is not ("plane" or "weak-light" or "temperature"))
            {
                Assert.True(Ledger.KeptShare(row) <= 1 + 1e-12, $"{Ledger.Rows[row].Id} keeps {Ledger.KeptShare(row)}");
            }
        }
    }

    [Fact]
    public void The_losses_of_the_brief_are_rows()
    {
        Assert.Equal(0.96, Kept("soiling"), 1e-12);
        Assert.Equal(0.99, Kept("mismatch"), 1e-12);
        Assert.Equal(0.99, Kept("first-light"), 1e-12);
        Assert.Equal(0.98, Kept("wiring"), 1e-12);
        Assert.Equal(0.98, Kept("tracking"), 1e-12);
        Assert.Equal(Math.Pow(1 - 0.004, 9), Kept("age"), 1e-12);
        Assert.Equal(Small.Value.Sizing.Hydraulics.Feed.CableKeptShare, Kept("motor-cable"), 1e-12);
    }

    [Fact]
    public void What_the_motor_s_cable_keeps_is_what_it_does_not_turn_to_heat()
    {
        var motor = Small.Value.Choice.Pump.Motor;
        var motorW = motor.ShaftKW * 1000 / motor.EfficiencyShare;
        var lossW = Small.Value.Works.Electrics.MotorCable.Choice.Fit!.LossW;
        Assert.Equal(motorW / (motorW + lossW), Kept("motor-cable"), 1e-3);
    }

    [Fact]
    public void Where_the_brief_is_silent_the_direct_current_cables_lose_what_those_chosen_drop()
    {
        var design = SmallDesign.Of(brief => brief["array"]!["losses"]!.AsObject().Remove("wiring"));
        var row = design.Ledger.Rows.ToList().FindIndex(each => each.Id == "wiring");
        Assert.Equal(1 - design.Works.Electrics.DirectDropShare, design.Ledger.KeptShare(row), 1e-12);
        Assert.InRange(design.Ledger.KeptShare(row), 0.98, 0.9999);
        Assert.DoesNotContain(design.Findings, finding => finding.Id == "electrics/wiring");
        Assert.Single(Small.Value.Findings, finding => finding.Id == "electrics/wiring");
    }

    [Fact]
    public void The_year_runs_no_slower_than_the_drive_is_set()
    {
        var design = Examples.DesignOf("homestead");
        var (sizing, lowest) = (design.Sizing, design.Works.Electrics.Lowest);
        Assert.True(lowest.SetHz < lowest.HighestHz);
        Assert.True(
            sizing.Table.Points.Min(point => point.Operating.SpeedRatio) * sizing.Hydraulics.Pump.Motor.RatedHz
                >= lowest.SetHz - 1e-9
        );
    }

    [Fact]
    public void A_pump_that_no_cable_can_feed_is_passed_over_with_the_reason()
    {
        var design = SmallDesign.Of(brief => brief["array"]!["motorCable"] = "2000 m");
        Assert.NotNull(design.Sizing.Limit);
        Assert.Contains(
            design.Sizing.Verdicts,
            verdict => verdict.Outcome.Contains("no cable card feeds its motor", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_wiring_share_below_what_the_cables_drop_is_looked_at()
    {
        var design = SmallDesign.Of(brief => brief["array"]!["losses"]!["wiring"] = "0 %");
        Assert.Equal(FindingStatus.Look, design.Findings.Single(finding => finding.Id == "electrics/wiring").Status);
    }

    [Fact]
    public void It_begins_with_the_light_on_the_ground_and_ends_with_the_water_in_the_tank()
    {
        var design = Small.Value;
        var areaM2 = design.Choice.ModuleCount * design.Choice.Module.Body.AreaM2;
        Assert.Equal(areaM2 * design.Sky.Year.GlobalWPerM2.Sum() / 1000, Ledger.Rows[0].KWh, 1e-6);
        var pumpedM3 = design.Year.PumpedM3.Sum();
        var staticM = design.Choice.Lift.System.StaticHeadM;
        var weightN = design.Choice.Lift.Water.DensityKgPerM3 * 9.80665 * pumpedM3;
        Assert.Equal(weightN * staticM / 3.6e6, Ledger.Rows[^1].KWh, 1e-6);
        Assert.Equal(design.Trace.ArrayW.Sum() / 1000, Ledger.Rows.Single(row => row.Id == "tracking").KWh, 1e-6);
    }

    [Fact]
    public void What_a_kilowatt_hour_lifts_agrees_with_the_pump()
    {
        // Over the running hours: drive, motor and pump together lie between nothing and their cards' best.
        var motor = Small.Value.Choice.Pump.Motor;
        Assert.InRange(Kept("motor"), 0.3, motor.EfficiencyShare + 0.02);
        Assert.InRange(Kept("drive"), 0.5, Small.Value.Choice.Drive.Sheet.EfficiencyShare);
        Assert.InRange(Kept("pump"), 0.1, 0.85);
    }

    private static double Kept(string id) =>
        Ledger.KeptShare(Ledger.Rows.Index().Single(row => row.Item.Id == id).Index);
}
