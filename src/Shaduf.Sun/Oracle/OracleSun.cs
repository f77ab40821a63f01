using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Where the sun stands, when it rises and what it sends, beside independent figures.</summary>
internal static class OracleSun
{
    private const double StatedDeg = 0.0003;
    private static readonly OracleTable Position = OracleChecks.Table("sun_position.csv");
    private static readonly OracleTable LowTimes = OracleChecks.Table("sunrise_sunset.csv", row => !IsHigh(row));
    private static readonly OracleTable HighTimes = OracleChecks.Table("sunrise_sunset.csv", IsHigh);
    private static readonly OracleTable Days = OracleChecks.Table("extraterrestrial.csv");

    // Sunrise by iteration and by interpolation differ more where the sun climbs slowly.
    private static readonly Margin LowS = new(2, "s");
    private static readonly Margin HighS = new(5, "s");

    internal static IReadOnlyList<OracleCheck> All { get; } =
    [
        Position.Check("direction", new(StatedDeg, "deg"), _ => 0, row => ApartDeg(row, Nrel(row).True)),
        Position.Check("zenith_deg", new(StatedDeg, "deg"), row => Nrel(row).True.ZenithDeg),
        Position.Check("apparent_zenith_deg", new(StatedDeg, "deg"), row => Nrel(row).ApparentZenithDeg),
        Position.Check("equation_of_time_min", new(1e-4, "min"), row => Nrel(row).EquationOfTimeMin),
        Position.Check("sun_distance_au", new(1e-8, "au"), row => Nrel(row).DistanceRatio),
        Position.Check("direction, fast algorithm", new(0.02, "deg"), _ => 0, row => ApartDeg(row, Psa(row))),
        Time(LowTimes, "sunrise_utc", "below 40 deg latitude", LowS, times => times.RiseH),
        Time(HighTimes, "sunrise_utc", "from 40 deg latitude", HighS, times => times.RiseH),
        Time(LowTimes, "sunset_utc", "below 40 deg latitude", LowS, times => times.SetH),
        Time(HighTimes, "sunset_utc", "from 40 deg latitude", HighS, times => times.SetH),
        Time(LowTimes, "transit_utc", "below 40 deg latitude", new(1, "s"), times => times.TransitH),
        Time(HighTimes, "transit_utc", "from 40 deg latitude", new(1, "s"), times => times.TransitH),
        Days.Check(
            "declination_cooper_deg",
            new(StatedDeg, "deg"),
            row => SolarGeometry.DeclinationCooperDeg(Day(row))
        ),
        Days.Check(
            "declination_spencer_deg",
            new(StatedDeg, "deg"),
            row => SolarGeometry.DeclinationSpencerDeg(Day(row))
        ),
        // The file has the other printing of Spencer's series; the two differ by up to 0.026 min.
        Days.Check("equation_of_time_spencer_min", new(0.027, "min"), row => SolarGeometry.EquationOfTimeMin(Day(row))),
        Days.Check("e0n_spencer_1366_1", OracleChecks.Irradiance, row => SpencerWPerM2(row, 1366.1)),
        Days.Check("e0n_spencer_1361", OracleChecks.Irradiance, row => SpencerWPerM2(row, 1361)),
        Days.Check(
            "e0n_cosine_1367",
            OracleChecks.Irradiance,
            row => ExtraterrestrialIrradiance.NormalCosineWPerM2(Day(row), 1367)
        ),
    ];

    private static SunSighting Nrel(CsvRow row) =>
        SolarPosition.Nrel(
            JulianDays(row),
            row.Number("delta_t_s"),
            new(row.Number("lat_deg"), row.Number("lon_deg"), row.Number("elev_m"), 0),
            new(row.Number("pressure_pa") / 100, row.Number("temp_c"))
        );

    private static SunAngles Psa(CsvRow row) =>
        SolarPosition.PsaPlus(JulianDays(row), row.Number("lat_deg"), row.Number("lon_deg"));

    private static double JulianDays(CsvRow row)
    {
        var time = Utc(row["time_utc"]);
        return JulianDay.DaysAtUtc(time.Year, time.Month, time.Day, time.TimeOfDay.TotalHours);
    }

    private static double ApartDeg(CsvRow row, SunAngles sun)
    {
        var (zenith, azimuth) = (sun.ZenithDeg * Math.PI / 180, sun.AzimuthDeg * Math.PI / 180);
        var east = (Math.Sin(zenith) * Math.Sin(azimuth)) - row.Number("sun_east");
        var north = (Math.Sin(zenith) * Math.Cos(azimuth)) - row.Number("sun_north");
        var up = Math.Cos(zenith) - row.Number("sun_up");
        return 2 * Math.Asin(Math.Sqrt((east * east) + (north * north) + (up * up)) / 2) * 180 / Math.PI;
    }

    private static bool IsHigh(CsvRow row) => Math.Abs(row.Number("lat_deg")) >= 40;

    private static OracleCheck Time(
        OracleTable table,
        string column,
        string where,
        Margin margin,
        Func<SunTimes, double?> happens
    ) =>
        table.Check(
            $"{column}, {where}",
            margin,
            row => Utc(row[column]).TimeOfDay.TotalSeconds,
            row => UtcH(row, happens) * 3600
        );

    // The file gives what falls on the date in universal time, wherever the site lies.
    private static double UtcH(CsvRow row, Func<SunTimes, double?> happens)
    {
        var place = new Place(row.Number("lat_deg"), row.Number("lon_deg"), 0, 0);
        var date = DateOnly.FromDateTime(Utc(row["date_utc"]));
        return new[] { -1, 0, 1 }
            .Select(days =>
                (happens(SunTimes.Of(place, date.AddDays(days), row.Number("delta_t_s"))) ?? double.NaN) + (24 * days)
            )
            .FirstOrDefault(hour => hour is >= 0 and < 24, double.NaN);
    }

    private static DateTime Utc(string text) =>
        DateTimeOffset.Parse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal).UtcDateTime;

    private static int Day(CsvRow row) => (int)row.Number("day_of_year");

    private static double SpencerWPerM2(CsvRow row, double constantWPerM2) =>
        ExtraterrestrialIrradiance.NormalSpencerWPerM2(Day(row), constantWPerM2);
}
