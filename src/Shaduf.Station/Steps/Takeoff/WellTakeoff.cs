using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What goes into the borehole and onto it.</summary>
internal static class WellTakeoff
{
    // Bought beyond the net quantity: common practice, no source.
    private const double PipeWasteShare = 0.03;

    /// <summary>Pump, riser, rope, fittings of the wellhead, slab, labour.</summary>
    /// <param name="choice">What was chosen.</param>
    /// <param name="build">The equipment as built.</param>
    /// <returns>The quantities.</returns>
    public static IEnumerable<QuantityLine> Of(Choice choice, WellBuild build) =>
        [
            .. Hung(choice, build),
            .. SourceFitting.Bought(SourceFitting.OfWellhead, "wellhead, in the order of the flow"),
            Line("level-probe", "dry-run probes with cable", "set", 1, "one borehole"),
            .. build.Cooling.NeedsShroud
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
            .. SlabTakeoff.Of(build.Apron, "slab round the wellhead"),
            Labour.Days(build.SettingLabour, 1, "one pump"),
        ];

    private static IEnumerable<QuantityLine> Hung(Choice choice, WellBuild build)
    {
        var riserM = choice.Lift.Foot.LengthM;
        yield return Line(choice.Pump.Name, choice.Pump.About, "nr", 1, "choice of pump");
        yield return Line(
            choice.Lift.Foot.Card.Name,
            $"riser: {choice.Lift.Foot.Card.About}",
            "m",
            riserM * (1 + PipeWasteShare),
            Invariant($"pump setting {riserM:0.#} m + 3 %")
        ) with
        {
            NetQuantity = riserM,
        };
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
        if (choice.Lift.Foot.Card.LosesStrengthWhenWarm)
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

    private static QuantityLine Line(string item, string what, string unit, double quantity, string origin) =>
        new(item, BillSection.SourceAndPump, what, unit, quantity, origin);
}
