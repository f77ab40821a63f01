using System.Globalization;
using System.Xml.Linq;

namespace Shaduf.Pack.Tests;

public sealed class SvgRendererTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void TextIsEscapedAndTheFileIsWellFormed()
    {
        const string text = "R < 5 Ω & \"earth\" 'rod' >\u0001";
        var scene = new SceneBuilder(PaperSize.A4Upright).About("a\"b").Text(new(10, 10), text).Build("A & B");
        var root = XDocument.Parse(SvgRenderer.Write(scene)).Root!;

        Assert.Equal("0 0 210 297", root.Attribute("viewBox")!.Value);
        Assert.Equal("210mm", root.Attribute("width")!.Value);
        Assert.Equal("A & B", root.Element(Svg + "title")!.Value);
        var element = root.Descendants(Svg + "text").Single();
        Assert.Equal(text.Replace('\u0001', '\uFFFD'), element.Value);
        Assert.Equal("a\"b", element.Attribute("data-about")!.Value);
    }

    [Fact]
    public void LayersAreNamedGroupsInDrawingOrder()
    {
        var scene = new SceneBuilder(PaperSize.A4Upright)
            .Line(Layer.Outline, new(0, 0), new(1, 1))
            .Circle(Layer.Outline, new(5, 5), 2)
            .Arc(Layer.Centre, new(5, 5), 2, 0, 270)
            .Line(Layer.Outline, new(0, 0), new(1, 1))
            .Build();
        var groups = XDocument.Parse(SvgRenderer.Write(scene)).Root!.Elements(Svg + "g").ToList();

        Assert.Equal(["Outline", "Centre", "Outline"], groups.Select(g => g.Attribute("data-layer")!.Value));
        Assert.Equal(2, groups[0].Elements().Count());
        Assert.Equal("8 1.5 1 1.5", groups[1].Attribute("stroke-dasharray")!.Value);
        Assert.Contains(" 0 1 0 5,7", groups[1].Element(Svg + "path")!.Attribute("d")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void NothingIsFetchedFromElsewhere()
    {
        foreach (var page in SampleDocument.Pages())
        {
            var svg = SvgRenderer.Write(page);
            Assert.Equal(svg, SvgRenderer.Write(page));
            Assert.DoesNotContain("href", svg, StringComparison.Ordinal);
            Assert.DoesNotContain("url(", svg, StringComparison.Ordinal);
            var texts = XDocument.Parse(svg).Descendants(Svg + "text").Select(t => t.Value);
            Assert.Equal(page.Items.OfType<TextItem>().Select(t => t.Text).Where(t => t.Length > 0), texts);
        }
    }

    [Fact]
    public void TextReadFromTheRightStartsAtItsRightEnd()
    {
        var scene = new SceneBuilder(PaperSize.A4Upright).Text(new(10, 10), "بئر الماء").Build();
        var element = XDocument.Parse(SvgRenderer.Write(scene)).Descendants(Svg + "text").Single();
        var widthMm = Lettering.WidthMm("بئر الماء", Lettering.BodyMm);
        Assert.Equal("rtl", element.Attribute("direction")!.Value);
        Assert.Equal(10 + widthMm, double.Parse(element.Attribute("x")!.Value, CultureInfo.InvariantCulture), 0.001);
    }
}
