namespace Shaduf.Station;

/// <summary>What a module's maker allows for one way of holding it; null where the card is silent.</summary>
/// <param name="FromMm">Clamps sit at least this far from the ends of the held sides [mm].</param>
/// <param name="ToMm">Clamps sit at most this far from the ends [mm].</param>
/// <param name="DownPa">Allowed pressure towards the back, for design loads [Pa].</param>
/// <param name="UpPa">Allowed suction, for design loads [Pa].</param>
public sealed record HoldingLimit(double? FromMm, double? ToMm, double? DownPa, double? UpPa)
{
    /// <summary>A way of which the card says nothing.</summary>
    public static HoldingLimit Unknown { get; } = new(null, null, null, null);
}

/// <summary>What a module's maker allows for each way of holding it.</summary>
/// <param name="LongClamps">Clamps on its long sides.</param>
/// <param name="ShortClamps">Clamps on its short sides.</param>
/// <param name="LongEdges">Long sides held along their whole length.</param>
/// <param name="ShortEdges">Short sides held along their whole length.</param>
public sealed record HoldingSheet(
    HoldingLimit LongClamps,
    HoldingLimit ShortClamps,
    HoldingLimit LongEdges,
    HoldingLimit ShortEdges
)
{
    /// <summary>A card that is silent.</summary>
    public static HoldingSheet Unknown { get; } =
        new(HoldingLimit.Unknown, HoldingLimit.Unknown, HoldingLimit.Unknown, HoldingLimit.Unknown);

    /// <summary>
    /// What is allowed on a rack: channels and rails run along the row, so that channels hold a standing module's short
    /// sides, and clamps sit between its long sides.
    /// </summary>
    /// <param name="type">How the rack holds modules.</param>
    /// <param name="way">Which way they lie.</param>
    /// <returns>The limit.</returns>
    public HoldingLimit Of(RackType type, ModuleWay way) =>
        (type, way) switch
        {
            (RackType.SlideIn, ModuleWay.Portrait) => ShortEdges,
            (RackType.SlideIn, _) => LongEdges,
            (_, ModuleWay.Portrait) => LongClamps,
            _ => ShortClamps,
        };

    /// <summary>Reads the group of a module's card.</summary>
    /// <param name="fields">The card's fields.</param>
    /// <param name="body">The module's size.</param>
    /// <returns>The group; all unknown where it is left out.</returns>
    internal static HoldingSheet Read(FieldMap fields, ModuleBody body)
    {
        var group = fields.OptionalMap("holding", "What the maker allows for each way of holding; design loads.");
        var holding = new HoldingSheet(
            Clamps(group, "longClamps", "Clamps on the long sides.", body.LengthMm),
            Clamps(group, "shortClamps", "Clamps on the short sides.", body.WidthMm),
            Edges(group, "longEdges", "Long sides held along their whole length."),
            Edges(group, "shortEdges", "Short sides held along their whole length.")
        );
        group?.Done();
        return holding;
    }

    private static HoldingLimit Clamps(FieldMap? group, string name, string about, double sideMm)
    {
        if (group?.OptionalMap(name, about) is not { } fields)
        {
            return HoldingLimit.Unknown;
        }

        var from = fields.Known("from", Measure.LengthMm, 0, 1500, "Least distance of a clamp from the side's end.");
        var to = fields.Known("to", Measure.LengthMm, 0, 1500, "Greatest distance of a clamp from the side's end.");
        var limit = new HoldingLimit(from, to, Down(fields), Up(fields));
        if (fields.AreSound("from", "to") && (from is null != to is null || from > to || to > sideMm / 2))
        {
            fields.Complain(
                "to",
                "the zone of the clamps does not lie within half a side",
                "both from and to, with from <= to <= half the side, are accepted"
            );
        }

        fields.Done();
        return limit;
    }

    private static HoldingLimit Edges(FieldMap? group, string name, string about)
    {
        if (group?.OptionalMap(name, about) is not { } fields)
        {
            return HoldingLimit.Unknown;
        }

        var limit = new HoldingLimit(null, null, Down(fields), Up(fields));
        fields.Done();
        return limit;
    }

    private static double? Down(FieldMap fields) =>
        fields.Known("down", Measure.PressurePa, 100, 20_000, "Allowed pressure on the glass.");

    private static double? Up(FieldMap fields) =>
        fields.Known("up", Measure.PressurePa, 100, 20_000, "Allowed suction, or pressure from behind.");
}
