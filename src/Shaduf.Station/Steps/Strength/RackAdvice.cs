using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What would make a rack hold that does not as the brief wants it.</summary>
internal static class RackAdvice
{
    // Tilts below the one taken, down to the gentlest that rain still washes: common practice, no source [deg].
    private const double StepDeg = 5;
    private const double GentlestDeg = 5;

    /// <summary>What is looked at, in words.</summary>
    public const string LookedAt =
        "every section on the cards, more cross tubes, two lines of columns, the other way of holding modules, modules turned, fewer rows, a lower tilt";

    /// <summary>A change of the brief.</summary>
    private sealed record Way(RackBrief Rack, double TiltDeg);

    /// <summary>Racks that hold once the brief gives way in one thing after another.</summary>
    /// <param name="ground">Brief, survey, cards and prices.</param>
    /// <param name="module">The module.</param>
    /// <param name="grid">Rows and columns of modules.</param>
    /// <param name="tiltDeg">Tilt [deg].</param>
    /// <returns>Racks that hold, the cheapest first; empty when none does.</returns>
    public static IReadOnlyList<RackTried> Of(SizingGround ground, ModuleCard module, RackGrid grid, double tiltDeg)
    {
        var given = ground.Brief.Rack;
        RackTried? Held(Way way) =>
            GridOf(way.Rack, module, grid, given) is { } other
            && RackAdvice.Held(
                ground with
                {
                    Brief = ground.Brief with { Rack = way.Rack },
                },
                module,
                other,
                way.TiltDeg
            )
                is { } held
                ? held with
                {
                    Instead = string.Join(", ", Changes(given, way.Rack, way.TiltDeg == tiltDeg ? null : way.TiltDeg)),
                }
                : null;
        var open = given with
        {
            Tube = null,
            Column = null,
            Angle = null,
            Rail = null,
            FootingSideMm = null,
            FootingDepthMm = null,
            Tubes = null,
            Lines = null,
        };
        var gentler = Gentler(tiltDeg).Select(tilt => new Way(open, tilt));
        return
        [
            .. Ways(given, open, grid)
                .Where(rack => rack != given)
                .Distinct()
                .Select(rack => (IEnumerable<Way>)[new(rack, tiltDeg)])
                .Append(gentler)
                .AsParallel()
                .AsOrdered()
                .Select(ways => ways.Select(Held).FirstOrDefault(held => held is not null))
                .OfType<RackTried>()
                .DistinctBy(each =>
                    (each.Rack.Form, each.Rack.Grid, each.Rack.Setting.TiltDeg, each.Rack.Lay, each.Footings!.Block)
                )
                .OrderBy(each => each.Cost),
        ];
    }

    private static IEnumerable<RackBrief> Ways(RackBrief given, RackBrief open, RackGrid grid)
    {
        yield return given with
        {
            FootingSideMm = null,
            FootingDepthMm = null,
        };
        yield return open with
        {
            Tubes = given.Tubes,
            Lines = given.Lines,
        };
        yield return open with
        {
            Lines = given.Lines,
        };
        yield return open;
        yield return open with
        {
            Type = Other(given.Type),
        };
        yield return open with
        {
            Way = given.Way == ModuleWay.Portrait ? ModuleWay.Landscape : ModuleWay.Portrait,
        };
        if (grid.Rows > 1)
        {
            yield return open with
            {
                Rows = grid.Rows - 1,
            };
        }
    }

    private static IEnumerable<double> Gentler(double tiltDeg)
    {
        for (var tilt = tiltDeg - StepDeg; tilt >= GentlestDeg; tilt -= StepDeg)
        {
            yield return tilt;
        }
    }

    // The same modules in the racks of another brief; null where no racks alike take them.
    private static RackGrid? GridOf(RackBrief rack, ModuleCard module, RackGrid grid, RackBrief given) =>
        rack.Rows == given.Rows && rack.Way == given.Way ? grid : RackGrid.For(grid.ModuleCount, rack, module.Body);

    // None where it does not hold either, or a part cannot be cut so.
    private static RackTried? Held(SizingGround ground, ModuleCard module, RackGrid grid, double tiltDeg)
    {
        try
        {
            var search = new RackSearch(ground, module, grid, tiltDeg);
            return search.Usual.ModulesHold ? RackChoice.Cheapest(search.All()) : null;
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private static RackType Other(RackType type) => type == RackType.SlideIn ? RackType.ClampedRails : RackType.SlideIn;

    // The fields that are to be written otherwise.
    private static IEnumerable<string> Changes(RackBrief given, RackBrief way, double? tiltDeg)
    {
        (string Field, bool IsOpened)[] opened =
        [
            ("rack.lines", given.Lines is not null && way.Lines is null),
            ("rack.tubes", given.Tubes is not null && way.Tubes is null),
            ("rack.tube", given.Tube is not null && way.Tube is null),
            ("rack.column", given.Column is not null && way.Column is null),
            ("rack.angle", given.Angle is not null && way.Angle is null),
            ("rack.rail", given.Rail is not null && way.Rail is null),
            ("rack.footingSide", given.FootingSideMm is not null && way.FootingSideMm is null),
            ("rack.footingDepth", given.FootingDepthMm is not null && way.FootingDepthMm is null),
        ];
        foreach (var (field, _) in opened.Where(each => each.IsOpened))
        {
            yield return $"{field}: choose";
        }

        if (way.Type != given.Type)
        {
            yield return $"rack.type: {(way.Type == RackType.SlideIn ? "slide-in" : "clamped-rails")}";
        }

        if (way.Way != given.Way)
        {
            yield return $"rack.orientation: {way.Way.ToString().ToLowerInvariant()}";
        }

        if (way.Rows != given.Rows)
        {
            yield return $"rack.rows: {way.Rows}";
        }

        if (tiltDeg is { } tilt)
        {
            yield return Invariant($"array.tilt: {tilt:0.#} deg");
        }
    }
}
