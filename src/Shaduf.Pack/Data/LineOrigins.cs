using Shaduf.Money;
using Shaduf.Station;
using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>A place to which a line of the bill can be traced.</summary>
/// <param name="Kind">
/// part (a mark), card (its name), data (a path in design.json), brief (a field), labour (a row of the table of labour),
/// sheet (a drawing sheet), method (a page of methods).
/// </param>
/// <param name="Id">Its name.</param>
public sealed record LineOrigin(string Kind, string Id)
{
    /// <summary>Kind and name.</summary>
    internal string Says => $"{Kind} {Id}";
}

/// <summary>Traces the lines of the bill to what they were measured from.</summary>
internal static class LineOrigins
{
    private static readonly IReadOnlyList<CsvRow> s_rows = Csv.Embedded(
        typeof(LineOrigins).Assembly,
        "LineOrigins.csv"
    );

    /// <summary>The origins of a line.</summary>
    /// <param name="design">The design.</param>
    /// <param name="line">The line.</param>
    /// <returns>Its origins, at least one.</returns>
    public static IReadOnlyList<LineOrigin> Of(Design design, QuantityLine line)
    {
        var isLabour = line.Item == Labour.Item;
        return
        [
            .. Marks(design, line).Select(mark => new LineOrigin("part", mark)),
            .. design.File.Shelf.Cards.Any(card => card.Name == line.Item)
                ? [new LineOrigin("card", line.Item)]
                : Array.Empty<LineOrigin>(),
            .. isLabour ? [new LineOrigin("labour", Labour.IdOf(line))] : Array.Empty<LineOrigin>(),
            .. Told(design, line, isLabour ? Labour.IdOf(line) : line.Item),
        ];
    }

    private static IEnumerable<string> Marks(Design design, QuantityLine line) =>
        design
            .Takeoff.BarPlans.Where(plan => plan.Bought.Any(bar => plan.ItemOf(bar.LengthMm) == line.Item))
            .SelectMany(plan => plan.Plan.Bars.SelectMany(bar => bar.Pieces).Select(piece => PartOf(piece.Mark)))
            .Distinct()
            .Order(StringComparer.Ordinal);

    // A part that is longer than a bar is cut in pieces 'R1a' and 'R1b'.
    private static string PartOf(string piece) => char.IsAsciiLetterLower(piece[^1]) ? piece[..^1] : piece;

    // The rows of the item, or else those of the section.
    private static IEnumerable<LineOrigin> Told(Design design, QuantityLine line, string key)
    {
        var section = ((char)line.Section).ToString();
        var ofSection = s_rows.Where(row => row["section"] == section && IsThere(row["when"], design)).ToList();
        var own = ofSection.Where(row => IsOf(row["item"], key)).ToList();
        return (own.Count > 0 ? own : ofSection.Where(row => row["item"].Length == 0)).Select(row => new LineOrigin(
            row["kind"],
            row["id"]
        ));
    }

    private static bool IsOf(string item, string key) =>
        item.EndsWith('*') ? key.StartsWith(item[..^1], StringComparison.Ordinal) : item.Length > 0 && item == key;

    private static bool IsThere(string when, Design design) =>
        when switch
        {
            "well" => design.Works.Source is WellBuild,
            "surface" => design.Works.Source is IntakeBuild,
            "stand" => design.Works.Stand is not null,
            _ => true,
        };
}
