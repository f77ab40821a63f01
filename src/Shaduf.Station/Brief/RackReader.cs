namespace Shaduf.Station;

/// <summary>Reads the parts of the brief about the racks and the crew that builds them.</summary>
internal static class RackReader
{
    // Steeper ground is handed over to an engineer.
    private const double SteepestShare = 0.2;

    private const string Tubes = "Cross tubes or rafters along the row, each on its columns.";
    private const string RailsAt = "Where rails run under a module, from either end of the sides that the clamps hold.";

    /// <summary>Reads the racks.</summary>
    /// <param name="fields">Their mapping; null when it is left out.</param>
    /// <param name="crew">The crew.</param>
    /// <returns>The racks.</returns>
    public static RackBrief Read(FieldMap? fields, CrewBrief crew)
    {
        var rack = new RackBrief(
            fields?.OptionalCount("rows", 1, 4, "Rows of modules up the slope.", FieldMap.ChooseWord),
            fields?.OptionalCount("columns", 1, 20, "Most modules side by side in one rack.", FieldMap.ChooseWord),
            fields?.Chosen("lowEdge", Measure.LengthM, 0.3, 3, "Least height of the plane above ground."),
            Clearance(fields, "depthClearance", 15, "Free depth in the channel beyond the module's thickness."),
            Clearance(fields, "rowClearance", 300, "Free length in each row beyond the bare sum of widths."),
            BriefReader.Name(fields, "angle", "Section card of the frame's angles."),
            BriefReader.Name(fields, "tube", "Section card of the cross tubes or rafters, and of the struts."),
            BriefReader.Name(fields, "column", "Section card of the columns."),
            fields?.Chosen("footingSide", Measure.LengthMm, 200, 2000, "Side of a square footing block."),
            fields?.Chosen("footingDepth", Measure.LengthMm, 300, 3000, "Depth of a footing block below ground."),
            BriefReader.Name(fields, "mix", "Nominal mix of the concrete by volume, as 1:2:4.")
        )
        {
            Type =
                fields?.OptionalOneOf(
                    "type",
                    [("slide-in", RackType.SlideIn), ("clamped-rails", RackType.ClampedRails)],
                    "How the rack holds the modules; left out: slide-in."
                ) ?? RackType.SlideIn,
            Lines = fields?.OptionalCount("lines", 1, 2, "Lines of columns.", FieldMap.ChooseWord),
            Tubes = fields?.OptionalCount("tubes", 2, 12, Tubes, FieldMap.ChooseWord),
            Way =
                fields?.OptionalOneOf(
                    "orientation",
                    [("portrait", ModuleWay.Portrait), ("landscape", ModuleWay.Landscape)],
                    "Long side of the modules up the slope or along the row; left out: portrait."
                ) ?? ModuleWay.Portrait,
            Rail = BriefReader.Name(fields, "rail", "Section card of the rails of clamped modules."),
            RailsAtMm = fields?.Chosen("railsAt", Measure.LengthMm, 50, 900, RailsAt),
            Ground = Ground(fields?.OptionalMap("groundFall", "Slope of the ground under a rack; left out: level.")),
            BlockageShare = Blockage(fields),
            Steel =
                fields?.OptionalOneOf(
                    "steel",
                    [
                        ("unmarked", SteelBrief.Unmarked),
                        ("S235", SteelBrief.S235),
                        ("S275", SteelBrief.S275),
                        ("S355", SteelBrief.S355),
                    ],
                    "Grade of the steel by its certificate; left out: unmarked."
                ) ?? SteelBrief.Unmarked,
            IsWallMeasured =
                fields?.OptionalOneOf(
                    "wallMeasured",
                    BriefReader.YesNo,
                    "Whether the walls were measured by calliper or come with a certificate; left out: no."
                ) ?? false,
            ConcreteClass = ConcreteClass(fields),
            HasConcreteControl = HasConcreteControl(fields),
            Crew = crew,
        };
        fields?.Done();
        return rack;
    }

    private static string? ConcreteClass(FieldMap? fields) =>
        fields?.OptionalOneOf(
            "concrete",
            [.. Footings.Classes.Select((each, i) => (each.Name, i))],
            "Strength class of the footings' concrete by samples or a certificate; left out: what the mix gives."
        )
            is { } concrete
            ? Footings.Classes[concrete].Name
            : null;

    private static bool HasConcreteControl(FieldMap? fields) =>
        fields?.OptionalOneOf(
            "concreteControl",
            BriefReader.YesNo,
            "Whether parts are measured in boxes, water is held to the mix, and samples are pressed; left out: no."
        ) ?? false;

    private static RackGround Ground(FieldMap? fields)
    {
        var ground = new RackGround(
            fields?.Known(
                "along",
                Measure.Share,
                -SteepestShare,
                SteepestShare,
                "Fall along the row, to the right as seen from the low edge; below 0 where it rises."
            ) ?? 0,
            fields?.Known(
                "back",
                Measure.Share,
                -SteepestShare,
                SteepestShare,
                "Fall from the low edge to the high edge; below 0 where it rises."
            ) ?? 0
        );
        fields?.Done();
        return ground;
    }

    private static double? Blockage(FieldMap? fields) =>
        fields?.Known(
            "blockage",
            Measure.Share,
            0,
            1,
            "What stands under the modules in the wind: solid area over the whole area below them, 100 % for a wall."
        );

    private static double? Clearance(FieldMap? fields, string name, double mostMm, string about) =>
        fields?.Chosen(name, Measure.LengthMm, 0, mostMm, about);
}
