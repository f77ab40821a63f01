using Shaduf.Power;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Power;

public sealed class PublishedTests
{
    public static TheoryData<string> Ids =>
        [.. Published.Cases(typeof(PublishedChecks).Assembly).Select(published => published.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Agrees_with_the_published_figure(string id)
    {
        var verdict = Published
            .Verify(typeof(PublishedChecks).Assembly, PublishedChecks.All)
            .Single(verdict => verdict.Case.Id == id);
        Assert.True(
            verdict.Agrees,
            $"{id}: {verdict.Case.Expected} {verdict.Case.Unit} published, {verdict.Obtained} obtained. {verdict.Trouble}"
        );
    }

    [Fact]
    public void Every_check_has_a_row()
    {
        var named = Published
            .Cases(typeof(PublishedChecks).Assembly)
            .Select(row => (row.Method, row.Quantity))
            .ToHashSet();
        Assert.All(PublishedChecks.All, check => Assert.Contains((check.Method, check.Quantity), named));
    }
}
