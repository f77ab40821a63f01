using System.Collections.Immutable;
using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A plane that the modules may lie in, and the sun on it.</summary>
/// <param name="Setting">Tilt, azimuth, and what is around.</param>
/// <param name="Light">Sun on it by hour: open, lost on the way, and at the cells.</param>
/// <param name="KWhPerM2Day">Sun on it past what is in the way, mean day of each month [kWh/m²/d].</param>
public sealed record SkyPlane(PlaneSetting Setting, PlaneYear Light, IReadOnlyList<double> KWhPerM2Day)
{
    /// <summary>Tilt and azimuth.</summary>
    public PlaneFacing Facing => Setting.Facing;
}

/// <summary>The sun of the station's year, and the way the modules face it.</summary>
/// <param name="Weather">Hourly weather.</param>
/// <param name="Ready">The same, prepared for any plane.</param>
/// <param name="Plane">The plane of the modules.</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record Sky(Weather Weather, SkyYear Ready, SkyPlane Plane, IReadOnlyList<ChoiceNote> Notes)
{
    /// <summary>The year that the station is sized on.</summary>
    public WeatherYear Year => Weather.Year;

    /// <summary>The planes that the choice may take: the one with the most sun when it counts, and its neighbours.</summary>
    public IReadOnlyList<SkyPlane> Planes { get; init; } = [];

    /// <summary>The skyline.</summary>
    public Horizon Horizon { get; init; } = Horizon.Free;

    /// <summary>Tilt and azimuth of the modules.</summary>
    public PlaneFacing Facing => Plane.Facing;

    /// <summary>Sun on the modules by hour.</summary>
    public PlaneYear Light => Plane.Light;

    /// <summary>Sun on the modules, mean day of each month [kWh/m²/d].</summary>
    public IReadOnlyList<double> PlaneKWhPerM2Day => Plane.KWhPerM2Day;

    /// <summary>The same sky with the modules in one of its planes.</summary>
    /// <param name="facing">The plane's tilt and azimuth.</param>
    /// <returns>The sky.</returns>
    public Sky On(PlaneFacing facing) => this with { Plane = Planes.First(each => each.Facing == facing) };

    /// <summary>The same sky without the planes that were not taken.</summary>
    public Sky Alone => this with { Planes = [Plane] };

    /// <summary>The same sky with something near that shades its planes.</summary>
    /// <param name="place">The site.</param>
    /// <param name="near">What stands near, as a plane sees it.</param>
    /// <returns>The sky.</returns>
    public Sky Behind(Place place, Func<PlaneFacing, NearShade> near)
    {
        var sun = new YearSun(place);
        SkyPlane Shaded(SkyPlane plane) =>
            PlaneOf(
                Ready,
                plane.Setting with
                {
                    Shade = PlaneShade.Of(sun, plane.Facing, Horizon, near(plane.Facing)),
                }
            );
        var planes = Planes.Select(Shaded).ToList();
        return this with { Planes = planes, Plane = planes.First(each => each.Facing == Facing) };
    }

    /// <summary>Prepares the year and chooses tilt and azimuth where the brief leaves them open.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="demand">The demand, which decides the month that counts.</param>
    /// <returns>The sky.</returns>
    public static Sky Of(Brief brief, Survey survey, DemandYear demand)
    {
        var weather = Weather.Of(brief.Site, survey);
        var horizon = HorizonOf(brief.Site, survey);
        var sun = new YearSun(brief.Site.Place);
        var ready = SkyYear.Of(weather.Year, PerezSet.AllSites1990);
        PlaneShade ShadeOf(PlaneFacing facing) =>
            PlaneShade.Of(sun, facing, horizon, ArrayLayout.BeforeTheChoice(brief.Site, facing));
        PlaneSetting Setting(PlaneFacing facing, PlaneShade shade) => new(facing, survey["albedo"], Glass.Usual, shade);

        // The shade changes little with the plane: for the search once for every twelfth of the round, then for itself.
        var shades = new Dictionary<double, PlaneShade>();
        PlaneYear LightOn(PlaneFacing facing)
        {
            var azimuthDeg = Math.Round(facing.AzimuthDeg / 30) * 30 % 360;
            if (!shades.TryGetValue(azimuthDeg, out var shade))
            {
                shades.Add(azimuthDeg, shade = ShadeOf(new(20, azimuthDeg)));
            }

            return PlaneYear.Of(ready, Setting(facing, shade));
        }

        var best = new FacingSearch(LightOn, demand.M3PerDay).Best(brief.Array.TiltDeg, brief.Array.AzimuthDeg);
        var planes = FacingSearch
            .Around(best, brief.Array.TiltDeg)
            .Select(facing => PlaneOf(ready, Setting(facing, ShadeOf(facing))))
            .ToList();
        var plane = planes.Single(each => each.Facing == best);
        return new(weather, ready, plane, [weather.Note, .. NotesOf(brief, best)])
        {
            Horizon = horizon,
            Planes = planes,
        };
    }

    // One point is the same all round.
    private static Horizon HorizonOf(SiteBrief site, Survey survey) =>
        new(site.Surrounds.Horizon is { Count: > 0 } given ? given : [new(0, survey["horizon"])]);

    private static SkyPlane PlaneOf(SkyYear ready, PlaneSetting setting)
    {
        var light = PlaneYear.Of(ready, setting);
        return new(setting, light, MonthlyKWhPerM2Day(light.PlaneWPerM2));
    }

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

    private static IEnumerable<ChoiceNote> NotesOf(Brief brief, PlaneFacing facing)
    {
        if (brief.Array.AzimuthDeg is null)
        {
            yield return new(
                "direction the modules face",
                FacingTable.Towards(facing.AzimuthDeg),
                facing.AzimuthDeg is 0 or 180
                    ? "of all directions the one with the most light for the demand in the worst month; one that is not true north or south is taken only where it gains 3 % or more, since it is harder to set out"
                    : "of all directions the one with the most light for the demand in the worst month: it gains 3 % or more over true north and south"
            );
        }
    }
}
