using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>What the check of one cross-section found on its way.</summary>
/// <param name="ClassNumber">Class of the section, 1 to 4.</param>
/// <param name="AxialShare">Axial force over the yield force, n.</param>
/// <param name="ShearYShare">Shear along y with torsion, over its resistance.</param>
/// <param name="ShearZShare">Shear along z with torsion, over its resistance.</param>
/// <param name="YieldShare">Yield that the shear leaves to the bending, 1 - ρ.</param>
/// <param name="MomentYNMm">Resistance to bending about y beside the axial force [N·mm]; 0 where stresses are checked.</param>
/// <param name="MomentZNMm">Resistance to bending about z beside the axial force [N·mm]; 0 where stresses are checked.</param>
/// <param name="PowerNumber">Exponent of the biaxial condition; 0 where stresses are checked.</param>
/// <param name="PeakNPerMm2">Largest direct stress [N/mm2]; 0 where plastic resistances are checked.</param>
/// <param name="BendingShare">Bending and axial force together.</param>
/// <param name="Result">The governing condition.</param>
public readonly record struct CrossSectionParts(
    int ClassNumber,
    double AxialShare,
    double ShearYShare,
    double ShearZShare,
    double YieldShare,
    double MomentYNMm,
    double MomentZNMm,
    double PowerNumber,
    double PeakNPerMm2,
    double BendingShare,
    CheckResult Result
);

/// <summary>Resistance of a cross-section to the forces inside a member.</summary>
public static class CrossSectionCheck
{
    private const string Part = "EN 1993-1-1:2005, ";

    /// <summary>Utilisation of a cross-section.</summary>
    /// <param name="section">The section.</param>
    /// <param name="grade">Its steel.</param>
    /// <param name="forces">Forces at the place.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The governing condition; infinite for class 4. Beyond 1 it is the number by which all forces must be divided to hold.</returns>
    /// <source>EN 1993-1-1:2005, 6.2</source>
    public static CheckResult Utilisation(
        MemberSection section,
        SteelGrade grade,
        MemberForces forces,
        SteelFactors? factors = null
    ) => Of(section, grade, forces, factors).Result;

    /// <summary>The check of a cross-section with what it found on its way.</summary>
    /// <param name="section">The section.</param>
    /// <param name="grade">Its steel.</param>
    /// <param name="forces">Forces at the place.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The parts.</returns>
    /// <source>EN 1993-1-1:2005, 6.2.3 to 6.2.10; for a round tube the smaller of M_pl (1 - n^1.7), EN 1993-1-1:2022 (from memory), and M_pl cos(π n/2) of a thin ring</source>
    public static CrossSectionParts Of(
        MemberSection section,
        SteelGrade grade,
        MemberForces forces,
        SteelFactors? factors = null
    )
    {
        var yieldNPerMm2 = grade.YieldNPerMm2 / (factors ?? SteelFactors.Recommended).SectionFactor;
        var number =
            forces.TensionN < 0 ? SectionClass.InCompression(section, grade) : SectionClass.InBending(section, grade);
        if (number == 4)
        {
            var (axial, shear) = (Axial(section, yieldNPerMm2, forces), Shear(section, yieldNPerMm2, forces));
            return new(number, axial, shear.Y, shear.Z, 1, 0, 0, 0, 0, 0, CheckResult.Class4);
        }

        if (number == 3)
        {
            return Elastic(section, yieldNPerMm2, forces, number);
        }

        var parts = Plastic(section, yieldNPerMm2, forces, number);
        return parts.Result.Holds ? parts : parts with { Result = Beyond(section, yieldNPerMm2, forces, parts) };
    }

    /// <summary>The working of the check, to follow with a pocket calculator.</summary>
    /// <param name="section">The section.</param>
    /// <param name="grade">Its steel.</param>
    /// <param name="forces">Forces at the place.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The lines.</returns>
    public static IReadOnlyList<Line> Lines(
        MemberSection section,
        SteelGrade grade,
        MemberForces forces,
        SteelFactors? factors = null
    )
    {
        var parts = Of(section, grade, forces, factors);
        return [.. CrossSectionLines.Of(section, grade, forces, factors ?? SteelFactors.Recommended, parts)];
    }

    // Shares of the shear resistance; the torque's stress is added to each.
    private static (double Y, double Z, double Worst) Shear(MemberSection section, double yield, MemberForces forces)
    {
        var limit = yield / Math.Sqrt(3);
        var torsion = Math.Abs(forces.TorsionNMm) / (section.TorsionModulusMm3 * limit);
        var alongY = Math.Abs(forces.ShearYN) / (section.ShearAreaYMm2 * limit);
        var alongZ = Math.Abs(forces.ShearZN) / (section.ShearAreaZMm2 * limit);
        var worst =
            section.Kind == SectionKind.RoundTube
                ? Math.Sqrt((alongY * alongY) + (alongZ * alongZ))
                : Math.Max(alongY, alongZ);
        return (torsion + alongY, torsion + alongZ, torsion + worst);
    }

    private static double Axial(MemberSection section, double yield, MemberForces forces) =>
        Math.Abs(forces.TensionN) / (section.Frame.AreaMm2 * yield);

    private static (CrossSectionParts Parts, CheckResult Worst) Alone(
        MemberSection section,
        double yield,
        MemberForces forces,
        int number
    )
    {
        var axial = Axial(section, yield, forces);
        var (shearY, shearZ, shear) = Shear(section, yield, forces);
        var worst = new CheckResult(axial, forces.TensionN < 0 ? Part + "6.2.4" : Part + "6.2.3").OrWorse(
            new(shear, Part + "6.2.6 and 6.2.7")
        );
        return (new(number, axial, shearY, shearZ, 1, 0, 0, 0, 0, 0, worst), worst);
    }

    // Beyond the limit the resistance beside axial force and shear runs to nothing, so that the bare ratio says little.
    // The use is 1/λ, where all forces times λ just hold. Where bending alone counts, λ is 1/ratio.
    private static CheckResult Beyond(MemberSection section, double yield, MemberForces forces, CrossSectionParts parts)
    {
        CrossSectionParts At(double factor) => Plastic(section, yield, forces * factor, parts.ClassNumber);
        var (low, high, at) = (0.0, 1.0, 1 / parts.Result.UtilisationShare);
        var tried = At(at);
        while (!(Math.Abs(tried.BendingShare - 1) < 1e-9) && high - low > 1e-9 * high)
        {
            (low, high) = tried.Result.UtilisationShare < 1 ? (at, high) : (low, at);
            at = (low + high) / 2;
            tried = At(at);
        }

        return tried.Result with
        {
            UtilisationShare = 1 / at,
        };
    }

    private static CrossSectionParts Plastic(MemberSection section, double yield, MemberForces forces, int number)
    {
        var (parts, worst) = Alone(section, yield, forces, number);
        if (!(worst.UtilisationShare < 1))
        {
            return parts;
        }

        // Beside more than half of the shear resistance the whole section is taken with a lower yield: safe side.
        var shear = Math.Max(parts.ShearYShare, parts.ShearZShare);
        var left = shear <= 0.5 ? 1 : 1 - Math.Pow((2 * shear) - 1, 2);
        var n = parts.AxialShare / left;
        if (!(n < 1))
        {
            return parts with { YieldShare = left, Result = worst.OrWorse(new(n, Part + "6.2.10")) };
        }

        var (byY, byZ, power) = Interaction(section, n);
        var resistanceY = section.PlasticModulusYMm3!.Value * yield * left * byY;
        var resistanceZ = section.PlasticModulusZMm3!.Value * yield * left * byZ;
        var (aboutY, aboutZ) = (Math.Abs(forces.BendingYNMm) / resistanceY, Math.Abs(forces.BendingZNMm) / resistanceZ);
        var bending = Math.Max(
            Math.Max(aboutY, aboutZ),
            Math.Pow(Math.Pow(aboutY, power) + Math.Pow(aboutZ, power), 1 / power)
        );
        return parts with
        {
            YieldShare = left,
            MomentYNMm = resistanceY,
            MomentZNMm = resistanceZ,
            PowerNumber = power,
            BendingShare = bending,
            Result = worst.OrWorse(new(bending, left < 1 ? Part + "6.2.10" : Part + "6.2.9.1")),
        };
    }

    // Shares of both plastic moments that are left beside n, and the exponent of the biaxial condition.
    private static (double Y, double Z, double Power) Interaction(MemberSection section, double n)
    {
        if (section.Kind == SectionKind.RoundTube)
        {
            var left = Math.Min(1 - Math.Pow(n, 1.7), Math.Cos(Math.PI * n / 2));
            return (left, left, 2);
        }

        var (area, t) = (section.Frame.AreaMm2, section.WallMm);
        var webs = Math.Min(0.5, (area - (2 * section.WidthMm * t)) / area);
        var flanges = Math.Min(0.5, (area - (2 * section.HeightMm * t)) / area);
        var root = 1 - (1.13 * n * n);
        return (
            Math.Min(1, (1 - n) / (1 - (0.5 * webs))),
            Math.Min(1, (1 - n) / (1 - (0.5 * flanges))),
            root > 0 ? Math.Min(6, 1.66 / root) : 6
        );
    }

    private static CrossSectionParts Elastic(MemberSection section, double yield, MemberForces forces, int number)
    {
        var (parts, worst) = Alone(section, yield, forces, number);
        var peak = SkewBending.PeakNPerMm2(section, forces.TensionN, forces.BendingYNMm, forces.BendingZNMm);
        var direct = peak / yield;
        var shear = Math.Max(parts.ShearYShare, parts.ShearZShare);
        var together = Math.Sqrt((direct * direct) + (shear * shear));
        return parts with
        {
            PeakNPerMm2 = peak,
            BendingShare = together,
            Result = worst.OrWorse(new(direct, Part + "6.2.9.2")).OrWorse(new(together, Part + "6.2.1(5)")),
        };
    }
}
