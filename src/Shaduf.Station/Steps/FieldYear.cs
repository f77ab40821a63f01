using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>One month over a field.</summary>
/// <param name="ReferenceMmPerDay">Reference evapotranspiration [mm/d].</param>
/// <param name="Says">The figures it was worked out from.</param>
/// <param name="UsableRainMm">Rain that crops can use [mm].</param>
public sealed record FieldMonth(double ReferenceMmPerDay, string Says, double UsableRainMm);

/// <summary>What the climate asks of a watered field, month by month.</summary>
/// <param name="Months">The twelve months.</param>
/// <param name="Method">How the reference was found.</param>
/// <param name="WindMPerS">Mean wind of the year 2 m above the ground [m/s]; null when unknown.</param>
/// <param name="LowestPercent">Mean of the days' lowest relative humidity [%]; null when unknown.</param>
public sealed record FieldYear(
    IReadOnlyList<FieldMonth> Months,
    string Method,
    double? WindMPerS,
    double? LowestPercent
)
{
    // Inland and on the coast, where the swing is smaller, FAO-56.
    private const double InlandCoefficient = 0.16;
    private const double CoastCoefficient = 0.19;
    private const double MJPerKWh = 3.6;

    // Days of the year in the middle of each month, FAO-56.
    private static readonly int[] s_midDay = [15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349];

    private sealed record Air(double MeanDegC, double HighDegC, double LowDegC, double AboveMJ, double SunMJ)
    {
        public double SwingK => HighDegC - LowDegC;
    }

    /// <summary>Whether moisture and wind of all months are known, so that Penman-Monteith can be used.</summary>
    /// <param name="site">The site.</param>
    /// <returns>True when they are.</returns>
    public static bool IsFull(SiteBrief site) =>
        site.Field.Months.All(month => month is { HumidityShare: not null, WindMPerS: not null });

    /// <summary>Works out the twelve months.</summary>
    /// <param name="site">The site.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <returns>The year.</returns>
    /// <source>FAO-56: Penman-Monteith where moisture and wind are known, else Hargreaves</source>
    public static FieldYear Of(SiteBrief site, Survey survey)
    {
        var air = Enumerable.Range(0, 12).Select(month => AirOf(site, survey, month)).ToList();
        var rain = site.Field.Months.Select(month => EffectiveRain.FaoMmPerMonth(month.RainMm ?? 0)).ToList();
        if (!IsFull(site))
        {
            return new(
                [.. air.Zip(rain, (each, usable) => ByHargreaves(each, usable))],
                "Hargreaves: moisture or wind of some month is unknown (too high in moist air, too low in wind above 3 m/s)",
                null,
                null
            );
        }

        var winds = site
            .Field.Months.Select(month =>
                Evapotranspiration.WindAtTwoMetresMPerS(month.WindMPerS!.Value, survey["wind-height"])
            )
            .ToList();
        var vapours = site
            .Field.Months.Zip(
                air,
                (month, each) =>
                    AirMoisture.FromMeanHumidityKPa(each.HighDegC, each.LowDegC, month.HumidityShare!.Value * 100)
            )
            .ToList();
        return new(
            [
                .. Enumerable
                    .Range(0, 12)
                    .Select(month => ByPenmanMonteith(site, air, month, (vapours[month], winds[month]), rain[month])),
            ],
            "Penman-Monteith",
            winds.Average(),
            vapours.Zip(air, (vapour, each) => AirMoisture.LowestPercent(vapour, each.HighDegC)).Average()
        );
    }

    private static Air AirOf(SiteBrief site, Survey survey, int month)
    {
        var given = site.Months[month];
        var above = FieldRadiation.AboveTheAirMJPerM2Day(site.LatitudeDeg, s_midDay[month]);
        var sun = survey.Climate.GlobalKWhPerM2Day[month] * MJPerKWh;
        var mean = survey.Climate.AirDegC[month];

        // Far from the equator the middle day's sun above the air differs from the month's mean.
        var swing = FieldRadiation.SwingK(
            Math.Min(0.9, sun / above),
            site.IsOnCoast ? CoastCoefficient : InlandCoefficient
        );
        return given is { HighDegC: { } high, LowDegC: { } low }
            ? new((high + low) / 2, high, low, above, sun)
            : new(mean, mean + (swing / 2), mean - (swing / 2), above, sun);
    }

    private static FieldMonth ByHargreaves(Air air, double usableMm) =>
        new(
            Evapotranspiration.HargreavesMmPerDay(air.MeanDegC, air.SwingK, air.AboveMJ),
            Invariant($"T {air.MeanDegC:0.0} degC, swing {air.SwingK:0.0} K, Ra {air.AboveMJ:0.0} MJ/m2/d"),
            usableMm
        );

    private static FieldMonth ByPenmanMonteith(
        SiteBrief site,
        List<Air> air,
        int month,
        (double VapourKPa, double WindMPerS) wet,
        double usableMm
    )
    {
        var here = air[month];
        var clear = FieldRadiation.ClearSkyMJPerM2Day(here.AboveMJ, site.ElevationM);
        var net =
            FieldRadiation.ShortWaveMJPerM2Day(here.SunMJ)
            - FieldRadiation.LongWaveMJPerM2Day(
                here.HighDegC,
                here.LowDegC,
                wet.VapourKPa,
                Math.Clamp(here.SunMJ / clear, 0.25, 1)
            );
        var soil = FieldRadiation.SoilHeatMJPerM2Day(air[(month + 11) % 12].MeanDegC, air[(month + 1) % 12].MeanDegC);
        return new(
            Evapotranspiration.PenmanMonteithMmPerDay(
                here.HighDegC,
                here.LowDegC,
                wet.VapourKPa,
                wet.WindMPerS,
                net - soil,
                site.ElevationM
            ),
            Invariant(
                $"T {here.LowDegC:0.0} to {here.HighDegC:0.0} degC, ea {wet.VapourKPa:0.00} kPa, u2 {wet.WindMPerS:0.0} m/s, Rn {net:0.0}, G {soil:0.00} MJ/m2/d"
            ),
            usableMm
        );
    }
}
