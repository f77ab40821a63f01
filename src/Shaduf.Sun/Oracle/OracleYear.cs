using System.Collections.Immutable;
using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Months and year of light on a plane beside independent figures.</summary>
internal static class OracleYear
{
    private static readonly Lazy<SkyYear> Sky = new(() => SkyYear.Of(Weather(), PerezSet.AllSites1990));

    internal static OracleCheck Totals { get; } =
        new(
            "weather_year_totals.csv",
            "perez_kwh_m2, months and year",
            new(0.2, "%"),
            () =>
                Csv.Embedded(typeof(OracleYear).Assembly, "weather_year_totals.csv")
                    .GroupBy(row => new PlaneFacing(row.Number("tilt_deg"), row.Number("surface_azimuth_deg")))
                    .SelectMany(Compare)
        );

    private static IEnumerable<(double Expected, double Obtained)> Compare(IGrouping<PlaneFacing, CsvRow> plane)
    {
        var light = PlaneYear.Of(Sky.Value, new(plane.Key, 0.2, Glass.Usual, PlaneShade.None)).OpenWPerM2;
        return plane.Select(row =>
        {
            var month = (int)row.Number("month");
            var hours = Enumerable
                .Range(0, YearCalendar.HourCount)
                .Where(hour => month == 0 || YearCalendar.MonthOf(hour) == month - 1);
            return (row.Number("perez_kwh_m2"), hours.Sum(hour => light[hour] / 1000));
        });
    }

    // The file's plane takes the apparent zenith.
    private static WeatherYear Weather()
    {
        var rows = Csv.Embedded(typeof(OracleYear).Assembly, "weather_year_a.csv");
        ImmutableArray<double> Column(string name) => [.. rows.Select(row => row.Number(name))];
        return new(
            Column("ghi"),
            Column("dni"),
            Column("dhi"),
            Column("temp_c"),
            Column("apparent_zenith_deg"),
            Column("azimuth_deg"),
            Column("dni_extra")
        );
    }
}
