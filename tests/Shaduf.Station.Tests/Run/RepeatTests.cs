using System.Globalization;
using Shaduf.Sun;

namespace Shaduf.Station.Tests;

/// <summary>The same brief gives the same design: twice, and wherever the machine stands.</summary>
public sealed class RepeatTests
{
    private static readonly IReadOnlyList<string> s_briefs = [Specimen.Brief, SmallStation.Brief().ToJsonString()];

    // Made where the tests begin, with the marks of this machine.
    private static readonly Lazy<IReadOnlyList<IReadOnlyList<string>>> s_expected = new(() =>
        [.. s_briefs.Select(Told)]
    );

    [Fact]
    public void The_same_brief_twice_gives_equal_designs() => Assert.Equal(s_expected.Value[0], Told(Specimen.Brief));

    [Fact]
    public void Other_seeds_give_other_days_with_the_same_monthly_means()
    {
        var design = SmallDesign.Of();
        var one = design.Sky.Year;
        var other = Weather.Drawn(design.Brief.Site, design.Survey, Weather.DesignSeed + 1);
        Assert.NotEqual(one.GlobalWPerM2, other.GlobalWPerM2);
        Assert.Equal(
            one.GlobalWPerM2,
            Weather.Drawn(design.Brief.Site, design.Survey, Weather.DesignSeed).GlobalWPerM2
        );
        for (var month = 0; month < 12; month++)
        {
            Assert.Equal(
                Sky.MonthlyKWhPerM2Day(one.GlobalWPerM2)[month],
                Sky.MonthlyKWhPerM2Day(other.GlobalWPerM2)[month],
                5e-7
            );
        }
    }

    /// <summary>
    /// Only the invariant culture has data here: the marks of others are set by hand, as Turkish, German and Arabic
    /// machines have them.
    /// </summary>
    [Theory]
    [InlineData(",", ".", "-")]
    [InlineData("٫", "٬", "\u061c-")]
    [InlineData(".", "’", "\u2212")]
    public void Texts_and_figures_do_not_follow_the_machine(string point, string group, string minus)
    {
        var expected = s_expected.Value;
        var before = CultureInfo.CurrentCulture;
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = point;
        culture.NumberFormat.NumberGroupSeparator = group;
        culture.NumberFormat.PercentDecimalSeparator = point;
        culture.NumberFormat.NegativeSign = minus;
        culture.DateTimeFormat.ShortDatePattern = "dd.MM.yyyy";
        try
        {
            CultureInfo.CurrentCulture = culture;
            Assert.Equal(point, 1.5.ToString("0.0", CultureInfo.CurrentCulture)[1..^1]);
            var actual = s_briefs.Select(Told).ToList();
            Assert.Equal(expected[0], actual[0]);
            Assert.Equal(expected[1], actual[1]);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Errors_do_not_follow_the_machine()
    {
        var text = Specimen
            .Brief.Replace("restLevel: 41.5 m", "restLevel: 111.5 m", StringComparison.Ordinal)
            .Replace("sun: 5.9 kWh", "sun: 9.9 kWh", StringComparison.Ordinal);
        using var scratch = new Scratch();
        var expected = scratch.Errors(text);
        var before = CultureInfo.CurrentCulture;
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        try
        {
            CultureInfo.CurrentCulture = culture;
            Assert.Equal(expected, scratch.Errors(text));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static IReadOnlyList<string> Told(string text)
    {
        using var scratch = new Scratch();
        return DesignText.Of(DesignRun.Run(scratch.Read(text)));
    }
}
