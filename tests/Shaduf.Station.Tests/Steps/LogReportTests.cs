using System.Text;
using CsCheck;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>Logs with known faults, held against their design.</summary>
public sealed class LogReportTests
{
    private static readonly Design Village = Examples.DesignOf("hilltop-village");

    private static LogReport Of(SyntheticLog log, Func<IEnumerable<string>, IEnumerable<string>>? marred = null)
    {
        using var stream = log.Stream(marred);
        return LogReport.Of(Village, stream, "log.csv");
    }

    private static LogReport Of(string text)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(text));
        return LogReport.Of(Village, stream, "log.csv");
    }

    private static Finding Find(LogReport report, string id) => report.Findings.Single(finding => finding.Id == id);

    [Fact]
    public void A_sound_station_is_found_sound()
    {
        var report = Of(new SyntheticLog(Village, 10));
        Assert.All(report.Findings, finding => Assert.Equal(FindingStatus.Holds, finding.Status));
        Assert.Equal((600, 52, 52_416L), (report.IntervalS, report.Weeks.Count, report.RowCount));
        Assert.InRange(Find(report, "logs/water").Value!.Value, 98, 102);
        Assert.All(report.Weeks, week => Assert.Equal(168, week.LoggedH, 1e-6));
        Assert.Empty(report.Faults);
        Assert.True(report.IsByLight);
    }

    [Fact]
    public void Dust_is_told_with_its_rate_and_its_washings()
    {
        // 0.7 % a week, washed off on days 91 and 210.
        double Clean(int day) =>
            1
            - (
                0.001
                * (
                    day < 91 ? day
                    : day < 210 ? day - 91
                    : day - 210
                )
            );
        var report = Of(new SyntheticLog(Village, 10) { Clean = Clean });
        Assert.Equal([13, 30], report.Soiling!.WashedWeeks);
        Assert.InRange(report.Soiling.PerWeekRatio, -0.009, -0.005);
        Assert.InRange(report.Soiling.LostShare, 0.12, 0.17);
        Assert.Equal(FindingStatus.Look, Find(report, "logs/soiling").Status);
        Assert.Contains("2026-04-06", Find(report, "logs/soiling").Says, StringComparison.Ordinal);
        Assert.Equal(FindingStatus.Holds, Find(report, "logs/pump").Status);
    }

    [Fact]
    public void A_wearing_pump_is_told_apart_from_dust()
    {
        var report = Of(new SyntheticLog(Village, 10) { Worn = day => 1 - (0.12 * day / 364) });
        var pump = Find(report, "logs/pump");
        Assert.Equal(FindingStatus.Look, pump.Status);
        Assert.InRange(pump.Value!.Value, -13.5, -10.5);
        Assert.Equal(FindingStatus.Holds, Find(report, "logs/soiling").Status);
    }

    [Fact]
    public void A_leak_at_night_is_told_with_its_size()
    {
        var report = Of(new SyntheticLog(Village, 10) { LeakM3PerH = day => day < 200 ? 0 : 0.2 });
        var leak = Find(report, "logs/leak");
        Assert.Equal(FindingStatus.Look, leak.Status);
        Assert.InRange(leak.Value!.Value, 0.15, 0.25);
        Assert.Equal(FindingStatus.Holds, Find(report, "logs/pump").Status);
    }

    [Fact]
    public void Water_that_runs_while_the_pump_stands_is_told()
    {
        var back = Find(Of(new SyntheticLog(Village, 10) { BackM3PerH = 0.3 }), "logs/back");
        Assert.Equal((FindingStatus.Look, 0.3), (back.Status, Math.Round(back.Value!.Value, 6)));
    }

    [Fact]
    public void Gaps_rows_twice_bad_cells_and_impossible_figures_are_told_with_their_lines()
    {
        var report = Of(
            new SyntheticLog(Village, 60) { Days = 70 },
            lines =>
            {
                var all = lines.ToList();
                all[500] = all[500].Replace(',', ';');
                all[600] = all[600][..all[600].LastIndexOf(',')] + ",bright";
                all[700] = all[700][..17] + "999,100,42,1,500";
                all[800] = all[799];
                all[801] = all[799][..17] + "1,100,42,1,500";
                all.RemoveRange(900, 24);
                return all;
            }
        );
        (long, int, LogFaultKind)[] told = [.. report.Faults.Select(fault => (fault.Line, fault.Column, fault.Kind))];
        Assert.Contains((501, 0, LogFaultKind.NotARow), told);
        Assert.Contains((601, 6, LogFaultKind.NotANumber), told);
        Assert.Contains((701, 2, LogFaultKind.Impossible), told);
        Assert.Contains((801, 0, LogFaultKind.Repeated), told);
        Assert.Contains((802, 0, LogFaultKind.Contradicts), told);
        Assert.Contains((901, 0, LogFaultKind.Gap), told);
        Assert.Contains(report.Faults, fault => fault.Says.Contains("rows missing: 24", StringComparison.Ordinal));

        // One hour without its row, two that the doubles stand in, and the day that was cut out.
        Assert.Equal(1 + 2 + 24, report.MissingCount);
        Assert.Equal((70 * 24) - 27, report.Weeks.Sum(week => week.LoggedH), 1e-6);
    }

    [Fact]
    public void A_clock_set_to_summer_time_and_back_is_told_and_no_water_stands_twice()
    {
        var sound = Of(new SyntheticLog(Village, 60));
        var report = Of(new SyntheticLog(Village, 60) { AheadMin = day => day is >= 80 and < 300 ? 60 : 0 });
        var clock = Find(report, "logs/clock");
        Assert.Equal(FindingStatus.Look, clock.Status);
        Assert.InRange(clock.Value!.Value, 45, 75);
        Assert.Matches("that of 2026-03-(23|30)", clock.Says);
        Assert.Equal(1, report.FaultCounts[LogFaultKind.Gap]);
        Assert.Equal(
            1L,
            report.FaultCounts[LogFaultKind.Repeated]
                + report.FaultCounts[LogFaultKind.Contradicts]
                + report.FaultCounts[LogFaultKind.ClockBack]
        );
        Assert.Equal(
            sound.Weeks.Sum(week => week.WaterM3),
            report.Weeks.Sum(week => week.WaterM3) + report.Apart.WaterM3,
            0.5
        );
    }

    [Fact]
    public void A_clock_that_goes_back_a_day_has_its_rows_counted_apart()
    {
        var report = Of(
            new SyntheticLog(Village, 60) { Days = 70 },
            lines =>
            {
                var all = lines.ToList();
                return all.Take(500).Concat(all.Skip(480));
            }
        );
        Assert.Equal((20L, 1L), (report.Apart.Count, report.FaultCounts[LogFaultKind.ClockBack]));
        Assert.Equal(70 * 24, report.Weeks.Sum(week => week.LoggedH), 1e-6);
        Assert.Contains(report.Faults, fault => fault is { Line: 501, Kind: LogFaultKind.ClockBack });
    }

    [Theory]
    [InlineData("flow L/s", 1.0, FindingStatus.Look, "in m3/h?")]
    [InlineData("flow m3/h", 1 / 3.6, FindingStatus.Look, "in L/s?")]
    public void Flow_in_another_unit_than_the_heading_says_is_told(
        string name,
        double factor,
        FindingStatus status,
        string says
    )
    {
        var log = new SyntheticLog(Village, 60)
        {
            Heading = $"time,{name},power W,level m,tank m,light W/m2",
            Cells = row =>
                row.Select((cell, i) => FormattableString.Invariant($"{(i == 0 ? cell * factor : cell):0.####}")),
        };
        if (name == "flow L/s")
        {
            var bad = Assert.Throws<BadInputException>(() => Of(log));
            Assert.Contains("log.csv:1:6: flow: ", bad.Message, StringComparison.Ordinal);
            return;
        }

        var units = Find(Of(log), "logs/units");
        Assert.Equal(status, units.Status);
        Assert.Contains(says, units.Says, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("time,flow m3/h,power W,level cm,tank m,light W/m2", 1.0, 1.0, null)]
    [InlineData("time,flow m3/h,power W,level m,tank m,light W/m2", 0.001, 1.0, "log.csv:1:16: power: ")]
    [InlineData("time,flow m3/h,power kW,level m,tank m,light W/m2", 1.0, 1.0, "log.csv:1:16: power: ")]
    [InlineData("time,flow m3/h,power W,level m,tank m,light W/m2", 1.0, 0.001, "log.csv:1:39: light: ")]
    public void A_log_in_impossible_units_is_refused_at_its_column(
        string heading,
        double power,
        double light,
        string? place
    )
    {
        var log = new SyntheticLog(Village, 60)
        {
            Days = 28,
            Heading = heading,
            Cells = row =>
                new[]
                {
                    row[0],
                    row[1] * power,
                    row[2] * (heading.Contains("cm") ? 100 : 1),
                    row[3],
                    row[4] * light,
                }.Select(cell => FormattableString.Invariant($"{cell:0.####}")),
        };
        if (place is null)
        {
            Assert.Equal(FindingStatus.Holds, Find(Of(log), "logs/rest").Status);
            return;
        }

        Assert.Contains(place, Assert.Throws<BadInputException>(() => Of(log)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "the log is empty")]
    [InlineData("time,flow\n", "log.csv:1:6: heading: 'flow' has no unit")]
    [InlineData("time,flow furlongs\n", "'furlongs' is not a unit of flow here")]
    [InlineData("time;flow m3/h\n", "cells parted by semicolons")]
    [InlineData("flow m3/h,power W\n", "no column of time")]
    [InlineData("time,flow m3/h,flow L/s\n", "log.csv:1:16: heading: 'flow L/s' stands twice")]
    [InlineData("time,flow m3/h\n2026-01-01 00:00,1\n", "fewer than two rows")]
    [InlineData("time,flow m3/h\n2026-01-01 00:00:00,1\n2026-01-01 00:00:05,1\n", "rows are 5 s apart")]
    public void What_is_no_log_is_refused(string text, string says) =>
        Assert.Contains(says, Assert.Throws<BadInputException>(() => Of(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void Without_light_the_designs_typical_hour_is_the_measure_and_says_so()
    {
        var log = new SyntheticLog(Village, 60)
        {
            Heading = "time,flow m3/h,power W",
            Cells = row => row.Take(2).Select(cell => FormattableString.Invariant($"{cell:0.###}")),
        };
        var report = Of(log);
        Assert.False(report.IsByLight);
        Assert.Contains("typical hour", Find(report, "logs/water").Says, StringComparison.Ordinal);
        Assert.InRange(Find(report, "logs/water").Value!.Value, 90, 110);
        foreach (var id in new[] { "logs/soiling", "logs/leak", "logs/rest", "logs/clock" })
        {
            Assert.Equal(FindingStatus.Unchecked, Find(report, id).Status);
        }
    }

    [Fact]
    public void Times_may_bear_seconds_an_offset_or_utc_and_lines_other_ends_and_quotes()
    {
        var offsetH = (int)Village.Brief.Site.UtcOffsetH;
        string At(int hour, string form) =>
            form switch
            {
                "utc" => FormattableString.Invariant(
                    $"{new DateTime(2026, 1, 5).AddHours(hour - offsetH):yyyy-MM-ddTHH:mm:ss}Z"
                ),
                "offset" => FormattableString.Invariant(
                    $"{new DateTime(2026, 1, 5).AddHours(hour + 1 - offsetH):yyyy-MM-ddTHH:mm:ss.000}+01:00"
                ),
                _ => $"\"{new DateTime(2026, 1, 5).AddHours(hour):yyyy-MM-dd HH:mm}\"",
            };
        string[] forms = ["utc", "offset", "plain"];
        var report = Of(
            "\uFEFF# a remark\r\n\r\nTime,Flow m3/h,note\r\n"
                + string.Join("\r\n", Enumerable.Range(1, 48).Select(hour => $"{At(hour, forms[hour % 3])},\"0.5\",x"))
        );
        Assert.Empty(report.Faults);
        Assert.Equal(["note"], report.Unused);
        Assert.Equal((48.0, 24.0), (report.Weeks.Single().LoggedH, Math.Round(report.Weeks.Single().WaterM3, 9)));
    }

    [Fact]
    public void A_line_longer_than_any_row_is_passed_over()
    {
        var report = Of(
            $"time,flow m3/h\n2026-01-01 01:00,1\n{new string('9', 200_000)}\n2026-01-01 02:00,1\n2026-01-01 03:00,1\n"
        );
        Assert.Equal((3L, 3L), (report.RowCount, report.Faults.Single().Line));
    }

    [Fact]
    public void Any_bytes_are_a_log_or_are_refused()
    {
        Gen.Byte.Array[0, 400]
            .Sample(
                bytes =>
                {
                    byte[] all =
                    [
                        .. Encoding.UTF8.GetBytes(
                            "time,flow m3/h,power W\n2026-01-01 01:00,1,2\n2026-01-01 02:00,1,2\n"
                        ),
                        .. bytes,
                    ];
                    using var stream = new MemoryStream(all);
                    Assert.Equal(2, LogReport.Of(Village, stream, "log.csv").Weeks.Sum(week => week.LoggedH), 1e-9);
                },
                iter: Math.Max(100, Check.Iter / 10)
            );
    }
}
