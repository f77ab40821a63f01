using Shaduf.Station;
using Shaduf.Working;

namespace Shaduf.Pack.Tests;

/// <summary>The pictures of stands of every form, and the rule that none goes out while the stand is not proved.</summary>
public sealed class StandPictureTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    [Theory]
    [InlineData("tank-2", 1, 4)]
    [InlineData("tank-5", 6, 4)]
    [InlineData("tank-10", 12, 6)]
    [InlineData("tank-20", 4, 8)]
    [InlineData("tank-33", 3, 8)]
    public void Texts_stay_apart_and_inside(string tank, double floorM, int legs)
    {
        var design = packs["plain-school"].Design;
        var brief = design.Brief with
        {
            Tank = design.Brief.Tank with { GivenStandM = floorM, Stand = StandBrief.Open with { LegCount = legs } },
        };
        var shelf = design.File.Shelf;
        var stand = StandDesign.Of(new(brief, design.Survey, shelf), shelf.Find<TankCard>(tank)!, 1)!;
        var size = new PaperSize(173, 200);
        foreach (
            var picture in new[]
            {
                StandFront.Of(stand, size),
                StandAbove.Of(stand, size),
                RackModelPicture.Of(stand.Stand.Skeleton, "model", size),
            }
        )
        {
            var overlaps = picture.TextOverlaps().Select(pair => $"{pair.First.Item.Text} / {pair.Second.Item.Text}");
            Assert.True(picture.TextOverlaps().Count == 0, $"{picture.Title}: {string.Join("; ", overlaps)}");
            var drawn = picture.Bounds()!.Value;
            Assert.True(drawn is { LeftMm: >= 0, TopMm: >= 0, RightMm: <= 173 }, $"{picture.Title}: {drawn}");
        }
    }

    [Fact]
    public void The_drawings_of_a_stand_that_holds_are_in_the_book()
    {
        var pack = packs["plain-school"];
        Assert.Empty(StandChapter.Withholding(pack.Design));
        Assert.Contains("seen from the side of the ladder", Text(pack));
        Assert.DoesNotContain("are not released", Text(pack));
        Assert.True((bool)pack.Json["stand"]!["isDrawingReleased"]!);
    }

    // Wind and earthquake are unknown there: a notice stands in the drawings' place and names what is in the way.
    [Theory]
    [InlineData("homestead")]
    [InlineData("river-terrace")]
    public void No_drawing_goes_out_while_a_finding_stops_or_is_unchecked(string name)
    {
        var pack = packs[name];
        var withholding = StandChapter.Withholding(pack.Design);
        Assert.NotEmpty(withholding);
        Assert.All(withholding, each => Assert.True(each.Status is FindingStatus.Stop or FindingStatus.Unchecked));
        var text = Text(pack);
        Assert.Contains("are not released", text);
        Assert.Contains("stand/earthquake", text);
        Assert.DoesNotContain("seen from the side of the ladder", text);
        Assert.False((bool)pack.Json["stand"]!["isDrawingReleased"]!);
    }

    private static string Text(ExamplePacks.Made pack) =>
        string.Join(' ', pack.Pages.SelectMany(page => page.TextBoxes()).Select(box => box.Item.Text));
}
