using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>Stick electrodes to buy for a mass of weld metal.</summary>
public static class Electrodes
{
    /// <summary>Electrodes bought, coating and stubs included.</summary>
    /// <param name="depositKg">Weld metal [kg], 0 to 10000.</param>
    /// <param name="efficiencyShare">Weld metal to electrodes bought, 0.40 to 0.75; 0.55 for planning, 0.62 for rods of 350 mm burnt down to 50 mm.</param>
    /// <returns>Electrodes [kg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Welding makers' planning tables: electrodes = deposit/(1 - loss)</source>
    public static double MassKg(double depositKg, double efficiencyShare)
    {
        Within.Require(depositKg, 0, 10_000, "kg");
        Within.Require(efficiencyShare, 0.40, 0.75, "");
        return depositKg / efficiencyShare;
    }

    /// <summary>Core wire that one rod melts, its stub thrown away.</summary>
    /// <param name="coreMm">Diameter of the core [mm], 1.6 to 6.</param>
    /// <param name="lengthMm">Length of the rod [mm], 200 to 500.</param>
    /// <param name="stubMm">Stub thrown away [mm], 30 to 100; 50 usual.</param>
    /// <returns>Core melted [kg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>A maker's welding guide, 4.2.1: volume of the wire melted</source>
    public static double CoreKg(double coreMm, double lengthMm, double stubMm)
    {
        Within.Require(coreMm, 1.6, 6, "mm");
        Within.Require(lengthMm, 200, 500, "mm");
        Within.Require(stubMm, 30, 100, "mm");
        return Math.PI / 4 * coreMm * coreMm * (lengthMm - stubMm) * 1e-9 * FilletWeld.DensityKgPerM3;
    }

    /// <summary>Rods for a mass of weld metal.</summary>
    /// <param name="depositKg">Weld metal [kg], 0 to 10000.</param>
    /// <param name="coreKg">Core that a rod melts [kg], 0.001 to 0.2.</param>
    /// <param name="recoveryShare">Weld metal to core melted, 0.5 to 2; 0.90 for rods without iron powder.</param>
    /// <returns>Whole rods.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Mass balance of the core</source>
    public static double RodCount(double depositKg, double coreKg, double recoveryShare)
    {
        Within.Require(depositKg, 0, 10_000, "kg");
        Within.Require(coreKg, 0.001, 0.2, "kg");
        Within.Require(recoveryShare, 0.5, 2, "");
        return Math.Ceiling((depositKg / (coreKg * recoveryShare)) - 1e-9);
    }

    /// <summary>Hours at the weld, arc and all else.</summary>
    /// <param name="depositKg">Weld metal [kg], 0 to 10000.</param>
    /// <param name="rateKgPerH">Weld metal laid while the arc burns [kg/h], 0.2 to 5.</param>
    /// <param name="arcShare">Share of the time that it burns, 0.05 to 1; 0.30 in the shop, 0.15 to 0.20 on site.</param>
    /// <returns>Time [h].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Deposit rate and operating factor of welding handbooks</source>
    public static double TimeH(double depositKg, double rateKgPerH, double arcShare)
    {
        Within.Require(depositKg, 0, 10_000, "kg");
        Within.Require(rateKgPerH, 0.2, 5, "kg/h");
        Within.Require(arcShare, 0.05, 1, "");
        return depositKg / rateKgPerH / arcShare;
    }

    /// <summary>The rod for a fillet: thin walls and small legs need a thin one.</summary>
    /// <param name="legMm">Leg of the fillet [mm], 1 to 30.</param>
    /// <returns>Diameter of the core [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside its range, or NaN.</exception>
    /// <source>2.5 mm to a leg of 4 mm, 3.2 mm above, 4 mm above 8 mm: common practice, no source</source>
    public static double RodMm(double legMm)
    {
        Within.Require(legMm, 1, 30, "mm");
        return legMm switch
        {
            <= 4 => 2.5,
            <= 8 => 3.2,
            _ => 4,
        };
    }
}
