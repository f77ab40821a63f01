using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Shaduf.Station;

namespace Shaduf.Pack.Tests;

/// <summary>The site book as a file; how it behaves on a phone is for the browser tests.</summary>
public sealed class SiteBookTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void Every_pack_has_one_with_all_lists_pictures_and_sheets(string name)
    {
        var pack = packs[name];
        var page = Encoding.UTF8.GetString(pack.Files["site-book.html"]);
        foreach (
            var point in CheckList.Of(pack.Design, MethodStatement.Of(pack.Design)).SelectMany(list => list.Points)
        )
        {
            Assert.Contains($"data-point=\"{SvgRenderer.Escaped(point.Name)}\"", page, StringComparison.Ordinal);
        }

        var sheets = DrawingSheets.Of(pack.Design, pack.Stamp);
        Assert.Equal(sheets.Count, Regex.Count(page, "<details>"));
        Assert.True(Regex.Count(page, "<svg ") >= sheets.Count + 6);
    }

    [Fact]
    public void It_names_no_place_to_fetch_from_and_forbids_it()
    {
        var page = Encoding.UTF8.GetString(packs["homestead"].Files["site-book.html"]);
        Assert.DoesNotMatch("(src|href)=\"(https?:)?//", page);
        Assert.DoesNotMatch("(src|href)=\"(?!#|data:,)", page);
        Assert.DoesNotContain("url(", page, StringComparison.Ordinal);
        Assert.Contains("default-src 'none'", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_own_script_and_style_are_the_ones_that_may_run()
    {
        var page = Encoding.UTF8.GetString(packs["homestead"].Files["site-book.html"]);
        foreach (var (kind, tag) in new[] { ("script-src", "script"), ("style-src", "style") })
        {
            var inner = Regex.Match(page, $"<{tag}>(.*?)</{tag}>", RegexOptions.Singleline).Groups[1].Value;
            var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(inner)));
            Assert.Contains($"{kind} 'sha256-{hash}'", page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void What_a_client_writes_cannot_become_part_of_the_page()
    {
        const string bad = "</script><script>alert(1)</script>\"'&<b onclick=x>";
        var pack = packs["homestead"];
        var head = pack.Design.Brief.Head with { Name = bad, Builder = bad, Place = bad };
        var tick = new Tick("pits", null, bad);
        var brief = pack.Design.Brief with
        {
            Head = head,
            Measured = new(null, bad, [], [], null, null, null, null, Instruments.Usual) { Ticked = [tick] },
        };
        var design = pack.Design with { File = pack.Design.File with { Brief = brief } };
        var page = SiteBook.Of(design, pack.Stamp, DrawingSheets.Of(design, pack.Stamp));
        Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<b onclick", page, StringComparison.Ordinal);
        var data = Regex.Match(page, "id=\"book\">(.*?)</script>", RegexOptions.Singleline).Groups[1].Value;
        Assert.Equal(bad, (string?)JsonNode.Parse(data)!["station"]);
        Assert.Equal(bad, (string?)JsonNode.Parse(data)!["ticked"]![0]!["by"]);
    }

    [Fact]
    public void Every_gap_of_a_piece_is_escaped_unless_it_is_a_piece()
    {
        Assert.Equal(
            "<p>&lt;i&gt; &amp; &quot;1.5&quot;</p>",
            Html.Of($"<p>{"<i>"} & {"\""}{1.5}{"\""}</p>").Text.Replace(" & ", " &amp; ", StringComparison.Ordinal)
        );
        Assert.Equal("<p><i>x</i></p>", Html.Of($"<p>{Html.Of($"<i>{"x"}</i>")}</p>").Text);
    }
}
