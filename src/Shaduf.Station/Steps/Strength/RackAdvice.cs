namespace Shaduf.Station;

/// <summary>What would make a rack hold that does not as the brief wants it.</summary>
internal static class RackAdvice
{
    // Tilts that are tried below the one taken, by this much [deg].
    private const double LessTiltDeg = 5;

    /// <summary>Racks that hold once the brief gives way in one thing after another.</summary>
    /// <param name="ground">Brief, survey, cards and prices.</param>
    /// <param name="module">The module.</param>
    /// <param name="grid">Rows and columns of modules.</param>
    /// <param name="tiltDeg">Tilt [deg].</param>
    /// <returns>Racks that hold, the cheapest first; empty when none does.</returns>
    public static IReadOnlyList<RackTried> Of(SizingGround ground, ModuleCard module, RackGrid grid, double tiltDeg)
    {
        var given = ground.Brief.Rack;
        var sections = given with { Tube = null, Column = null, Angle = null, Rail = null };
        (RackBrief Rack, double TiltDeg)[] ways =
        [
            (sections, tiltDeg),
            (sections with { Tubes = null }, tiltDeg),
            (sections with { Tubes = null, Lines = null }, tiltDeg),
            (sections with { Tubes = null, Lines = null }, Math.Max(5, tiltDeg - LessTiltDeg)),
            (sections with { Tubes = null, Lines = null, Type = Other(given.Type) }, tiltDeg),
        ];
        return
        [
            .. ways.Where(way => way.Rack != given || way.TiltDeg != tiltDeg)
                .Select(way =>
                    Held(ground with { Brief = ground.Brief with { Rack = way.Rack } }, module, grid, way.TiltDeg)
                )
                .OfType<RackTried>()
                .DistinctBy(each => (each.Rack.Form, each.Rack.Setting.TiltDeg))
                .OrderBy(each => each.Cost),
        ];
    }

    // None where it does not hold either, or a part cannot be cut so.
    private static RackTried? Held(SizingGround ground, ModuleCard module, RackGrid grid, double tiltDeg)
    {
        try
        {
            var taken = RackChoice.Found(ground, module, grid, tiltDeg).Taken;
            return taken.Holds ? taken : null;
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private static RackType Other(RackType type) => type == RackType.SlideIn ? RackType.ClampedRails : RackType.SlideIn;
}
