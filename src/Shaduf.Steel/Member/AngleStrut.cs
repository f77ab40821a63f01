using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>An angle in compression, welded at both ends to members that hold it: its eccentricity is in a raised slenderness.</summary>
public static class AngleStrut
{
    /// <summary>Slenderness that counts, about the weak principal axis and about a leg, the larger.</summary>
    /// <param name="section">The angle.</param>
    /// <param name="grade">Its steel.</param>
    /// <param name="lengthMm">Length between its welds [mm], 1 to 20,000.</param>
    /// <returns>λ_eff = 0.35 + 0.7 λ_v or 0.50 + 0.7 λ_y.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1993-1-1:2005, annex BB.1.2</source>
    public static double SlendernessRatio(MemberSection section, SteelGrade grade, double lengthMm)
    {
        Within.Require(lengthMm, 1, 20_000, "mm");
        var v = FlexuralBuckling.SlendernessRatio(lengthMm, section.LeastGyrationMm, grade.YieldNPerMm2);
        var y = FlexuralBuckling.SlendernessRatio(lengthMm, section.GyrationYMm, grade.YieldNPerMm2);
        return Math.Max(0.35 + (0.7 * v), 0.50 + (0.7 * y));
    }

    /// <summary>Resistance to compression.</summary>
    /// <param name="section">The angle.</param>
    /// <param name="grade">Its steel.</param>
    /// <param name="lengthMm">Length between its welds [mm], 1 to 20,000.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>Resistance [N].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1993-1-1:2005, 6.3.1 and annex BB.1.2</source>
    public static double ResistanceN(
        MemberSection section,
        SteelGrade grade,
        double lengthMm,
        SteelFactors? factors = null
    ) =>
        FlexuralBuckling.ReductionFactor(SlendernessRatio(section, grade, lengthMm), section.Curve)
        * section.Frame.AreaMm2
        * grade.YieldNPerMm2
        / (factors ?? SteelFactors.Recommended).BucklingFactor;

    /// <summary>Utilisation in compression; tension is left to the cross-section.</summary>
    /// <param name="section">The angle.</param>
    /// <param name="grade">Its steel.</param>
    /// <param name="compressionN">Compression [N], 0 to 10,000,000.</param>
    /// <param name="lengthMm">Length between its welds [mm], 1 to 20,000.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The check; infinite for class 4.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1993-1-1:2005, 6.3.1 and annex BB.1.2</source>
    public static CheckResult Utilisation(
        MemberSection section,
        SteelGrade grade,
        double compressionN,
        double lengthMm,
        SteelFactors? factors = null
    )
    {
        Within.Require(compressionN, 0, 1e7, "N");
        return SectionClass.InCompression(section, grade) == 4
            ? CheckResult.Class4
            : new(
                compressionN / ResistanceN(section, grade, lengthMm, factors),
                "EN 1993-1-1:2005, 6.3.1 and annex BB.1.2"
            );
    }

    /// <summary>The working of the check.</summary>
    /// <param name="section">The angle.</param>
    /// <param name="grade">Its steel.</param>
    /// <param name="compressionN">Compression [N].</param>
    /// <param name="lengthMm">Length between its welds [mm].</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The lines.</returns>
    public static IReadOnlyList<Line> Lines(
        MemberSection section,
        SteelGrade grade,
        double compressionN,
        double lengthMm,
        SteelFactors? factors = null
    )
    {
        const string method = "steel/angle-strut";
        var slenderness = SlendernessRatio(section, grade, lengthMm);
        var resistanceKN = ResistanceN(section, grade, lengthMm, factors) / 1000;
        var gyrations = Invariant($"L {lengthMm:0} mm, i_v {section.LeastGyrationMm:0.00} mm, ");
        return
        [
            new(
                "λ_eff",
                "larger of 0.35 + 0.7 λ_v and 0.50 + 0.7 λ_y",
                gyrations + Invariant($"i_y {section.GyrationYMm:0.00} mm"),
                slenderness,
                "",
                method,
                "EN 1993-1-1:2005, annex BB.1.2"
            ),
            new(
                "N_b,Rd",
                "χ A f_y/γ_M1",
                Invariant($"{FlexuralBuckling.ReductionFactor(slenderness, section.Curve):0.000} · ")
                    + Invariant($"{section.Frame.AreaMm2:0} · {grade.YieldNPerMm2:0}"),
                resistanceKN,
                "kN",
                method,
                "EN 1993-1-1:2005, equation 6.47"
            ),
            new(
                "share",
                "N/N_b,Rd",
                Invariant($"{compressionN / 1000:0.00}/{resistanceKN:0.00}"),
                compressionN / 1000 / resistanceKN,
                "",
                method,
                "EN 1993-1-1:2005, equation 6.46"
            ),
        ];
    }
}
