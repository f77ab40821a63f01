using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Lengths over which a member buckles.</summary>
/// <param name="AboutYMm">Buckling length about y [mm].</param>
/// <param name="AboutZMm">Buckling length about z [mm].</param>
/// <param name="HeldMm">Distance between the places that hold an open section against moving sideways and twisting [mm]; a tube needs none.</param>
public readonly record struct BucklingLengths(double AboutYMm, double AboutZMm, double HeldMm);

/// <summary>What the check of a member against buckling found on its way.</summary>
/// <param name="ClassNumber">Class of the section, 1 to 4.</param>
/// <param name="SlendernessYRatio">Relative slenderness about y; for the weaker axis of an open section, about its principal one.</param>
/// <param name="SlendernessZRatio">Relative slenderness about z, likewise.</param>
/// <param name="ReductionYFactor">χ_y.</param>
/// <param name="ReductionZFactor">χ_z.</param>
/// <param name="ReductionTwistFactor">χ_LT; 1 for tubes.</param>
/// <param name="MomentYYFactor">k_yy.</param>
/// <param name="MomentYZFactor">k_yz.</param>
/// <param name="MomentZYFactor">k_zy.</param>
/// <param name="MomentZZFactor">k_zz.</param>
/// <param name="BendingYShare">M_y over its resistance; for an open section the peak stress of both moments over the yield.</param>
/// <param name="BendingZShare">M_z over its resistance; 0 for an open section.</param>
/// <param name="AboutYShare">Condition 6.61.</param>
/// <param name="AboutZShare">Condition 6.62.</param>
/// <param name="Result">The governing condition.</param>
public readonly record struct MemberBucklingParts(
    int ClassNumber,
    double SlendernessYRatio,
    double SlendernessZRatio,
    double ReductionYFactor,
    double ReductionZFactor,
    double ReductionTwistFactor,
    double MomentYYFactor,
    double MomentYZFactor,
    double MomentZYFactor,
    double MomentZZFactor,
    double BendingYShare,
    double BendingZShare,
    double AboutYShare,
    double AboutZShare,
    CheckResult Result
);

/// <summary>Buckling of a member in compression and bending.</summary>
public static class MemberBuckling
{
    /// <summary>Utilisation of a member against buckling.</summary>
    /// <param name="section">The section.</param>
    /// <param name="grade">Its steel.</param>
    /// <param name="forces">The largest compression (tension counts as none) and the largest moments along the member.</param>
    /// <param name="lengths">Buckling lengths.</param>
    /// <param name="moments">Equivalent uniform moments.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The governing condition; infinite for class 4.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length outside 0 to 200,000 mm, or a member beyond a slenderness of 200.</exception>
    /// <source>EN 1993-1-1:2005, 6.3.3 and annex B</source>
    public static CheckResult Utilisation(
        MemberSection section,
        SteelGrade grade,
        MemberForces forces,
        BucklingLengths lengths,
        EquivalentMoments moments,
        SteelFactors? factors = null
    ) => Of(section, grade, forces, lengths, moments, factors).Result;

    /// <summary>The check of a member against buckling with what it found on its way.</summary>
    /// <param name="section">The section.</param>
    /// <param name="grade">Its steel.</param>
    /// <param name="forces">The largest compression (tension counts as none) and the largest moments along the member.</param>
    /// <param name="lengths">Buckling lengths.</param>
    /// <param name="moments">Equivalent uniform moments.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The parts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length outside 0 to 200,000 mm, or a member beyond a slenderness of 200.</exception>
    /// <source>EN 1993-1-1:2005, equations 6.61 and 6.62, table B.1; open sections: the elastic rows, both moments by their peak stress, k_zy = 1 (safe side of table B.2)</source>
    public static MemberBucklingParts Of(
        MemberSection section,
        SteelGrade grade,
        MemberForces forces,
        BucklingLengths lengths,
        EquivalentMoments moments,
        SteelFactors? factors = null
    )
    {
        var compressionN = Math.Max(0, -forces.TensionN);
        var number =
            compressionN > 0 ? SectionClass.InCompression(section, grade) : SectionClass.InBending(section, grade);
        var (gyrationY, gyrationZ) = Gyrations(section);
        var slendernessY = FlexuralBuckling.SlendernessRatio(lengths.AboutYMm, gyrationY, grade.YieldNPerMm2);
        var slendernessZ = FlexuralBuckling.SlendernessRatio(lengths.AboutZMm, gyrationZ, grade.YieldNPerMm2);
        var (chiY, chiZ) = (
            FlexuralBuckling.ReductionFactor(slendernessY, section.Curve),
            FlexuralBuckling.ReductionFactor(slendernessZ, section.Curve)
        );
        var yield = grade.YieldNPerMm2 / (factors ?? SteelFactors.Recommended).BucklingFactor;
        var force = section.Frame.AreaMm2 * yield;
        var (nY, nZ) = (compressionN / (chiY * force), compressionN / (chiZ * force));
        var isPlastic = number < 3;
        var kYY = Amplified(moments.AboutYFactor, slendernessY, nY, isPlastic);
        var kZZ = Amplified(moments.AboutZFactor, slendernessZ, nZ, isPlastic);
        var parts = new MemberBucklingParts(
            number,
            slendernessY,
            slendernessZ,
            chiY,
            chiZ,
            1,
            kYY,
            isPlastic ? 0.6 * kZZ : kZZ,
            (isPlastic ? 0.6 : 0.8) * kYY,
            kZZ,
            0,
            0,
            nY,
            nZ,
            CheckResult.Class4
        );
        return number == 4 ? parts
            : section.IsTube ? Tube(section, yield, forces, parts)
            : Open(section, grade, yield, forces, (lengths.HeldMm, parts));
    }

    /// <summary>The working of the check, to follow with a pocket calculator.</summary>
    /// <param name="section">The section.</param>
    /// <param name="grade">Its steel.</param>
    /// <param name="forces">The largest compression and moments along the member.</param>
    /// <param name="lengths">Buckling lengths.</param>
    /// <param name="moments">Equivalent uniform moments.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The lines.</returns>
    public static IReadOnlyList<Line> Lines(
        MemberSection section,
        SteelGrade grade,
        MemberForces forces,
        BucklingLengths lengths,
        EquivalentMoments moments,
        SteelFactors? factors = null
    ) =>
        [
            .. MemberBucklingLines.Of(
                section,
                grade,
                forces,
                (lengths, moments, (factors ?? SteelFactors.Recommended).BucklingFactor),
                Of(section, grade, forces, lengths, moments, factors)
            ),
        ];

    /// <summary>Radii of gyration that count about y and z: the weaker axis of a skew section is its principal one.</summary>
    internal static (double YMm, double ZMm) Gyrations(MemberSection section)
    {
        var (y, z) = (section.Frame.InertiaYMm4, section.Frame.InertiaZMm4);
        return (
            y <= z ? section.LeastGyrationMm : section.GyrationYMm,
            z <= y ? section.LeastGyrationMm : section.GyrationZMm
        );
    }

    private static double Amplified(double factor, double slenderness, double n, bool isPlastic) =>
        isPlastic
            ? factor * (1 + (Math.Clamp(slenderness - 0.2, 0, 0.8) * n))
            : factor * (1 + (0.6 * Math.Min(slenderness, 1) * n));

    private static MemberBucklingParts Tube(
        MemberSection section,
        double yield,
        MemberForces forces,
        MemberBucklingParts parts
    )
    {
        var isPlastic = parts.ClassNumber < 3;
        var modulusY = isPlastic ? section.PlasticModulusYMm3!.Value : section.ElasticModulusYMm3;
        var modulusZ = isPlastic ? section.PlasticModulusZMm3!.Value : section.ElasticModulusZMm3;
        var (bendingY, bendingZ) = (
            Math.Abs(forces.BendingYNMm) / (modulusY * yield),
            Math.Abs(forces.BendingZNMm) / (modulusZ * yield)
        );
        return Sum(parts with { BendingYShare = bendingY, BendingZShare = bendingZ });
    }

    private static MemberBucklingParts Open(
        MemberSection section,
        SteelGrade grade,
        double yield,
        MemberForces forces,
        (double HeldMm, MemberBucklingParts Parts) so
    )
    {
        var (y, z) = (forces.BendingYNMm, forces.BendingZNMm);
        // The largest moments of a member need not lie at one place: both ways of their coming together.
        var peak = Math.Max(SkewBending.PeakNPerMm2(section, 0, y, z), SkewBending.PeakNPerMm2(section, 0, y, -z));
        var left = peak > 0 ? TwistBuckling.ReductionFactor(section, grade, so.HeldMm) : 1;
        var k = Math.Max(so.Parts.MomentYYFactor, so.Parts.MomentZZFactor);
        return Sum(
            so.Parts with
            {
                ReductionTwistFactor = left,
                MomentYYFactor = k,
                MomentYZFactor = k,
                MomentZYFactor = Math.Max(1, k),
                MomentZZFactor = k,
                BendingYShare = peak / (yield * left),
            }
        );
    }

    private static MemberBucklingParts Sum(MemberBucklingParts parts)
    {
        var (y, z) = (parts.BendingYShare, parts.BendingZShare);
        var aboutY = parts.AboutYShare + (parts.MomentYYFactor * y) + (parts.MomentYZFactor * z);
        var aboutZ = parts.AboutZShare + (parts.MomentZYFactor * y) + (parts.MomentZZFactor * z);
        return parts with
        {
            AboutYShare = aboutY,
            AboutZShare = aboutZ,
            Result = new CheckResult(aboutY, "EN 1993-1-1:2005, equation 6.61").OrWorse(
                new(aboutZ, "EN 1993-1-1:2005, equation 6.62")
            ),
        };
    }
}
