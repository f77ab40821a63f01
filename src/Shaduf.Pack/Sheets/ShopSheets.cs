using Shaduf.Parts;
using Shaduf.Station;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The sheets that the welder works from besides the parts: frame with its details, weld map.</summary>
internal static class ShopSheets
{
    private const double DetailScale = 2;
    private static readonly PaperSize s_room = new(900, 600);

    /// <summary>The frame with details of channel, holder or rail.</summary>
    public static IEnumerable<SheetDraft> Frame(Design design)
    {
        var rack = design.Works.Rack;
        var welds = WeldMap.Of(rack.Steel, rack.Skeleton, rack.Grid.RackCount);
        var details = FrameDetails.Of(rack, design.Choice.Module.Body.ThicknessMm, welds, DetailScale);
        return SheetDraft.Scaled(
            "frame",
            "frame with details",
            scale => [RackPlane.Of(rack, s_room, scale).Trimmed()],
            [.. details, .. Splices(rack)],
            [
                Invariant(
                    $"Outside {rack.Size.LengthMm:0} x {rack.Size.DepthMm:0}; diagonals of the whole frame {double.Hypot(rack.Size.LengthMm, rack.Size.DepthMm):0}, alike within 5. Tack on a flat bed, measure both diagonals, weld in a balanced order, measure again."
                ),
                "Symbols by ISO 2553: z leg of a fillet, figures behind it length of a run; circle all round; flag on site; 111 covered electrode. Quality ISO 5817 C.",
            ],
            rack.Size.LengthMm / 380
        );
    }

    // Neighbours are turned end for end, so that each splice has its own place.
    private static IEnumerable<Scene> Splices(Rack rack)
    {
        var spliced = rack
            .Steel.Parts.Where(part => part.SplicesMm.Count > 0 && part.Mark[0] is 'F' or 'R' or 'T')
            .ToList();
        return spliced.Count == 0
            ? []
            : SheetTexts.Table(
                "Splices: from the left end, of cross tubes from the low edge",
                ["mark", "lies at mm", "off", "splices at mm"],
                [
                    .. spliced
                        .Select(part =>
                            (
                                part.Mark,
                                At: LiesAt(rack, part),
                                Splices: string.Join(
                                    ", ",
                                    part.SplicesMm.Select(mm => Invariant($"{Part.WholeMm(mm):0}"))
                                )
                            )
                        )
                        .CountBy(alike => alike)
                        .Select(alike =>
                            (IReadOnlyList<string>)
                                [alike.Key.Mark, alike.Key.At, Invariant($"{alike.Value}"), alike.Key.Splices]
                        ),
                ],
                100
            );
    }

    private static string LiesAt(Rack rack, Part part)
    {
        var start = part.Shape.Start;
        var isUpper = rack.Steel.Parts.Any(other =>
            other.Mark == part.Mark
            && Math.Abs(rack.Setting.SlopeMm(other.Shape.Start) - rack.Setting.SlopeMm(start)) < 1
            && other.Shape.Start.ZMm < start.ZMm - 1
        );
        return part.Mark[0] == 'T'
            ? Invariant($"{start.XMm:0} from the left end")
            : Invariant(
                $"{Math.Abs(rack.Setting.SlopeMm(start)):0} up the slope{(part.Section.Outline != Outline.EqualAngle ? "" : isUpper ? ", upper angle" : ", lower angle")}"
            );
    }

    /// <summary>Where each weld is, with its symbol.</summary>
    public static IEnumerable<SheetDraft> Welds(Design design)
    {
        var (rack, works) = (design.Works.Rack, design.Works);
        return
        [
            .. Map("welds", "weld map of a rack", rack.Steel, (rack.Skeleton, rack.Grid.RackCount)),
            .. works.Stand is { } stands && StandChapter.Withholding(design).Count == 0
                ? Map("stand-welds", "weld map of a stand", stands.Stand.Steel, (stands.Stand.Skeleton, stands.Count))
                : [],
            .. works.Guard.PoleStrengths.SelectMany(pole =>
                Map(
                    $"{WorksSheets.NameOf(pole)}-welds",
                    $"weld map of a {pole.Name}",
                    pole.Column.Steel,
                    (pole.Column.Skeleton, works.Guard.CountOf(pole)),
                    welds => PoleWeldPicture.Of(pole.Column, welds)
                )
            ),
        ];
    }

    private static IEnumerable<SheetDraft> Map(
        string name,
        string title,
        Assembly steel,
        (Skeleton Skeleton, int Count) all,
        Func<IReadOnlyList<WeldMark>, Scene>? picture = null
    )
    {
        var welds = WeldMap.Of(steel, all.Skeleton, all.Count);
        return SheetDraft.Fixed(
            name,
            title,
            "not to scale",
            [
                picture?.Invoke(welds) ?? WeldMapPicture.Of(steel, all.Skeleton, welds, 150),
                .. SheetTexts.Table(
                    all.Count == 1 ? "Welds" : Invariant($"Welds of all {all.Count}"),
                    ["no.", "weld", "type", "leg mm", "run mm", "runs", "where", "position", "rod mm", "metal kg"],
                    [.. welds.Select(Row)],
                    150
                ),
            ],
            [.. s_cautions, .. Vents(steel)]
        );
    }

    private static IEnumerable<string> Vents(Assembly steel)
    {
        var holes = SteelFinish.VentsOf([steel]);
        if (holes.Count > 0)
        {
            yield return $"If it is dipped in zinc instead of painted: two holes at each end of every closed tube, at opposite corners, of at least {string.Join("; ", holes.Select(vent => Invariant($"{vent.HoleMm:0} mm in {vent.Section.Name}")))}. A closed tube bursts in the bath; nothing is welded after it.";
        }
    }

    /// <summary>What goes on the truck, in the order of loading.</summary>
    public static IEnumerable<SheetDraft> Loading(Design design)
    {
        var (list, isWithheld) = (LoadingList.Of(design), StandRelease.IsWithheld(design));
        return SheetDraft.Fixed(
            "loading",
            "loading list",
            "none",
            [
                .. SheetTexts.Table(
                    Invariant($"In the order of loading, {list.PayloadKg:0} kg a trip"),
                    ["trip", "what", "pieces", "kg each", "kg", "length mm", "welding"],
                    [
                        .. list.Items.Select(item =>
                            (IReadOnlyList<string>)
                                [
                                    Invariant($"{item.Trip}"),
                                    isWithheld && item.IsOfStand ? $"{item.What}: WITHHELD, stays behind" : item.What,
                                    Invariant($"{item.Count}"),
                                    Invariant($"{item.EachKg:0.0}"),
                                    Invariant($"{item.MassKg:0}"),
                                    item.LengthMm > 0 ? Invariant($"{item.LengthMm:0}") : "",
                                    item.Welding,
                                ]
                        ),
                    ],
                    200
                ),
            ],
            [
                .. StandRelease.Before(design) is { } withheld ? [withheld] : Array.Empty<string>(),
                "First loaded lies lowest and comes off last; long steel on the bed, nothing over its end without a flag. Straps off last, nobody beside the load. A round tank wider than 1.5 m fills the truck alone. Sand, stone, water, cables, drive, lamps, valves, tools and small goods are not counted: they go on a trip for the rest.",
                Invariant(
                    $"{list.Items.Sum(item => item.MassKg):0} kg in {list.TripCount} trips{(list.IsPayloadTold ? "" : "; what the truck may carry was not told: a usual one is taken")}{(list.BedMm is { } bed ? Invariant($"; bed {bed:0} mm, longest piece {list.LongestMm:0} mm") : Invariant($"; longest piece {list.LongestMm:0} mm: measure the truck's bed"))}."
                ),
            ]
        );
    }

    private static IReadOnlyList<string> Row(WeldMark weld)
    {
        var (line, seam) = (weld.Line, weld.Line.Seam);
        return
        [
            weld.Mark,
            seam.Name,
            weld.Kind == WeldKind.Fillet
                ? weld.IsAllRound
                    ? "fillet, all round"
                    : "fillet"
                : "square butt",
            Invariant($"{seam.LegMm:0.#}"),
            Invariant($"{seam.LengthMm:0}"),
            Invariant($"{line.Count}"),
            seam.IsOnSite ? "site" : "shop",
            weld.Position,
            Invariant($"{line.RodMm:0.0}"),
            Invariant($"{line.DepositKg:0.00}"),
        ];
    }

    private static readonly string[] s_cautions =
    [
        "Symbols by ISO 2553, each drawn at one of its places; the table counts all. Covered electrodes, dry; quality ISO 5817 C, every weld seen by a competent person before paint.",
        "Zinc, paint, oil and water off 50 mm each side; never weld on zinc or red lead. A vent in every closed tube before it is welded all round.",
        "Clear what burns within 11 m, water or sand at hand, someone watches during the work and half an hour after. Gloves, helmet, screens. Take modules and drive off before welding on a rack that stands.",
    ];
}
