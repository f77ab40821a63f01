using Shaduf.Water;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>A helical rotor and points at several speeds, from the card to the design.</summary>
public sealed class RotorTests
{
    private const string Rotor = """
        card: pump
        name: sip-1x60
        about: rotor of the test
        planning: yes
        kind: helical-rotor
        reliefHead: 110 m
        curve:
          - { flow: 1.90 m3/h, head: 0 m, power: 130 W }
          - { flow: 1.80 m3/h, head: 40 m, power: 355 W }
          - { flow: 1.70 m3/h, head: 80 m, power: 580 W }
        motor: brushless-dc
        motorPower: 0.6 kW
        motorVoltage: 72 V
        motorCurrent: 10 A
        motorEfficiency: 85 %
        powerFactor: 100 %
        ratedFrequency: 100 Hz
        lowestFrequency: 20 Hz
        motorDiameter: 96 mm
        diameter: 98 mm
        submergence: 1.5 m
        mass: 14 kg
        coolingSpeed: 0.03 m/s
        """;

    /// <summary>Where little water is lifted high the rotor is chosen, with its relief valve and its findings.</summary>
    [Fact]
    public void A_rotor_can_be_chosen_and_brings_its_relief_valve()
    {
        using var scratch = new Scratch();
        scratch.WriteCards(("sip-1x60", Rotor));
        var brief = SmallStation.Brief();
        brief["uses"]!["people"]!["count"] = 60;
        brief["uses"]!.AsObject().Remove("plots");
        brief["rack"] = null;
        brief["array"]!["module"] = "module-200";

        // So near that the shelf's thickest cable feeds its 72 V.
        brief["array"]!["motorCable"] = "1 m";
        brief["source"]!["pumpSetting"] = "50 m";
        var design = DesignRun.Run(scratch.Read(brief.ToJsonString()));
        Assert.Null(design.Sizing.Limit);
        var rotor = Assert.IsType<HelicalRotor>(design.Choice.Pump.Curve);
        Assert.Contains(design.Takeoff.Lines, line => line.Item == "relief-valve");
        var findings = design.Findings.ToDictionary(finding => finding.Id);
        Assert.Equal(110, findings["pump/relief"].Value);
        Assert.Equal(20, findings["pump/breakaway"].Limit!.Value, 5e-10);
        Assert.True(findings["pump/start"].Value < 50, "a rotor lifts from little speed on");
        Assert.All(
            design.Sizing.Table.Points,
            point =>
                Assert.Equal(
                    point.Operating.FlowM3PerS,
                    (point.Operating.SpeedRatio * rotor.NoHeadFlowM3PerS) - (rotor.SlipM2PerS * point.Operating.HeadM),
                    1e-9
                )
        );
        Sound.Assert(design);
    }

    [Fact]
    public void A_rotor_without_a_relief_valve_or_power_is_refused_at_its_place()
    {
        using var scratch = new Scratch();
        scratch.WriteCards(
            (
                "sip-1x60",
                Rotor
                    .Replace("reliefHead: 110 m\n", "", StringComparison.Ordinal)
                    .Replace(", power: 355 W", "", StringComparison.Ordinal)
            )
        );
        Assert.Equal(
            [
                "cards/sip-1x60.yaml:1:1: reliefHead: missing for a helical rotor; the opening head of its relief valve is needed",
                "cards/sip-1x60.yaml:8:5: curve[2].power: missing for a helical rotor; the power at the shaft is needed",
            ],
            scratch.Errors(Specimen.Brief)
        );
    }

    /// <summary>The same pump told at rated speed by efficiency, and at two frequencies by power: one curve.</summary>
    [Fact]
    public void Points_at_another_frequency_and_by_power_give_the_same_curve()
    {
        var card = Specimen.Cards["lift-6x130"];
        var rated = CurveOf(card);

        // Each second point carried to 40 Hz by the affinity laws, and its power from head, flow and efficiency.
        var lines = card.Split('\n').ToList();
        var first = lines.FindIndex(line => line.Contains("flow: 1.50", StringComparison.Ordinal));
        var (flow, headM, efficiency) = (1.50 * 0.8, 164.1 * 0.64, 1 - ((1 - 0.238) * Math.Pow(0.8, -0.1)));
        var watts = 1000 * 9.80665 * flow / 3600 * headM / efficiency;
        lines[first] = FormattableString.Invariant(
            $"  - {{ flow: {flow:0.#####} m3/h, head: {headM:0.#####} m, power: {watts:0.####} W, frequency: 40 Hz }}"
        );
        var mixed = CurveOf(string.Join('\n', lines));
        Assert.Equal(rated.ShutOffHeadM, mixed.ShutOffHeadM, 1e-3);
        Assert.Equal(rated.EfficiencyShare(1.5 / 3600, 1), mixed.EfficiencyShare(1.5 / 3600, 1), 1e-4);
        Assert.Equal(rated.HeadM(4.0 / 3600, 1), mixed.HeadM(4.0 / 3600, 1), 1e-3);
    }

    private static IPumpCurve CurveOf(string card)
    {
        using var scratch = new Scratch();
        scratch.WriteCards(("lift-6x130", card));
        return scratch.Read(Specimen.Brief).Shelf.Find<PumpCard>("lift-6x130")!.Curve;
    }
}
