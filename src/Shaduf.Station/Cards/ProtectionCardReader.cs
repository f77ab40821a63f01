using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>Reads the cards of isolators, fuses, arresters and filters.</summary>
internal static class ProtectionCardReader
{
    /// <summary>The kinds of card that it reads, by their word.</summary>
    public static IReadOnlyList<(string Word, Func<FieldMap, CardReader.CardHead, Card> Read)> Kinds { get; } =
    [("isolator", Isolator), ("fuse", Fuse), ("arrester", Arrester), ("filter", Filter)];

    private static IsolatorCard Isolator(FieldMap fields, CardReader.CardHead head) =>
        new(
            head.Name,
            head.About,
            head.IsPlanningData,
            fields.Quantity(
                "voltage",
                Measure.VoltageV,
                20,
                2000,
                "Largest direct voltage, category DC-PV1 or DC-PV2."
            ),
            fields.Quantity("current", Measure.CurrentA, 1, 1000, "Largest current at that voltage.")
        );

    private static FuseCard Fuse(FieldMap fields, CardReader.CardHead head) =>
        new(
            head.Name,
            head.About,
            head.IsPlanningData,
            fields.Quantity("current", Measure.CurrentA, 1, 100, "Rated current of the fuse (gPV)."),
            fields.Quantity("voltage", Measure.VoltageV, 20, 2000, "Largest direct voltage.")
        );

    private static ArresterCard Arrester(FieldMap fields, CardReader.CardHead head)
    {
        var card = new ArresterCard(
            head.Name,
            head.About,
            head.IsPlanningData,
            fields.OneOf(
                "side",
                [("direct", ArresterSide.Direct), ("motor", ArresterSide.Motor)],
                "Where it may be used: between array and drive, or behind the drive's filter."
            ),
            fields.Count("type", 1, 2, "Type: 1 (with 2) or 2."),
            fields.Quantity("continuous", Measure.VoltageV, 20, 2000, "Largest continuous voltage (Ucpv, Uc)."),
            fields.Quantity("letThrough", Measure.ImpulseKV, 0.1, 20, "Protection level (Up)."),
            fields.Quantity("discharge", Measure.CurrentKA, 1, 200, "Nominal discharge current, 8/20."),
            fields.Quantity("impulse", Measure.CurrentKA, 0, 100, "Impulse current a pole, 10/350; 0 kA for type 2.")
        );
        if (fields.AreSound())
        {
            fields.RefuseUnless(
                card.TypeNumber == 2 || card.ImpulseKA > 0,
                "impulse",
                "type 1 is tested with an impulse current, and it has none"
            );
            fields.RefuseUnless(
                card.LetThroughKV * 1000 > card.ContinuousV,
                "letThrough",
                "it would let through less than the voltage that it bears for ever"
            );
        }

        return card;
    }

    private static FilterCard Filter(FieldMap fields, CardReader.CardHead head) =>
        new(
            head.Name,
            head.About,
            head.IsPlanningData,
            fields.OneOf(
                "kind",
                [("slope", FilterKind.Slope), ("sine", FilterKind.Sine)],
                "What it makes of the pulses: a flatter slope (dU/dt filter, output reactor) or a sine."
            ),
            fields.Quantity("current", Measure.CurrentA, 0.5, 400, "Largest motor current."),
            fields.Quantity("voltage", Measure.VoltageV, 12, 1000, "Largest rated voltage of the motor."),
            fields.Quantity("cable", Measure.LengthM, 5, 2000, "Longest motor cable behind it."),
            fields.Quantity("drop", Measure.Share, 0, 0.15, "Drop at its largest current.")
        );
}
