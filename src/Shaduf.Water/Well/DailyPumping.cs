using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>What days of pumping with nights of recovery between them leave of the water level.</summary>
public static class DailyPumping
{
    /// <summary>More drawdown at the end of a pumping day than at the end of a step of the step test.</summary>
    /// <param name="slopeSPerM2">Fall for each tenfold of time and each flow [s/m2], 0 to 1e9.</param>
    /// <param name="stepS">Length of a step [s], 300 to 100000.</param>
    /// <param name="dayS">Time pumped in a day [s], 300 to 86400, not less than a step.</param>
    /// <returns>Drawdown for each flow [s/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Cooper and Jacob 1946: slope log10(t_day/t_step)</source>
    public static double DaySPerM2(double slopeSPerM2, double stepS, double dayS)
    {
        Within.Require(slopeSPerM2, 0, 1e9, "s/m2");
        Within.Require(stepS, 300, 100_000, "s");
        Within.Require(dayS, stepS, 86_400, "s");
        return slopeSPerM2 * Math.Log10(dayS / stepS);
    }

    /// <summary>What the days before still take from the level in the morning: each began to recover when its pump stopped.</summary>
    /// <param name="slopeSPerM2">Fall for each tenfold of time and each flow [s/m2], 0 to 1e9.</param>
    /// <param name="volumeM3PerDay">Water pumped each day [m3/d], 0 to 20000.</param>
    /// <param name="hoursPerDayH">Time pumped in a day [h], 1 to 24.</param>
    /// <param name="dayCount">Days of pumping without recharge, 1 to 400.</param>
    /// <returns>Residual drawdown [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>superposition of Cooper and Jacob 1946: slope Q sum of log10(1 + t_on/(24 h i)) over the days before</source>
    public static double ResidualM(double slopeSPerM2, double volumeM3PerDay, double hoursPerDayH, int dayCount)
    {
        Within.Require(slopeSPerM2, 0, 1e9, "s/m2");
        Within.Require(volumeM3PerDay, 0, 20_000, "m3/d");
        Within.Require(hoursPerDayH, 1, 24, "h");
        Within.RequireCount(dayCount, 1, 400);
        var sum = 0.0;
        for (var day = 1; day < dayCount; day++)
        {
            sum += Math.Log10(1 + (hoursPerDayH / (24 * day)));
        }

        return slopeSPerM2 * volumeM3PerDay / (hoursPerDayH * 3600) * sum;
    }
}
