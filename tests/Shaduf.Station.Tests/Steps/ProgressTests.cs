namespace Shaduf.Station.Tests;

/// <summary>What has happened is kept, and the rest goes on from there.</summary>
public sealed class ProgressTests
{
    [Fact]
    public void A_late_start_makes_the_end_late_and_leaves_the_offer_alone()
    {
        var plan = SmallDesign.Of();
        var start = DateOnly.FromDateTime(plan.Programme.Start);
        var late = start.AddDays(40);
        var design = SmallDesign.Of(brief =>
            brief["progress"] = System.Text.Json.Nodes.JsonNode.Parse(
                FormattableString.Invariant(
                    $$"""{ "on": "{{late:yyyy-MM-dd}}", "done": [{ "activity": "order", "started": "{{start:yyyy-MM-dd}}", "finished": "{{start:yyyy-MM-dd}}" }, { "activity": "set-out", "started": "{{late:yyyy-MM-dd}}", "share": "50 %" }] }"""
                )
            )
        );
        var forecast = design.Office.Forecast!;
        Assert.True(forecast.Finish > design.Programme.Finish);
        Assert.Equal(plan.Programme.Finish, design.Programme.Finish);
        Assert.Equal(plan.Offer.Total, design.Offer.Total);
        Assert.True(forecast.PlaceOf("pits").Start >= late.ToDateTime(TimeOnly.MinValue));
        Assert.Contains(design.Findings, finding => finding.Id == "programme/kept");
    }

    [Theory]
    [InlineData("on: 2026-05-01, done: [{ activity: tea, started: 2026-04-01 }]", "progress.done[1].activity")]
    [InlineData("on: 2026-05-01, done: [{ activity: pits }]", "progress.done[1].started")]
    [InlineData("on: 2026-05-01, done: [{ activity: pits, started: 2026-05-09 }]", "progress.done[1].started")]
    [InlineData(
        "on: 2026-05-01, done: [{ activity: pits, started: 2026-04-09, finished: 2026-04-01 }]",
        "progress.done[1].started"
    )]
    [InlineData("done: []", "progress.on")]
    public void A_report_that_cannot_be_is_refused_at_its_place(string line, string field)
    {
        using var scratch = new Scratch();
        var text = Specimen.Brief.TrimEnd() + $"\n\nprogress: {{ {line} }}\n";
        Assert.Contains(
            scratch.Errors(() => scratch.Read(text)),
            error => error.Contains($" {field}: ", StringComparison.Ordinal)
        );
    }
}
