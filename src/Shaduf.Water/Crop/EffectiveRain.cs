using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Part of a month's rain that the crop can use; never counted for more than the crop needs.</summary>
public static class EffectiveRain
{
    /// <summary>The cautious rule for design on slopes below 4 to 5 %.</summary>
    /// <param name="rainMmPerMonth">Rain of the month [mm/month], 0 to 3000.</param>
    /// <returns>Usable rain [mm/month].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>Brouwer and Heibloem 1986, FAO Irrigation Water Management, Training manual 3</source>
    public static double FaoMmPerMonth(double rainMmPerMonth)
    {
        Within.Require(rainMmPerMonth, 0, 3000, "mm/month");
        return Math.Max(0, rainMmPerMonth > 75 ? (0.8 * rainMmPerMonth) - 25 : (0.6 * rainMmPerMonth) - 10);
    }

    /// <summary>The rule of the United States Soil Conservation Service, for comparison: it counts more rain.</summary>
    /// <param name="rainMmPerMonth">Rain of the month [mm/month], 0 to 3000.</param>
    /// <returns>Usable rain [mm/month].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>USDA-SCS monthly formula (from memory)</source>
    public static double ScsMmPerMonth(double rainMmPerMonth)
    {
        Within.Require(rainMmPerMonth, 0, 3000, "mm/month");
        return rainMmPerMonth <= 250
            ? rainMmPerMonth * (125 - (0.2 * rainMmPerMonth)) / 125
            : 125 + (0.1 * rainMmPerMonth);
    }
}
