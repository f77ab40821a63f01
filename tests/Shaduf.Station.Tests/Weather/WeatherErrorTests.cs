using System.Text;
using CsCheck;

namespace Shaduf.Station.Tests;

/// <summary>What is wrong with a weather file is said with its line; nothing of it is used unseen.</summary>
public sealed class WeatherErrorTests
{
    private static readonly string Sound = WeatherText.Plain((2021, WeatherText.Year));

    private static readonly string[] Lines = Sound.Split('\n');

    // What a careless hand or a bad disk puts in the place of a character.
    private static readonly IGen<string>[] Marks =
    [
        .. new[] { "", ",", "\n", "-", "9", "99999", "e9", "\"", "#", "T", "é", "\r" }.Select(mark => Gen.Const(mark)),
    ];

    [Fact]
    public void A_file_or_months_but_not_both_and_not_neither()
    {
        var both = SmallStation.Brief();
        both["site"]!["weather"] = "w.csv";
        Assert.Contains(
            "site.weather: stands beside months; either a weather file or months is accepted",
            Assert.Single(Errors(Sound, both.ToJsonString())),
            StringComparison.Ordinal
        );
        var neither = SmallStation.Brief();
        neither["site"]!.AsObject().Remove("months");
        Assert.Contains(
            "site.months: missing; 'months: ...' or 'weather: FILE' is needed",
            Assert.Single(Errors(Sound, neither.ToJsonString())),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "site.weather: there is no file 'x.csv' beside the brief",
            Assert.Single(Errors(Sound, WeatherText.Brief("x.csv"))),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("", "w.csv:1:1: heading: this is no weather file that can be read")]
    [InlineData("\n# a remark\n\na,b,c\n1,2,3\n", "w.csv:4:1: heading: this is no weather file that can be read")]
    [InlineData(
        "# a remark\nhour_ending;global_w_m2;air_degC\n2021-01-01T01:00+01:00;0,5;20\n",
        "w.csv:2:1: heading: the cells are parted by semicolons; commas between the cells, and a point as decimal mark, are accepted"
    )]
    [InlineData("LOCATION;a;b;c\n", "w.csv:1:1: heading: the cells are parted by semicolons")]
    [InlineData("hour_ending\tglobal_w_m2\tair_degC\n", "w.csv:1:1: heading: the cells are parted by tabs")]
    [InlineData("Hour_Ending,GLOBAL_W_m2,Air_DegC\n", "w.csv:1:1: file: no hour of any year has a row")]
    [InlineData(
        "hour_ending,global,air_degC\n",
        "w.csv:1:1: heading: no column of global with its unit; one column named global_w_m2, global_wh_m2, global_kj_m2, global_mj_m2 is accepted"
    )]
    [InlineData("hour_ending,global_w_m2,global_mj_m2,air_degC\n", "w.csv:1:25: heading: a second column of global")]
    [InlineData("hour_ending,global_w_m2,air_degC\n", "w.csv:1:1: file: no hour of any year has a row")]
    [InlineData(
        "# latitude: 95\nhour_ending,global_w_m2,air_degC\n",
        "w.csv:1:1: latitude: '95' is not a number in range; -66 to 66 is accepted"
    )]
    [InlineData(
        "LOCATION,a,b,c,d,e,8,20,1,400\nDESIGN CONDITIONS\n",
        "w.csv:2:1: DATA PERIODS: the eighth line does not say that each hour has one record"
    )]
    [InlineData(
        "1,\"x\",-,1,8,20,400\nDate (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2)\n",
        "w.csv:2:1: heading: there is no column 'DNI (W/m^2)'"
    )]
    [InlineData("bin\0ary", "w.csv:1:1: file: the file is not text")]
    public void A_head_that_cannot_be_read_is_named(string text, string expected) =>
        Assert.StartsWith(expected, Errors(text, WeatherText.Brief())[0], StringComparison.Ordinal);

    [Theory]
    [InlineData(
        "2021-01-04T05:00,0,0,0,20",
        "1:",
        "hour_ending: '2021-01-04T05:00' is not a time with its offset from UTC; a time as 2021-03-01T13:00+02:00 is accepted"
    )]
    [InlineData(
        "2021-01-04T05:30+01:00,0,0,0,20",
        "1:",
        "hour_ending: '2021-01-04T05:30+01:00' is not on the hour by the station's clock"
    )]
    [InlineData("2021-13-04T05:00+01:00,0,0,0,20", "1:", "hour_ending: '2021-13-04T05:00+01:00' is not a time")]
    [InlineData("2021-01-04T05:00+01:00,0,0,20", "1:", "row: 4 cells; 5 cells, as in the heading, are accepted")]
    [InlineData("2021-01-04T05:00+01:00,0,x,0,20", "26:", "direct_normal_w_m2: 'x' is not a number")]
    [InlineData("2021-01-04T05:00+01:00,0,0,NaN,20", "28:", "diffuse_w_m2: 'NaN' is not a number")]
    [InlineData("2021-01-04T05:00+01:00,0,0,1e999,20", "28:", "diffuse_w_m2: '1e999' is not a number")]
    [InlineData(
        "2021-01-04T04:00+01:00,0,0,0,20",
        "1:",
        "time: 4 January, 3 h stands twice or comes after a later hour"
    )]
    [InlineData(
        "2020-01-04T04:00+01:00,0,0,0,20",
        "1:",
        "time: 4 January, 3 h stands twice or comes after a later hour"
    )]
    public void A_row_that_cannot_be_read_is_named_with_its_line_and_column(string row, string column, string expected)
    {
        const int at = 2 + (3 * 24) + 4;
        Assert.StartsWith("2021-01-04T05:00", Lines[at], StringComparison.Ordinal);
        string[] changed = [.. Lines[..at], row, .. Lines[(at + 1)..]];
        var error = Errors(string.Join('\n', changed), WeatherText.Brief())[0];
        Assert.StartsWith($"w.csv:{at + 1}:{column} {expected}", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stamp_declared_wrongly_is_refused_by_the_sun()
    {
        var error = Assert.Single(
            Errors(Sound.Replace("hour_ending", "hour_beginning", StringComparison.Ordinal), WeatherText.Brief())
        );
        Assert.Contains("min after the sun crosses the meridian", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, -8, 1, "place: the record was taken 1779 km from the station")]
    [InlineData(1, 8, 2, "DATA PERIODS: the eighth line")]
    [InlineData(1.5, 8, 1, "time zone: the file's clock is 0.5 h from the station's")]
    public void An_epw_file_of_another_place_or_step_is_refused(
        double utcOffsetH,
        double latitudeDeg,
        int recordsPerHour,
        string expected
    ) =>
        Assert.Contains(
            Errors(WeatherText.Epw(utcOffsetH, latitudeDeg, recordsPerHour), WeatherText.Brief()),
            error => error.Contains(expected, StringComparison.Ordinal)
        );

    [Fact]
    public void A_file_full_of_errors_is_read_no_further_than_twenty()
    {
        var errors = Errors(Sound.Replace("+01:00", "", StringComparison.Ordinal), WeatherText.Brief());
        Assert.Equal(21, errors.Count);
        Assert.Contains("reading stops", errors[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_without_end_and_a_file_without_end_are_refused()
    {
        Assert.Contains(
            "w.csv:1:1: file: the line is too long",
            Errors(new string('x', 20_000), WeatherText.Brief())[0],
            StringComparison.Ordinal
        );
        using var endless = new EndlessLines();
        var bad = Assert.Throws<BadInputException>(() => WeatherLines.Of(endless, "w.csv").Count());
        Assert.Contains("files of at most 64 MB are accepted", bad.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Whatever_becomes_of_the_text_it_is_read_or_refused_with_a_line() =>
        Gen.Select(Gen.Int[0, Sound.Length - 1], Gen.OneOf(Marks))
            .Array[1, 30]
            .Sample(
                changes =>
                {
                    var text = new StringBuilder(Sound);
                    foreach (var (at, with) in changes)
                    {
                        text.Remove(Math.Min(at, text.Length - 1), 1).Insert(Math.Min(at, text.Length), with);
                    }

                    AssertReadOrRefused(text.ToString());
                },
                iter: 60
            );

    [Fact]
    public void However_short_the_file_is_cut_it_is_read_or_refused_with_a_line() =>
        Gen.Int[0, Sound.Length].Sample(length => AssertReadOrRefused(Sound[..length]), iter: 40);

    private static void AssertReadOrRefused(string text)
    {
        using var scratch = new Scratch();
        scratch.Write("w.csv", text);
        try
        {
            var year = scratch.Read(WeatherText.Brief()).Brief.Site.Record!.Dullest;
            Assert.All(year.GlobalWPerM2, value => Assert.InRange(value, 0, 2000));
            Assert.All(year.DirectNormalWPerM2, value => Assert.InRange(value, 0, 1440));
            Assert.All(year.DiffuseWPerM2, value => Assert.InRange(value, 0, 1500));
            Assert.All(year.AirDegC, value => Assert.InRange(value, -60, 60));
        }
        catch (BadInputException bad)
        {
            Assert.All(bad.Errors, error => Assert.EndsWith("w.csv", error.File, StringComparison.Ordinal));
            Assert.All(bad.Errors, error => Assert.InRange(error.Line, 1, 9000));
        }
    }

    private static IReadOnlyList<string> Errors(string weather, string brief)
    {
        using var scratch = new Scratch();
        scratch.Write("w.csv", weather);
        return scratch.Errors(brief);
    }

    private sealed class EndlessLines : TextReader
    {
        public override int Read(char[] buffer, int index, int count) => Read(buffer.AsSpan(index, count));

        public override int Read(Span<char> buffer)
        {
            buffer.Fill('\n');
            return buffer.Length;
        }
    }
}
