using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Station.Tests;

/// <summary>Weather files of the small station's place, in each form, from one drawn year.</summary>
internal static class WeatherText
{
    public static Place Place { get; } = new(8, 20, 400, 1);

    public static WeatherYear Year { get; } = Drawn(1);

    public static WeatherYear Drawn(int seed) =>
        MonthlyMeansYear.Generate(Place, new([.. Enumerable.Repeat(5.2, 12)], [.. Enumerable.Repeat(22.0, 12)]), seed);

    /// <summary>The small station with its months replaced by a weather file.</summary>
    public static string Brief(string file = "w.csv")
    {
        var brief = SmallStation.Brief();
        var site = brief["site"]!.AsObject();
        site.Remove("months");
        site["weather"] = JsonValue.Create(file);
        return brief.ToJsonString();
    }

    /// <summary>Our own form: an hour a row, stamped at its end.</summary>
    public static string Plain(params IEnumerable<(int Calendar, WeatherYear Year)> years)
    {
        var text = new StringBuilder(
            "# any remark\nhour_ending,global_w_m2,direct_normal_w_m2,diffuse_w_m2,air_degC\n"
        );
        foreach (var (calendar, year) in years)
        {
            var stamp = new DateTime(calendar, 1, 1, 0, 0, 0, DateTimeKind.Unspecified);
            for (var hour = 0; hour < 8760; hour++)
            {
                if (stamp is { Month: 2, Day: 29 })
                {
                    for (var leap = 0; leap < 24; leap++)
                    {
                        stamp = stamp.AddHours(1);
                        text.Append(CultureInfo.InvariantCulture, $"{stamp:yyyy-MM-ddTHH:mm}+01:00,0,0,0,20\n");
                    }
                }

                stamp = stamp.AddHours(1);
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"{stamp:yyyy-MM-ddTHH:mm}+01:00,{Light(year, hour)},{year.AirDegC[hour]:0.00}\n"
                );
            }
        }

        return text.ToString();
    }

    /// <summary>An EPW file; offset and latitude of its place can be changed.</summary>
    public static string Epw(double utcOffsetH = 1, double latitudeDeg = 8, int recordsPerHour = 1)
    {
        var text = new StringBuilder();
        text.Append(
            CultureInfo.InvariantCulture,
            $"LOCATION,Invented,-,-,invented,0,{latitudeDeg},20.0,{utcOffsetH},400\n"
        );
        text.Append("DESIGN CONDITIONS,0\nTYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\n");
        text.Append("HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\nCOMMENTS 1,invented\nCOMMENTS 2,invented\n");
        text.Append(CultureInfo.InvariantCulture, $"DATA PERIODS,1,{recordsPerHour},Data,Sunday,1/1,12/31\n");
        for (var row = 0; row < 8760; row++)
        {
            // The file's clock is the station's when the offset is 1.
            var hour = (row + 1 - (int)utcOffsetH + 8760) % 8760;
            var (month, day) = (YearCalendar.MonthOf(row), YearCalendar.DayOf(row));
            text.Append(
                CultureInfo.InvariantCulture,
                $"{1990 + month},{month + 1},{day - YearCalendar.FirstDays[month] + 1},{(row % 24) + 1},60,?,{Year.AirDegC[hour]:0.00},10.0,50,97000,0,0,0,{Light(Year, hour)},0,0,0,0,180,2.0,5,5,20,77777,9,999999999,20,0.1,0,88,0.2,0,1\n"
            );
        }

        return text.ToString();
    }

    /// <summary>A TMY file with its heading; midnight is written as told.</summary>
    public static string Tmy(string midnight = "24:00")
    {
        var text = new StringBuilder("1,\"Invented, place\",--,1.0,8.000,20.000,400\n");
        text.Append("Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),Dry-bulb (C)\n");
        for (var hour = 0; hour < 8760; hour++)
        {
            var month = YearCalendar.MonthOf(hour);
            var day = YearCalendar.DayOf(hour) - YearCalendar.FirstDays[month] + 1;
            var time = hour % 24 == 23 ? midnight : Invariant($"{(hour % 24) + 1:00}:00");
            text.Append(
                CultureInfo.InvariantCulture,
                $"{month + 1:00}/{day:00}/{1990 + month},{time},0,{Light(Year, hour)},{Year.AirDegC[hour]:0.00}\n"
            );
        }

        return text.ToString();
    }

    private static string Light(WeatherYear year, int hour) =>
        Invariant(
            $"{year.GlobalWPerM2[hour]:0.00},{year.DirectNormalWPerM2[hour]:0.00},{year.DiffuseWPerM2[hour]:0.00}"
        );
}
