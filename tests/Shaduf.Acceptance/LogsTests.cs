using System.Text;
using System.Text.Json.Nodes;

namespace Shaduf.Acceptance;

public sealed class LogsTests
{
    [Fact]
    public void A_log_is_held_against_its_design_and_its_faults_are_told_with_their_place()
    {
        var folder = Command.NewFolder();
        var rows = new StringBuilder("time,flow m3/h,power W,light W/m2\n");
        for (var hour = 1; hour <= 24 * 60; hour++)
        {
            var at = new DateTime(2026, 3, 2).AddHours(hour);
            var isDay = at.Hour is > 8 and < 16;
            rows.Append(
                FormattableString.Invariant(
                    $"{at:yyyy-MM-dd HH:mm},{(isDay ? 3 : 0)},{(isDay ? 2500 : 0)},{(isDay ? 800 : 0)}\n"
                )
            );
        }

        File.WriteAllText(
            Path.Combine(folder, "log.csv"),
            rows.ToString().Replace("2026-03-10 12:00,3,", "2026-03-10 12:00,many,", StringComparison.Ordinal)
        );
        var ran = Command.Run(folder, "logs", Command.Example("hilltop-village"), "log.csv", "--out", "report");
        Assert.Equal((0, ""), (ran.ExitCode, ran.Error));
        Assert.Contains("log.csv:205:2: 'many' is not a number", ran.Output);
        Assert.Equal(
            ["log-report.pdf", "log-weeks.csv", "log.json"],
            Directory.GetFiles(Path.Combine(folder, "report")).Select(Path.GetFileName).Order()
        );
        var json = JsonNode.Parse(File.ReadAllText(Path.Combine(folder, "report", "log.json")))!;
        Assert.Equal((1440, "light"), ((int)json["rowCount"]!, (string)json["basis"]!));
        Assert.Equal(9, json["weeks"]!.AsArray().Count);
    }

    [Fact]
    public void The_log_of_the_plain_school_shows_its_leak_and_nothing_else_of_the_station()
    {
        var folder = Command.NewFolder();
        var log = Path.Combine(Command.Root, "examples", "plain-school", "log.csv");
        var ran = Command.Run(folder, "logs", Command.Example("plain-school"), log, "--out", "report");
        Assert.Equal((0, ""), (ran.ExitCode, ran.Error));
        Assert.Contains($"{log}:216:1: nothing from 2027-03-09 20:00 to 2027-03-10 03:00", ran.Output);
        Assert.Contains($"{log}:368:4: 'err' is not a number", ran.Output);
        Assert.Contains($"{log}:413:1: 2027-03-18 07:00 stands on line 412 too", ran.Output);
        var findings = JsonNode.Parse(File.ReadAllText(Path.Combine(folder, "report", "log.json")))![
            "findings"
        ]!.AsArray();
        Assert.Equal(
            ["logs/leak", "logs/numbers", "logs/repeated"],
            findings
                .Where(finding => (string)finding!["status"]! == "look")
                .Select(finding => (string)finding!["id"]!)
                .Order()
        );
        Assert.Equal(
            ["logs/pump", "logs/soiling"],
            findings
                .Where(finding => (string)finding!["status"]! == "unchecked")
                .Select(finding => (string)finding!["id"]!)
                .Order()
        );

        // 45 L an hour were let out of the tank when the log was made, besides what the pupils drew.
        var leak = findings.Single(finding => (string)finding!["id"]! == "logs/leak")!;
        Assert.InRange((double)leak["value"]!, 0.035, 0.055);
    }

    [Fact]
    public void A_log_that_is_none_is_bad_input()
    {
        var folder = Command.NewFolder();
        File.WriteAllText(Path.Combine(folder, "log.csv"), "time,flow\n");
        var ran = Command.Run(folder, "logs", Command.Example("homestead"), "log.csv", "--out", "report");
        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("log.csv:1:6: heading: 'flow' has no unit", ran.Error);
        Assert.False(Directory.Exists(Path.Combine(folder, "report")));
        Assert.Equal(
            2,
            Command.Run(folder, "logs", Command.Example("homestead"), "none.csv", "--out", "report").ExitCode
        );
    }
}
