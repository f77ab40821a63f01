using Shaduf.Sun;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Sun;

public sealed class SunPublishedTests
{
    private static readonly IReadOnlyList<Verdict> Verdicts = Published.Verify(
        typeof(PublishedChecks).Assembly,
        PublishedChecks.All
    );

    public static TheoryData<string> Ids => [.. Verdicts.Select(verdict => verdict.Case.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Agrees_with_the_published_figure(string id)
    {
        var verdict = Verdicts.Single(verdict => verdict.Case.Id == id);
        Assert.True(
            verdict.Agrees,
            $"{id}: published {verdict.Case.Expected}, obtained {verdict.Obtained} {verdict.Case.Unit} {verdict.Trouble}"
        );
    }

    [Fact]
    public void Every_check_has_a_row()
    {
        var named = Verdicts.Select(verdict => (verdict.Case.Method, verdict.Case.Quantity)).ToHashSet();
        Assert.All(PublishedChecks.All, check => Assert.Contains((check.Method, check.Quantity), named));
        Assert.True(Verdicts.Count >= 18);
    }
}
