using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>Modules held by a channel's lips or by clamps: what the module allows, what its edge brings, what the lip bears.</summary>
public static class ModuleHolding
{
    /// <summary>Safety between the load of a module's mechanical test and the load it is meant for.</summary>
    /// <source>IEC 61215-2, test MQT 16: test load = 1.5 × design load (from memory)</source>
    public const double TestFactor = 1.5;

    /// <summary>Characteristic pressure that a module is meant for, held as its maker allows.</summary>
    /// <param name="testNPerM2">Test load of its card for this way of holding and this direction [N/m2], 0 to 20,000.</param>
    /// <param name="safetyFactor">Safety between both, 1 to 3.</param>
    /// <returns>Allowed pressure [N/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>IEC 61215-2, test MQT 16 (from memory)</source>
    public static double AllowedNPerM2(double testNPerM2, double safetyFactor)
    {
        Within.Require(testNPerM2, 0, 20_000, "N/m2");
        Within.Require(safetyFactor, 1, 3, "");
        return testNPerM2 / safetyFactor;
    }

    /// <summary>Utilisation of the module itself.</summary>
    /// <param name="pressureNPerM2">Characteristic pressure of the module's zone, by size [N/m2], 0 to 20,000.</param>
    /// <param name="testNPerM2">Test load of its card for this way of holding and this direction [N/m2], 1 to 20,000.</param>
    /// <param name="safetyFactor">Safety between test and design load, 1 to 3.</param>
    /// <returns>The check.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>IEC 61215-2, test MQT 16 (from memory); the zones of EN 1991-1-4:2005, table 7.6</source>
    public static CheckResult Module(double pressureNPerM2, double testNPerM2, double safetyFactor = TestFactor)
    {
        Within.Require(pressureNPerM2, 0, 20_000, "N/m2");
        Within.Require(testNPerM2, 1, 20_000, "N/m2");
        return new(
            pressureNPerM2 / AllowedNPerM2(testNPerM2, safetyFactor),
            "module's card: test load over the safety factor"
        );
    }

    /// <summary>Load that a module brings to a millimetre of a holding edge; its two edges share it.</summary>
    /// <param name="pressureNPerM2">Pressure [N/m2], 0 to 20,000.</param>
    /// <param name="betweenMm">Distance between the two edges that hold it [mm], 100 to 3,000; when all four hold it, that of the long edges.</param>
    /// <returns>p b/2 [N/mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics; with four edges, the peak of the 45 degree shares</source>
    public static double EdgeNPerMm(double pressureNPerM2, double betweenMm)
    {
        Within.Require(pressureNPerM2, 0, 20_000, "N/m2");
        Within.Require(betweenMm, 100, 3_000, "mm");
        return pressureNPerM2 * 1e-6 * betweenMm / 2;
    }

    /// <summary>The lip as a plate that stands out from the web and is bent by the module's edge.</summary>
    /// <param name="grade">Steel of the lip.</param>
    /// <param name="edgeNPerMm">Design load of a millimetre of edge [N/mm], 0 to 1,000.</param>
    /// <param name="leverMm">From the face of the upright leg to the line of the load [mm], 1 to 250; the lip's toe is the safe side.</param>
    /// <param name="thicknessMm">Thickness of the lip [mm], 1 to 40.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>q e/(t² f_y/(4 γ_M0)).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1993-1-1:2005, 6.2.5: plastic bending of a plate, per millimetre; no help from its neighbours along the lip</source>
    public static CheckResult Lip(
        SteelGrade grade,
        double edgeNPerMm,
        double leverMm,
        double thicknessMm,
        SteelFactors? factors = null
    )
    {
        Within.Require(edgeNPerMm, 0, 1_000, "N/mm");
        Within.Require(leverMm, 1, 250, "mm");
        Within.Require(thicknessMm, 1, 40, "mm");
        var yield = grade.YieldNPerMm2 / (factors ?? SteelFactors.Recommended).SectionFactor;
        return new(edgeNPerMm * leverMm / (thicknessMm * thicknessMm * yield / 4), "EN 1993-1-1:2005, 6.2.5, lip");
    }

    /// <summary>Pressure of the lip on the module's frame.</summary>
    /// <param name="edgeNPerMm">Design load of a millimetre of edge [N/mm], 0 to 1,000.</param>
    /// <param name="coverMm">Breadth on which they touch [mm], 1 to 250; a third of the lip's cover when the frame may tilt.</param>
    /// <returns>Pressure [N/mm2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics</source>
    public static double BearingNPerMm2(double edgeNPerMm, double coverMm)
    {
        Within.Require(edgeNPerMm, 0, 1_000, "N/mm");
        Within.Require(coverMm, 1, 250, "mm");
        return edgeNPerMm / coverMm;
    }

    /// <summary>Force on one clamp.</summary>
    /// <param name="pressureNPerM2">Pressure [N/m2], 0 to 20,000.</param>
    /// <param name="areaM2">Area of a module [m2], 0.1 to 5.</param>
    /// <param name="clampCount">Clamps that hold one module, 2 to 12.</param>
    /// <param name="sharedCount">Modules that the clamp holds, 1 to 2: 1 at the end of a row, 2 within it.</param>
    /// <returns>Force [N].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics: the clamps of a module share its load evenly</source>
    public static double ClampN(double pressureNPerM2, double areaM2, int clampCount, int sharedCount)
    {
        Within.Require(pressureNPerM2, 0, 20_000, "N/m2");
        Within.Require(areaM2, 0.1, 5, "m2");
        Within.RequireCount(clampCount, 2, 12);
        Within.RequireCount(sharedCount, 1, 2);
        return pressureNPerM2 * areaM2 / clampCount * sharedCount;
    }

    /// <summary>Utilisation of a clamp.</summary>
    /// <param name="forceN">Design force on it [N], 0 to 100,000.</param>
    /// <param name="allowedN">Design resistance of its card [N], 1 to 100,000.</param>
    /// <returns>The check.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>The clamp's card</source>
    public static CheckResult Clamp(double forceN, double allowedN)
    {
        Within.Require(forceN, 0, 100_000, "N");
        Within.Require(allowedN, 1, 100_000, "N");
        return new(forceN / allowedN, "clamp's card");
    }

    /// <summary>The working of the module's own check.</summary>
    /// <param name="pressureNPerM2">Characteristic pressure of the module's zone [N/m2].</param>
    /// <param name="testNPerM2">Test load of its card [N/m2].</param>
    /// <param name="safetyFactor">Safety between test and design load.</param>
    /// <returns>The lines.</returns>
    public static IReadOnlyList<Line> ModuleLines(double pressureNPerM2, double testNPerM2, double safetyFactor) =>
        [
            Step(
                "p_allowed",
                "test load/safety",
                Invariant($"{testNPerM2:0}/{safetyFactor:0.00}"),
                (AllowedNPerM2(testNPerM2, safetyFactor), "N/m²"),
                "IEC 61215-2, MQT 16"
            ),
            Step(
                "share",
                "p/p_allowed",
                Invariant($"{pressureNPerM2:0}/{AllowedNPerM2(testNPerM2, safetyFactor):0}"),
                (Module(pressureNPerM2, testNPerM2, safetyFactor).UtilisationShare, ""),
                "module's card"
            ),
        ];

    /// <summary>The working of the lip's check.</summary>
    /// <param name="grade">Steel of the lip.</param>
    /// <param name="edgeNPerMm">Design load of a millimetre of edge [N/mm].</param>
    /// <param name="leverMm">From the face of the upright leg to the line of the load [mm].</param>
    /// <param name="thicknessMm">Thickness of the lip [mm].</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The lines.</returns>
    public static IReadOnlyList<Line> LipLines(
        SteelGrade grade,
        double edgeNPerMm,
        double leverMm,
        double thicknessMm,
        SteelFactors? factors = null
    ) =>
        [
            Step(
                "share",
                "q e/(t² f_y/(4 γ_M0))",
                Invariant($"{edgeNPerMm:0.000} · {leverMm:0.0}/({thicknessMm:0.0}² · {grade.YieldNPerMm2:0}/4)"),
                (Lip(grade, edgeNPerMm, leverMm, thicknessMm, factors).UtilisationShare, ""),
                "EN 1993-1-1:2005, 6.2.5"
            ),
        ];

    private static Line Step(
        string symbol,
        string formula,
        string numbers,
        (double Value, string Unit) result,
        string source
    ) => new(symbol, formula, numbers, result.Value, result.Unit, "steel/module-holding", source);
}
