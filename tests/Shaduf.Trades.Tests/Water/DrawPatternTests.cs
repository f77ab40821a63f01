using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class DrawPatternTests
{
    [Fact]
    public void Table_holds_the_seven_patterns() =>
        Assert.Equal(
            [
                "two-peak village",
                "Nepal standpost",
                "livestock",
                "school",
                "daytime-even",
                "morning-evening irrigation",
                "round-the-clock",
            ],
            DrawPattern.Names
        );

    [Fact]
    public void Every_pattern_sums_to_one_exactly_and_has_a_source() =>
        Assert.All(
            DrawPattern.Names,
            name =>
            {
                Assert.Equal(1, DrawPattern.Named(name).HourShares.Sum(), 1e-12);
                Assert.NotEmpty(DrawPattern.SourceOf(name));
            }
        );

    [Fact]
    public void Hours_are_named_by_their_end()
    {
        var village = DrawPattern.Named("two-peak village").HourShares;
        Assert.Equal(0.14, village[7], 1e-12);
        var irrigation = DrawPattern.Named("morning-evening irrigation").HourShares;
        Assert.Equal(
            [6, 7, 8, 9, 15, 16, 17],
            Enumerable.Range(0, 24).Where(hour => Math.Abs(irrigation[hour] - (1.0 / 7)) < 1e-12)
        );
    }

    [Fact]
    public void A_pattern_that_is_not_a_day_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new DrawPattern("short", [1]));
        Assert.Throws<ArgumentException>(() => new DrawPattern("thin", [.. Enumerable.Repeat(0.04, 24)]));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            new DrawPattern("NaN", [.. Enumerable.Repeat(double.NaN, 24)])
        );
        Assert.Throws<ArgumentException>(() => DrawPattern.Named("moonlight"));
    }
}
