using Shaduf.Power;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads one card. The field <c>card</c> says which kind it is.</summary>
internal static class CardReader
{
    /// <summary>The kinds of card, by the word in their field <c>card</c>.</summary>
    public static IReadOnlyList<(string Word, Func<FieldMap, CardHead, Card> Read)> Kinds { get; } =
    [
        ("module", ModuleCardReader.Read),
        ("pump", PumpCardReader.Read),
        ("drive", DriveCardReader.Read),
        ("pipe", Pipe),
        ("cable", Cable),
        ("section", Section),
        ("tank", Tank),
        ("light", LightCardReader.Read),
        .. ProtectionCardReader.Kinds,
    ];

    /// <summary>The published schema of one kind of card.</summary>
    /// <param name="kind">Its word.</param>
    /// <returns>JSON Schema, draft 2020-12, indented.</returns>
    public static string Schema(string kind) =>
        SchemaText.Of($"card of a {kind}", "A Shaduf card: one data sheet.", fields => Read(fields, kind));

    /// <summary>The fields that every card has.</summary>
    internal sealed record CardHead(string Name, string About, bool IsPlanningData);

    /// <summary>Reads a card's mapping.</summary>
    /// <param name="fields">The card's top mapping.</param>
    /// <param name="kind">Which kind it is; null to take it from the file.</param>
    /// <returns>The card, or null when its kind is wrong (noted).</returns>
    public static Card? Read(FieldMap fields, string? kind = null)
    {
        var words = Kinds.Where(each => kind is null || each.Word == kind).Select((each, i) => (each.Word, i)).ToList();
        var word = words[fields.OneOf("card", words, "What the card describes.")].Word;
        var head = new CardHead(
            fields.Text("name", "Name that briefs and price books use.", 40),
            fields.Text("about", "What it is, for people.", 120),
            fields.OneOf(
                "planning",
                [("yes", true), ("no", false)],
                "Whether this is generic planning data, to be replaced by the supplier's data sheet before ordering."
            )
        );
        if (kind is null && !fields.AreSound("card"))
        {
            return null;
        }

        var card = Kinds.Single(each => each.Word == word).Read(fields, head);
        fields.Done();
        return card;
    }

    private static PipeCard Pipe(FieldMap fields, CardHead head)
    {
        var card = new PipeCard(
            head.Name,
            head.About,
            head.IsPlanningData,
            [
                .. new[]
                {
                    (fields.OneOf("riser", YesNo, "Whether it may hang in the borehole."), PipeUse.Riser),
                    (
                        fields.OptionalOneOf("suction", YesNo, "Whether it may be a suction pipe; left out: no.")
                            ?? false,
                        PipeUse.Suction
                    ),
                    (fields.OneOf("main", YesNo, "Whether it may be the pumped main."), PipeUse.Main),
                    (fields.OneOf("tap", YesNo, "Whether it may serve taps."), PipeUse.Tap),
                }
                    .Where(use => use.Item1)
                    .Select(use => use.Item2),
            ],
            fields.Quantity("outer", Measure.LengthMm, 10, 1000, "Outside diameter."),
            fields.Quantity("bore", Measure.LengthMm, 8, 1000, "Smallest inside diameter."),
            fields.Quantity("roughness", Measure.LengthMm, 0.0005, 3, "Roughness for design."),
            fields.Quantity("pressure", Measure.PressureBar, 2, 100, "Nominal pressure at 20 degC."),
            fields.Quantity("modulus", Measure.ModulusGPa, 0.3, 250, "Short-term elastic modulus of the wall."),
            fields.OneOf("weakerWhenWarm", YesNo, "Whether the pressure class falls above 20 degC."),
            fields.Quantity("massPerMetre", Measure.MassKg, 0.05, 200, "Mass of one metre.")
        );
        if (fields.AreSound())
        {
            fields.RefuseUnless(
                card.OuterMm - card.BoreMm is >= 1 and <= 400,
                "bore",
                "the wall is not 0.5 mm to 200 mm thick"
            );
            fields.RefuseUnless(card.RoughnessMm <= card.BoreMm / 10, "roughness", "more than a tenth of the bore");
        }

        return card;
    }

    private static CableCard Cable(FieldMap fields, CardHead head)
    {
        var card = new CableCard(
            head.Name,
            head.About,
            head.IsPlanningData,
            fields.OneOf(
                "use",
                [("string", CableUse.String), ("motor", CableUse.Motor), ("earth", CableUse.Earth)],
                "Where it is used."
            ),
            fields.Quantity("size", Measure.SizeMm2, 1, 400, "Cross-section of a core."),
            fields.OneOf(
                "conductor",
                [
                    ("copper-class-2", Conductor.CopperClass2),
                    ("copper-class-2-tinned", Conductor.CopperClass2Tinned),
                    ("copper-class-5", Conductor.CopperClass5),
                    ("copper-class-5-tinned", Conductor.CopperClass5Tinned),
                    ("aluminium-class-2", Conductor.AluminiumClass2),
                ],
                "Kind of conductor (IEC 60228)."
            ),
            fields.Quantity(
                "ampacity",
                Measure.CurrentA,
                2,
                600,
                "Current it carries as laid: string cable in air of 60 degC, motor and earth cable in air of 30 degC."
            )
        );
        fields.RefusedBy("size", () => ConductorResistance.OhmPerKm(card.Conductor, card.SizeMm2));
        if (fields.AreSound() && MostA(card) is { } mostA)
        {
            fields.RefuseUnless(
                card.AmpacityA <= mostA,
                "ampacity",
                Invariant(
                    $"{card.AmpacityA:0.#} A, and copper of {card.SizeMm2:0.#} mm2 carries {mostA:0.#} A at most, free in air"
                )
            );
        }

        return card;
    }

    // What the standards' tables give a size where it lies coolest; null beyond their last size.
    private static double? MostA(CableCard card) =>
        (card.Conductor, card.Use, card.SizeMm2) switch
        {
            (Conductor.AluminiumClass2, _, _) => null,
            (_, CableUse.String, <= 25) => Ampacity.PvCableA(card.SizeMm2, PvLaying.FreeInAir, 60),
            (_, CableUse.Motor or CableUse.Earth, <= 35) => Ampacity.InstalledA(card.SizeMm2, LayingMethod.E),
            _ => null,
        };

    private static SectionCard Section(FieldMap fields, CardHead head)
    {
        var card = new SectionCard(
            head.Name,
            head.About,
            head.IsPlanningData,
            fields.OneOf(
                "shape",
                [
                    ("equal-angle", SectionShape.EqualAngle),
                    ("square-hollow", SectionShape.SquareHollow),
                    ("circular-hollow", SectionShape.CircularHollow),
                ],
                "Shape."
            ),
            fields.Quantity("size", Measure.LengthMm, 15, 400, "Leg, side or diameter."),
            fields.Quantity("wall", Measure.LengthMm, 1.5, 20, "Thickness."),
            fields.Quantity("rootRadius", Measure.LengthMm, 0, 30, "Root radius of an angle; 0 mm for tubes."),
            fields.Quantity("bar", Measure.LengthM, 2, 18, "Length of the bar as sold.")
        );
        fields.RefusedBy("wall", () => RackSections.SectionOf(card));
        return card;
    }

    private static TankCard Tank(FieldMap fields, CardHead head)
    {
        var card = new TankCard(
            head.Name,
            head.About,
            head.IsPlanningData,
            fields.Quantity("volume", Measure.VolumeM3, 0.2, 500, "Volume to the overflow."),
            fields.Quantity("useful", Measure.VolumeM3, 0.1, 500, "Volume between outlet and float."),
            fields.Quantity("diameter", Measure.LengthM, 0.4, 30, "Diameter, or side of a square tank."),
            fields.Quantity("height", Measure.LengthM, 0.4, 10, "Height of the shell.")
        )
        {
            Shape =
                fields.OptionalOneOf(
                    "shape",
                    [("round", TankShape.Round), ("square", TankShape.Square)],
                    "Shape of its plan; square: put together from panels. Left out: round."
                ) ?? TankShape.Round,
            MassKg = fields.Known("mass", Measure.MassKg, 1, 50_000, "Mass of the empty tank; a stand needs it."),
            PanelM =
                fields.Known("panel", Measure.LengthM, 0.3, 3, "Side of a panel of a square tank; left out: 1.22 m.")
                ?? TankCard.UsualPanelM,
        };
        if (fields.AreSound())
        {
            fields.RefuseUnless(card.UsefulM3 <= card.VolumeM3, "useful", "more than the volume");
        }

        return card;
    }

    private static IReadOnlyList<(string Word, bool Value)> YesNo { get; } = [("yes", true), ("no", false)];
}
