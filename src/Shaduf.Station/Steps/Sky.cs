using System.Collections.Immutable;
using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A plane that the modules may lie in, and the sun on it.</summary>
/// <param name="Facing">Tilt and azimuth.</param>
/// <param name="Light">Sun on it by hour.</param>
/// <param name="KWhPerM2Day">Sun on it, mean day of each month [kWh/m²/d].</param>
public sealed record SkyPlane(PlaneFacing Facing, PlaneYear Light, IReadOnlyList<double> KWhPerM2Day);

/// <summary>The sun of the station's year, and the way the modules face it.</summary>
/// <param name="Weather">Hourly weather.</param>
/// <param name="Facing">Tilt and azimuth of the modules.</param>
/// <param name="Light">Sun on the modules by hour: open, lost on the way, and at the cells.</param>
/// <param name="PlaneKWhPerM2Day">Sun on the modules, mean day of each month [kWh/m²/d].</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record Sky(
    Weather Weather,
    PlaneFacing Facing,
    PlaneYear Light,
    IReadOnlyList<double> PlaneKWhPerM2Day,
    IReadOnlyList<ChoiceNote> Notes
)
{
    /// <summary>The year that the station is sized on.</summary>
    public WeatherYear Year => Weather.Year;

    /// <summary>The planes that the choice may take: the one with the most sun when it counts, and its neighbours.</summary>
    public IReadOnlyList<SkyPlane> Planes { get; init; } = [];

    /// <summary>The same sky with the modules in one of its planes.</summary>
    /// <param name="facing">The plane's tilt and azimuth.</param>
    /// <returns>The sky.</returns>
    public Sky On(PlaneFacing facing)
    {
        var plane = Planes.First(each => each.Facing == facing);
        return this with { Facing = facing, Light = plane.Light, PlaneKWhPerM2Day = plane.KWhPerM2Day };
    }

    internal const double LeastTiltDeg = 10;
    internal const double MostTiltDeg = 35;

    /// <summary>Prepares the year and chooses tilt and azimuth where the brief leaves them open.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="demand">The demand, which decides the month that counts.</param>
    /// <returns>The sky.</returns>
    public static Sky Of(Brief brief, Survey survey, DemandYear demand)
    {
        var weather = Weather.Of(brief.Site, survey);
        var year = weather.Year;
        var azimuthDeg = brief.Array.AzimuthDeg ?? (brief.Site.LatitudeDeg >= 0 ? 180 : 0);
        var albedo = survey["albedo"];
        var tilts = brief.Array.TiltDeg is { } given ? [given] : Tilts();
        var ready = SkyYear.Of(year, PerezSet.AllSites1990);
        var tried = tilts
            .Select(tilt => new PlaneFacing(tilt, azimuthDeg))
            .Select(facing => (Facing: facing, Light: LightOn(ready, facing, albedo)))
            .Select(each => new SkyPlane(each.Facing, each.Light, MonthlyKWhPerM2Day(each.Light.PlaneWPerM2)))
            .ToList();
        var best = tried.MaxBy(each =>
            Enumerable.Range(0, 12).Min(month => Ratio(each.KWhPerM2Day[month], demand.M3PerDay[month]))
        )!;
        return new(weather, best.Facing, best.Light, best.KWhPerM2Day, [weather.Note, .. NotesOf(brief, best.Facing)])
        {
            Planes = [.. tried.Where((_, i) => Math.Abs(i - tried.IndexOf(best)) <= 1)],
        };
    }

    /// <summary>The light of a year on the modules.</summary>
    /// <param name="ready">The year, prepared.</param>
    /// <param name="facing">Tilt and azimuth.</param>
    /// <param name="albedoShare">Share that the ground throws back.</param>
    /// <returns>The light by hour.</returns>
    public static PlaneYear LightOn(SkyYear ready, PlaneFacing facing, double albedoShare) =>
        PlaneYear.Of(ready, new(facing, albedoShare, Glass.Usual, PlaneShade.None));

    /// <summary>Mean daily irradiation of each month.</summary>
    /// <param name="planeWPerM2">Hourly irradiance [W/m²].</param>
    /// <returns>Twelve values, January first [kWh/m²/d].</returns>
    public static IReadOnlyList<double> MonthlyKWhPerM2Day(ImmutableArray<double> planeWPerM2)
    {
        var sums = new double[12];
        for (var hour = 0; hour < planeWPerM2.Length; hour++)
        {
            sums[YearCalendar.MonthOf(hour)] += planeWPerM2[hour] / 1000;
        }

        return [.. sums.Select((sum, month) => sum / YearCalendar.DaysInMonth[month])];
    }

    /// <summary>Mean daily sun above the air over the days of each month.</summary>
    /// <param name="latitudeDeg">Latitude [deg], -65 to 65.</param>
    /// <returns>Twelve values, January first [kWh/m²/d].</returns>
    internal static IReadOnlyList<double> AboveTheAirKWhPerM2Day(double latitudeDeg)
    {
        var days = AboveTheAirByDayKWhPerM2(latitudeDeg);
        return
        [
            .. YearCalendar.DaysInMonth.Select(
                (count, month) => days.Skip(YearCalendar.FirstDays[month]).Take(count).Average()
            ),
        ];
    }

    /// <summary>Sun above the air on each day of the year.</summary>
    /// <param name="latitudeDeg">Latitude [deg], -65 to 65.</param>
    /// <returns>365 values [kWh/m²].</returns>
    internal static IReadOnlyList<double> AboveTheAirByDayKWhPerM2(double latitudeDeg) =>
        [
            .. Enumerable
                .Range(1, 365)
                .Select(day =>
                    ExtraterrestrialIrradiance.DailyHorizontalMJPerM2(
                        ExtraterrestrialIrradiance.NormalSpencerWPerM2(
                            day,
                            ExtraterrestrialIrradiance.SolarConstantWPerM2
                        ),
                        latitudeDeg,
                        SolarGeometry.DeclinationSpencerDeg(day)
                    ) / 3.6
                ),
        ];

    // Steps of 5 deg from the least tilt that rain still washes.
    private static List<double> Tilts() =>
        [.. Enumerable.Range(0, 6).Select(i => LeastTiltDeg + (i * (MostTiltDeg - LeastTiltDeg) / 5))];

    private static double Ratio(double sun, double demand) => demand > 0 ? sun / demand : double.MaxValue;

    private static IEnumerable<ChoiceNote> NotesOf(Brief brief, PlaneFacing facing)
    {
        if (brief.Array.AzimuthDeg is null)
        {
            yield return new(
                "direction the modules face",
                facing.AzimuthDeg == 0 ? "true north" : "true south",
                "towards the equator"
            );
        }
    }
}
