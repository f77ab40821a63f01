using Shaduf.Working;

namespace Shaduf.Trades.Tests.Working;

// The checks that shaduf verify runs, and what a verdict says when something is amiss.
public sealed class OracleTests
{
    // Where the kernels are far closer than asked for, a slip of a formula shows at this share of the margin.
    private static readonly Dictionary<string, double> Sharp = new()
    {
        ["sun_position.csv zenith_deg"] = 0.1,
        ["sun_position.csv apparent_zenith_deg"] = 0.1,
        ["sun_position.csv direction"] = 0.1,
        ["extraterrestrial.csv declination_cooper_deg"] = 1e-5,
        ["extraterrestrial.csv declination_spencer_deg"] = 1e-5,
        ["single_diode.csv"] = 1e-3,
        ["desoto_fit.csv"] = 0.01,
        ["operating_point.csv"] = 1e-6,
        ["operating_point_colebrook.csv"] = 1e-6,
        ["pipe_loss.csv"] = 0.1,
        ["hazen_williams.csv"] = 0.1,
    };

    private static readonly Dictionary<string, OracleVerdict> Verdicts = new[]
    {
        Shaduf.Sun.OracleChecks.All,
        Shaduf.Water.OracleChecks.All,
        Shaduf.Power.OracleChecks.All,
        Shaduf.Steel.OracleChecks.All,
        Shaduf.Workshop.OracleChecks.All,
    }
        .SelectMany(checks => checks)
        .ToDictionary(check => $"{check.File} {check.Quantity}", check => check.Verify());

    public static TheoryData<string> Names => [.. Verdicts.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Agrees_with_the_independent_figures(string name)
    {
        var verdict = Verdicts[name];
        var most =
            verdict.Check.Margin.Most * Sharp.GetValueOrDefault(name, Sharp.GetValueOrDefault(verdict.Check.File, 1));
        Assert.True(verdict.Agrees, $"{verdict.Largest} {verdict.Check.Margin.Unit} off; {verdict.Trouble}");
        Assert.True(verdict.Largest <= most, $"{verdict.Largest} is more than {most} {verdict.Check.Margin.Unit}");
    }

    [Theory]
    [InlineData(100, 100.09, true)]
    [InlineData(-100, -100.11, false)]
    [InlineData(1000, 1000.51, false)]
    [InlineData(0, 0.0009, true)]
    [InlineData(0, 0.0011, false)]
    [InlineData(5, double.NaN, false)]
    [InlineData(5, double.NegativeInfinity, false)]
    public void A_share_is_of_the_figure_between_its_ends(double expected, double obtained, bool agrees) =>
        Assert.Equal(agrees, Of(new(0.1, "%", Least: 1, Greatest: 500), (expected, obtained)).Agrees);

    [Fact]
    public void Nothing_is_no_share_of_nothing_but_any_figure_is()
    {
        Assert.Equal(0, Of(new(0.1, "%"), (0, 0)).Largest);
        Assert.Equal(double.PositiveInfinity, Of(new(0.1, "%"), (0, 1e-12)).Largest);
    }

    [Fact]
    public void The_worst_of_the_rows_is_told()
    {
        var verdict = Of(new(0.5, "m"), (1, 1.1), (2, 1.7), (3, 3.2));
        Assert.Equal((3, true), (verdict.Count, verdict.Agrees));
        Assert.Equal(0.3, verdict.Largest, 1e-12);
    }

    [Fact]
    public void A_file_without_rows_does_not_agree() => Assert.False(Of(new(0.5, "m")).Agrees);

    [Fact]
    public void A_kernel_that_refuses_does_not_agree_and_says_why()
    {
        var verdict = new OracleCheck(
            "a.csv",
            "head_m",
            new(1, "m"),
            () => throw new ArgumentException("no such head")
        ).Verify();
        Assert.Equal((false, "no such head"), (verdict.Agrees, verdict.Trouble));
    }

    private static OracleVerdict Of(Margin margin, params (double, double)[] rows) =>
        new OracleCheck("a.csv", "head_m", margin, () => rows).Verify();
}
