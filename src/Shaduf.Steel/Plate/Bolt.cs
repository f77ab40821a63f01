using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>Resistance of one bolt.</summary>
public static class Bolt
{
    /// <summary>Resistance to tension.</summary>
    /// <param name="size">Size.</param>
    /// <param name="grade">Property class.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>F_t,Rd = 0.9 f_ub A_s/γ_M2 [N].</returns>
    /// <source>EN 1993-1-8:2005, table 3.4</source>
    public static double TensionN(BoltSize size, BoltGrade grade, SteelFactors? factors = null) =>
        0.9 * grade.UltimateNPerMm2 * size.StressAreaMm2 / Gamma(factors);

    /// <summary>Resistance to shear in one plane through the thread.</summary>
    /// <param name="size">Size.</param>
    /// <param name="grade">Property class.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>F_v,Rd = α_v f_ub A_s/γ_M2 [N].</returns>
    /// <source>EN 1993-1-8:2005, table 3.4</source>
    public static double ShearN(BoltSize size, BoltGrade grade, SteelFactors? factors = null) =>
        grade.ShearFactor * grade.UltimateNPerMm2 * size.StressAreaMm2 / Gamma(factors);

    /// <summary>Resistance of the plate against the bolt's shank, a bolt near an edge and alone.</summary>
    /// <param name="size">Size.</param>
    /// <param name="bolt">Property class of the bolt.</param>
    /// <param name="plate">Steel of the plate.</param>
    /// <param name="plateMm">Thickness of the plate [mm], 2 to 60.</param>
    /// <param name="edgeMm">From the bolt's centre to the plate's edge, every way at least this [mm], 10 to 500.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>F_b,Rd = k_1 α_b f_u d t/γ_M2 [N]; 0 when the edge is nearer than 1.2 holes.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1993-1-8:2005, tables 3.3 and 3.4 (from memory)</source>
    public static double BearingN(
        BoltSize size,
        BoltGrade bolt,
        SteelGrade plate,
        double plateMm,
        double edgeMm,
        SteelFactors? factors = null
    )
    {
        Within.Require(plateMm, 2, 60, "mm");
        Within.Require(edgeMm, 10, 500, "mm");
        if (edgeMm < 1.2 * size.HoleMm)
        {
            return 0;
        }

        var along = Math.Min(1, Math.Min(edgeMm / (3 * size.HoleMm), bolt.UltimateNPerMm2 / plate.UltimateNPerMm2));
        var across = Math.Min(2.5, (2.8 * edgeMm / size.HoleMm) - 1.7);
        return across * along * plate.UltimateNPerMm2 * size.DiameterMm * plateMm / Gamma(factors);
    }

    /// <summary>Utilisation in tension and shear together.</summary>
    /// <param name="size">Size.</param>
    /// <param name="grade">Property class.</param>
    /// <param name="tensionN">Tension [N], 0 to 1,000,000.</param>
    /// <param name="shearN">Shear [N], 0 to 1,000,000.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The governing of F_t/F_t,Rd and F_v/F_v,Rd + F_t/(1.4 F_t,Rd).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1993-1-8:2005, table 3.4</source>
    public static CheckResult Utilisation(
        BoltSize size,
        BoltGrade grade,
        double tensionN,
        double shearN,
        SteelFactors? factors = null
    )
    {
        Within.Require(tensionN, 0, 1e6, "N");
        Within.Require(shearN, 0, 1e6, "N");
        var tension = tensionN / TensionN(size, grade, factors);
        var shear = shearN / ShearN(size, grade, factors);
        return new CheckResult(tension, "EN 1993-1-8:2005, table 3.4, tension").OrWorse(
            new(shear + (tension / 1.4), "EN 1993-1-8:2005, table 3.4, shear and tension")
        );
    }

    /// <summary>The working of the check in tension and shear.</summary>
    /// <param name="size">Size.</param>
    /// <param name="grade">Property class.</param>
    /// <param name="tensionN">Tension [N].</param>
    /// <param name="shearN">Shear [N].</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The lines.</returns>
    public static IReadOnlyList<Line> Lines(
        BoltSize size,
        BoltGrade grade,
        double tensionN,
        double shearN,
        SteelFactors? factors = null
    )
    {
        var (tension, shear) = (TensionN(size, grade, factors) / 1000, ShearN(size, grade, factors) / 1000);
        var strength = Invariant($"{grade.UltimateNPerMm2:0} · {size.StressAreaMm2:0.0}/{Gamma(factors):0.00}");
        return
        [
            Step("F_t,Rd", "0.9 f_ub A_s/γ_M2", "0.9 · " + strength, (tension, "kN")),
            Step("F_v,Rd", "α_v f_ub A_s/γ_M2", Invariant($"{grade.ShearFactor:0.0} · ") + strength, (shear, "kN")),
            Step(
                "share, tension",
                "F_t/F_t,Rd",
                Invariant($"{tensionN / 1000:0.00}/{tension:0.00}"),
                (tensionN / 1000 / tension, "")
            ),
            Step(
                "share, together",
                "F_v/F_v,Rd + F_t/(1.4 F_t,Rd)",
                Invariant($"{shearN / 1000:0.00}/{shear:0.00} + {tensionN / 1000:0.00}/(1.4 · {tension:0.00})"),
                ((shearN / 1000 / shear) + (tensionN / 1400 / tension), "")
            ),
        ];
    }

    private static Line Step(string symbol, string formula, string numbers, (double Value, string Unit) result) =>
        new(symbol, formula, numbers, result.Value, result.Unit, "steel/bolt", "EN 1993-1-8:2005, table 3.4");

    private static double Gamma(SteelFactors? factors) => (factors ?? SteelFactors.Recommended).JointFactor;
}
