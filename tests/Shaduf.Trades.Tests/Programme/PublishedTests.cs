using Shaduf.Programme;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Programme;

public sealed class PublishedTests
{
    public static TheoryData<string> Rows => [.. Verdicts.Select(verdict => verdict.Case.Id)];

    private static IReadOnlyList<Verdict> Verdicts { get; } =
        Published.Verify(typeof(PublishedChecks).Assembly, PublishedChecks.All);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Kernel_gives_the_published_figure(string id)
    {
        var verdict = Verdicts.Single(verdict => verdict.Case.Id == id);
        Assert.True(
            verdict.Agrees,
            $"{verdict.Case.Method} {id}: expected {verdict.Case.Expected}, obtained {verdict.Obtained} {verdict.Trouble}"
        );
    }
}
