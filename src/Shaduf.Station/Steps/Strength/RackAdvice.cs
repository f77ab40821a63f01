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
        "every section on the cards, more cross tubes, two lines of columns, rails closer together, the other way of holding modules, modules turned, fewer rows, a lower tilt, and several of these together";

    /// <summary>A change of the brief.</summary>
    private sealed record Way(RackBrief Rack, double TiltDeg);

    /// <summary>Racks that hold once the brief gives way in one thing after another.</summary>
    /// <param name="ground">Brief, survey, cards and prices.</param>
    /// <param name="module">The module.</param>
    /// <param name="at">Rows and columns of modules, and tilt [deg].</param>
    /// <param name="known">Racks that were checked already.</param>
    /// <returns>Racks that hold, the cheapest first; empty when none does.</returns>
    public static IReadOnlyList<RackTried> Of(
        SizingGround ground,
        ModuleCard module,
        (RackGrid Grid, double TiltDeg) at,
        RackKnown known
    )
    {
        var (grid, tiltDeg) = at;
        var given = ground.Brief.Rack;
        var open = Opened(given);
        IReadOnlyList<RackTried> Held(IEnumerable<IEnumerable<Way>> ways) =>
            [
                .. ways.AsParallel()
                    .AsOrdered()
                    .Select(each => each.Select(way => HeldIn(way)).FirstOrDefault(held => held is not null))
                    .OfType<RackTried>()
                    .DistinctBy(each =>
                        (each.Rack.Form, each.Rack.Grid, each.Rack.Setting.TiltDeg, each.Rack.Lay, each.Footings!.Block)
                    )
                    .OrderBy(each => each.Cost),
            ];
        RackTried? HeldIn(Way way) =>
            GridOf(way.Rack, module, grid, given) is { } other
            && RackAdvice.Held(
                ground with
                {
                    Brief = ground.Brief with { Rack = way.Rack },
                },
                module,
                (other, way.TiltDeg),
                known
            )
                is { } held
                ? held with
                {
                    Instead = string.Join(", ", Changes(given, way.Rack, way.TiltDeg == tiltDeg ? null : way.TiltDeg)),
                }
                : null;
        IEnumerable<Way> Gentle(RackBrief rack) => Gentler(tiltDeg).Select(tilt => new Way(rack, tilt));
        var one = Held([
            .. Ways(given, open, (grid, module))
                .Where(rack => rack != given)
                .Distinct()
                .Select(rack => (IEnumerable<Way>)[new(rack, tiltDeg)]),
            Gentle(open),
        ]);
        return one.Count > 0
            ? one
            : Held(Together(open, grid).Select(rack => Gentle(rack).Prepend(new(rack, tiltDeg))));
    }

    private static RackBrief Opened(RackBrief given) =>
        given with
        {
            Tube = null,
            Column = null,
            Angle = null,
            Rail = null,
            RailsAtMm = null,
            FootingSideMm = null,
            FootingDepthMm = null,
            Tubes = null,
            Lines = null,
        };

    // Several things at once, for where none by itself is enough.
    private static IEnumerable<RackBrief> Together(RackBrief open, RackGrid grid) =>
        from type in new[] { open.Type, Other(open.Type) }
        from way in new[] { ModuleWay.Portrait, ModuleWay.Landscape }
        from rows in new[] { open.Rows, grid.Rows > 1 ? grid.Rows - 1 : open.Rows }.Distinct()
        where (type, way, rows) != (open.Type, open.Way, open.Rows)
        select open with
        {
            Type = type,
            Way = way,
            Rows = rows,
        };

    private static IEnumerable<RackBrief> Ways(
        RackBrief given,
        RackBrief open,
        (RackGrid Grid, ModuleCard Module) racks
    )
    {
        var dug = given with { FootingSideMm = null, FootingDepthMm = null };
        yield return dug;
        yield return dug with
        {
            Lines = null,
        };
        yield return dug with
        {
            Tubes = null,
        };
        if (given.Type == RackType.ClampedRails && racks.Module.Holding.Of(given.Type, given.Way).ToMm is { } inmost)
        {
            yield return dug with
            {
                RailsAtMm = inmost,
            };
            yield return open with
            {
                RailsAtMm = inmost,
            };
        }

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
        if (racks.Grid.Rows > 1)
        {
            yield return open with
            {
                Rows = racks.Grid.Rows - 1,
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
    private static RackTried? Held(
        SizingGround ground,
        ModuleCard module,
        (RackGrid Grid, double TiltDeg) at,
        RackKnown known
    )
    {
        try
        {
            var search = new RackSearch(new(ground, module, at, known));
            return search.Usual.ModulesHold ? RackChoice.Cheapest(search.First()) : null;
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
            ("rack.railsAt", given.RailsAtMm is not null && way.RailsAtMm is null),
            ("rack.footingSide", given.FootingSideMm is not null && way.FootingSideMm is null),
            ("rack.footingDepth", given.FootingDepthMm is not null && way.FootingDepthMm is null),
        ];
        foreach (var (field, _) in opened.Where(each => each.IsOpened))
        {
            yield return $"{field}: choose";
        }

        if (way.RailsAtMm is { } railsAt && railsAt != given.RailsAtMm)
        {
            yield return Invariant($"rack.railsAt: {railsAt:0.#} mm");
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
