namespace Shaduf.Steel;

/// <summary>
/// Class of a section: 1 and 2 reach their plastic resistance, 3 its elastic one, 4 buckles locally before. Angles and
/// channels are never better than 3 here, because they are checked by elastic stresses.
/// </summary>
public static class SectionClass
{
    /// <summary>Class when the whole section is pressed.</summary>
    /// <param name="section">The section.</param>
    /// <param name="grade">Its steel.</param>
    /// <returns>1, 2, 3 or 4.</returns>
    /// <source>EN 1993-1-1:2005, table 5.2; flat width of a tube's wall b - 3t</source>
    public static int InCompression(MemberSection section, SteelGrade grade)
    {
        var (t, epsilon) = (section.WallMm, grade.EpsilonFactor);
        return section.Kind switch
        {
            SectionKind.RoundTube => Round(section, epsilon),
            SectionKind.Angle => Elastic(section.HeightMm / t, 11.5 * epsilon),
            SectionKind.Channel or SectionKind.DoubleChannel => Math.Max(
                Lip(section, epsilon),
                Elastic(section.Channel!.InsideDepthMm / t, 42 * epsilon)
            ),
            _ => Pressed(Math.Max(section.HeightMm, section.WidthMm), t, epsilon),
        };
    }

    /// <summary>Class in bending about either axis, the worse of both.</summary>
    /// <param name="section">The section.</param>
    /// <param name="grade">Its steel.</param>
    /// <returns>1, 2, 3 or 4.</returns>
    /// <source>EN 1993-1-1:2005, table 5.2; flat width of a tube's wall b - 3t</source>
    public static int InBending(MemberSection section, SteelGrade grade)
    {
        var (t, epsilon) = (section.WallMm, grade.EpsilonFactor);
        return section.Kind switch
        {
            SectionKind.RoundTube => Round(section, epsilon),
            SectionKind.Angle => Elastic(section.HeightMm / t, 14 * epsilon),
            SectionKind.Channel or SectionKind.DoubleChannel => Math.Max(
                Lip(section, epsilon),
                Elastic(section.Channel!.InsideDepthMm / t, 124 * epsilon)
            ),
            // About either axis one pair of walls is pressed and the other bent; the pressed wider pair is the worse.
            _ => Pressed(Math.Max(section.HeightMm, section.WidthMm), t, epsilon),
        };
    }

    private static int Pressed(double sideMm, double wallMm, double epsilon) =>
        Limited((sideMm - (3 * wallMm)) / wallMm, 33 * epsilon, 38 * epsilon, 42 * epsilon);

    private static int Round(MemberSection section, double epsilon)
    {
        var squared = epsilon * epsilon;
        return Limited(section.HeightMm / section.WallMm, 50 * squared, 70 * squared, 90 * squared);
    }

    // The lip is a part with one free edge, from the root fillet to the toe.
    private static int Lip(MemberSection section, double epsilon)
    {
        var t = section.WallMm;
        return Elastic((section.Channel!.LegMm - t - section.RootRadiusMm) / t, 14 * epsilon);
    }

    private static int Elastic(double ratio, double limit) => ratio <= limit ? 3 : 4;

    private static int Limited(double ratio, double first, double second, double third) =>
        ratio <= first ? 1
        : ratio <= second ? 2
        : ratio <= third ? 3
        : 4;
}
