using CsCheck;
using Shaduf.Sun;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Sun;

public sealed class RecordYearTests
{
    private static readonly Place Site = new(-1.3, 37.6, 1500, 3);
    private static readonly IReadOnlyList<RecordHour> Record =
    [
        .. Csv.Embedded(typeof(OracleChecks).Assembly, "weather_year_a.csv")
            .Select(row => new RecordHour(
                row.LineNumber,
                true,
                row.Number("ghi"),
                row.Number("dni"),
                row.Number("dhi"),
                row.Number("temp_c")
            )),
    ];

    // The kinds of harm that the property test does to an hour.
    private static readonly IReadOnlyList<(string Name, Func<RecordHour, RecordHour> Do)> Harms =
    [
        ("no row", hour => new(hour.Line, false, null, null, null, null)),
        ("no light", hour => hour with { GlobalWPerM2 = null, DirectNormalWPerM2 = null, DiffuseWPerM2 = null }),
        ("no global", hour => hour with { GlobalWPerM2 = null }),
        ("no beam", hour => hour with { DirectNormalWPerM2 = null }),
        ("no air", hour => hour with { AirDegC = null }),
        ("code", hour => hour with { GlobalWPerM2 = 9999 }),
        ("negative", hour => hour with { GlobalWPerM2 = -200 }),
        ("beam beyond the sun", hour => hour with { DirectNormalWPerM2 = 1600 }),
        ("diffuse beyond the sky", hour => hour with { DiffuseWPerM2 = 1700 }),
        ("not a number", hour => hour with { GlobalWPerM2 = double.NaN, AirDegC = double.NaN }),
        ("endless", hour => hour with { DiffuseWPerM2 = double.PositiveInfinity, DirectNormalWPerM2 = null }),
        ("hot", hour => hour with { AirDegC = 99.9 }),
        ("parts do not add up", hour => hour with { DiffuseWPerM2 = hour.DiffuseWPerM2 + 300 }),
    ];

    [Fact]
    public void A_sound_record_comes_back_as_it_is()
    {
        var found = RecordYear.Of(Site, Record, isAirAtEnd: false);
        var year = found.Year!;
        Assert.Empty(found.Refusals);
        Assert.Equal(Record.Select(hour => hour.GlobalWPerM2!.Value), year.GlobalWPerM2);
        Assert.Equal(Record.Select(hour => hour.AirDegC!.Value), year.AirDegC);
        Assert.All(found.ClockShiftMin, shift => Assert.InRange(shift!.Value, -12, 12));
        Assert.Equal(0, found.FilledShare);

        // The record's sun is at the middle of the hour, also where the sun rises or sets in it.
        Assert.All(found.Counts, count => Assert.Equal(RecordMatter.NotClosed, count.Matter));
        Assert.InRange(found.Counts.Sum(count => count.HourCount), 0, 40);
    }

    [Fact]
    public void Whatever_harm_is_done_is_repaired_and_counted_or_refused() =>
        Gen.Select(Gen.Int[0, Harms.Count - 1], Gen.Int[0, 8759], Gen.Int[1, 60])
            .Array[1, 12]
            .Sample(
                harms =>
                {
                    var harmed = Record.ToArray();
                    foreach (var (kind, first, length) in harms)
                    {
                        for (var hour = first; hour < Math.Min(8760, first + length); hour++)
                        {
                            harmed[hour] = Harms[kind].Do(harmed[hour]);
                        }
                    }

                    AssertSound(harmed);
                },
                iter: 300,
                print: harms =>
                    string.Join("; ", harms.Select(harm => $"{Harms[harm.Item1].Name} {harm.Item2} {harm.Item3}"))
            );

    private static void AssertSound(RecordHour[] harmed)
    {
        var found = RecordYear.Of(Site, harmed, isAirAtEnd: false);
        if (found.Year is not { } year)
        {
            Assert.NotEmpty(found.Refusals);
            Assert.All(found.Refusals, refusal => Assert.InRange(refusal.Line, 2, 8761));
            return;
        }

        for (var hour = 0; hour < 8760; hour++)
        {
            Assert.InRange(year.GlobalWPerM2[hour], 0, 1400);
            Assert.InRange(year.DirectNormalWPerM2[hour], 0, Math.Max(0, year.ExtraterrestrialNormalWPerM2[hour]));
            Assert.InRange(year.DiffuseWPerM2[hour], 0, 1000);
            Assert.InRange(year.AirDegC[hour], -10, 50);
            if (harmed[hour].GlobalWPerM2 == Record[hour].GlobalWPerM2)
            {
                Assert.Equal(harmed[hour].GlobalWPerM2 ?? 0, year.GlobalWPerM2[hour]);
            }
            else
            {
                Assert.NotEmpty(found.Counts);
            }
        }
    }

    [Theory]
    [InlineData(1, "after")]
    [InlineData(-1, "before")]
    [InlineData(3, "after")]
    [InlineData(-5, "before")]
    [InlineData(11, "after")]
    public void A_shifted_clock_is_refused_and_named(int lateH, string side)
    {
        RecordHour[] shifted = [.. Enumerable.Range(0, 8760).Select(hour => Record[(hour - lateH + 8760) % 8760])];
        var refusal = Assert.Single(RecordYear.Of(Site, shifted, isAirAtEnd: false).Refusals);
        Assert.Contains($"min {side} the sun", refusal.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Summer_time_in_half_the_year_is_refused_by_its_month()
    {
        RecordHour[] shifted =
        [
            .. Enumerable
                .Range(0, 8760)
                .Select(hour => Record[YearCalendar.MonthOf(hour) is >= 3 and <= 8 ? hour - 1 : hour]),
        ];
        Assert.Single(RecordYear.Of(Site, shifted, isAirAtEnd: false).Refusals);
    }

    [Fact]
    public void A_short_gap_follows_the_hours_beside_it_and_a_whole_day_another_day()
    {
        var harmed = Record.ToArray();
        const int noon = (100 * 24) + 12;
        harmed[noon] = harmed[noon] with
        {
            GlobalWPerM2 = null,
            DirectNormalWPerM2 = null,
            DiffuseWPerM2 = null,
            AirDegC = null,
        };
        for (var hour = 200 * 24; hour < 201 * 24; hour++)
        {
            harmed[hour] = new(harmed[hour].Line, false, null, null, null, null);
        }

        var found = RecordYear.Of(Site, harmed, isAirAtEnd: false);
        Assert.Equal(
            (harmed[noon - 1].AirDegC!.Value + harmed[noon + 1].AirDegC!.Value) / 2,
            found.Year!.AirDegC[noon],
            1e-9
        );
        Assert.Equal(harmed[199 * 24].AirDegC!.Value, found.Year.AirDegC[200 * 24]);
        Assert.Equal(
            Record.Skip(199 * 24).Take(24).Sum(hour => hour.GlobalWPerM2!.Value),
            found.Year.GlobalWPerM2.Skip(200 * 24).Take(24).Sum(),
            60.0
        );
        Assert.Equal(24, Count(found, RecordMatter.NoRow));
        Assert.Equal(1, Count(found, RecordMatter.LightBridged));
        Assert.InRange(Count(found, RecordMatter.LightCopied), 11, 13);
        Assert.InRange(found.FilledShare, 12 / 4600.0, 14 / 4300.0);
    }

    [Fact]
    public void Too_much_missing_is_refused_by_month_and_line()
    {
        var harmed = Record.ToArray();
        for (var hour = 0; hour < 48; hour++)
        {
            harmed[hour] = harmed[hour] with { GlobalWPerM2 = null, DirectNormalWPerM2 = null };
        }

        var refusal = Assert.Single(RecordYear.Of(Site, harmed, isAirAtEnd: false).Refusals);
        Assert.Equal(2, refusal.Line);
        Assert.Contains("January has 26 sunlit hours without", refusal.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_unit_is_refused()
    {
        var found = RecordYear.Of(
            Site,
            [
                .. Record.Select(hour =>
                    hour with
                    {
                        GlobalWPerM2 = hour.GlobalWPerM2 / 3600,
                        DirectNormalWPerM2 = null,
                        DiffuseWPerM2 = null,
                    }
                ),
            ],
            isAirAtEnd: false
        );
        Assert.Equal(12, found.Refusals.Count);
        Assert.All(found.Refusals, refusal => Assert.Contains("unit", refusal.Accepted, StringComparison.Ordinal));
    }

    [Fact]
    public void Light_in_the_night_is_counted_or_refused()
    {
        var harmed = Record.ToArray();
        harmed[0] = harmed[0] with { GlobalWPerM2 = 6 };
        harmed[24] = harmed[24] with { GlobalWPerM2 = 300 };
        harmed[48] = harmed[48] with { GlobalWPerM2 = -3 };
        var found = RecordYear.Of(Site, harmed, isAirAtEnd: false);
        Assert.Equal((2, 1), (Count(found, RecordMatter.NightGlow), Count(found, RecordMatter.NightLight)));
        Assert.Equal(0, found.Year!.GlobalWPerM2[24]);
    }

    [Fact]
    public void Air_read_at_the_end_of_the_hour_becomes_the_hours_mean()
    {
        var year = RecordYear.Of(Site, Record, isAirAtEnd: true).Year!;
        Assert.Equal((Record[11].AirDegC!.Value + Record[12].AirDegC!.Value) / 2, year.AirDegC[12], 1e-12);
    }

    private static int Count(RecordedYear found, RecordMatter matter) =>
        found.Counts.SingleOrDefault(count => count.Matter == matter)?.HourCount ?? 0;
}
