using CsCheck;

namespace Shaduf.Pack.Tests;

public sealed class ChartTests
{
    private static readonly string[] Months =
    [
        "Jan",
        "Feb",
        "Mar",
        "Apr",
        "May",
        "Jun",
        "Jul",
        "Aug",
        "Sep",
        "Oct",
        "Nov",
        "Dec",
    ];

    private static readonly Gen<(double WidthMm, double HeightMm)> Size = Gen.Select(
        Gen.Double[45, 260],
        Gen.Double[40, 150]
    );

    private static void AssertClean(Scene scene)
    {
        var overlap = scene.TextOverlaps().Select(pair => $"'{pair.First.Item.Text}' over '{pair.Second.Item.Text}'");
        Assert.Empty(overlap);
        Assert.Empty(scene.TextsOutside(scene.Size.Box.Grown(0.4)).Select(box => box.Item.Text));
    }

    [Fact]
    public void BarLabelsNeverCollide() =>
        Gen.Select(Size, Gen.Double[-1, 4], Gen.Int[1, 4], Gen.Bool, Gen.Double[0, 1].Array[48])
            .Sample(
                (size, magnitude, count, hasNegative, shares) =>
                {
                    var top = Math.Pow(10, magnitude);
                    var low = hasNegative ? -0.3 : 0;
                    var series = Enumerable
                        .Range(0, count)
                        .Select(s => new BarSeries(
                            $"series number {s + 1}",
                            [.. Enumerable.Range(0, 12).Select(m => top * (low + ((1 - low) * shares[(s * 12) + m])))]
                        ));
                    var chart = new BarChart(new("energy, kWh a day"), Months, [.. series]);
                    AssertClean(chart.ToScene(new(size.WidthMm, size.HeightMm), "Energy"));
                }
            );

    [Fact]
    public void LineLabelsNeverCollide() =>
        Gen.Select(Size, Gen.Double[-2, 5], Gen.Double[-1, 5], Gen.Double[-1, 1].Array[20], Gen.Int[1, 4])
            .Sample(
                (size, xMagnitude, yMagnitude, shares, count) =>
                {
                    var series = Enumerable
                        .Range(0, count)
                        .Select(s => new LineSeries(
                            $"line {s}",
                            [
                                .. shares.Select(
                                    (y, i) =>
                                        new ChartPoint(i * Math.Pow(10, xMagnitude), (y + s) * Math.Pow(10, yMagnitude))
                                ),
                            ]
                        ));
                    var chart = new LineChart(new("flow, m³/h"), new("head, m"), [.. series]);
                    AssertClean(chart.ToScene(new(size.WidthMm, size.HeightMm), "Curve"));
                }
            );

    [Fact]
    public void BarsAreAsTallAsTheirFigures()
    {
        var scene = SampleDocument.Bars(1, 173, 62);
        var bars = scene
            .Items.OfType<PolyItem>()
            .Where(p => p.Fill == Palette.Water)
            .Select(p => p.Box.HeightMm)
            .ToList();
        Assert.Equal(12, bars.Count);
        Assert.Equal(44.7 / 31, bars.Max() / bars.Min(), 1e-9);
    }

    [Fact]
    public void SeriesDifferWithoutColour()
    {
        var scene = SampleDocument.Bars(2, 173, 62);
        Assert.Equal(13, scene.Items.OfType<HatchItem>().Count());
        var lines = SampleDocument
            .Lines(173, 66)
            .Items.OfType<PolyItem>()
            .Where(p => !p.IsClosed && p.Points.Count > 5);
        Assert.Equal(2, lines.Select(p => string.Join(' ', p.Layer.DashMm)).Distinct().Count());
    }

    [Fact]
    public void ALongNameIsTurnedAndLaterLeftOut()
    {
        string[] names = [.. Enumerable.Range(1, 60).Select(i => $"category {i}")];
        var chart = new BarChart(new("m³"), names, [new("a", [.. names.Select((_, i) => (double)i)])]);
        var scene = chart.ToScene(new(100, 60), "Many");
        var shown = scene
            .Items.OfType<TextItem>()
            .Where(t => t.Text.StartsWith("category", StringComparison.Ordinal))
            .ToList();
        Assert.InRange(shown.Count, 15, 59);
        Assert.All(shown, t => Assert.Equal(90, t.Style.RotationDeg));
        AssertClean(scene);
    }

    [Theory]
    [InlineData(0, 44.7, 6, "0 10 20 30 40 50")]
    [InlineData(0, 0, 5, "0.0 0.2 0.4 0.6 0.8 1.0")]
    [InlineData(-3, 9, 4, "-5 0 5 10")]
    [InlineData(0, 0.34, 4, "0.0 0.1 0.2 0.3 0.4")]
    [InlineData(0, 12500, 3, "0 5000 10000 15000")]
    public void TicksAreRound(double low, double high, int atMost, string labels)
    {
        var ticks = Ticks.Over(new("m"), low, high, atMost);
        Assert.Equal(labels, string.Join(' ', ticks.Values.Select(ticks.Label)));
    }

    [Fact]
    public void AGivenStepIsKeptUntilItsLabelsDoNotFit()
    {
        Assert.Equal(3, Ticks.Over(new("h") { Step = 3 }, 0, 24, 12).Step);
        Assert.Equal(6, Ticks.Over(new("h") { Step = 3 }, 0, 24, 5).Step);
        Assert.Equal(0.25, Ticks.Over(new("h") { Step = 0.25 }, 0, 1, 12).Step);
        var quarters = Ticks.Over(new("h") { Step = 0.25 }, 0, 1, 12);
        Assert.Equal("0.25", quarters.Label(0.25));
    }

    [Fact]
    public void FiguresOutsideAGivenAxisAreRefused()
    {
        var chart = new LineChart(new("h") { From = 0, To = 24 }, new("m"), [new("a", [new(25, 1), new(3, 2)])]);
        Assert.Throws<ArgumentOutOfRangeException>(() => chart.ToScene(new(100, 60), ""));
        var nan = new BarChart(new("m"), ["a"], [new("a", [double.NaN])]);
        Assert.Throws<ArgumentOutOfRangeException>(() => nan.ToScene(new(100, 60), ""));
    }
}
