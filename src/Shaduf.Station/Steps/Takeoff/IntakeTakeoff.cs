using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What is bought and built beside open water.</summary>
internal static class IntakeTakeoff
{
    // Bought beyond the net quantity: common practice, no source.
    private const double PipeWasteShare = 0.03;

    /// <summary>Pump, suction pipe and hose, fittings, plinth or raft, labour.</summary>
    /// <param name="choice">What was chosen.</param>
    /// <param name="build">What is built.</param>
    /// <returns>The quantities.</returns>
    public static IEnumerable<QuantityLine> Of(Choice choice, IntakeBuild build)
    {
        var pipe = build.Pipe;
        var hose = pipe.HoseM > 0 ? Invariant($" and hose to the bank {pipe.HoseM:0.#} m") : "";
        return
        [
            Line(choice.Pump.Name, choice.Pump.About, "nr", 1, "choice of pump"),
            Line(
                pipe.Card.Name,
                $"{pipe.Name}: {pipe.Card.About}",
                "m",
                pipe.LengthM * (1 + PipeWasteShare),
                Invariant($"suction {pipe.SuctionM:0.#} m{hose} + 3 %")
            ) with
            {
                NetQuantity = pipe.LengthM,
            },
            .. SourceFitting.Bought(SourceFitting.OfIntake, "fittings of the pump, in the order of the flow"),
            Line("level-probe", "float switch that stops the pump at low water", "set", 1, "one pump"),
            .. build.Intake.Survey.Stand == PumpStand.Bank
                ? SlabTakeoff
                    .Of(build.Plinth, "plinth of the pump")
                    .Append(Line("anchor-bolts", "anchor bolts of the pump", "set", 1, "one pump"))
                :
                [
                    Line("pump-raft", "raft for the pump and a man beside it, with rails", "nr", 1, "one pump"),
                    Line("mooring", "moorings of the raft, upstream and downstream", "set", 1, "one raft"),
                ],
            Labour.Days(build.SettingLabour, 1, "one pump"),
        ];
    }

    private static QuantityLine Line(string item, string what, string unit, double quantity, string origin) =>
        new(item, BillSection.SourceAndPump, what, unit, quantity, origin);
}
