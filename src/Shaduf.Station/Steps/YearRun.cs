using System.Collections.Immutable;
using Shaduf.Sun;
using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>What one hour-by-hour run of a year needs; checked once, not each hour.</summary>
/// <param name="ModuleW">Power of one module by hour [W].</param>
/// <param name="ModulesKept">Number of modules times the share of their power that is kept.</param>
/// <param name="Table">Flow by power drawn from the array.</param>
/// <param name="DrawM3">Water drawn by hour [m³].</param>
/// <param name="UsefulM3">Useful volume of the tank [m³].</param>
public sealed record YearInputs(
    ImmutableArray<double> ModuleW,
    double ModulesKept,
    PumpTable Table,
    ImmutableArray<double> DrawM3,
    double UsefulM3
)
{
    /// <summary>Levels of the tank at which pump and outlet stop.</summary>
    public TankStops Stops { get; init; } = TankStops.None;

    /// <summary>What may be taken from the source, month by month.</summary>
    public SourceLimits Limits { get; init; } = SourceLimits.None;
}

/// <summary>Hourly record of a year run.</summary>
/// <param name="ArrayW">Power that the array could give [W].</param>
/// <param name="PumpedM3">Water pumped into the tank [m³].</param>
/// <param name="DeliveredM3">Water that the uses received [m³].</param>
/// <param name="LevelM3">Useful water in the tank at the hour's end [m³].</param>
public sealed record YearTrace(double[] ArrayW, double[] PumpedM3, double[] DeliveredM3, double[] LevelM3)
{
    /// <summary>Longest time in which water was asked for and less came, hours without demand counted in [h].</summary>
    /// <param name="drawM3">Water asked for by hour [m³].</param>
    /// <returns>Time from the first short hour to the last one before water came again [h].</returns>
    public int LongestShortageH(ImmutableArray<double> drawM3)
    {
        var (longest, began) = (0, -1);
        for (var hour = 0; hour < drawM3.Length; hour++)
        {
            if (!(drawM3[hour] > 0))
            {
                continue;
            }

            if (DeliveredM3[hour] >= drawM3[hour] - 1e-9)
            {
                began = -1;
                continue;
            }

            began = began < 0 ? hour : began;
            longest = Math.Max(longest, hour - began + 1);
        }

        return longest;
    }

    /// <summary>An empty record of a year.</summary>
    /// <returns>The record.</returns>
    public static YearTrace Empty() =>
        new(
            new double[YearCalendar.HourCount],
            new double[YearCalendar.HourCount],
            new double[YearCalendar.HourCount],
            new double[YearCalendar.HourCount]
        );
}

/// <summary>Monthly sums of a year run [m³ in the month].</summary>
/// <param name="DemandM3">Water asked for.</param>
/// <param name="DeliveredM3">Water that the uses received.</param>
/// <param name="PumpedM3">Water pumped into the tank.</param>
/// <param name="PumpableM3">Water that could have been pumped with a tank that is never full.</param>
/// <param name="StartM3">Water in the tank when the year began [m³].</param>
/// <param name="EndM3">Water in the tank when it ended [m³].</param>
public sealed record YearRun(
    ImmutableArray<double> DemandM3,
    ImmutableArray<double> DeliveredM3,
    ImmutableArray<double> PumpedM3,
    ImmutableArray<double> PumpableM3,
    double StartM3,
    double EndM3
)
{
    /// <summary>Share of the demand met in a month.</summary>
    /// <param name="month">Month, 0 to 11.</param>
    /// <returns>Share; 1 in a month without demand.</returns>
    public double MetShare(int month) => DemandM3[month] > 0 ? DeliveredM3[month] / DemandM3[month] : 1;

    /// <summary>The month in which the smallest share of the demand is met, 0 to 11.</summary>
    public int WorstMonth => Enumerable.Range(0, 12).MinBy(MetShare);

    /// <summary>Share of the demand met in the worst month.</summary>
    public double WorstShare => MetShare(WorstMonth);

    /// <summary>Share of the year's demand that is met; 1 without demand.</summary>
    public double YearShare => DemandM3.Sum() is > 0 and var asked ? DeliveredM3.Sum() / asked : 1;

    /// <summary>Runs the year: what the array pumps hour by hour, and a tank held against it.</summary>
    /// <param name="inputs">What the run needs.</param>
    /// <param name="trace">Where the hours are recorded; null to keep only the sums.</param>
    /// <returns>The monthly sums.</returns>
    /// <source>Water balance of the tank, hour by hour.</source>
    public static YearRun Run(YearInputs inputs, YearTrace? trace = null)
    {
        var room = new YearRoom();
        room.Pump(inputs.ModuleW, inputs.ModulesKept, inputs.Table, inputs.Limits);
        room.Hold(inputs.DrawM3, inputs.UsefulM3, inputs.Stops, inputs.Limits, trace);
        for (var hour = 0; trace is not null && hour < inputs.ModuleW.Length; hour++)
        {
            trace.ArrayW[hour] = inputs.ModuleW[hour] * inputs.ModulesKept;
        }

        return new(
            [.. room.DemandM3],
            [.. room.DeliveredM3],
            [.. room.PumpedM3],
            [.. room.PumpableM3],
            room.StartM3,
            room.EndM3
        );
    }
}
