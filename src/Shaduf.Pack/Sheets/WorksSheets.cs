using Shaduf.Ground;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The sheets of what stands beside the racks, and of how they are put up.</summary>
internal static class WorksSheets
{
    private const double FootScale = 10;
    private static readonly PaperSize s_room = new(900, 700);

    /// <summary>The stand under the tank; none while a finding on it stops or is unchecked.</summary>
    public static IEnumerable<SheetDraft> Stand(Design design) =>
        design.Works.Stand is { } stands && StandChapter.Withholding(design).Count == 0
            ? SheetDraft
                .Scaled(
                    "stand",
                    "stand of the tank",
                    scale =>
                        [
                            StandFront.Of(stands, s_room, scale).Trimmed(),
                            StandAbove.Of(stands, s_room, scale).Trimmed(),
                        ],
                    [],
                    [StandDesign.Says(stands.Strength) + ".", .. StandTexts.Pieces(stands)],
                    stands.Stand.Plan.FloorMm / 230
                )
                .Concat(
                    SheetDraft.Fixed(
                        "stand-details",
                        "stand of the tank: foot and head of a leg",
                        Invariant($"1:{FootScale:0}"),
                        [StandFootPicture.Foot(stands, FootScale), StandFootPicture.Head(stands, FootScale)],
                        [StandTexts.Pieces(stands).First()]
                    )
                )
            : [];

    /// <summary>The bare frame on props and ropes over its open pits.</summary>
    public static IEnumerable<SheetDraft> Propping(Design design) =>
        design.Works.Erection is { } erection
            ? SheetDraft.Scaled(
                "propping",
                "rack propped over its pits",
                scale => [ErectionPicture.Of(erection, s_room, scale).Trimmed()],
                [],
                [
                    Invariant(
                        $"Props carry the frame, ropes hold it upright: weight, the ropes' own pull, and a wind of {erection.StageMPerS:0.0} m/s from above and below. {(erection.LiftKN >= 0.05 ? Invariant($"That wind may lift it by {erection.LiftKN:0.0} kN: only tight ropes hold it down.") : "That wind does not lift it off its props.")} Wedges nailed; look at props, wedges and ropes every morning and after every gust."
                    ),
                    "The frame stands plumb at its level before concrete is poured and stays on its props and ropes until the concrete holds: the engineer's book says from which day. Keep out from under it; nobody works in a pit below a frame that is not tied. No lifting in wind that moves the frame.",
                ],
                erection.Rack.Size.DepthMm / 250
            )
            : [];

    /// <summary>The wellhead, or the pump at open water, with its fittings.</summary>
    public static IEnumerable<SheetDraft> Source(Design design) =>
        design.Works.Source switch
        {
            WellBuild build => SheetDraft.Scaled(
                "wellhead",
                "wellhead with its fittings",
                scale => [HeadPicture.Slab(design, build, scale)],
                [HeadPicture.Row(SourceFitting.OfWellhead), .. Fittings(SourceFitting.OfWellhead)],
                s_hygiene,
                build.Apron.SideM * 1000 / 250
            ),
            IntakeBuild build => SheetDraft.Fixed(
                "intake",
                "pump at open water with its fittings",
                "as noted",
                [
                    IntakeSection.Of(build, new(330, 135)).Trimmed(),
                    HeadPicture.Row(SourceFitting.OfIntake),
                    .. Fittings(SourceFitting.OfIntake),
                ],
                [
                    "Everything that touches the water is clean; where people drink it, for drinking water, disinfected and sampled before use. Isolate the drive and lock it before anyone goes into the water; keep children and animals off the bank.",
                ]
            ),
            _ => [],
        };

    /// <summary>A tap stand.</summary>
    public static IEnumerable<SheetDraft> Taps(Design design) =>
        design.Works.TapStands is { } stands
            ? SheetDraft.Scaled(
                "tap-stand",
                "tap stand with its drain",
                scale => [TapStandPicture.Of(stands, scale)],
                [.. TapPipes(design.Works.Taps)],
                [
                    Invariant(
                        $"{(stands.Count == 1 ? "One" : Invariant($"{stands.Count} alike"))}, {stands.ConcreteM3:0.00} m3 of concrete each. Soakaway 10 m from the stand and 30 m from the source, its bottom 1.5 m above the water in the ground; prove the soil with a soakage test."
                    ),
                    "Where taps and junctions stand was told by lengths and levels only: peg each with the owner, tape the way of its pipe and level it before digging; a longer way or a higher tap is worked out anew.",
                ],
                TapStands.ApronM * 1000 / 200
            )
            : [];

    private static IEnumerable<Scene> TapPipes(TapNetwork taps) =>
        SheetTexts.Table(
            "Pipes to the taps",
            ["from", "to", "pipe", "length m", "level m", "L/min, all open"],
            [
                .. taps.Heads.Select(head =>
                    (IReadOnlyList<string>)
                        [
                            head.Point.UpstreamIndex < 0 ? "tank" : taps.Heads[head.Point.UpstreamIndex].Name,
                            head.Name,
                            head.Pipe.Name,
                            Invariant($"{head.Point.LengthM:0.#}"),
                            Invariant($"{head.Point.LevelM:0.00}"),
                            Invariant($"{head.FlowM3PerS * 60_000:0}"),
                        ]
                ),
            ],
            100
        );

    /// <summary>The feet of light columns and masts with the templates of their bolts.</summary>
    public static IEnumerable<SheetDraft> Poles(Design design) =>
        design
            .Works.Guard.PoleStrengths.Zip(design.Works.PoleBlocks)
            .SelectMany(each => Foot(each.First, each.Second.Block, design.Works.Guard.CountOf(each.First)));

    /// <summary>A pole's name in files.</summary>
    public static string NameOf(LightColumnStrength pole) => pole.IsMast ? "mast" : "light";

    private static IEnumerable<SheetDraft> Foot(LightColumnStrength pole, FootingBlock block, int count)
    {
        var column = pole.Column;
        var rod = pole.IsMast
            ? Invariant($", air rod of {LightColumn.AirRodMm:0}, its tip {LightColumn.TipMm:0} over the tube")
            : "";
        return SheetDraft.Fixed(
            NameOf(pole),
            $"foot of the {pole.Name} with the template of its bolts",
            Invariant($"1:1, foot 1:{FootScale:0}"),
            [
                BoltTemplate.Of(column.Foot),
                PoleHeadPicture.Of(pole),
                LightColumnPicture
                    .Of(column, block, new(100 + ((block.LengthMm + column.Foot.SideMm) / FootScale), 300), FootScale)
                    .Trimmed(),
            ],
            [
                Invariant(
                    $"{(count == 1 ? "One" : Invariant($"{count} alike"))}: {column.Pole.Mark} {column.Size.Name}, {column.Pole.LengthMm:0} long, {column.Pole.MassKg:0} kg{rod}. The template is a quarter of the plate: lay it on the centre lines of a board and turn it over them. Bolts nutted above and below the board, threads taped; check spacing, diagonals and level before and after the pour. Block {block.LengthMm:0} x {block.WidthMm:0} mm, {block.DepthMm:0} deep, cast against grown ground."
                ),
            ]
        );
    }

    private static IEnumerable<Scene> Fittings(IReadOnlyList<SourceFitting> fittings) =>
        SheetTexts.Table(
            "Fittings in the order of the flow",
            ["no.", "fitting", "for"],
            [
                .. fittings.Select(fitting =>
                    (IReadOnlyList<string>)[Invariant($"{fitting.Order}"), fitting.What, fitting.Why]
                ),
            ],
            150
        );

    private static readonly string[] s_hygiene =
    [
        "Everything that touches the water is clean and for drinking water; disinfect and sample before use. Cap the bore whenever nobody works at it.",
    ];
}
