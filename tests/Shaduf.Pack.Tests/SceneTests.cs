using CsCheck;

namespace Shaduf.Pack.Tests;

public sealed class SceneTests
{
    [Fact]
    public void SiteGoesToPaperAtScaleAndUpTurnsDown()
    {
        var placing = new SiteToPaper(50, new(1000, 2000), new(100, 200));
        Assert.Equal(new(100, 200), placing.ToPaper(new(1000, 2000)));
        Assert.Equal(new(120, 190), placing.ToPaper(new(2000, 2500)));
        Assert.Equal(4, placing.LengthMm(200));
    }

    [Fact]
    public void AStretchedViewDrawsNoCircles()
    {
        var view = new SceneBuilder(PaperSize.A4Upright).View(
            new(500, new(0, 0), new(20, 100)) { VerticalOneToFactor = 100 }
        );
        Assert.Equal(new(30, 90), view.At(new(5000, 1000)));
        Assert.Throws<InvalidOperationException>(() => view.Circle(Layer.Outline, new(0, 0), 100));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SiteToPaper(0, new(0, 0), new(0, 0)));
    }

    [Theory]
    [InlineData(5000, 170, 50)]
    [InlineData(170, 170, 1)]
    [InlineData(65_000, 170, 500)]
    [InlineData(2_400_000, 250, 10_000)]
    public void TheLargestStandardScaleThatFitsIsTaken(double siteMm, double roomMm, double oneTo) =>
        Assert.Equal(oneTo, SiteToPaper.FittingOneToFactor(siteMm, roomMm));

    [Fact]
    public void TextBoxesTurnWithTheirText()
    {
        var level = Box(new TextStyle(4));
        Assert.Equal(50, level.LeftMm, 1e-9);
        Assert.Equal(50 - 3, level.TopMm, 1e-9);
        Assert.Equal(Lettering.WidthMm("Tank", 4), level.WidthMm, 1e-9);
        var upright = Box(new TextStyle(4) { RotationDeg = 90 });
        Assert.Equal(50, upright.BottomMm, 1e-9);
        Assert.Equal(50 - Lettering.WidthMm("Tank", 4), upright.TopMm, 1e-9);
        Assert.Equal(50 - 3, upright.LeftMm, 1e-9);
        var centred = Box(new TextStyle(4).Centred);
        Assert.Equal(50, centred.Centre.XMm, 1e-9);

        static PaperBox Box(TextStyle style) => new TextItem(Layer.Text, new(50, 50), "Tank", style).Box;
    }

    [Fact]
    public void OverlapsAndTextsOutsideAreFound()
    {
        var scene = new SceneBuilder(new(60, 40))
            .Text(new(5, 10), "Pump")
            .Text(new(8, 11), "Drive", new(3.5) { RotationDeg = 30 })
            .Text(new(55, 30), "Borehole")
            .Build();
        var (first, second) = Assert.Single(scene.TextOverlaps());
        Assert.Equal(("Pump", "Drive"), (first.Item.Text, second.Item.Text));
        Assert.Equal("Borehole", Assert.Single(scene.TextsOutside()).Item.Text);
    }

    [Fact]
    public void APlacedSceneKeepsItsShape()
    {
        var inner = SampleDocument.Details();
        var outer = new SceneBuilder(PaperSize.A3Landscape).Place(inner, new(30, 40)).Build();
        var (before, after) = (inner.Bounds()!.Value, outer.Bounds()!.Value);
        Assert.Equal(before.LeftMm + 30, after.LeftMm, 1e-9);
        Assert.Equal(before.BottomMm + 40, after.BottomMm, 1e-9);
        Assert.Equal(inner.Items.Count, outer.Items.Count);
    }

    [Fact]
    public void ItemsTellWhatTheyArePicturesOf()
    {
        var scene = new SceneBuilder(new(60, 40))
            .About("C1")
            .Line(Layer.Steel, new(0, 0), new(1, 1))
            .About("")
            .Line(Layer.Steel, new(0, 0), new(1, 1))
            .Build();
        Assert.Equal(["C1", ""], scene.Items.Select(item => item.About));
    }

    [Fact]
    public void AnArcsBoxHoldsTheArc() =>
        Gen.Select(Gen.Double[-360, 360], Gen.Double[0, 359], Gen.Double[0, 1])
            .Sample(
                (start, sweep, share) =>
                {
                    var arc = new ArcItem(Layer.Outline, new(10, 20), 5, start, sweep);
                    Assert.True(arc.Box.Holds(arc.At(start + (sweep * share))));
                    Assert.True(arc.Box.WidthMm <= 10.000001 && arc.Box.HeightMm <= 10.000001);
                }
            );

    [Fact]
    public void HatchStrokesStayInside() =>
        Gen.Select(Gen.Enum<HatchPattern>(), Gen.Double[3, 60], Gen.Double[3, 60], Gen.Double[0.5, 5])
            .Sample(
                (pattern, widthMm, heightMm, spacingMm) =>
                {
                    // An L, so that strokes must also be cut at its notch.
                    PaperPoint[] shape =
                    [
                        new(7, 9),
                        new(7 + widthMm, 9),
                        new(7 + widthMm, 9 + (heightMm / 2)),
                        new(7 + (widthMm / 2), 9 + (heightMm / 2)),
                        new(7 + (widthMm / 2), 9 + heightMm),
                        new(7, 9 + heightMm),
                    ];
                    var notch = new PaperBox(7 + (widthMm / 2), 9 + (heightMm / 2), 7 + widthMm, 9 + heightMm).Grown(
                        -0.002
                    );
                    var strokes = HatchLines.Of(new(Layer.Hatch, shape, pattern, spacingMm));
                    var around = PaperBox.Round(shape);
                    Assert.All(
                        strokes,
                        stroke =>
                        {
                            Assert.True(around.Holds(stroke.From) && around.Holds(stroke.To));
                            var middle = new PaperBox(
                                stroke.From.XMm,
                                stroke.From.YMm,
                                stroke.To.XMm,
                                stroke.To.YMm
                            ).Centre;
                            Assert.False(notch.Holds(middle));
                        }
                    );
                }
            );

    [Fact]
    public void EveryPatternDraws() =>
        Assert.All(
            Enum.GetValues<HatchPattern>(),
            pattern => Assert.NotEmpty(HatchLines.Of(new(Layer.Hatch, new PaperBox(0, 0, 20, 20).Corners, pattern)))
        );

    [Fact]
    public void LayersCanBeToldApartWithoutColour()
    {
        var looks = Layer
            .All.Where(layer => layer.DashMm.Count > 0)
            .Select(layer => string.Join(' ', layer.DashMm))
            .ToList();
        Assert.Equal(looks.Count, looks.Distinct().Count());
        Assert.All(Layer.All, layer => Assert.True(layer.DashMm.Count % 2 == 0));
        Assert.Equal(Layer.All.Count, Layer.All.Select(layer => layer.Name).Distinct().Count());
    }
}
