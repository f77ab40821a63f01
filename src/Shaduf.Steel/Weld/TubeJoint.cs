using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>Resistance of a tube welded onto the face of another.</summary>
/// <param name="AxialN">To the branch's axial force [N].</param>
/// <param name="InPlaneNMm">To its moment in the plane of both tubes [N·mm].</param>
/// <param name="OutOfPlaneNMm">To its moment across that plane [N·mm].</param>
/// <param name="ChordFactor">k_n, what the chord's own compression leaves.</param>
/// <param name="WhyNot">Why the formulas do not cover the joint; empty when they do.</param>
public sealed record TubeJointStrength(
    double AxialN,
    double InPlaneNMm,
    double OutOfPlaneNMm,
    double ChordFactor,
    string WhyNot
)
{
    /// <summary>Utilisation under the forces of the branch's end.</summary>
    /// <param name="axialN">Axial force, any sign [N].</param>
    /// <param name="inPlaneNMm">Moment in the plane [N·mm].</param>
    /// <param name="outOfPlaneNMm">Moment across the plane [N·mm].</param>
    /// <returns>The check; infinite when the formulas do not cover the joint.</returns>
    /// <source>EN 1993-1-8:2005, equation 7.4</source>
    public CheckResult Utilisation(double axialN, double inPlaneNMm, double outOfPlaneNMm) =>
        WhyNot.Length > 0
            ? new(double.PositiveInfinity, "EN 1993-1-8:2005, table 7.8: " + WhyNot)
            : new(
                (Math.Abs(axialN) / AxialN)
                    + (Math.Abs(inPlaneNMm) / InPlaneNMm)
                    + (Math.Abs(outOfPlaneNMm) / OutOfPlaneNMm),
                "EN 1993-1-8:2005, 7.5"
            );

    /// <summary>The working of the check; nothing when the formulas do not cover the joint.</summary>
    /// <param name="axialN">Axial force, any sign [N].</param>
    /// <param name="inPlaneNMm">Moment in the plane [N·mm].</param>
    /// <param name="outOfPlaneNMm">Moment across the plane [N·mm].</param>
    /// <returns>The lines.</returns>
    public IReadOnlyList<Line> Lines(double axialN, double inPlaneNMm, double outOfPlaneNMm) =>
        WhyNot.Length > 0
            ? []
            :
            [
                Step("k_n", "1.3 - 0.4 n/β, at most 1; tension 1", "", (ChordFactor, "")),
                Step("N_1,Rd", "table 7.10 or 7.11, least", "", (AxialN / 1e3, "kN")),
                Step("M_ip,1,Rd", "table 7.14, least", "", (InPlaneNMm / 1e6, "kNm")),
                Step("M_op,1,Rd", "table 7.14, least", "", (OutOfPlaneNMm / 1e6, "kNm")),
                Step(
                    "share",
                    "N/N_Rd + M_ip/M_ip,Rd + M_op/M_op,Rd",
                    Invariant($"{Math.Abs(axialN) / 1e3:0.00}/{AxialN / 1e3:0.00} + ")
                        + Invariant($"{Math.Abs(inPlaneNMm) / 1e6:0.000}/{InPlaneNMm / 1e6:0.000} + ")
                        + Invariant($"{Math.Abs(outOfPlaneNMm) / 1e6:0.000}/{OutOfPlaneNMm / 1e6:0.000}"),
                    (Utilisation(axialN, inPlaneNMm, outOfPlaneNMm).UtilisationShare, "")
                ),
            ];

    private static Line Step(string symbol, string formula, string numbers, (double Value, string Unit) result) =>
        new(symbol, formula, numbers, result.Value, result.Unit, "steel/tube-joint", "EN 1993-1-8:2005, 7.5");
}

/// <summary>A square tube welded onto the face of a square tube: T and Y joints, and X joints of branches narrower than 0.85 of the chord.</summary>
public static class TubeJoint
{
    /// <summary>Resistance of the joint.</summary>
    /// <param name="chord">The tube that goes through.</param>
    /// <param name="branch">The tube that ends on its face; its height lies along the chord.</param>
    /// <param name="grade">Steel of both.</param>
    /// <param name="betweenDeg">Angle between the tubes [deg], 30 to 90.</param>
    /// <param name="chordCompressionShare">Compression in the chord's face over its yield, 0 to 1; 0 under tension.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The resistance, with a reason when the formulas do not cover the joint.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <exception cref="ArgumentException">A section is no square or rectangular tube.</exception>
    /// <source>EN 1993-1-8:2005, tables 7.8, 7.10, 7.11 and 7.14 (from memory)</source>
    public static TubeJointStrength Of(
        MemberSection chord,
        MemberSection branch,
        SteelGrade grade,
        double betweenDeg,
        double chordCompressionShare,
        SteelFactors? factors = null
    )
    {
        Within.Require(betweenDeg, 30, 90, "deg");
        Within.Require(chordCompressionShare, 0, 1, "");
        if (!IsSquareCornered(chord) || !IsSquareCornered(branch))
        {
            throw new ArgumentException("both must be square or rectangular tubes");
        }

        var beta = branch.WidthMm / chord.WidthMm;
        var left = 1.3 - (0.4 * chordCompressionShare / beta);
        var k = chordCompressionShare == 0 ? 1 : Math.Clamp(left, 0, 1);
        var whyNot =
            k > 0 ? Obstacle(chord, branch, grade, beta) : "the chord's own compression leaves its face nothing";
        var joint = new TubePair(
            chord,
            branch,
            Math.Sin(betweenDeg * Math.PI / 180),
            grade.YieldNPerMm2 / (factors ?? SteelFactors.Recommended).TubeJointFactor
        );
        var strength =
            whyNot.Length > 0 ? new(0, 0, 0)
            : beta <= TubePair.NarrowRatio ? joint.Face(beta)
            : joint.Wall(beta, grade);
        return new(strength.AxialN * k, strength.InPlaneNMm * k, strength.OutOfPlaneNMm * k, k, whyNot);
    }

    /// <summary>Resistance of a tube's side walls where a bar lies across its whole width.</summary>
    /// <param name="chord">The tube.</param>
    /// <param name="breadthMm">Breadth of the bar along the tube [mm], 5 to 500.</param>
    /// <param name="grade">Steel of the tube.</param>
    /// <param name="chordCompressionShare">Compression in the tube's face over its yield, 0 to 1; 0 under tension.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The resistance, with a reason when the formulas do not cover the tube.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <exception cref="ArgumentException">The section is no square or rectangular tube.</exception>
    /// <source>EN 1993-1-8:2005, tables 7.11 and 7.14 for a branch as wide as the chord (from memory)</source>
    public static TubeJointStrength Across(
        MemberSection chord,
        double breadthMm,
        SteelGrade grade,
        double chordCompressionShare,
        SteelFactors? factors = null
    )
    {
        Within.Require(breadthMm, 5, 500, "mm");
        Within.Require(chordCompressionShare, 0, 1, "");
        if (!IsSquareCornered(chord))
        {
            throw new ArgumentException("a square or rectangular tube is asked for");
        }

        var k = Math.Min(1, 1.3 - (0.4 * chordCompressionShare));
        var whyNot = ChordObstacle(chord, grade);

        // Of the bar only its breadth counts: no tube of that breadth need exist.
        var bar = chord with
        {
            HeightMm = breadthMm,
        };
        var strength =
            whyNot.Length > 0
                ? default
                : new TubePair(
                    chord,
                    bar,
                    1,
                    grade.YieldNPerMm2 / (factors ?? SteelFactors.Recommended).TubeJointFactor
                ).SideWalls(grade);
        return new(strength.AxialN * k, strength.InPlaneNMm * k, strength.OutOfPlaneNMm * k, k, whyNot);
    }

    private static string ChordObstacle(MemberSection chord, SteelGrade grade)
    {
        var slender = chord.WidthMm / chord.WallMm;
        return slender > 35 ? Invariant($"the chord is {slender:0.0} walls wide; at most 35")
            : chord.HeightMm / chord.WidthMm is < 0.5 or > 2
                ? "the chord is more than twice as high as wide, or wide as high"
            : SectionClass.InCompression(chord, grade) > 2 ? "the chord's wall is too thin: class 1 or 2"
            : "";
    }

    // First condition of the table that the joint does not meet, in words; empty when it meets all.
    private static string Obstacle(MemberSection chord, MemberSection branch, SteelGrade grade, double beta)
    {
        var (wallMm, ofChord) = (Math.Min(chord.WallMm, branch.WallMm), ChordObstacle(chord, grade));
        return wallMm < FilletWeld.LeastWallMm
                ? Invariant($"a wall of {wallMm:0.##} mm; at least {FilletWeld.LeastWallMm} mm")
            : beta is < 0.25 or > 1
                ? Invariant($"the branch is {beta:0.00} of the chord's width; covered are 0.25 to 1.00")
            : ofChord.Length > 0 ? ofChord
            : branch.HeightMm / branch.WidthMm is < 0.5 or > 2
                ? "the branch is more than twice as high as wide, or wide as high"
            : SectionClass.InCompression(branch, grade) > 2 || branch.WidthMm / branch.WallMm > 35
                ? "the branch's wall is too thin: class 1 or 2 and at most 35 walls wide"
            : "";
    }

    private static bool IsSquareCornered(MemberSection section) =>
        section.Kind is SectionKind.SquareTube or SectionKind.RectangularTube;
}
