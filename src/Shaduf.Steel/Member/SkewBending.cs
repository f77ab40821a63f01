namespace Shaduf.Steel;

/// <summary>Bending of a section about axes that are not its principal ones: it moves sideways as well, and its peak stress is higher.</summary>
public static class SkewBending
{
    /// <summary>
    /// Largest stress, by size, of a section bent about its axes y and z and free to move sideways, at the corners of
    /// its outline taken sharp. Tension is above 0; a moment about y pulls +z, a moment about z presses +y.
    /// </summary>
    /// <param name="section">The section.</param>
    /// <param name="tensionN">Axial force, tension above 0 [N], any.</param>
    /// <param name="momentYNMm">Moment about y [N·mm], any.</param>
    /// <param name="momentZNMm">Moment about z [N·mm], any.</param>
    /// <returns>Size of the stress [N/mm2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A force is NaN.</exception>
    /// <source>Theory of elastic beams, unsymmetrical bending; EN 1993-1-1:2005, 6.2.1(5) and 6.2.9.2</source>
    public static double PeakNPerMm2(MemberSection section, double tensionN, double momentYNMm, double momentZNMm)
    {
        RequireNumber(tensionN, nameof(tensionN));
        RequireNumber(momentYNMm, nameof(momentYNMm));
        RequireNumber(momentZNMm, nameof(momentZNMm));
        var (y, z, yz) = (section.Frame.InertiaYMm4, section.Frame.InertiaZMm4, section.ProductOfInertiaMm4);
        var determinant = (y * z) - (yz * yz);
        var alongZ = ((momentYNMm * z) + (momentZNMm * yz)) / determinant;
        var alongY = -((momentZNMm * y) + (momentYNMm * yz)) / determinant;
        var axial = tensionN / section.Frame.AreaMm2;
        if (section.Kind == SectionKind.RoundTube)
        {
            return Math.Abs(axial) + (section.HeightMm / 2 * Math.Sqrt((alongY * alongY) + (alongZ * alongZ)));
        }

        var peak = 0.0;
        for (var i = 0; i < section.Fibres.Count; i++)
        {
            var at = section.Fibres[i];
            peak = Math.Max(peak, Math.Abs(axial + (alongY * at.YMm) + (alongZ * at.ZMm)));
        }

        return peak;
    }

    /// <summary>Second moment that gives the deflection in the direction of the load, when the section is free to move sideways too.</summary>
    /// <param name="section">The section, bent about y.</param>
    /// <returns>I_y - I_yz²/I_z [mm4].</returns>
    /// <source>Theory of elastic beams, unsymmetrical bending</source>
    public static double EffectiveInertiaMm4(MemberSection section) =>
        section.Frame.InertiaYMm4
        - (section.ProductOfInertiaMm4 * section.ProductOfInertiaMm4 / section.Frame.InertiaZMm4);

    private static void RequireNumber(double value, string name) =>
        Working.Within.Require(value, double.MinValue, double.MaxValue, "", name);
}
