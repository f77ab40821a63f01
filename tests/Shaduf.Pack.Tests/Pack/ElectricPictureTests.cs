using Shaduf.Power;
using Shaduf.Station;

namespace Shaduf.Pack.Tests;

/// <summary>The diagrams of the electrics stay readable for one string and for many, on one rack and on many.</summary>
public sealed class ElectricPictureTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    private const double WidthMm = 173;
    private const double PageMm = 240;

    [Theory]
    [InlineData(1, 1, 1, 1, 1)]
    [InlineData(22, 1, 2, 11, 1)]
    [InlineData(12, 2, 2, 12, 1)]
    [InlineData(7, 4, 1, 14, 2)]
    [InlineData(9, 4, 2, 6, 3)]
    [InlineData(10, 12, 3, 10, 4)]
    [InlineData(14, 16, 2, 14, 8)]
    public void Texts_stay_apart_and_inside(int series, int strings, int rows, int columns, int racks)
    {
        var design = Rewired(series, strings, new(rows, columns, racks));
        Holds(SingleLineDiagram.Of(design, WidthMm));
        for (var rack = 0; rack < racks; rack += StringDiagram.RacksEach(design.Choice.Grid))
        {
            Holds(StringDiagram.Of(design, WidthMm, rack));
        }
    }

    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void The_diagrams_of_the_examples_are_readable(string name)
    {
        Holds(SingleLineDiagram.Of(packs[name].Design, WidthMm));
        Holds(StringDiagram.Of(packs[name].Design, WidthMm));
    }

    [Fact]
    public void Every_module_bears_its_string_and_place_once()
    {
        var design = Rewired(9, 4, new(2, 6, 3));
        var marks = StringDiagram.Of(design, WidthMm).TextBoxes().Select(box => box.Item.Text).ToList();
        foreach (var number in Enumerable.Range(1, 4))
        {
            foreach (var place in Enumerable.Range(1, 9))
            {
                Assert.Single(marks, $"{number}.{place}");
            }

            Assert.Single(marks, $"{number} +");
            Assert.Single(marks, $"{number} -");
        }
    }

    private static void Holds(Scene scene)
    {
        var picture = scene.Trimmed();
        Assert.Empty(scene.TextOverlaps());
        Assert.Empty(scene.TextsOutside());
        Assert.Empty(scene.MissingCharacters());
        Assert.InRange(picture.Size.WidthMm, 0, WidthMm + 2);
        Assert.InRange(picture.Size.HeightMm, 0, PageMm);
    }

    private Design Rewired(int series, int strings, RackGrid grid)
    {
        var design = packs["hilltop-village"].Design;
        var choice = design.Choice with { SeriesCount = series, StringCount = strings, Grid = grid };
        var sizing = design.Sizing with { Choice = choice };
        var rack = Rack.Of(design.Brief.Rack, choice.Module, grid, 15, design.File.Shelf)!;
        var ground = new SizingGround(
            design.Brief,
            design.Survey,
            design.Sky,
            design.Demand,
            design.Source,
            design.File.Shelf,
            new(design.Brief, design.File.Shelf, design.File.Prices)
        );
        var electrics = Electrics.Of(sizing, ground, rack, new LightningAsk(LightningRod.Bonded, 12.5));
        return design with { Sizing = sizing, Works = design.Works with { Rack = rack, Electrics = electrics } };
    }
}
