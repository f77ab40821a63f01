using Shaduf.Station;

namespace Shaduf.Pack.Tests;

/// <summary>The pictures of racks of every form: no text on another, nothing outside the paper.</summary>
public sealed class RackPictureTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    [Theory]
    [InlineData(1, 1, RackType.SlideIn, 1, 10, 0)]
    [InlineData(2, 7, RackType.SlideIn, 1, 15, 0.05)]
    [InlineData(2, 12, RackType.SlideIn, 2, 10, -0.1)]
    [InlineData(4, 10, RackType.SlideIn, 2, 30, 0)]
    [InlineData(1, 6, RackType.ClampedRails, 2, 0, 0)]
    [InlineData(2, 9, RackType.ClampedRails, 1, 25, 0.2)]
    [InlineData(3, 12, RackType.ClampedRails, 2, 60, -0.2)]
    public void Texts_stay_apart_and_inside(
        int rows,
        int columns,
        RackType type,
        int lines,
        double tiltDeg,
        double fallShare
    )
    {
        var design = packs["homestead"].Design;
        var brief = design.Brief.Rack with { LowEdgeM = 2, Ground = new(fallShare, fallShare / 2) };
        var form = new RackForm(type, lines, 0, null, null, null);
        var rack = Rack.Of(brief, design.Choice.Module, new(rows, columns, 1), tiltDeg, design.File.Shelf, form)!;
        var size = new PaperSize(173, 118);
        foreach (
            var picture in new[]
            {
                RackPlane.Of(rack, size),
                RackSide.Of(rack, Footings.Of(brief, rack), size),
                RackModelPicture.Of(rack, size),
                LightColumnPicture.Of(LightColumn.Of(4000, LightColumnSize.All[^1]), new(1200, 1200, 1500, 0, 0), size),
            }
        )
        {
            Assert.Empty(
                picture
                    .TextOverlaps()
                    .Select(pair => $"{picture.Title}: '{pair.Item1.Item.Text}' over '{pair.Item2.Item.Text}'")
            );
            var drawn = picture.Bounds()!.Value;
            Assert.True(drawn is { LeftMm: >= 0, TopMm: >= 0, RightMm: <= 173 }, $"{picture.Title}: {drawn}");
        }
    }
}
