using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What would let a frame stand on its ropes and props where it does not.</summary>
internal static class ErectionAdvice
{
    // Changes that look as if they held, and are chosen in full.
    private const int MostChosen = 6;

    private static readonly IReadOnlyList<double> s_sidesMm = [1000, 800, 700, 600, 500, 400];

    /// <summary>The works of a chosen rack, with advice where they do not hold.</summary>
    /// <param name="ground">Brief, survey, cards and prices.</param>
    /// <param name="racks">The chosen rack.</param>
    /// <param name="module">The module.</param>
    /// <returns>The works; null where the method ends.</returns>
    public static Erection? Of(SizingGround ground, RackChoice racks, ModuleCard module)
    {
        if (Bare(ground, racks) is not { } works)
        {
            return null;
        }

        return works.Holds ? works : works with { Advice = Says(ground, racks, module) };
    }

    private static Erection? Bare(SizingGround ground, RackChoice racks) =>
        racks.Taken is { Strength: { } strength, Footings: { } footings }
            ? new(racks.Taken.Rack, footings, strength.Wind, ground.Survey.Climate.AirDegC)
            {
                Strength = strength,
                GroundKPa = FootingGround.Of(ground.Brief.Site).AllowedKPa,
            }
            : null;

    private static string Says(SizingGround ground, RackChoice racks, ModuleCard module)
    {
        if (ground.Memory is not null)
        {
            return ". What would hold is looked for when the choice is made anew";
        }

        if (!racks.Taken.Holds)
        {
            return ". The rack itself does not hold: change it first, as its own findings advise";
        }

        var held = Ways(ground, racks.Taken, module)
            .Where(way => IsLikely(ground, racks.Taken, module, way))
            .Take(MostChosen)
            .Select(way => (Way: way, Works: Chosen(ground, racks.Taken.Rack, module, way)))
            .FirstOrDefault(each => each.Works is { Holds: true });
        return held.Works is { } works
            ? Invariant(
                $". What would hold: {Changes(ground.Brief.Rack, held.Way)}: {works.Rack.Grid.RackCount} {(works.Rack.Grid.RackCount == 1 ? "rack" : "racks")} of {works.Rack.Grid.Rows} x {works.Rack.Grid.Columns} modules, each with {works.RopesASide} ropes to each side and {works.Props.Count} props"
            )
            : ". Nothing that was looked at holds either: shorter racks, narrower pits, heavier cross tubes or rafters; raise it with a crane that stays until the concrete holds, or by an engineer's design";
    }

    // A heavier tube; narrower pits; shorter racks, the longest first; then two of these.
    private static IEnumerable<RackBrief> Ways(SizingGround ground, RackTried taken, ModuleCard module)
    {
        var (rack, footings) = (taken.Rack, taken.Footings!);
        var given = ground.Brief.Rack;
        var shorter = Enumerable
            .Range(1, rack.Grid.Columns - 1)
            .Reverse()
            .Select(columns => given with { Columns = columns })
            .Where(brief => RackGrid.For(rack.Grid.ModuleCount, brief, module.Body) is { } grid && grid != rack.Grid)
            .DistinctBy(brief => RackGrid.For(rack.Grid.ModuleCount, brief, module.Body))
            .ToList();
        var heavier = RackBars
            .Of(ground.Shelf)
            .Tubes.Where(tube =>
                RackSections.SectionOf(ground.Shelf.Find<SectionCard>(tube)!).MassKgPerM > rack.Sections.Tube.MassKgPerM
            )
            .Select(tube => given with { Tube = tube })
            .ToList();
        var narrower = s_sidesMm
            .Where(side => side < footings.Block.WidthMm)
            .Select(side => given with { FootingSideMm = side })
            .ToList();
        return
        [
            .. heavier,
            .. narrower,
            .. shorter,
            .. from few in shorter from side in narrower select few with { FootingSideMm = side.FootingSideMm },
            .. from few in shorter from tube in heavier select few with { Tube = tube.Tube },
        ];
    }

    // The same form and blocks, shorter or on the heavier tube, before anything is chosen anew.
    private static bool IsLikely(SizingGround ground, RackTried taken, ModuleCard module, RackBrief way)
    {
        try
        {
            if (Changed(ground, taken.Rack, module, way) is not var (changed, grid))
            {
                return false;
            }

            var form = taken.Rack.Form;
            var likely = form with
            {
                Tube = way.Tube ?? form.Tube,
                TubeCount = Math.Max(
                    2,
                    (int)Math.Ceiling((double)form.TubeCount * grid.Columns / taken.Rack.Grid.Columns)
                ),
            };
            if (
                Rack.Of(way, module, grid, taken.Rack.Setting.TiltDeg, ground.Shelf, likely) is not { } rack
                || RackStrength.Of(rack, changed.Brief, ground.Survey, ground.Shelf) is not { } strength
            )
            {
                return false;
            }

            var footings = taken.Footings!;
            var blocks = footings with
            {
                Block = footings.Block with { WidthMm = way.FootingSideMm ?? footings.Block.WidthMm },
            };
            var likelier = taken with { Rack = rack, Strength = strength, Footings = blocks };
            return Bare(changed, new(likelier, [], [])) is { Holds: true };
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    // Null where so many modules make no such racks: an array that only comes nearest may not fill what is asked.
    private static (SizingGround Ground, RackGrid Grid)? Changed(
        SizingGround ground,
        Rack rack,
        ModuleCard module,
        RackBrief way
    ) =>
        RackGrid.For(rack.Grid.ModuleCount, way, module.Body) is { } grid
            ? (ground with { Brief = ground.Brief with { Rack = way } }, grid)
            : null;

    private static Erection? Chosen(SizingGround ground, Rack rack, ModuleCard module, RackBrief way)
    {
        try
        {
            if (Changed(ground, rack, module, way) is not var (changed, grid))
            {
                return null;
            }

            var choice = RackChoice.Found(new(changed, module, (grid, rack.Setting.TiltDeg), new()));
            return choice.Taken.Holds ? Bare(changed, choice) : null;
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private static string Changes(RackBrief given, RackBrief way) =>
        string.Join(
            ", ",
            (string[])
                [
                    .. way.Columns != given.Columns ? [Invariant($"rack.columns: {way.Columns}")] : (string[])[],
                    .. way.FootingSideMm != given.FootingSideMm
                        ? [Invariant($"rack.footingSide: {way.FootingSideMm:0} mm")]
                        : (string[])[],
                    .. way.Tube != given.Tube ? [$"rack.tube: {way.Tube}"] : (string[])[],
                ]
        );
}
