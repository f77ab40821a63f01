using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Buckling curve: how crooked and stressed a kind of section comes from the mill.</summary>
public enum BucklingCurve
{
    /// <summary>a0: hot-finished hollow sections of S460.</summary>
    A0,

    /// <summary>a: hot-finished hollow sections.</summary>
    A,

    /// <summary>b: angles.</summary>
    B,

    /// <summary>c: cold-formed hollow sections, solid bars.</summary>
    C,

    /// <summary>d.</summary>
    D,
}

/// <summary>How far buckling cuts the resistance of a member in compression.</summary>
public static class FlexuralBuckling
{
    /// <summary>Slenderness: buckling length over radius of gyration, against that at which Euler's stress is the yield.</summary>
    /// <param name="bucklingMm">Buckling length [mm], 0 to 200,000.</param>
    /// <param name="gyrationMm">Radius of gyration [mm], 1 to 1,000.</param>
    /// <param name="yieldNPerMm2">Yield strength [N/mm2], 100 to 700.</param>
    /// <returns>Relative slenderness.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1993-1-1:2005, equation 6.50</source>
    public static double SlendernessRatio(double bucklingMm, double gyrationMm, double yieldNPerMm2)
    {
        Within.Require(bucklingMm, 0, 200_000, "mm");
        Within.Require(gyrationMm, 1, 1_000, "mm");
        Within.Require(yieldNPerMm2, 100, 700, "N/mm2");
        var yieldRatio = Math.PI * Math.Sqrt(FrameModel.SteelElasticModulusNPerMm2 / yieldNPerMm2);
        return bucklingMm / gyrationMm / yieldRatio;
    }

    /// <summary>Share of the resistance that buckling leaves.</summary>
    /// <param name="slendernessRatio">Relative slenderness, 0 to 200.</param>
    /// <param name="curve">Buckling curve.</param>
    /// <returns>χ; 1 up to a slenderness of 0.2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1993-1-1:2005, equation 6.49 and table 6.1</source>
    public static double ReductionFactor(double slendernessRatio, BucklingCurve curve)
    {
        Within.Require(slendernessRatio, 0, 200, "");
        if (slendernessRatio <= 0.2)
        {
            return 1;
        }

        var squared = slendernessRatio * slendernessRatio;
        var phi = 0.5 * (1 + (Imperfection(curve) * (slendernessRatio - 0.2)) + squared);
        return Math.Min(1, 1 / (phi + Math.Sqrt((phi * phi) - squared)));
    }

    private static double Imperfection(BucklingCurve curve) =>
        curve switch
        {
            BucklingCurve.A0 => 0.13,
            BucklingCurve.A => 0.21,
            BucklingCurve.B => 0.34,
            BucklingCurve.C => 0.49,
            _ => 0.76,
        };
}
