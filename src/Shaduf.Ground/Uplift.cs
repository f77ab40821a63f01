using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>A block of concrete that holds a column down by its weight alone.</summary>
public static class Uplift
{
    /// <summary>Weight of plain concrete in air [kN/m3].</summary>
    /// <source>EN 1991-1-1:2002, table A.1</source>
    public const double ConcreteKNPerM3 = 24;

    /// <summary>Weight of plain concrete below water [kN/m3].</summary>
    public const double DrownedKNPerM3 = 14;

    /// <summary>Factor on the weight of block and rack, which hold.</summary>
    public const double HoldingFactor = 0.9;

    /// <summary>Factor on the wind, which lifts.</summary>
    public const double LiftingFactor = 1.5;

    /// <summary>Weight of a block, part of which may stand in water.</summary>
    /// <param name="concreteM3">All of its concrete [m3], 0 to 100.</param>
    /// <param name="drownedShare">Share of it below water, 0 to 1.</param>
    /// <returns>Weight [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1991-1-1:2002, table A.1; buoyancy with 10 kN/m3 of water</source>
    public static double WeightKN(double concreteM3, double drownedShare)
    {
        Within.Require(concreteM3, 0, 100, "m3");
        Within.Require(drownedShare, 0, 1, "");
        return concreteM3 * ((ConcreteKNPerM3 * (1 - drownedShare)) + (DrownedKNPerM3 * drownedShare));
    }

    /// <summary>Pull that is left for the blocks once the rack's own weight has held what it can.</summary>
    /// <param name="windUpKN">Characteristic lift of the wind [kN], 0 to 10000.</param>
    /// <param name="rackKN">Weight of steel and modules [kN], 0 to 10000.</param>
    /// <returns>Design pull [kN]; negative when the rack stays down by itself.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1997-1:2004, 2.4.7.4 (UPL) with EN 1990 factors 1.5 and 0.9</source>
    public static double PullKN(double windUpKN, double rackKN)
    {
        Within.Require(windUpKN, 0, 10_000, "kN");
        Within.Require(rackKN, 0, 10_000, "kN");
        return (LiftingFactor * windUpKN) - (HoldingFactor * rackKN);
    }

    /// <summary>Concrete whose weight holds a pull.</summary>
    /// <param name="pullKN">Design pull [kN], 0 to 1000.</param>
    /// <param name="drownedShare">Share of the concrete below water, 0 to 1.</param>
    /// <returns>Concrete [m3].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1997-1:2004, 2.4.7.4 (UPL): pull at most 0.9 of the weight; friction of the ground left out</source>
    public static double ConcreteM3(double pullKN, double drownedShare)
    {
        Within.Require(pullKN, 0, 1000, "kN");
        return pullKN / (HoldingFactor * WeightKN(1, drownedShare));
    }
}
