using CsCheck;

namespace Shaduf.Pack.Tests;

public sealed class DimensionTests
{
    private static readonly double[] Scales = [1, 2, 5, 10, 20, 50, 100, 200];

    private static void AssertReadable(Scene scene)
    {
        Assert.Empty(scene.TextOverlaps());
        foreach (var box in scene.TextBoxes())
        {
            foreach (var line in scene.Items.OfType<LineItem>())
            {
                Assert.False(box.IsCrossedBy(line.From, line.To), $"a line runs through '{box.Item.Text}'");
            }

            foreach (var tick in scene.Items.OfType<PolyItem>())
            {
                Assert.False(
                    box.IsCrossedBy(tick.Points[0], tick.Points[1]),
                    $"a stroke runs through '{box.Item.Text}'"
                );
            }
        }
    }

    private static SiteView View(double oneTo) =>
        new SceneBuilder(PaperSize.A3Landscape).View(new(oneTo, new(0, 0), new(100, 100)));

    [Fact]
    public void AChainWithItsOverallIsReadable() =>
        Gen.Select(
                Gen.Double[0, 4000].Array[1, 9],
                Gen.Int[0, Scales.Length - 1].Select(i => Scales[i]),
                Gen.Enum<DimensionSide>()
            )
            .Sample(
                (gaps, oneTo, side) =>
                {
                    var points = new List<SitePoint> { new(0, 0) };
                    foreach (var gap in gaps)
                    {
                        points.Add(new(points[^1].XMm + gap, points[^1].YMm + gap));
                    }

                    AssertReadable(View(oneTo).DimensionChain(side, points).Builder.Build());
                }
            );

    [Fact]
    public void AnyRowOfDimensionsIsReadable() =>
        Gen.Select(
                Gen.Select(Gen.Double[-3000, 3000], Gen.Double[-3000, 3000], Gen.Double[-500, 500]).Array[1, 8],
                Gen.Int[0, Scales.Length - 1].Select(i => Scales[i]),
                Gen.Enum<DimensionSide>(),
                Gen.Double[2, 5]
            )
            .Sample(
                (spans, oneTo, side, sizeMm) =>
                {
                    var isAcross = side is DimensionSide.Above or DimensionSide.Below;
                    SitePoint Point(double along, double out_) => isAcross ? new(along, out_) : new(out_, along);
                    var row = spans.Select(s => new Dimension(Point(s.Item1, s.Item3), Point(s.Item2, s.Item3 / 2)));
                    var layout = new DimensionLayout(8, 8, sizeMm);
                    AssertReadable(View(oneTo).Dimensions(side, [.. row], layout).Builder.Build());
                }
            );

    [Fact]
    public void AnAlignedDimensionIsReadable() =>
        Gen.Select(
                Gen.Double[1, 6000],
                Gen.Double[0, 360],
                Gen.Int[0, Scales.Length - 1].Select(i => Scales[i]),
                Gen.Double[5, 20],
                Gen.Bool
            )
            .Sample(
                (lengthMm, deg, oneTo, offsetMm, isLeft) =>
                {
                    var (sin, cos) = Math.SinCos(deg * Math.PI / 180);
                    var dimension = new Dimension(new(0, 0), new(lengthMm * cos, lengthMm * sin));
                    var scene = View(oneTo).AlignedDimension(dimension, isLeft ? offsetMm : -offsetMm).Builder.Build();
                    AssertReadable(scene);
                    var text = Assert.Single(scene.Items.OfType<TextItem>());
                    Assert.Equal($"{lengthMm:0}", text.Text);

                    // Readable from the bottom or from the right.
                    Assert.InRange(text.Style.RotationDeg, -90.001, 90.001);
                }
            );

    [Fact]
    public void TheMeasureIsTheSitesAndFollowsTheSide()
    {
        var pair = new Dimension(new(0, 0), new(300, 400));
        Assert.Equal("300", Says(v => v.Dimensions(DimensionSide.Above, [pair])));
        Assert.Equal("400", Says(v => v.Dimensions(DimensionSide.Right, [pair])));
        Assert.Equal("500", Says(v => v.AlignedDimension(pair, 8)));
        Assert.Equal("2 × 150", Says(v => v.Dimensions(DimensionSide.Above, [pair with { Text = "2 × 150" }])));

        static string Says(Func<SiteView, SiteView> draw) =>
            draw(View(10)).Builder.Build().Items.OfType<TextItem>().Single().Text;
    }

    [Fact]
    public void DimensionsStandOnTheirSide()
    {
        PaperBox Bounds(DimensionSide side) =>
            View(10).Dimensions(side, [new(new(0, 0), new(500, 500))]).Builder.Build().Bounds()!.Value;
        Assert.True(Bounds(DimensionSide.Above).TopMm < 50 - 8);
        Assert.True(Bounds(DimensionSide.Below).BottomMm > 100 + 8);
        Assert.True(Bounds(DimensionSide.Left).LeftMm < 100 - 8);
        Assert.True(Bounds(DimensionSide.Right).RightMm > 150 + 8);
    }

    [Fact]
    public void AnOffsetToTheLeftOfTheWayIsUpWhenWalkingRight()
    {
        var along = new Dimension(new(0, 0), new(1000, 0));
        double TextY(double offsetMm, Dimension dimension) =>
            View(10).AlignedDimension(dimension, offsetMm).Builder.Build().TextBoxes()[0].Corners[0].YMm;
        Assert.True(TextY(10, along) < 100);
        Assert.True(TextY(-10, along) > 100);
        Assert.True(TextY(10, new(along.To, along.From)) > 100);
    }

    [Fact]
    public void LanesTooNarrowForTheLettersAreRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            View(10).Dimensions(DimensionSide.Above, [new(new(0, 0), new(100, 0))], new(8, 3, 3.5)).Builder.Build()
        );
}
