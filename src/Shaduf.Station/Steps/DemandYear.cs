using System.Collections.Immutable;
using Shaduf.Sun;
using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>One use of water through the year, at the place of use.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Says">How it was computed.</param>
/// <param name="M3PerDay">Water in each month, January first [m³/d].</param>
/// <param name="Pattern">Hours of draw.</param>
/// <param name="IsDrinking">Whether people or animals go short when it fails (all but watered plots).</param>
public sealed record UseYear(
    string Name,
    string Says,
    IReadOnlyList<double> M3PerDay,
    DrawPattern Pattern,
    bool IsDrinking
)
{
    /// <summary>How its months were worked out; null when all are the same.</summary>
    public WorkingSheet? Working { get; init; }
}

/// <summary>What the station must deliver, use by use and hour by hour, in the design year.</summary>
/// <param name="Uses">The uses, at the place of use.</param>
/// <param name="M3PerDay">Water to be produced in each month, losses included [m³/d].</param>
/// <param name="HourM3">Water drawn from the tank in each hour of the year, losses included [m³].</param>
/// <param name="PeakDayM3">Water to be produced on the peak day of the largest month [m³].</param>
/// <param name="Workings">How use by use and the largest month were worked out.</param>
public sealed record DemandYear(
    IReadOnlyList<UseYear> Uses,
    IReadOnlyList<double> M3PerDay,
    ImmutableArray<double> HourM3,
    double PeakDayM3,
    IReadOnlyList<WorkingSheet> Workings
)
{
    /// <summary>The month with the largest demand, 0 to 11.</summary>
    public int PeakMonth => Enumerable.Range(0, 12).MaxBy(month => M3PerDay[month]);

    /// <summary>Water drawn in each month, January first [m³].</summary>
    /// <returns>Twelve volumes.</returns>
    public double[] MonthM3()
    {
        var sums = new double[12];
        for (var hour = 0; hour < HourM3.Length; hour++)
        {
            sums[YearCalendar.MonthOf(hour)] += HourM3[hour];
        }

        return sums;
    }

    /// <summary>Water produced for people, animals and fixed uses on the mean day of their largest month [m³/d].</summary>
    public double DrinkingM3PerDay { get; init; }

    /// <summary>Adds up the uses of a brief in its design year.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <returns>The demand.</returns>
    public static DemandYear Of(Brief brief, Survey survey)
    {
        var uses = UsesOf(brief, survey).ToList();
        var production = Enumerable
            .Range(0, 12)
            .Select(month => Losses.ProductionM3(uses.Sum(use => use.M3PerDay[month]), survey["losses"]))
            .ToList();
        var byHour = new double[12, 24];
        foreach (var use in uses)
        {
            for (var month = 0; month < 12; month++)
            {
                for (var hour = 0; hour < 24; hour++)
                {
                    byHour[month, hour] +=
                        Losses.ProductionM3(use.M3PerDay[month], survey["losses"]) * use.Pattern.HourShares[hour];
                }
            }
        }

        var hours = ImmutableArray.CreateBuilder<double>(YearCalendar.HourCount);
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            hours.Add(byHour[YearCalendar.MonthOf(hour), hour % 24]);
        }

        var peak = Enumerable.Range(0, 12).MaxBy(month => production[month]);
        var peakM3 = Losses.ProductionM3(
            uses.Sum(use =>
                use.IsDrinking ? PeakDay.M3PerDay(use.M3PerDay[peak], survey["peak-day"]) : use.M3PerDay[peak]
            ),
            survey["losses"]
        );
        return new(
            uses,
            production,
            hours.MoveToImmutable(),
            peakM3,
            [
                DemandWorking.Largest(uses, peak, survey, peakM3),
                DemandWorking.Months(uses, survey["losses"]),
                .. uses.Select(use => use.Working).OfType<WorkingSheet>(),
            ]
        )
        {
            DrinkingM3PerDay = Enumerable
                .Range(0, 12)
                .Max(month =>
                    Losses.ProductionM3(
                        uses.Where(use => use.IsDrinking).Sum(use => use.M3PerDay[month]),
                        survey["losses"]
                    )
                ),
        };
    }

    internal static IEnumerable<UseYear> UsesOf(Brief brief, Survey survey)
    {
        var uses = brief.Uses;
        foreach (var heads in uses.People)
        {
            yield return Grown(heads.Name, heads.Count, survey.LitresOf(heads), uses.PatternOf(heads.Pattern), survey);
        }

        if (uses.School is { } school)
        {
            yield return Grown("school", school.Count, survey.LitresOf(school), uses.PatternOf(school.Pattern), survey);
        }

        if (uses.Clinic is { } clinic)
        {
            var pattern = uses.PatternOf(clinic.Pattern);
            yield return Grown(
                "clinic, out-patients",
                clinic.Outpatients,
                survey["outpatient-litres"],
                pattern,
                survey
            );
            yield return Grown("clinic, beds", clinic.Beds, survey["bed-litres"], pattern, survey);
        }

        foreach (var herd in uses.Livestock)
        {
            yield return HerdYear.Of(herd, survey.Climate.AirDegC, uses.PatternOf(herd.Pattern));
        }

        var field = uses.Plots.Count > 0 ? FieldYear.Of(brief.Site, survey) : null;
        foreach (var plot in uses.Plots)
        {
            var share = plot.ReachingShare ?? survey["plot-efficiency"];
            yield return PlotYear.Of(plot, field!, share, uses.PatternOf(plot.Pattern));
        }

        foreach (var use in uses.Fixed)
        {
            yield return Steady(use.Name, use.LPerDay / 1000, "the same every day", uses.PatternOf(use.Pattern));
        }
    }

    private static UseYear Grown(string name, double count, double litres, DrawPattern pattern, Survey survey)
    {
        var (years, growth) = (survey["design-years"], survey["growth"]);
        var later = Population.GeometricCount(count, growth, years);
        return Steady(
            name,
            later * litres / 1000,
            Invariant(
                $"{count:0} today, {later:0} in {years:0} years at {growth * 100:0.##} % a year; {litres:0.#} L/d each"
            ),
            pattern
        );
    }

    private static UseYear Steady(string name, double m3PerDay, string says, DrawPattern pattern) =>
        new(name, says, [.. Enumerable.Repeat(m3PerDay, 12)], pattern, true);
}
