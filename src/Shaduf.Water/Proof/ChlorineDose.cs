using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Chlorine for a well or a tank.</summary>
public static class ChlorineDose
{
    /// <summary>Free chlorine for a well or a borehole, at least half a day [mg/L]; AWWA C654 style, from memory.</summary>
    public const double WellMgPerL = 50;

    /// <summary>Free chlorine for a full tank, six hours [mg/L]; AWWA C652, from memory.</summary>
    public const double TankMgPerL = 50;

    /// <summary>Chlorine in high-test hypochlorite, fresh.</summary>
    public const double HypochloriteShare = 0.65;

    /// <summary>Gravel pack and fissures hold as much again; from memory.</summary>
    public const double GravelFactor = 2;

    /// <summary>Water that stands in a well.</summary>
    /// <param name="boreMm">Inner diameter [mm], 30 to 10000.</param>
    /// <param name="columnM">Height of the water [m], 0 to 1000.</param>
    /// <returns>Volume [L].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>geometry</source>
    public static double ColumnL(double boreMm, double columnM)
    {
        Within.Require(boreMm, 30, 10_000, "mm");
        Within.Require(columnM, 0, 1000, "m");
        return Math.PI / 4 * Math.Pow(boreMm / 1000, 2) * columnM * 1000;
    }

    /// <summary>Product of which a volume of water takes its chlorine.</summary>
    /// <param name="volumeL">Water [L], 0 to 1e8.</param>
    /// <param name="doseMgPerL">Free chlorine wanted [mg/L], 0.1 to 500.</param>
    /// <param name="chlorineShare">Chlorine in the product, 0.01 to 1.</param>
    /// <returns>Product [g].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>mass balance; doses of WHO and UNHCR 1997 and AWWA as the published rows say</source>
    public static double ProductG(double volumeL, double doseMgPerL, double chlorineShare) =>
        1000 * PipeFlush.ProductKg(volumeL, doseMgPerL, chlorineShare);
}
