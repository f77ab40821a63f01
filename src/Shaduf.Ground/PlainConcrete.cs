using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>Concrete without bars: what it bears in tension and shear, and how deep a pad of it must be.</summary>
public static class PlainConcrete
{
    private const double MaterialFactor = 1.5;
    private const double PlainTensionFactor = 0.8;

    /// <summary>Design strength in compression, with the usual factor for long loads.</summary>
    /// <param name="cylinderNPerMm2">Cylinder strength f_ck at 28 days [N/mm2], 8 to 50.</param>
    /// <returns>f_cd [N/mm2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1992-1-1:2004, equation 3.15 with α_cc 0.85</source>
    public static double CompressionNPerMm2(double cylinderNPerMm2)
    {
        Within.Require(cylinderNPerMm2, 8, 50, "N/mm2");
        return 0.85 * cylinderNPerMm2 / MaterialFactor;
    }

    /// <summary>Design strength in tension without bars.</summary>
    /// <param name="cylinderNPerMm2">Cylinder strength f_ck at 28 days [N/mm2], 8 to 50.</param>
    /// <returns>f_ctd [N/mm2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1992-1-1:2004, table 3.1 (0.7 · 0.30 f_ck^(2/3)) and 12.3.1 with α_ct,pl 0.8; from memory</source>
    public static double TensionNPerMm2(double cylinderNPerMm2)
    {
        Within.Require(cylinderNPerMm2, 8, 50, "N/mm2");
        return PlainTensionFactor * 0.7 * 0.30 * Math.Pow(cylinderNPerMm2, 2.0 / 3) / MaterialFactor;
    }

    /// <summary>Force that a face of concrete passes in shear.</summary>
    /// <param name="faceMm2">The face [mm2], 0 to 1e8.</param>
    /// <param name="cylinderNPerMm2">Cylinder strength f_ck at 28 days [N/mm2], 8 to 50.</param>
    /// <returns>Force [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1992-1-1:2004, 12.6.3: 1.5 V/A at most f_cvd, which is f_ctd where nothing presses; from memory</source>
    public static double ShearKN(double faceMm2, double cylinderNPerMm2)
    {
        Within.Require(faceMm2, 0, 1e8, "mm2");
        return faceMm2 * TensionNPerMm2(cylinderNPerMm2) / 1.5 / 1000;
    }

    /// <summary>Depth of a pad without bars for how far it reaches beyond its column.</summary>
    /// <param name="projectionMm">From the face of the column to the edge [mm], 0 to 5000.</param>
    /// <param name="pressureKPa">Design pressure of the ground [kPa], 0 to 1000.</param>
    /// <param name="cylinderNPerMm2">Cylinder strength f_ck at 28 days [N/mm2], 8 to 50.</param>
    /// <returns>Least depth [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1992-1-1:2004, equation 12.13; from memory</source>
    public static double PadDepthMm(double projectionMm, double pressureKPa, double cylinderNPerMm2)
    {
        Within.Require(projectionMm, 0, 5000, "mm");
        Within.Require(pressureKPa, 0, 1000, "kPa");
        return projectionMm * Math.Sqrt(3 * pressureKPa / 1000 / TensionNPerMm2(cylinderNPerMm2)) / 0.85;
    }
}
