using System.Collections.Immutable;
using Shaduf.Sun;
using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>Power of one module on one plane through the year, with its sums by month for quick bounds.</summary>
/// <param name="PowerW">Power by hour [W].</param>
internal sealed record ModuleYear(ImmutableArray<double> PowerW)
{
    private readonly double[] monthWh = ByMonth(PowerW, watts => watts);
    private readonly double[] litHours = ByMonth(PowerW, watts => watts > 0 ? 1 : 0);

    /// <summary>
    /// Fills in what can be pumped at most in each month [m³]: no watt-hour lifts more than the best one of the table,
    /// and no hour of light more than the full flow.
    /// </summary>
    public void MostPumpableM3(double modulesKept, PumpTable table, Span<double> mostM3)
    {
        for (var month = 0; month < 12; month++)
        {
            mostM3[month] = Math.Min(
                table.BestM3PerWh * modulesKept * monthWh[month],
                table.FullFlowM3PerH * litHours[month]
            );
        }
    }

    private static double[] ByMonth(ImmutableArray<double> powerW, Func<double, double> part)
    {
        var sums = new double[12];
        for (var hour = 0; hour < powerW.Length; hour++)
        {
            sums[YearCalendar.MonthOf(hour)] += part(powerW[hour]);
        }

        return sums;
    }
}
