using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on strings, drive, cables and what protects them.</summary>
internal static class ElectricsChapter
{
    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        var electrics = design.Works.Electrics;
        yield return new Heading(1, "Electrics");
        yield return new Figure(
            SingleLineDiagram.Of(design, PicturePaper.Full.WidthMm).Trimmed(),
            "Single-line diagram: one line for all conductors of a cable, small strokes for their number; dashed at the left: earth."
        );
        yield return new Heading(2, "Strings on the racks");
        var grid = design.Choice.Grid;
        for (var rack = 0; rack < grid.RackCount; rack += StringDiagram.RacksEach(grid))
        {
            yield return new Figure(
                StringDiagram.Of(design, PicturePaper.Full.WidthMm, rack).Trimmed(),
                "String diagram. Module leads are live in the light: join a string's two ends last."
            );
        }

        yield return Strings(design);
        yield return new Paragraph(
            Invariant(
                $"Every second module is wired on the way out and the others on the way back, so that plus and minus of a string end side by side: tie the two leads together all the way to the box, with the earth conductor beside them, and leave no loop. The longest jump from module to module is {electrics.Layout.LongestJumpM:0.0} m: order modules whose leads are together longer than that, or make extensions with the same maker's connectors."
            )
        );
        yield return new Heading(2, "Cables");
        yield return Cables(electrics);
        foreach (var cable in electrics.Cables.Where(cable => cable.Choice.Rejected.Length > 0))
        {
            yield return new Paragraph(
                $"Smaller cables that do not serve, {cable.Name}: {string.Join("; ", cable.Choice.Rejected.Select(each => $"{each.Option.Name}: {each.Why}"))}."
            )
            {
                SizeMm = Lettering.SmallMm,
            };
        }

        yield return new Heading(2, "Protection and settings");
        yield return Protection(design);
    }

    private static Table Strings(Design design)
    {
        var (electrics, module) = (design.Works.Electrics, design.Choice.Module.Sheet);
        return new(
            [
                new("string", 0.6),
                new("minus at, rack.row.column", 1.4),
                new("plus at, rack.row.column", 1.4),
                new("leads to the box, m each", 1.2, HorizontalAnchor.Right),
                new("open and cold, V", 1, HorizontalAnchor.Right),
                new("short-circuited, A", 1, HorizontalAnchor.Right),
            ],
            [
                .. electrics.Layout.Strings.Select(route =>
                    TableRow.Of(
                        Invariant($"{route.Number}"),
                        Place(route.Order[0]),
                        Place(route.Order[^1]),
                        Invariant($"{route.HomeM:0.0}"),
                        Invariant($"{electrics.ColdV:0}"),
                        Invariant($"{module.ShortCircuitA:0.0}")
                    )
                ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = "Where the strings end",
        };
    }

    private static string Place(ModulePlace at) => Invariant($"{at.Rack + 1}.{at.Row + 1}.{at.Column + 1}");

    private static Table Cables(Electrics electrics) =>
        new(
            [
                new("cable", 1.3),
                new("card", 0.8),
                new("way, m", 0.7, HorizontalAnchor.Right),
                new("current, A", 0.8, HorizontalAnchor.Right),
                new("must carry, A", 0.8, HorizontalAnchor.Right),
                new("may carry, A", 0.8, HorizontalAnchor.Right),
                new("drop, %", 0.7, HorizontalAnchor.Right),
                new("limit, %", 0.7, HorizontalAnchor.Right),
                new("buy, m", 0.7, HorizontalAnchor.Right),
            ],
            [
                .. electrics.Cables.Select(cable =>
                    TableRow.Of(
                        cable.Name,
                        cable.Card?.Name ?? "none fits",
                        Invariant($"{cable.Duty.LengthM:0.0}"),
                        Invariant($"{cable.Duty.CurrentA:0.0}"),
                        Invariant($"{cable.Duty.LeastAmpacityA:0.0}"),
                        cable.Choice.Fit is { } carries ? Invariant($"{carries.AmpacityA:0.0}") : "-",
                        cable.Choice.Fit is { } fit ? Invariant($"{fit.DropShare * 100:0.00}") : "-",
                        Invariant($"{cable.Duty.LargestDropShare * 100:0.0}"),
                        Invariant($"{cable.BoughtM:0.0}")
                    )
                ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = "Cables; what they may carry is where they lie worst",
        };

    // What the findings say, where a builder looks for it.
    private static Table Protection(Design design) =>
        new(
            [new("status") { WidthMm = 18 }, new("what to fit and to set", 3)],
            [
                .. new[]
                {
                    "isolator",
                    "string-fuses",
                    "surge-direct",
                    "surge-motor",
                    "surge-signal",
                    "output-filter",
                    "equipment-earth",
                    "lowest-speed",
                    "top-speed",
                    "protection",
                }
                    .Select(id => design.Findings.FirstOrDefault(each => each.Id == $"electrics/{id}"))
                    .OfType<Working.Finding>()
                    .Select(each => TableRow.Of(each.Status.ToString().ToUpperInvariant(), each.Says)),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
        };
}
