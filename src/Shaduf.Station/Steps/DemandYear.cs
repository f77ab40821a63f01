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
);

/// <summary>What the station must deliver, use by use and hour by hour, in the design year.</summary>
/// <param name="Uses">The uses, at the place of use.</param>
/// <param name="M3PerDay">Water to be produced in each month, losses included [m³/d].</param>
/// <param name="HourM3">Water drawn from the tank in each hour of the year, losses included [m³].</param>
/// <param name="Working">How the largest month was worked out.</param>
public sealed record DemandYear(
    IReadOnlyList<UseYear> Uses,
    IReadOnlyList<double> M3PerDay,
    ImmutableArray<double> HourM3,
    WorkingSheet Working
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
        var uses = UsesOf(brief.Uses, survey).ToList();
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

        return new(uses, production, hours.MoveToImmutable(), Show(uses, production, survey["losses"]))
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

    internal static IEnumerable<UseYear> UsesOf(UsesBrief uses, Survey survey)
    {
        var years = survey["design-years"];
        var growth = survey["growth"];
        UseYear Grown(string name, double count, double litres, string pattern)
        {
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

        if (uses.People is { } people)
        {
            yield return Grown("people", people.Count, survey["people-litres"], people.Pattern);
        }

        if (uses.School is { } school)
        {
            yield return Grown("school", school.Count, survey["school-litres"], school.Pattern);
        }

        if (uses.Clinic is { } clinic)
        {
            yield return Grown("clinic, out-patients", clinic.Outpatients, survey["outpatient-litres"], "daytime-even");
            yield return Grown("clinic, beds", clinic.Beds, survey["bed-litres"], "daytime-even");
        }

        foreach (var herd in uses.Livestock)
        {
            var litres = herd.EachLPerDay ?? survey[$"{herd.Animal}-litres"];
            yield return Steady(
                herd.Animal,
                herd.Count * litres / 1000,
                Invariant($"{herd.Count} head, {litres:0.#} L/d each, no growth"),
                "livestock"
            );
        }

        foreach (var plot in uses.Plots)
        {
            yield return Plot(plot, plot.EfficiencyShare ?? survey["plot-efficiency"]);
        }

        foreach (var use in uses.Fixed)
        {
            yield return Steady(use.Name, use.LPerDay / 1000, "the same every day", use.Pattern);
        }
    }

    private static UseYear Plot(PlotBrief plot, double efficiencyShare) =>
        new(
            plot.Crop,
            Invariant(
                $"{plot.AreaM2 / 10_000:0.##} ha; need from January on {string.Join(" ", plot.NeedMmPerDay.Select(mm => Invariant($"{mm:0.#}")))} mm/d over {efficiencyShare * 100:0} %"
            ),
            [.. plot.NeedMmPerDay.Select(mm => mm / 1000 * plot.AreaM2 / efficiencyShare)],
            DrawPattern.Named(plot.Pattern),
            false
        );

    private static UseYear Steady(string name, double m3PerDay, string says, string pattern) =>
        new(name, says, [.. Enumerable.Repeat(m3PerDay, 12)], DrawPattern.Named(pattern), true);

    private static Line UseLine(UseYear use, int month) =>
        new(
            "Q",
            use.IsDrinking ? "number x litres / 1000" : "need / 1000 x area / efficiency",
            use.Says,
            use.M3PerDay[month],
            "m3/d",
            "station/demand-year",
            use.Name
        );

    private static WorkingSheet Show(List<UseYear> uses, List<double> production, double lossShare)
    {
        var month = Enumerable.Range(0, 12).MaxBy(each => production[each]);
        var net = uses.Sum(use => use.M3PerDay[month]);
        return new(
            $"Demand in {YearCalendarNames.Months[month]}, the largest month",
            [
                .. uses.Select(use => UseLine(use, month)),
                new("Q_net", "sum of the uses", "", net, "m3/d", "station/demand-year", ""),
                new(
                    "Q_prod",
                    "Q_net / (1 - L)",
                    Invariant($"{net:0.###} / (1 - {lossShare:0.###})"),
                    production[month],
                    "m3/d",
                    "water/losses",
                    "losses as a share of production"
                ),
            ]
        );
    }
}
