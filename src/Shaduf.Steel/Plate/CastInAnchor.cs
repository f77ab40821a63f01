using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>Rods with heads, nuts or plates cast into concrete.</summary>
public static class CastInAnchor
{
    // Concrete that may be cracked: k_1 of the cone, k_2 of the head.
    private const double ConeNumber = 8.9;
    private const double HeadNumber = 7.5;

    /// <summary>Resistance of a rod's steel to tension.</summary>
    /// <param name="size">Size of the thread.</param>
    /// <param name="grade">Property class.</param>
    /// <returns>A_s f_uk/γ_Ms, γ_Ms = 1.2 f_uk/f_yk, at least 1.4 [N].</returns>
    /// <source>EN 1992-4:2018, 7.2.1.3 and table 4.1</source>
    public static double SteelTensionN(BoltSize size, BoltGrade grade) =>
        size.StressAreaMm2 * grade.UltimateNPerMm2 / Math.Max(1.4, 1.2 * grade.UltimateNPerMm2 / grade.YieldNPerMm2);

    /// <summary>Resistance of a rod's steel to shear without lever arm.</summary>
    /// <param name="size">Size of the thread.</param>
    /// <param name="grade">Property class.</param>
    /// <returns>0.6 A_s f_uk/γ_Ms up to 500 N/mm2, 0.5 above [N].</returns>
    /// <source>EN 1992-4:2018, 7.2.2.3 and table 4.1 (from memory)</source>
    public static double SteelShearN(BoltSize size, BoltGrade grade)
    {
        var (ultimate, ratio) = (grade.UltimateNPerMm2, grade.UltimateNPerMm2 / grade.YieldNPerMm2);
        var gamma = ultimate <= 800 && ratio >= 1.25 ? Math.Max(1.25, ratio) : 1.5;
        return (ultimate <= 500 ? 0.6 : 0.5) * size.StressAreaMm2 * ultimate / gamma;
    }

    /// <summary>Resistance of the cone of cracked concrete that one rod pulls out, far from edges and others.</summary>
    /// <param name="cylinderNPerMm2">Characteristic strength of a cylinder f_ck [N/mm2], 8 to 50.</param>
    /// <param name="depthMm">Depth of the head h_ef [mm], 40 to 1,500.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>8.9 √f_ck h_ef^1.5/γ_Mc [N].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1992-4:2018, equation 7.2</source>
    public static double ConeN(double cylinderNPerMm2, double depthMm, SteelFactors? factors = null)
    {
        Within.Require(cylinderNPerMm2, 8, 50, "N/mm2");
        Within.Require(depthMm, 40, 1_500, "mm");
        var gamma = (factors ?? SteelFactors.Recommended).ConcreteFactor;
        return ConeNumber * Math.Sqrt(cylinderNPerMm2) * Math.Pow(depthMm, 1.5) / gamma;
    }

    /// <summary>Share of one free cone that a group keeps: its area on the surface, and the disturbance by the nearest edge.</summary>
    /// <param name="coneMm2">Area of the group's cones on the surface, cut off at edges A_c,N [mm2], 100 to 100,000,000.</param>
    /// <param name="depthMm">Depth that counts [mm], 40 to 1,500.</param>
    /// <param name="edgeMm">To the nearest edge c [mm], 20 to 10,000.</param>
    /// <returns>A_c,N/A0_c,N · ψ_s,N; above 1 for a group.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1992-4:2018, equations 7.1, 7.3 and 7.4</source>
    public static double GroupFactor(double coneMm2, double depthMm, double edgeMm)
    {
        Within.Require(coneMm2, 100, 1e8, "mm2");
        Within.Require(depthMm, 40, 1_500, "mm");
        Within.Require(edgeMm, 20, 10_000, "mm");
        var edge = Math.Min(1, 0.7 + (0.3 * edgeMm / (1.5 * depthMm)));
        return coneMm2 / (9 * depthMm * depthMm) * edge;
    }

    /// <summary>Area of the cones of four rods in the middle of a square block.</summary>
    /// <param name="depthMm">Depth that counts [mm], 40 to 1,500.</param>
    /// <param name="spacingMm">Distance of the rods [mm], 50 to 1,000.</param>
    /// <param name="edgeMm">From the rods to the block's sides [mm], 20 to 10,000.</param>
    /// <returns>A_c,N [mm2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1992-4:2018, 7.2.1.4; spacing beyond three depths counts as three</source>
    public static double FourConesMm2(double depthMm, double spacingMm, double edgeMm)
    {
        Within.Require(depthMm, 40, 1_500, "mm");
        Within.Require(spacingMm, 50, 1_000, "mm");
        Within.Require(edgeMm, 20, 10_000, "mm");
        var sideMm = Math.Min(spacingMm, 3 * depthMm) + (2 * Math.Min(edgeMm, 1.5 * depthMm));
        return sideMm * sideMm;
    }

    /// <summary>Depth that counts where three or four edges are nearer than one and a half depths.</summary>
    /// <param name="depthMm">Depth of the head h_ef [mm], 40 to 1,500.</param>
    /// <param name="edgeMm">Largest of these distances to an edge [mm], 20 to 10,000.</param>
    /// <param name="spacingMm">Largest distance of rods in the group [mm], 0 to 1,000; 0 for one rod.</param>
    /// <returns>h'_ef, at most h_ef [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1992-4:2018, 7.2.1.4(8)</source>
    public static double CountedDepthMm(double depthMm, double edgeMm, double spacingMm)
    {
        Within.Require(depthMm, 40, 1_500, "mm");
        Within.Require(edgeMm, 20, 10_000, "mm");
        Within.Require(spacingMm, 0, 1_000, "mm");
        return Math.Min(depthMm, Math.Max(edgeMm / 1.5, spacingMm / 3));
    }

    /// <summary>Resistance of cracked concrete under the head.</summary>
    /// <param name="cylinderNPerMm2">Characteristic strength of a cylinder f_ck [N/mm2], 8 to 50.</param>
    /// <param name="headMm2">Area of the head or plate less the rod [mm2], 50 to 100,000.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>7.5 A_h f_ck/γ_Mp [N].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1992-4:2018, equation 7.11 (7.5 from memory)</source>
    public static double PullOutN(double cylinderNPerMm2, double headMm2, SteelFactors? factors = null)
    {
        Within.Require(cylinderNPerMm2, 8, 50, "N/mm2");
        Within.Require(headMm2, 50, 100_000, "mm2");
        return HeadNumber * headMm2 * cylinderNPerMm2 / (factors ?? SteelFactors.Recommended).ConcreteFactor;
    }

    /// <summary>Tension and shear together: squares for steel, powers of 1.5 for concrete; the worse.</summary>
    /// <param name="steelTensionShare">Tension over the steel's resistance, 0 to 10.</param>
    /// <param name="steelShearShare">Shear over the steel's resistance, 0 to 10.</param>
    /// <param name="concreteTensionShare">Tension over the concrete's resistance, 0 to 10.</param>
    /// <param name="concreteShearShare">Shear over the concrete's resistance, 0 to 10.</param>
    /// <returns>The check.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1992-4:2018, table 7.3 (from memory)</source>
    public static CheckResult Together(
        double steelTensionShare,
        double steelShearShare,
        double concreteTensionShare,
        double concreteShearShare
    )
    {
        Within.Require(steelTensionShare, 0, 10, "");
        Within.Require(steelShearShare, 0, 10, "");
        Within.Require(concreteTensionShare, 0, 10, "");
        Within.Require(concreteShearShare, 0, 10, "");
        return new CheckResult(
            Math.Pow(steelTensionShare, 2) + Math.Pow(steelShearShare, 2),
            "EN 1992-4:2018, table 7.3, steel"
        )
            .OrWorse(
                new(
                    Math.Pow(concreteTensionShare, 1.5) + Math.Pow(concreteShearShare, 1.5),
                    "EN 1992-4:2018, table 7.3, concrete"
                )
            )
            .OrWorse(new(Math.Max(steelTensionShare, concreteTensionShare), "EN 1992-4:2018, 7.2.1, tension"))
            .OrWorse(new(Math.Max(steelShearShare, concreteShearShare), "EN 1992-4:2018, 7.2.2, shear"));
    }

    /// <summary>The working of tension: the steel of one rod, and the cone of its group; recommended factors.</summary>
    /// <param name="size">Size of the thread.</param>
    /// <param name="grade">Property class.</param>
    /// <param name="pulls">Tension of the most pulled rod, and of the group [N].</param>
    /// <param name="cylinderNPerMm2">Strength of a cylinder f_ck [N/mm2].</param>
    /// <param name="cone">Depth that counts [mm] and A_c,N/A0_c,N · ψ_s,N.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The lines.</returns>
    public static IReadOnlyList<Line> Lines(
        BoltSize size,
        BoltGrade grade,
        (double RodN, double GroupN) pulls,
        double cylinderNPerMm2,
        (double DepthMm, double GroupFactor) cone,
        SteelFactors? factors = null
    )
    {
        var (steel, held) = (
            SteelTensionN(size, grade) / 1000,
            cone.GroupFactor * ConeN(cylinderNPerMm2, cone.DepthMm, factors) / 1000
        );
        return
        [
            Step(
                "N_Rd,s",
                "A_s f_uk/γ_Ms",
                Invariant(
                    $"{size.StressAreaMm2:0.0} · {grade.UltimateNPerMm2:0}/{size.StressAreaMm2 * grade.UltimateNPerMm2 / 1000 / steel:0.00}"
                ),
                (steel, "kN"),
                "7.2.1.3"
            ),
            Step(
                "N_Rd,c",
                "8.9 √f_ck h_ef^1.5 (A_c/A0_c ψ_s)/γ_Mc",
                Invariant(
                    $"8.9 · √{cylinderNPerMm2:0.0} · {cone.DepthMm:0}^1.5 · {cone.GroupFactor:0.000}/{(factors ?? SteelFactors.Recommended).ConcreteFactor:0.0#}"
                ),
                (held, "kN"),
                "7.2.1.4"
            ),
            Step(
                "share, steel",
                "N/N_Rd,s",
                Invariant($"{pulls.RodN / 1000:0.00}/{steel:0.00}"),
                (pulls.RodN / 1000 / steel, ""),
                "7.2.1.3"
            ),
            Step(
                "share, cone",
                "N_group/N_Rd,c",
                Invariant($"{pulls.GroupN / 1000:0.00}/{held:0.00}"),
                (pulls.GroupN / 1000 / held, ""),
                "7.2.1.4"
            ),
        ];
    }

    private static Line Step(
        string symbol,
        string formula,
        string numbers,
        (double Value, string Unit) result,
        string clause
    ) => new(symbol, formula, numbers, result.Value, result.Unit, "steel/cast-in-anchor", "EN 1992-4:2018, " + clause);
}
