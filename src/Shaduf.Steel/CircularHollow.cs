using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Circular hollow section.</summary>
public static class CircularHollow
{
    /// <summary>Properties of a round tube, exact for the ring.</summary>
    /// <param name="diameterMm">Outside diameter D [mm], 10 to 500.</param>
    /// <param name="wallMm">Wall thickness T [mm], 0.5 to 30, at most half the diameter.</param>
    /// <returns>The properties.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN, or the wall is more than half the diameter.</exception>
    /// <source>EN 10219-2:2006, annex B</source>
    public static SectionProperties Of(double diameterMm, double wallMm)
    {
        Within.Require(diameterMm, 10, 500, "mm");
        Within.Require(wallMm, 0.5, Math.Min(30, diameterMm / 2), "mm");
        var innerMm = diameterMm - 2 * wallMm;
        var area = Math.PI / 4 * (diameterMm * diameterMm - innerMm * innerMm);
        var inertia = Math.PI / 64 * (Math.Pow(diameterMm, 4) - Math.Pow(innerMm, 4));
        var elastic = 2 * inertia / diameterMm;
        var plastic = (Math.Pow(diameterMm, 3) - Math.Pow(innerMm, 3)) / 6;
        return new(
            area,
            SectionProperties.MassOfKgPerM(area),
            Math.PI * diameterMm,
            inertia,
            inertia,
            elastic,
            elastic,
            plastic,
            plastic,
            2 * inertia,
            2 * elastic
        );
    }
}
