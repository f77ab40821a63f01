using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Water for a plot from what its crop needs.</summary>
public static class CropWater
{
    private const double M2PerHa = 10_000;

    /// <summary>Share of the water that must pass through the roots to carry the salt away.</summary>
    /// <param name="waterDSPerM">Conductivity of the water [dS/m], 0 to 10.</param>
    /// <param name="soilDSPerM">Conductivity of the soil's extract that the crop bears [dS/m], 0.5 to 20.</param>
    /// <returns>Share [share]; 1 when the water is too salty for the crop.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-29 (Ayers and Westcot 1985), surface and sprinkler; from memory</source>
    public static double LeachingShare(double waterDSPerM, double soilDSPerM)
    {
        Within.Require(waterDSPerM, 0, 10, "dS/m");
        Within.Require(soilDSPerM, 0.5, 20, "dS/m");
        var rest = (5 * soilDSPerM) - waterDSPerM;
        return rest <= waterDSPerM ? 1 : waterDSPerM / rest;
    }

    /// <summary>Water to be brought to the field.</summary>
    /// <param name="netMmPerDay">What the crop needs beyond the rain [mm/d], 0 to 100.</param>
    /// <param name="reachingShare">Share of the water at the field that reaches the roots, 0.3 to 1.</param>
    /// <param name="leachingShare">Share that must pass through the roots, 0 to 0.9.</param>
    /// <returns>Water [mm/d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>NIR/[Ea (1 - LR)], FAO irrigation practice; conveyance in a closed pipe without loss</source>
    public static double GrossMmPerDay(double netMmPerDay, double reachingShare, double leachingShare)
    {
        Within.Require(netMmPerDay, 0, 100, "mm/d");
        Within.Require(reachingShare, 0.3, 1, "of the water");
        Within.Require(leachingShare, 0, 0.9, "of the water");
        return netMmPerDay / reachingShare / (1 - leachingShare);
    }

    /// <summary>Volume for a plot.</summary>
    /// <param name="grossMmPerDay">Water to be brought to the field [mm/d], 0 to 1000.</param>
    /// <param name="areaM2">Its area [m2], 0 to 10000000.</param>
    /// <returns>Water [m3/d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>10 m3 a hectare for each millimetre</source>
    public static double VolumeM3PerDay(double grossMmPerDay, double areaM2)
    {
        Within.Require(grossMmPerDay, 0, 1000, "mm/d");
        Within.Require(areaM2, 0, 10_000_000, "m2");
        return 10 * grossMmPerDay * areaM2 / M2PerHa;
    }
}
