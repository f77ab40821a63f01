using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The sheets of pipes, wires and earth.</summary>
internal static class DiagramSheets
{
    private const double DiagramMm = 175;
    private const double StringsMm = 260;
    private static readonly PaperSize s_room = new(900, 700);
    private static readonly PaperSize s_section = new(375, 200);

    /// <summary>The main from the source to the tank.</summary>
    public static IEnumerable<SheetDraft> LongSection(Design design)
    {
        return SheetDraft.Fixed(
            "long-section",
            "long section of the main",
            "as noted",
            [Pack.LongSection.Of(design, s_section).Trimmed(), .. MainTable.Of(design, 120)],
            [
                Invariant(
                    $"Cover over the crown of the pipe {design.Works.CoverM:0.00} m; the trench goes {Trenches.BedM * 1000:0} mm deeper than its bottom where it needs a bed. Open trenches in lengths that can be closed the same day; test the pipe before its joints are covered."
                ),
            ]
        );
    }

    /// <summary>Single-line diagram, and the strings on the racks.</summary>
    public static IEnumerable<SheetDraft> Electric(Design design)
    {
        string[] notes =
        [
            "Strings are live whenever there is light: join them last, cover the modules, never part a connector under load. Work above 120 V d.c. is for licensed people; local rules stand above this sheet.",
        ];
        var each = StringDiagram.RacksEach(design.Choice.Grid);
        return
        [
            .. SheetDraft.Fixed(
                "single-line",
                "single-line diagram",
                "not to scale",
                [SingleLineDiagram.Of(design, DiagramMm).Trimmed()],
                notes
            ),
            .. SheetDraft.Fixed(
                "strings",
                "string diagram",
                "not to scale",
                [
                    .. Enumerable
                        .Range(0, (design.Choice.Grid.RackCount + each - 1) / each)
                        .Select(page => StringDiagram.Of(design, StringsMm, page * each).Trimmed()),
                ],
                notes
            ),
        ];
    }

    /// <summary>Earth, poles and what the rods protect.</summary>
    public static IEnumerable<SheetDraft> Earthing(Design design)
    {
        var guard = design.Works.Guard;
        var hasRods = guard.Lightning.Protection is not null && guard.Lightning.Rods.Count > 0;
        var sphere = hasRods ? LightningSection.Undersides(guard) : default;
        return SheetDraft.Scaled(
            "earthing",
            "earthing plan",
            scale =>
                [
                    GuardPlan.Of(guard, design.Choice.Facing.AzimuthDeg, s_room, scale).Trimmed(),
                    .. hasRods
                        ? [LightningSection.Of(guard, design.Works.Rack, sphere, s_room, scale).Trimmed()]
                        : Array.Empty<Scene>(),
                ],
            [.. Rods(guard.Earth)],
            [
                Invariant(
                    $"{guard.Earth.Rods.Count} rods of {GuardEarth.RodM:0.0} m; {guard.Earth.EarthOhm:0} ohm reckoned from {guard.Earth.ResistivityOhmM:0} ohm m, {guard.Earth.AimOhm:0} ohm aimed at: measure before the earth is covered. Frames, columns, drive, wellhead, fence and masts are bonded to it."
                ),
                .. RingNote(guard),
                Invariant(
                    $"Thin lines, copper 16 mm2, green and yellow, with lugs: each rack, the drive, both gate posts and one fence post in 50 m. One more goes with the motor's cable to the source, {guard.WellheadM:0.0} m."
                ),
            ],
            guard.Field.LengthM * 1000 / 380
        );
    }

    private static IEnumerable<string> RingNote(Guard guard)
    {
        if (guard.Earth.RingWireM <= 0)
        {
            return [];
        }

        var (lengthM, depthM) = GuardEarth.RingSides(guard.Field);
        var freeM = guard.Fence?.FreeOf(GuardEarth.RingOffM, lengthM, depthM);
        return
        [
            Invariant(
                $"The ring lies {GuardEarth.RingOffM:0.0} m outside racks and masts, {lengthM:0.0} x {depthM:0.0} m."
            )
                + freeM switch
                {
                    null => "",
                    < StationFence.RingFreeM - 1e-9 =>
                        " It comes too near to the fence or crosses it: lay it before the posts are dug, and keep their holes off it.",
                    { } free => Invariant($" It keeps {free:0.0} m from the fence."),
                },
        ];
    }

    private static IEnumerable<Scene> Rods(GuardEarth earth) =>
        SheetTexts.Table(
            "Earth rods, from the low left corner of the first rack",
            ["no.", "along the row m", "behind its low edge m"],
            [
                .. earth.Rods.Select(
                    (rod, i) =>
                        (IReadOnlyList<string>)
                            [Invariant($"{i + 1}"), Invariant($"{rod.XM:0.0}"), Invariant($"{rod.YM:0.0}")]
                ),
            ],
            80
        );
}
