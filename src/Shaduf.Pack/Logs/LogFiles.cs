using System.Globalization;
using System.Text;
using System.Text.Json;
using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The files made of a log: a report to read, its weeks as a table, all of it as data.</summary>
public static class LogFiles
{
    /// <summary>Names of the files.</summary>
    public static IReadOnlyList<string> FileNames { get; } = ["log-report.pdf", "log-weeks.csv", "log.json"];

    private static readonly JsonSerializerOptions s_options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
    };

    /// <summary>Makes the files in memory.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">What every document bears.</param>
    /// <param name="report">The log, held against the design.</param>
    /// <returns>Names and bytes; the same for the same design, stamp and log.</returns>
    public static IReadOnlyList<(string Name, byte[] Bytes)> Of(Design design, Stamp stamp, LogReport report) =>
        [
            (FileNames[0], PackWriter.Pdf(design, stamp, "log report", LogPaper.Pages(design, stamp, report))),
            (FileNames[1], Encoding.UTF8.GetBytes(Weeks(report))),
            (FileNames[2], Encoding.UTF8.GetBytes(Json(stamp, report))),
        ];

    private static string Weeks(LogReport report)
    {
        var text = new StringBuilder(
            "from,logged_h,water_m3,expected_m3,energy_kwh,expected_kwh,array_ratio,pump_ratio,rest_m,night_flow_m3_h,night_loss_m3_h,stood_h,clock_off_min\n"
        );
        foreach (var week in report.Weeks)
        {
            double?[] figures =
            [
                week.LoggedH,
                week.WaterM3,
                week.ExpectedM3,
                week.EnergyKWh,
                week.ExpectedKWh,
                week.ArrayRatio,
                week.PumpRatio,
                week.RestM,
                week.NightFlowM3PerH,
                week.NightLossM3PerH,
                week.StoodH,
                week.ClockOffMin,
            ];
            text.Append(Invariant($"{week.From:yyyy-MM-dd},"))
                .AppendJoin(
                    ',',
                    figures.Select(figure => figure?.ToString("0.####", CultureInfo.InvariantCulture) ?? "")
                )
                .Append('\n');
        }

        return text.ToString();
    }

    private static string Json(Stamp stamp, LogReport report) =>
        JsonSerializer.Serialize(
            new
            {
                brief = stamp.BriefHash,
                program = stamp.ProgramVersion,
                log = Path.GetFileName(report.File),
                basis = report.IsByLight ? "light" : "typical-hour",
                intervalS = report.IntervalS,
                report.RowCount,
                report.MissingCount,
                apartCount = report.Apart.Count,
                apartM3 = DesignEntries.R(report.Apart.WaterM3),
                columns = report.Columns.Select(column => column?.ToString().ToLowerInvariant()),
                report.Unused,
                findings = report.Findings.Select(Entry),
                soiling = report.Soiling is { } dust
                    ? new
                    {
                        cleanRatio = DesignEntries.R(dust.CleanRatio),
                        lostShare = DesignEntries.R(dust.LostShare),
                        perWeekRatio = DesignEntries.R(dust.PerWeekRatio),
                        washed = dust.WashedWeeks.Select(week => report.Weeks[0].From.AddDays((int)(7 * week))),
                    }
                    : null,
                pumpTrend = report.PumpTrend is { } trend
                    ? new
                    {
                        perWeekRatio = DesignEntries.R(trend.ChangeRatio),
                        chanceShare = DesignEntries.R(trend.ChanceShare),
                    }
                    : null,
                weeks = report.Weeks.Select(Entry),
                faultCounts = report.FaultCounts.ToDictionary(
                    count => JsonNamingPolicy.CamelCase.ConvertName(count.Key.ToString()),
                    count => count.Value
                ),
                faults = report.Faults.Select(fault => new
                {
                    fault.Line,
                    fault.Column,
                    kind = JsonNamingPolicy.CamelCase.ConvertName(fault.Kind.ToString()),
                    fault.Says,
                }),
            },
            s_options
        ) + "\n";

    private static object Entry(Finding finding) =>
        new
        {
            finding.Id,
            status = finding.Status.ToString().ToLowerInvariant(),
            finding.Says,
            value = Rounded(finding.Value),
            limit = Rounded(finding.Limit),
            finding.Unit,
        };

    private static object Entry(LogWeek week) =>
        new
        {
            week.From,
            loggedH = DesignEntries.R(week.LoggedH),
            waterM3 = DesignEntries.R(week.WaterM3),
            expectedM3 = DesignEntries.R(week.ExpectedM3),
            energyKWh = DesignEntries.R(week.EnergyKWh),
            expectedKWh = DesignEntries.R(week.ExpectedKWh),
            arrayRatio = Rounded(week.ArrayRatio),
            pumpRatio = Rounded(week.PumpRatio),
            restM = Rounded(week.RestM),
            nightFlowM3PerH = Rounded(week.NightFlowM3PerH),
            nightLossM3PerH = Rounded(week.NightLossM3PerH),
            stoodH = Rounded(week.StoodH),
            clockOffMin = Rounded(week.ClockOffMin),
        };

    private static double? Rounded(double? figure) => figure is { } told ? DesignEntries.R(told) : null;
}
