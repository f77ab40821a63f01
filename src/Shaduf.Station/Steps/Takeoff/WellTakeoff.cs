using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What goes into the borehole and onto it.</summary>
internal static class WellTakeoff
{
    // Bought beyond the net quantity: common practice, no source.
    private const double PipeWasteShare = 0.03;
    private const double AggregateWasteShare = 0.10;

    /// <summary>Pump, riser, rope, fittings of the wellhead, slab, labour.</summary>
    /// <param name="choice">What was chosen.</param>
    /// <param name="cooling">Cooling of the motor.</param>
    /// <param name="build">The equipment as built.</param>
    /// <returns>The quantities.</returns>
    public static IEnumerable<QuantityLine> Of(Choice choice, Cooling cooling, WellBuild build) =>
        [
            .. Hung(choice, build),
            .. WellheadFitting
                .All.Where(fitting => fitting.Item.Length > 0)
                .GroupBy(fitting => fitting.Item)
                .Select(same =>
                    Line(
                        same.Key,
                        same.First().What,
                        "nr",
                        same.Sum(fitting => fitting.Count),
                        "wellhead, in the order of the flow"
                    )
                ),
            Line("level-probe", "dry-run probes with cable", "set", 1, "one borehole"),
            .. cooling.NeedsShroud
                ? [Line("cooling-shroud", "cooling shroud for the motor", "nr", 1, "one pump")]
                : (IEnumerable<QuantityLine>)[],
            .. choice.Pump.Rotor is { } rotor
                ?
                [
                    Line(
                        "relief-valve",
                        Invariant($"relief valve set to {rotor.ReliefHeadM:0} m, between pump and first valve"),
                        "nr",
                        1,
                        "pump card"
                    ),
                ]
                : (IEnumerable<QuantityLine>)[],
            .. Apron(build.Apron),
            Labour.Days("lower", 1, "one pump"),
        ];

    private static IEnumerable<QuantityLine> Hung(Choice choice, WellBuild build)
    {
        var riserM = choice.Lift.RiserM;
        yield return Line(choice.Pump.Name, choice.Pump.About, "nr", 1, "choice of pump");
        yield return Line(
            choice.Lift.Riser.Name,
            $"riser: {choice.Lift.Riser.About}",
            "m",
            riserM * (1 + PipeWasteShare),
            Invariant($"pump setting {riserM:0.#} m + 3 %")
        );
        yield return Line(
            "safety-rope",
            Invariant($"safety rope, breaking load at least {build.RopeKN:0.0} kN"),
            "m",
            riserM + 5,
            Invariant($"pump setting {riserM:0.#} m + 5 m")
        );
        yield return Line("riser-clamp", "pair of clamps for lowering the riser", "set", 1, "one borehole");
        yield return Line(
            "cable-clip",
            "clips of the cable, not of bare steel",
            "nr",
            build.ClipCount,
            Invariant($"one every {WellBuild.ClipM:0} m of {riserM:0.#} m and beside each of {build.JointCount} joints")
        );
        yield return Line("cable-splice", "splice of the motor's cable, for under water", "set", 1, "one pump");
        if (choice.Lift.Riser.LosesStrengthWhenWarm)
        {
            yield return Line("torque-arrestor", "torque arrestor", "nr", 1, "riser of plastic");
            yield return Line(
                "riser-adaptor",
                "thread adaptor of brass or stainless steel",
                "nr",
                2,
                "pump and wellhead"
            );
        }
    }

    private static IEnumerable<QuantityLine> Apron(ApronBuild apron)
    {
        var origin = Invariant(
            $"slab round the wellhead {apron.SideM:0.0} x {apron.SideM:0.0} x {apron.ThickM:0.00} m: {apron.ConcreteM3:0.000} m3 + 5 %"
        );
        yield return Line(
            "cement-50kg",
            $"cement for the slab, bags of 50 kg, mix {apron.Mix}",
            "nr",
            Math.Ceiling(apron.Quantities.BagCount),
            origin
        );
        yield return Line(
            "sand",
            "sand for the slab",
            "m3",
            apron.Quantities.SandM3 * (1 + AggregateWasteShare),
            $"{origin}, and 10 % of sand"
        );
        yield return Line(
            "stone",
            "broken stone 20 mm for the slab",
            "m3",
            apron.Quantities.StoneM3 * (1 + AggregateWasteShare),
            $"{origin}, and 10 % of stone"
        );
        yield return Labour.Days("apron", apron.ConcreteM3, "slab round the wellhead");
    }

    private static QuantityLine Line(string item, string what, string unit, double quantity, string origin) =>
        new(item, BillSection.SourceAndPump, what, unit, quantity, origin);
}
