using System.Reflection;
using Shaduf.Working;
using Checks = Shaduf.Money.PublishedChecks;

namespace Shaduf.Trades.Tests.Working;

// What a verdict says when something is amiss; each trade's own tests hold its rows.
public sealed class PublishedTests
{
    private const string Method = "money/mark-up";

    private static readonly Assembly Trade = typeof(Checks).Assembly;

    [Fact]
    public void Rows_take_their_method_from_the_files_name() =>
        Assert.Contains(Published.Cases(Trade), row => row is { Method: Method, Quantity: "mark-up" });

    [Fact]
    public void Every_row_gets_a_verdict() =>
        Assert.Equal(
            Published.Cases(Trade).Select(row => row.Id),
            Published.Verify(Trade, Checks.All).Select(verdict => verdict.Case.Id)
        );

    [Fact]
    public void A_row_that_no_check_computes_does_not_agree() =>
        Assert.All(
            Published.Verify(Trade, []),
            verdict =>
            {
                Assert.False(verdict.Agrees);
                Assert.Equal($"no check computes '{verdict.Case.Quantity}' of {verdict.Case.Method}", verdict.Trouble);
            }
        );

    [Fact]
    public void A_check_of_another_method_is_not_taken() =>
        Assert.Equal(
            "no check computes 'mark-up' of money/mark-up",
            Of([new("money/offer", "mark-up", row => row.Expected)]).Trouble
        );

    [Fact]
    public void A_kernel_that_throws_does_not_agree_and_says_why()
    {
        var verdict = Of([
            new(
                Method,
                "mark-up",
                _ =>
                {
                    var headM = double.NaN;
                    Within.Require(headM, 0, 1, "m");
                    return headM;
                }
            ),
        ]);
        Assert.False(verdict.Agrees);
        Assert.True(double.IsNaN(verdict.Obtained));
        Assert.StartsWith("headM is NaN m", verdict.Trouble);
    }

    [Fact]
    public void An_input_that_the_row_lacks_does_not_agree_and_is_named() =>
        Assert.EndsWith("has no input 'boreM'.", Of([new(Method, "mark-up", row => row["boreM"])]).Trouble);

    [Fact]
    public void A_fault_in_the_program_is_not_taken_for_a_verdict() =>
        Assert.Throws<InvalidOperationException>(() =>
            Of([new(Method, "mark-up", _ => throw new InvalidOperationException("a fault"))])
        );

    [Theory]
    [InlineData(0.999, true)]
    [InlineData(-0.999, true)]
    [InlineData(1.001, false)]
    [InlineData(-1.001, false)]
    [InlineData(double.NaN, false)]
    [InlineData(double.PositiveInfinity, false)]
    public void Agrees_within_the_tolerance_and_never_with_a_figure_that_is_none(double off, bool agrees)
    {
        var verdict = Of([new(Method, "mark-up", row => row.Expected + (off * row.Tolerance))]);
        Assert.True(verdict.Case.Tolerance > 0);
        Assert.Equal(agrees, verdict.Agrees);
    }

    private static Verdict Of(IReadOnlyList<PublishedCheck> checks) =>
        Published.Verify(Trade, checks).Single(verdict => verdict.Case is { Method: Method, Quantity: "mark-up" });
}
