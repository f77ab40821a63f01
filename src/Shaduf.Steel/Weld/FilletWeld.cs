using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>Stresses of a fillet weld on its throat.</summary>
/// <param name="NormalNPerMm2">Square to the throat, σ_perp [N/mm2].</param>
/// <param name="AcrossNPerMm2">Shear in the throat across the weld, τ_perp [N/mm2].</param>
/// <param name="AlongNPerMm2">Shear in the throat along the weld, τ_par [N/mm2].</param>
public readonly record struct ThroatStress(double NormalNPerMm2, double AcrossNPerMm2, double AlongNPerMm2)
{
    /// <summary>√(σ_perp² + 3 (τ_perp² + τ_par²)) [N/mm2].</summary>
    public double EquivalentNPerMm2 =>
        Math.Sqrt(
            (NormalNPerMm2 * NormalNPerMm2) + (3 * ((AcrossNPerMm2 * AcrossNPerMm2) + (AlongNPerMm2 * AlongNPerMm2)))
        );
}

/// <summary>Strength of fillet welds with equal legs, by throat.</summary>
public static class FilletWeld
{
    /// <summary>Least throat that counts [mm].</summary>
    /// <source>EN 1993-1-8:2005, 4.5.2(2)</source>
    public const double LeastThroatMm = 3;

    /// <summary>Least wall of a tube that is welded and carries load [mm].</summary>
    /// <source>EN 1993-1-8:2005, 4.1(1) and 7.1.1(5) (from memory)</source>
    public const double LeastWallMm = 2.5;

    internal const string Simplified = "EN 1993-1-8:2005, 4.5.3.3";

    /// <summary>Throat of a weld with equal legs.</summary>
    /// <param name="legMm">Leg z [mm], 1 to 30.</param>
    /// <returns>Throat a [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>Plane geometry; EN 1993-1-8:2005, figure 4.3</source>
    public static double ThroatMm(double legMm)
    {
        Within.Require(legMm, 1, 30, "mm");
        return legMm / Math.Sqrt(2);
    }

    /// <summary>Leg of a weld with equal legs.</summary>
    /// <param name="throatMm">Throat a [mm], 1 to 20.</param>
    /// <returns>Leg z [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>Plane geometry; EN 1993-1-8:2005, figure 4.3</source>
    public static double LegMm(double throatMm)
    {
        Within.Require(throatMm, 1, 20, "mm");
        return throatMm * Math.Sqrt(2);
    }

    /// <summary>Length of a run that carries: without a throat at each end; a run shorter than 30 mm or 6 throats carries nothing.</summary>
    /// <param name="runMm">Length of the run as laid [mm], 0 to 20,000.</param>
    /// <param name="throatMm">Throat [mm], 1 to 20.</param>
    /// <returns>Effective length [mm]; 0 for a run that carries nothing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1993-1-8:2005, 4.5.1</source>
    public static double EffectiveMm(double runMm, double throatMm)
    {
        Within.Require(runMm, 0, 20_000, "mm");
        Within.Require(throatMm, 1, 20, "mm");
        var lengthMm = runMm - (2 * throatMm);
        return lengthMm < Math.Max(30, 6 * throatMm) ? 0 : lengthMm;
    }

    /// <summary>Strength of the weld in any direction, f_vw,d.</summary>
    /// <param name="grade">Steel of the weaker part joined.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>f_u/(√3 β_w γ_M2) [N/mm2].</returns>
    /// <source>EN 1993-1-8:2005, equation 4.4</source>
    public static double StrengthNPerMm2(SteelGrade grade, SteelFactors? factors = null) =>
        Limit(grade, factors) / Math.Sqrt(3);

    /// <summary>Resistance of a millimetre of weld in any direction.</summary>
    /// <param name="grade">Steel of the weaker part joined.</param>
    /// <param name="throatMm">Throat [mm], 3 to 20.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>F_w,Rd [N/mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1993-1-8:2005, equation 4.3</source>
    public static double ResistanceNPerMm(SteelGrade grade, double throatMm, SteelFactors? factors = null)
    {
        Within.Require(throatMm, LeastThroatMm, 20, "mm");
        return throatMm * StrengthNPerMm2(grade, factors);
    }

    /// <summary>Throat that carries a force, any direction; never below the least one.</summary>
    /// <param name="grade">Steel of the weaker part joined.</param>
    /// <param name="forceNPerMm">Force on a millimetre of weld [N/mm], 0 to 10,000.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>Throat a [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1993-1-8:2005, 4.5.2(2) and equation 4.3</source>
    public static double RequiredThroatMm(SteelGrade grade, double forceNPerMm, SteelFactors? factors = null)
    {
        Within.Require(forceNPerMm, 0, 10_000, "N/mm");
        return Math.Max(LeastThroatMm, forceNPerMm / StrengthNPerMm2(grade, factors));
    }

    /// <summary>Throat of a weld on one side of a wall that is as strong as the wall pulled square to the weld.</summary>
    /// <param name="grade">Steel of the wall.</param>
    /// <param name="wallMm">Thickness of the wall [mm], 2.5 to 16.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>√2 t f_y β_w γ_M2/(f_u γ_M0) [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1993-1-8:2005, equation 4.1, with σ_perp = τ_perp = F/(√2 a)</source>
    public static double FullStrengthThroatMm(SteelGrade grade, double wallMm, SteelFactors? factors = null)
    {
        Within.Require(wallMm, LeastWallMm, 16, "mm");
        var yield = grade.YieldNPerMm2 / (factors ?? SteelFactors.Recommended).SectionFactor;
        return Math.Sqrt(2) * wallMm * yield / Limit(grade, factors);
    }

    /// <summary>Stresses turned from the plane of a leg, on the throat's area, onto the throat.</summary>
    /// <param name="normalNPerMm2">Square to the leg's plane, pull above 0 [N/mm2], -10,000 to 10,000.</param>
    /// <param name="acrossNPerMm2">In the leg's plane across the weld, above 0 towards the side on which the weld lies [N/mm2], -10,000 to 10,000.</param>
    /// <param name="alongNPerMm2">Along the weld [N/mm2], -10,000 to 10,000.</param>
    /// <returns>The stresses on the throat.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1993-1-8:2005, figure 4.5; a throat at 45 degrees</source>
    public static ThroatStress OnThroat(double normalNPerMm2, double acrossNPerMm2, double alongNPerMm2)
    {
        Within.Require(normalNPerMm2, -10_000, 10_000, "N/mm2");
        Within.Require(acrossNPerMm2, -10_000, 10_000, "N/mm2");
        Within.Require(alongNPerMm2, -10_000, 10_000, "N/mm2");
        return new(
            (normalNPerMm2 - acrossNPerMm2) / Math.Sqrt(2),
            (normalNPerMm2 + acrossNPerMm2) / Math.Sqrt(2),
            alongNPerMm2
        );
    }

    /// <summary>Check by the stresses on the throat, the exacter way.</summary>
    /// <param name="stress">Stresses on the throat.</param>
    /// <param name="grade">Steel of the weaker part joined.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The check.</returns>
    /// <source>EN 1993-1-8:2005, equation 4.1</source>
    public static CheckResult Directional(ThroatStress stress, SteelGrade grade, SteelFactors? factors = null)
    {
        var normal = 0.9 * grade.UltimateNPerMm2 / (factors ?? SteelFactors.Recommended).JointFactor;
        return new CheckResult(stress.EquivalentNPerMm2 / Limit(grade, factors), "EN 1993-1-8:2005, 4.5.3.2").OrWorse(
            new(Math.Abs(stress.NormalNPerMm2) / normal, "EN 1993-1-8:2005, 4.5.3.2, σ_perp")
        );
    }

    /// <summary>Check by the force on a millimetre of weld, any direction.</summary>
    /// <param name="grade">Steel of the weaker part joined.</param>
    /// <param name="forceNPerMm">Force on a millimetre of weld [N/mm], 0 to 10,000.</param>
    /// <param name="throatMm">Throat [mm], 3 to 20.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The check.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1993-1-8:2005, equations 4.2 to 4.4</source>
    public static CheckResult Utilisation(
        SteelGrade grade,
        double forceNPerMm,
        double throatMm,
        SteelFactors? factors = null
    )
    {
        Within.Require(forceNPerMm, 0, 10_000, "N/mm");
        return new(forceNPerMm / ResistanceNPerMm(grade, throatMm, factors), Simplified);
    }

    /// <summary>The working of the check by force.</summary>
    /// <param name="grade">Steel of the weaker part joined.</param>
    /// <param name="forceNPerMm">Force on a millimetre of weld [N/mm].</param>
    /// <param name="throatMm">Throat [mm].</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The lines.</returns>
    public static IReadOnlyList<Line> Lines(
        SteelGrade grade,
        double forceNPerMm,
        double throatMm,
        SteelFactors? factors = null
    )
    {
        var gamma = (factors ?? SteelFactors.Recommended).JointFactor;
        var resistance = ResistanceNPerMm(grade, throatMm, factors);
        return
        [
            new(
                "F_w,Rd",
                "a f_u/(√3 β_w γ_M2)",
                Invariant(
                    $"{throatMm:0.0} · {grade.UltimateNPerMm2:0}/(√3 · {grade.WeldCorrelationFactor:0.00} · {gamma:0.00})"
                ),
                resistance,
                "N/mm",
                "steel/fillet-weld",
                Simplified
            ),
            new(
                "share",
                "F_w,Ed/F_w,Rd",
                Invariant($"{forceNPerMm:0.0}/{resistance:0.0}"),
                forceNPerMm / resistance,
                "",
                "steel/fillet-weld",
                Simplified
            ),
        ];
    }

    private static double Limit(SteelGrade grade, SteelFactors? factors) =>
        grade.UltimateNPerMm2 / (grade.WeldCorrelationFactor * (factors ?? SteelFactors.Recommended).JointFactor);
}
