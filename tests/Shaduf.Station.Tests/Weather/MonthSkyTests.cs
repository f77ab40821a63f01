using System.Text.Json.Nodes;
using Shaduf.Sun;

namespace Shaduf.Station.Tests;

/// <summary>Months whose sun nobody measured: estimated, marked, and leaned on.</summary>
public sealed class MonthSkyTests
{
    [Fact]
    public void A_measured_month_comes_first_then_sunshine_then_the_range_then_the_default()
    {
        var survey = SurveyOf(
            ("mar", """{ "sunshine": "8 h", "low": "19 degC", "high": "31 degC" }"""),
            ("apr", """{ "low": "19 degC", "high": "31 degC" }"""),
            ("may", "{}")
        );
        var above = Sky.AboveTheAirKWhPerM2Day(8);
        var sun = survey.Climate.GlobalKWhPerM2Day;
        Assert.Equal(5.2, sun[1]);
        Assert.Equal(above[2] * (0.25 + (0.5 * 8 / MonthSky.DaylightH(8, 2))), sun[2], 1e-12);
        Assert.Equal(above[3] * 0.16 * Math.Sqrt(12), sun[3], 1e-12);
        Assert.Equal(above[4] * 0.4, sun[4], 1e-12);
        Assert.Equal((25, 30), (survey.Climate.AirDegC[3], survey.Climate.AirDegC[4]));
        Assert.Equal([null, null, 12, 12, null], survey.Climate.SwingK.Take(5));
        Assert.Equal(
            [
                ("month-sunshine", "estimated from sunshine hours in 1 months"),
                ("month-range", "estimated from low and high in 1 months"),
                ("month-clearness", "40 % of the sun above the air in 1 months"),
                ("month-middle", "midway between low and high in 2 months"),
                ("month-air", "30 degC in 1 months"),
            ],
            survey
                .Assumptions.Where(each => each.Id.StartsWith("month-", StringComparison.Ordinal))
                .Select(each => (each.Id, each.Taken))
        );
    }

    [Fact]
    public void No_estimate_is_above_the_clear_sky_and_a_coast_counts()
    {
        var high = SurveyOf(("jan", """{ "low": "2 degC", "high": "31 degC" }""")).Climate.GlobalKWhPerM2Day[0];
        Assert.Equal(Sky.AboveTheAirKWhPerM2Day(8)[0] * EstimatedClearness.ClearSkyRatio(400), high, 1e-12);
        var brief = With(("jan", """{ "low": "22 degC", "high": "31 degC" }"""));
        brief["site"]!["coast"] = "yes";
        using var scratch = new Scratch();
        var coast = Survey.Of(scratch.Read(brief.ToJsonString()).Brief).Climate.GlobalKWhPerM2Day[0];
        Assert.Equal(Sky.AboveTheAirKWhPerM2Day(8)[0] * 0.19 * 3, coast, 1e-12);
    }

    [Fact]
    public void The_finding_names_the_estimated_months()
    {
        using var scratch = new Scratch();
        var design = DesignRun.Run(
            scratch.Read(With(("mar", """{ "sunshine": "8 h", "air": "22 degC" }""")).ToJsonString())
        );
        var sun = design.Findings.Single(finding => finding.Id == "weather/sun");
        Assert.Equal(Working.FindingStatus.Look, sun.Status);
        Assert.Contains("March (estimate: sunshine hours)", sun.Says, StringComparison.Ordinal);
        Assert.Contains("month-sunshine", design.Findings.Single(each => each.Id == "water/worst-month").LeansOn);
        var days = design.Findings.Single(finding => finding.Id == "weather/days");
        Assert.InRange(days.Value!.Value, 0, days.Limit!.Value);
    }

    [Theory]
    [InlineData(
        """{ "sunshine": "13 h" }""",
        "site.months.mar.sunshine: 13 h is longer than the day; at most 12.0 h is accepted there"
    )]
    [InlineData(
        """{ "low": "20 degC" }""",
        "site.months.mar.low: stands alone; both of 'low' and 'high', or neither, are accepted"
    )]
    [InlineData(
        """{ "low": "20 degC", "high": "21 degC" }""",
        "site.months.mar.high: 1 K above the lowest; 2 to 30 K above 'low' is accepted"
    )]
    [InlineData(
        """{ "low": "20 degC", "high": "30 degC", "air": "31 degC" }""",
        "site.months.mar.air: not between the month's low and high"
    )]
    [InlineData(
        """{ "low": "4 degC", "high": "30 degC" }""",
        "site.months.mar.low: 17 degC is not between the records"
    )]
    public void What_cannot_be_is_refused(string month, string expected)
    {
        using var scratch = new Scratch();
        Assert.Contains(
            expected,
            Assert.Single(scratch.Errors(With(("mar", month)).ToJsonString())),
            StringComparison.Ordinal
        );
    }

    private static Survey SurveyOf(params IEnumerable<(string Month, string Text)> months)
    {
        using var scratch = new Scratch();
        return Survey.Of(scratch.Read(With(months, recordLow: false).ToJsonString()).Brief);
    }

    private static JsonNode With(params IEnumerable<(string Month, string Text)> months) =>
        With(months, recordLow: true);

    private static JsonNode With(IEnumerable<(string Month, string Text)> months, bool recordLow)
    {
        var brief = SmallStation.Brief();
        foreach (var (month, text) in months)
        {
            brief["site"]!["months"]![month] = JsonNode.Parse(text);
        }

        if (!recordLow)
        {
            brief["site"]!.AsObject().Remove("recordLow");
        }

        return brief;
    }
}
