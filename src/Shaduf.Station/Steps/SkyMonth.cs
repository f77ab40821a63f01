using Shaduf.Sun;

namespace Shaduf.Station;

/// <summary>The light of one month on its way to the cells, mean day [kWh/m²/d].</summary>
/// <param name="LevelKWhPerM2Day">On the level.</param>
/// <param name="OpenKWhPerM2Day">On the plane of the modules with nothing in the way.</param>
/// <param name="HorizonLostShare">Share of that kept off by the skyline.</param>
/// <param name="NearLostShare">Share of that kept off by what stands near.</param>
/// <param name="PlaneKWhPerM2Day">On the plane past both.</param>
/// <param name="ReflectedShare">Share of that thrown back by the glass at a slant.</param>
/// <param name="EffectiveKWhPerM2Day">At the cells.</param>
public sealed record SkyMonth(
    double LevelKWhPerM2Day,
    double OpenKWhPerM2Day,
    double HorizonLostShare,
    double NearLostShare,
    double PlaneKWhPerM2Day,
    double ReflectedShare,
    double EffectiveKWhPerM2Day
)
{
    /// <summary>Share of the open light that skyline and what stands near take together.</summary>
    public double ShadedShare => HorizonLostShare + NearLostShare;

    /// <summary>The months of a sky.</summary>
    /// <param name="sky">The sky.</param>
    /// <returns>Twelve months, January first.</returns>
    public static IReadOnlyList<SkyMonth> Of(Sky sky)
    {
        var light = sky.Light;
        var level = Sky.MonthlyKWhPerM2Day(sky.Year.GlobalWPerM2);
        var open = Sky.MonthlyKWhPerM2Day(light.OpenWPerM2);
        var horizon = Sky.MonthlyKWhPerM2Day(light.HorizonLostWPerM2);
        var near = Sky.MonthlyKWhPerM2Day(light.NearLostWPerM2);
        var plane = Sky.MonthlyKWhPerM2Day(light.PlaneWPerM2);
        var reflected = Sky.MonthlyKWhPerM2Day(light.ReflectedWPerM2);
        var effective = Sky.MonthlyKWhPerM2Day(light.EffectiveWPerM2);
        return
        [
            .. Enumerable
                .Range(0, 12)
                .Select(month => new SkyMonth(
                    level[month],
                    open[month],
                    Share(horizon[month], open[month]),
                    Share(near[month], open[month]),
                    plane[month],
                    Share(reflected[month], plane[month]),
                    effective[month]
                )),
        ];
    }

    /// <summary>Sun on the level under a sky without clouds, mean day of each month.</summary>
    /// <param name="place">The site.</param>
    /// <param name="linkeFactor">Linke turbidity.</param>
    /// <returns>Twelve values, January first [kWh/m²/d].</returns>
    public static IReadOnlyList<double> ClearKWhPerM2Day(Place place, double linkeFactor)
    {
        var sun = new YearSun(place);
        var pressurePa = AirMass.PressurePa(place.ElevationM);
        return Sky.MonthlyKWhPerM2Day([
            .. Enumerable
                .Range(0, YearCalendar.HourCount)
                .Select(hour =>
                    ClearSky
                        .IneichenPerez(
                            sun.DirectionAt(hour + 0.5).Angles.ZenithDeg,
                            pressurePa,
                            place.ElevationM,
                            linkeFactor,
                            ExtraterrestrialIrradiance.NormalSpencerWPerM2(
                                YearCalendar.DayOf(hour) + 1,
                                ExtraterrestrialIrradiance.SolarConstantWPerM2
                            )
                        )
                        .GlobalWPerM2
                ),
        ]);
    }

    private static double Share(double part, double whole) => whole > 0 ? part / whole : 0;
}
