using Shaduf.Water;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Water;

public sealed class WaterPublishedTests
{
    public static TheoryData<string> Ids =>
        [.. Published.Cases(typeof(PublishedChecks).Assembly).Select(row => row.Id)];

    private static readonly IReadOnlyDictionary<string, Verdict> Verdicts = Published
        .Verify(typeof(PublishedChecks).Assembly, PublishedChecks.All)
        .ToDictionary(verdict => verdict.Case.Id);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Agrees_with_the_published_figure(string id)
    {
        var verdict = Verdicts[id];
        Assert.True(
            verdict.Agrees,
            $"{verdict.Case.Quantity}: {verdict.Obtained} {verdict.Case.Unit}, published {verdict.Case.Expected} "
                + $"within {verdict.Case.Tolerance} ({verdict.Case.Source}) {verdict.Trouble}"
        );
    }

    [Fact]
    public void Every_check_is_asked_for_by_a_row()
    {
        var asked = Verdicts.Values.Select(verdict => (verdict.Case.Method, verdict.Case.Quantity)).ToHashSet();
        Assert.DoesNotContain(PublishedChecks.All, check => !asked.Contains((check.Method, check.Quantity)));
    }
}
