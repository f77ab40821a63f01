namespace Shaduf.Power;

/// <summary>Intensity in one direction of a lamp that is alike all round.</summary>
/// <param name="AngleDeg">From straight down [deg].</param>
/// <param name="IntensityCd">Intensity [cd].</param>
public readonly record struct Beam(double AngleDeg, double IntensityCd);

/// <summary>A lamp that shines down: its light and, where the data sheet has it, how it is spread.</summary>
/// <param name="FluxLm">Light [lm].</param>
/// <param name="Beams">Intensities by rising angle, from 0 degrees on; empty for a flat lamp by Lambert's law.</param>
public sealed record Luminaire(double FluxLm, IReadOnlyList<Beam> Beams)
{
    /// <summary>Intensity in a direction; between the sheet's angles in proportion, beyond the last of them none.</summary>
    /// <param name="angleDeg">From straight down [deg], 0 to 90.</param>
    /// <returns>Intensity [cd].</returns>
    public double IntensityCd(double angleDeg)
    {
        if (Beams.Count == 0)
        {
            return PointLight.LambertianCd(FluxLm, angleDeg);
        }

        var above = 0;
        while (above < Beams.Count && Beams[above].AngleDeg < angleDeg)
        {
            above++;
        }

        if (above == 0 || above == Beams.Count)
        {
            return above == 0 ? Beams[0].IntensityCd : 0;
        }

        var (low, high) = (Beams[above - 1], Beams[above]);
        var share = (angleDeg - low.AngleDeg) / (high.AngleDeg - low.AngleDeg);
        return low.IntensityCd + (share * (high.IntensityCd - low.IntensityCd));
    }

    /// <summary>Light that the sheet's intensities add up to [lm]: each stretch between two angles integrated exactly.</summary>
    public double BeamsLm => Beams.Zip(Beams.Skip(1), StretchLm).Sum();

    /// <summary>Light of the lamp on a level place.</summary>
    /// <param name="heightM">Lamp above the place [m], 0.1 to 100.</param>
    /// <param name="asideM">From the foot of the lamp to the place [m], 0 to 100000.</param>
    /// <param name="keptShare">Part left by dirt and age, 0 to 1.</param>
    /// <returns>Illuminance [lx].</returns>
    public double Lux(double heightM, double asideM, double keptShare) =>
        keptShare * PointLight.Lux(IntensityCd(Math.Atan2(asideM, heightM) * 180 / Math.PI), heightM, asideM);

    // 2π times the integral of (a + b γ) sin γ.
    private static double StretchLm(Beam from, Beam to)
    {
        var (start, end) = (from.AngleDeg * Math.PI / 180, to.AngleDeg * Math.PI / 180);
        var slope = (to.IntensityCd - from.IntensityCd) / (end - start);
        double Primitive(double angle) =>
            (slope * Math.Sin(angle)) - ((from.IntensityCd + (slope * (angle - start))) * Math.Cos(angle));
        return 2 * Math.PI * (Primitive(end) - Primitive(start));
    }
}
