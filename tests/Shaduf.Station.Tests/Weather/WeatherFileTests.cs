using System.Globalization;
using Shaduf.Sun;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>Weather files in place of the months: what is read, and that the design stands on it.</summary>
public sealed class WeatherFileTests
{
    [Fact]
    public void Our_own_form_gives_back_the_year()
    {
        var record = Read(WeatherText.Plain((2021, WeatherText.Year)));
        Assert.Equal(("CSV", "2021", 0), (record.Kind, record.YearNames.Single(), record.LeapHourCount));
        AssertSame(WeatherText.Year, record.Dullest, airK: 0.01);
        Assert.Equal(0, record.FilledShare);
    }

    // The independent year, its columns under our heading and its local time with its offset.
    [Fact]
    public void The_independent_year_comes_back_as_it_was_made()
    {
        var rows = Csv.Embedded(typeof(Sun.OracleChecks).Assembly, "weather_year_a.csv");
        using var scratch = new Scratch();
        scratch.Write(
            "a.csv",
            "hour_ending,global_w_m2,direct_normal_w_m2,diffuse_w_m2,air_degC,wind_m_s\n"
                + string.Join(
                    '\n',
                    rows.Select(row =>
                        $"{row["local_hour_ending"]}+03:00,{row["ghi"]},{row["dni"]},{row["dhi"]},{row["temp_c"]},{row["wind_m_s"]}"
                    )
                )
        );
        var record = WeatherFile.Read(scratch.PathOf("a.csv"), "a.csv", "a.csv", new(-1.3, 37.6, 1500, 3));
        Assert.Equal(["wind_m_s"], record.NotUsed);
        Assert.Equal(rows.Select(row => row.Number("ghi")), record.Dullest.GlobalWPerM2);
        Assert.Equal(rows.Select(row => row.Number("temp_c")), record.Dullest.AirDegC);
        Assert.InRange(record.ClockShiftMin, 0, 12);
        for (var hour = 0; hour < 8760; hour++)
        {
            // In the middle of the hour the independent sun stands where ours does, but where it rises or sets in it.
            if (rows[hour].Number("zenith_deg") < 80)
            {
                Assert.Equal(rows[hour].Number("zenith_deg"), record.Dullest.SunZenithDeg[hour], 0.02);
                Assert.Equal(rows[hour].Number("dni"), record.Dullest.DirectNormalWPerM2[hour]);
            }
        }
    }

    [Theory]
    [InlineData("24:00")]
    [InlineData("00:00")]
    public void Tmy_gives_the_year_whatever_midnight_is_called(string midnight)
    {
        var record = Read(WeatherText.Tmy(midnight));
        Assert.Equal(("TMY", "typical year"), (record.Kind, record.YearNames.Single()));

        // The air is read at the end of the hour and becomes the hour's mean.
        AssertSame(WeatherText.Year, record.Dullest, airK: 3);
        Assert.Equal(
            (WeatherText.Year.AirDegC[99] + WeatherText.Year.AirDegC[100]) / 2,
            record.Dullest.AirDegC[100],
            0.01
        );
    }

    [Theory]
    [InlineData(1)]
    [InlineData(0)]
    [InlineData(3)]
    public void Epw_gives_the_year_whatever_clock_it_keeps(int utcOffsetH)
    {
        var record = Read(WeatherText.Epw(utcOffsetH));
        Assert.Equal(("EPW", 1 - utcOffsetH), (record.Kind, record.MovedH));
        AssertSame(WeatherText.Year, record.Dullest, airK: 3);
    }

    [Fact]
    public void Times_in_another_offset_and_units_of_energy_give_the_same_year()
    {
        var text = WeatherText
            .Plain((2021, WeatherText.Year))
            .Replace("hour_ending", "hour_beginning", StringComparison.Ordinal)
            .Replace("+01:00", "+02:00", StringComparison.Ordinal);
        AssertSame(WeatherText.Year, Read(text).Dullest, airK: 0.01);
        var energy = WeatherText
            .Plain((2021, WeatherText.Year))
            .Replace("global_w_m2", "global_kj_m2", StringComparison.Ordinal)
            .Split('\n')
            .Select(line => line.Split(','))
            .Select(cells =>
                cells.Length == 5 && double.TryParse(cells[1], CultureInfo.InvariantCulture, out var value)
                    ? string.Join(',', [cells[0], FormattableString.Invariant($"{value * 3.6:0.000}"), .. cells[2..]])
                    : string.Join(',', cells)
            );
        AssertSame(WeatherText.Year, Read(string.Join('\n', energy)).Dullest, airK: 0.01);
    }

    [Fact]
    public void A_file_without_direct_light_is_split_and_says_so()
    {
        var text = WeatherText
            .Plain((2021, WeatherText.Year))
            .Replace("direct_normal_w_m2,diffuse_w_m2", "wind_m_s,rain_mm", StringComparison.Ordinal);
        var record = Read(text);
        Assert.Equal(["wind_m_s", "rain_mm"], record.NotUsed);
        Assert.InRange(record.Counts.Single(count => count.Matter == RecordMatter.NoParts).HourCount, 4500, 4800);
        for (var hour = 0; hour < 8760; hour++)
        {
            Assert.Equal(WeatherText.Year.DiffuseWPerM2[hour], record.Dullest.DiffuseWPerM2[hour], 1.0);
        }
    }

    [Fact]
    public void Of_several_years_the_dullest_counts_and_a_leap_day_and_half_a_year_are_left_out()
    {
        var (second, third) = (WeatherText.Drawn(2), WeatherText.Drawn(3));
        var text = WeatherText.Plain((2023, WeatherText.Year), (2024, second), (2025, third));
        var cut = text[..text.IndexOf("2025-06-01", StringComparison.Ordinal)];
        var record = Read(cut);
        Assert.Equal(["2023", "2024"], record.YearNames);
        Assert.Equal((24, 1), (record.LeapHourCount, record.LeftOutYearCount));
        var light = record.Years.Select(year => year.Year!.GlobalWPerM2.Sum()).ToList();
        Assert.Equal(light.Min(), record.Dullest.GlobalWPerM2.Sum());
        Assert.Single(record.Others);
    }

    [Fact]
    public void Codes_for_missing_values_are_missing()
    {
        var lines = WeatherText.Epw().Split('\n');
        Assert.Contains(",", lines[1000], StringComparison.Ordinal);
        var row = lines.ToList().FindIndex(line => line.StartsWith("1990,1,9,13,", StringComparison.Ordinal));
        var cells = lines[row].Split(',');
        (cells[6], cells[13], cells[14], cells[15]) = ("99.9", "9999", "9999", "9999");
        lines[row] = string.Join(',', cells);
        var record = Read(string.Join('\n', lines));
        Assert.Equal(
            [RecordMatter.NoLight, RecordMatter.LightBridged, RecordMatter.NoAir, RecordMatter.AirBridged],
            record.Counts.Select(count => count.Matter)
        );
        Assert.All(record.Counts, count => Assert.Equal((1, row + 1), (count.HourCount, count.FirstLine)));
    }

    [Fact]
    public void The_hash_covers_the_file()
    {
        using var scratch = new Scratch();
        scratch.Write("w.csv", WeatherText.Plain((2021, WeatherText.Year)));
        var one = scratch.Read(WeatherText.Brief()).Hash;
        scratch.Write("w.csv", WeatherText.Plain((2021, WeatherText.Year)) + "# one remark more\n");
        Assert.NotEqual(one, scratch.Read(WeatherText.Brief()).Hash);
    }

    [Fact]
    public void The_design_stands_on_the_file()
    {
        using var scratch = new Scratch();
        scratch.Write("w.csv", WeatherText.Plain((2021, WeatherText.Year)));
        var design = DesignRun.Run(scratch.Read(WeatherText.Brief()));
        Assert.Equal("weather file", design.Sky.Weather.Months[0].SunFrom);
        Assert.Equal(5.2, design.Survey.Climate.GlobalKWhPerM2Day[5], 1e-3);
        Assert.Equal(22, design.Survey.Climate.AirDegC[5], 1e-3);
        var other = design.Findings.Single(finding => finding.Id == "water/other-years");
        Assert.Equal(FindingStatus.Unchecked, other.Status);
        Assert.Contains("holds one year", other.Says, StringComparison.Ordinal);
        Assert.Equal(
            ["weather/clock", "weather/place", "weather/record"],
            design
                .Findings.Where(finding => finding.Id.StartsWith("weather/", StringComparison.Ordinal))
                .Select(finding => finding.Id)
                .Order(StringComparer.Ordinal)
        );
    }

    private static WeatherRecord Read(string text)
    {
        using var scratch = new Scratch();
        scratch.Write("w.csv", text);
        return scratch.Read(WeatherText.Brief()).Brief.Site.Record!;
    }

    private static void AssertSame(WeatherYear expected, WeatherYear obtained, double airK)
    {
        for (var hour = 0; hour < 8760; hour++)
        {
            Assert.Equal(expected.GlobalWPerM2[hour], obtained.GlobalWPerM2[hour], 0.02);
            Assert.Equal(expected.DirectNormalWPerM2[hour], obtained.DirectNormalWPerM2[hour], 0.02);
            Assert.Equal(expected.DiffuseWPerM2[hour], obtained.DiffuseWPerM2[hour], 0.02);
            Assert.Equal(expected.AirDegC[hour], obtained.AirDegC[hour], airK);
        }
    }
}
