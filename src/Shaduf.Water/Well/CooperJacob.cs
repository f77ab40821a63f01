using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>One reading of a test at constant rate.</summary>
/// <param name="TimeS">Time since pumping began [s].</param>
/// <param name="DrawdownM">Fall of the level below rest [m].</param>
public readonly record struct TimedDrawdown(double TimeS, double DrawdownM);

/// <summary>The straight line of drawdown over the logarithm of time, late in a test at constant rate.</summary>
/// <param name="FlowM3PerS">Rate [m3/s].</param>
/// <param name="SlopeM">Fall for each tenfold of time [m].</param>
/// <param name="ZeroS">Time at which the line cuts zero drawdown [s].</param>
/// <param name="DeterminationCoefficient">r2 of the line [ratio].</param>
/// <param name="LateSlopeFactor">Slope of the later half over that of the earlier half of the readings used; 2 and more: a barrier is felt.</param>
/// <source>Cooper and Jacob 1946; Kruseman and de Ridder 1994, ILRI Publication 47, chapter 3</source>
public sealed record CooperJacob(
    double FlowM3PerS,
    double SlopeM,
    double ZeroS,
    double DeterminationCoefficient,
    double LateSlopeFactor
)
{
    /// <summary>Transmissivity of the aquifer [m2/s].</summary>
    public double TransmissivityM2PerS => Math.Log(10) * FlowM3PerS / (4 * Math.PI * SlopeM);

    /// <summary>Fall for each tenfold of time and each flow [s/m2].</summary>
    public double SlopeSPerM2 => SlopeM / FlowM3PerS;

    /// <summary>The line through readings.</summary>
    /// <param name="flowM3PerS">Rate held [m3/s], 0.000001 to 1.</param>
    /// <param name="readings">Three or more readings, in order of time [s], above 0; drawdowns 0 to 500 [m].</param>
    /// <returns>The line; null when the level does not fall with time, so that there is none.</returns>
    /// <exception cref="ArgumentException">Fewer than three readings, or times that do not grow.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range, or NaN.</exception>
    /// <source>Cooper and Jacob 1946, s = 2.303 Q/(4 pi T) log10(2.25 T t/(r2 S)); least squares of s on log10 t</source>
    public static CooperJacob? Fit(double flowM3PerS, IReadOnlyList<TimedDrawdown> readings)
    {
        Within.Require(flowM3PerS, 1e-6, 1, "m3/s");
        foreach (var reading in readings)
        {
            Within.Require(reading.TimeS, double.Epsilon, 1e9, "s", nameof(readings));
            Within.Require(reading.DrawdownM, 0, 500, "m", nameof(readings));
        }

        if (readings.Count < 3 || readings.Zip(readings.Skip(1)).Any(pair => pair.Second.TimeS <= pair.First.TimeS))
        {
            throw new ArgumentException("three readings or more at growing times are needed", nameof(readings));
        }

        var (slope, atOneS, determination) = Line(readings);
        if (!(slope > 0))
        {
            return null;
        }

        var half = readings.Count / 2;
        var late = readings.Count < 6 ? 1 : Line([.. readings.Skip(half)]).Slope / Line([.. readings.Take(half)]).Slope;
        return new(flowM3PerS, slope, Math.Pow(10, -atOneS / slope), determination, double.IsFinite(late) ? late : 1);
    }

    /// <summary>Storage coefficient, from a well that is watched at a distance; from the pumped well itself it means nothing.</summary>
    /// <param name="distanceM">Distance from the pumped well [m], 0.1 to 100000.</param>
    /// <returns>Storage coefficient [ratio].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>Cooper and Jacob 1946, S = 2.25 T t0/r2</source>
    public double StorageCoefficient(double distanceM)
    {
        Within.Require(distanceM, 0.1, 100_000, "m");
        return 2.25 * TransmissivityM2PerS * ZeroS / (distanceM * distanceM);
    }

    /// <summary>Drawdown at a later time, from a reading.</summary>
    /// <param name="drawdownM">Drawdown read [m], 0 to 500.</param>
    /// <param name="timeS">Time of the reading [s], above 0 to 1e10.</param>
    /// <param name="laterS">Later time [s], the time of the reading to 1e10.</param>
    /// <returns>Drawdown [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>s(t2) = s(t1) + slope log10(t2/t1), Cooper and Jacob 1946</source>
    public double LaterM(double drawdownM, double timeS, double laterS)
    {
        Within.Require(drawdownM, 0, 500, "m");
        Within.Require(timeS, double.Epsilon, 1e10, "s");
        Within.Require(laterS, timeS, 1e10, "s");
        return drawdownM + (SlopeM * Math.Log10(laterS / timeS));
    }

    private static (double Slope, double AtOneS, double Determination) Line(IReadOnlyList<TimedDrawdown> readings)
    {
        var logs = readings.Select(reading => Math.Log10(reading.TimeS)).ToList();
        var (meanLog, mean) = (logs.Average(), readings.Average(reading => reading.DrawdownM));
        var spread = logs.Sum(log => Math.Pow(log - meanLog, 2));
        var common = logs.Zip(readings, (log, reading) => (log - meanLog) * (reading.DrawdownM - mean)).Sum();
        var total = readings.Sum(reading => Math.Pow(reading.DrawdownM - mean, 2));
        var slope = common / spread;
        return (slope, mean - (slope * meanLog), total > 0 ? common * common / (spread * total) : 0);
    }
}
