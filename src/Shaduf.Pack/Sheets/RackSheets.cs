using Shaduf.Parts;
using Shaduf.Station;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The sheets of the racks' steel.</summary>
internal static class RackSheets
{
    // Larger than any view: they are cut to what is drawn.
    private static readonly PaperSize s_room = new(900, 600);

    /// <summary>Front, the side beside it, the plan below: views of the first angle.</summary>
    public static IEnumerable<SheetDraft> Arrangement(Design design)
    {
        var (rack, footings) = (design.Works.Rack, design.Works.Footings);
        return SheetDraft.Scaled(
            "arrangement",
            "general arrangement of a rack: front, side, plan",
            scale =>
                [
                    RackFront.Of(rack, design.Works.Pits, scale),
                    RackSide.Of(rack, footings, s_room, scale).Trimmed(),
                    RackPlane.Of(rack, s_room, scale).Trimmed(),
                ],
            [],
            [
                Invariant(
                    $"{RackTables.RacksText(rack.Grid)}; steel of one rack {rack.Steel.MassKg:0} kg, its modules {rack.ModuleMassKg:0} kg. {RackTexts.Plane(rack, design.Choice.Facing.AzimuthDeg)}"
                ),
                "Upright figures stand over the ground: left to the low edge, right to the top edge.",
            ],
            rack.Size.LengthMm / 380
        );
    }

    /// <summary>What stands under each cross tube, with its cuts and lengths.</summary>
    public static IEnumerable<SheetDraft> Columns(Design design)
    {
        var (rack, works) = (design.Works.Rack, design.Works);
        var groups = rack.Steel.Groups.Where(part => part.Mark[0] is 'B' or 'C' or 'D' or 'K').ToList();
        var parts = SheetTexts.Table(
            "Columns and struts of all racks, millimetres",
            PartHeads,
            [
                .. groups.Select(part => PartRow(part, part.Count * rack.Grid.RackCount)),
                .. rack.Steel.Plates.Select(plate => PlateRow(plate, plate.Count * rack.Grid.RackCount)),
            ],
            100
        );
        var places = SheetTexts.Table(
            "Columns under the cross tubes of a rack, from its left end and its low edge",
            PlaceHeads,
            [.. Places(rack)],
            120
        );
        List<Scene> tables = [.. parts, .. places];
        return SheetDraft.Scaled(
            "columns",
            "columns and struts with their cuts",
            scale => [RackBent.Of(rack, works.Footings, scale)],
            tables.Count > 2 ? tables : [SheetTexts.Stack(tables)],
            CutNotes,
            rack.Size.DepthMm / 250
        );
    }

    /// <summary>Each part as a sketch for the saw.</summary>
    public static IEnumerable<SheetDraft> Parts(Design design)
    {
        var parts = Released(design)
            .SelectMany(lot => lot.Steel.Groups.Select(part => (Part: part, Count: part.Count * lot.Count)))
            .ToList();
        var plates = Released(design)
            .SelectMany(lot => lot.Steel.Plates.Select(plate => (Plate: plate, Count: plate.Count * lot.Count)))
            .ToList();
        var all = parts.Count + plates.Count;
        var (paper, columns, rows) = all <= 12 ? (PaperSize.A4Landscape, 3, 4) : (PaperSize.A3Landscape, 4, 6);
        var (inside, block) = (SheetFrame.Inside(paper), SheetFrame.TitleBlock(paper));
        PaperSize cell = new((inside.WidthMm - 12) / columns, (block.TopMm - inside.TopMm - 10) / rows);
        List<Scene> sketches =
        [
            .. parts.Select(each => PartSketch.Of(each.Part, each.Count, cell)),
            .. plates.Select(each => PlateSketch.Of(each.Plate, each.Count, cell)),
        ];
        foreach (var (page, several) in sketches.Chunk(columns * rows).Index())
        {
            yield return new(
                page == 0 ? "parts" : Invariant($"parts-{page + 1}"),
                "single parts for the saw",
                paper,
                "not to scale",
                1,
                [
                    .. several.Select(
                        (sketch, i) =>
                            new PlacedView(
                                sketch,
                                new(
                                    inside.LeftMm + 6 + (i % columns * cell.WidthMm),
                                    inside.TopMm + 6 + (i / columns * cell.HeightMm)
                                )
                            )
                    ),
                    new(
                        SheetTexts.Notes([.. s_sketchNotes, .. Bolts(design)], block.LeftMm - inside.LeftMm - 10),
                        new(inside.LeftMm + 6, block.TopMm + 1)
                    ),
                ]
            );
        }
    }

    private static readonly string[] s_sketchNotes =
    [
        "Lengths and slants are not to scale, millimetres.",
        "Bold: the long edge; in brackets the short edge. Where both ends lean the same way the bar must give more: 'along the bar'.",
        "At the ends: degrees from a square cut. The upper line is the long face at the first slanting end.",
    ];

    // All bolts of the racks and of released stands.
    private static IEnumerable<string> Bolts(Design design) =>
        Released(design)
            .SelectMany(lot =>
                lot.Steel.Fixings.Select(bolts =>
                    Invariant($"{bolts.Count * lot.Count} off: {bolts.What}; {bolts.Where}.")
                )
            );

    // The stands' parts go out only with their drawings.
    private static IEnumerable<SteelLot> Released(Design design) =>
        design.Works.SawnLots.Where(lot =>
            lot.Steel != design.Works.Stand?.Stand.Steel || StandChapter.Withholding(design).Count == 0
        );

    /// <summary>Sections at 1:1.</summary>
    public static IEnumerable<SheetDraft> Sections(Design design)
    {
        var rack = design.Works.Rack;
        return SheetDraft.Fixed(
            "sections",
            "sections of the rack's steel",
            "1:1",
            [
                .. rack.Clamping is null
                    ? Array.Empty<Scene>()
                    : FrameDetails.Of(rack, design.Choice.Module.Body.ThicknessMm, [], 1),
                .. SectionPictures.Of(rack),
            ],
            ["Printed at 100 % the sections are as large as the steel: lay a bar on the sheet to check."]
        );
    }

    private static readonly string[] PartHeads =
    [
        "mark",
        "part",
        "section",
        "off",
        "from the bar",
        "long edge",
        "short edge",
        "saw angles",
        "kg each",
    ];

    private static IReadOnlyList<string> PartRow(PartGroup part, int count) =>
        [
            part.Mark,
            part.Role,
            part.Section.Name,
            Invariant($"{count}"),
            Invariant($"{Part.WholeMm(part.AlongBarMm):0}"),
            Invariant($"{Part.WholeMm(part.Shape.LongPointMm):0}"),
            Invariant($"{Part.WholeMm(part.Shape.ShortPointMm):0}"),
            Invariant($"{part.Shape.StartDeg:0.0} / {part.Shape.EndDeg:0.0}"),
            Invariant($"{part.MassKg / part.Count:0.00}"),
        ];

    private static IReadOnlyList<string> PlateRow(Plate plate, int count) =>
        [
            plate.Mark,
            plate.Role,
            $"plate {plate.Sizes}",
            Invariant($"{count}"),
            "",
            "",
            "",
            "",
            Invariant($"{plate.VolumeMm3 * SteelDensity.KgPerM3 * 1e-9:0.00}"),
        ];

    private static readonly string[] PlaceHeads =
    [
        "cross tube at",
        "column",
        "from the low edge",
        "foot below ground",
        "head above ground",
    ];

    private static IEnumerable<IReadOnlyList<string>> Places(Rack rack) =>
        rack
            .Steel.Parts.Where(part => part.Mark[0] == 'C')
            .OrderBy(part => part.Shape.Start.XMm)
            .ThenBy(part => part.Shape.Start.YMm)
            .Select(part =>
                (IReadOnlyList<string>)
                    [
                        Invariant($"{part.Shape.Start.XMm:0}"),
                        part.Mark,
                        Invariant($"{part.Shape.Start.YMm:0}"),
                        Invariant($"{-rack.Setting.AboveGroundMm(part.Shape.Start):0}"),
                        Invariant($"{rack.Setting.AboveGroundMm(part.Shape.End):0}"),
                    ]
            );

    private static readonly string[] CutNotes =
    [
        "Lengths in millimetres. 'From the bar' is what the bar must give, from the part's first to its last point; long and short edge are measured along its faces. Saw angles are measured from a square cut: first the lower end, then the upper one.",
        "The head of a column is cut parallel to the plane, its foot square. Strut and brace ends lie on the column's face and under the cross tube.",
        "Measure the first bar and the slot of your saw before cutting. Cut one of each mark, try it in its place, then cut the others.",
    ];
}
