using CsCheck;
using Shaduf.Working;

namespace Shaduf.Pack.Tests;

public sealed class FlowTests
{
    private static readonly string[] Odd = ["6.4", "m³/h", "Ø63", "—", "بئر", "ọ̀yọ́", "x1"];

    private static readonly Gen<string> Word = Gen.OneOf(
        Gen.Char['a', 'z'].Array[1, 12].Select(letters => new string(letters)),
        Gen.Int[0, Odd.Length - 1].Select(i => Odd[i]),
        Gen.Char['a', 'z'].Array[60, 200].Select(letters => new string(letters))
    );

    private static IReadOnlyList<Scene> Lay(params IReadOnlyList<Block> blocks) =>
        Flow.Lay(blocks, SampleDocument.Style);

    // Texts of the pages' bodies, without head and foot.
    private static List<TextItem> Body(Scene page) =>
        [.. page.Items.OfType<TextItem>().Where(t => SampleDocument.Style.Body.Grown(0.1).Holds(t.At))];

    private static void AssertClean(IReadOnlyList<Scene> pages)
    {
        var sheet = SampleDocument.Style.Size.Box.Grown(-10);
        foreach (var page in pages)
        {
            Assert.Empty(page.TextOverlaps());
            Assert.Empty(page.TextsOutside(sheet));
            var right = SampleDocument.Style.Body.RightMm + 0.1;
            Assert.All(page.TextBoxes(), box => Assert.True(box.Corners.Max(c => c.XMm) <= right, box.Item.Text));
            Assert.All(Body(page), text => Assert.True(text.Box.BottomMm <= SampleDocument.Style.Body.BottomMm + 0.1));
        }
    }

    [Fact]
    public void A_chapter_goes_on_below_a_short_tail_and_begins_a_page_after_a_long_one()
    {
        var mm = SampleDocument.Style.Body.HeightMm;
        Block Filled(double share) => new Figure(new(new(100, mm * share), []), "so much of the page");
        var next = new Heading(1, "the next chapter");
        Assert.Single(Lay(Filled(0.3), new ChapterBreak(), next));
        Assert.Equal(2, Lay(Filled(0.6), new ChapterBreak(), next).Count);
        Assert.Equal(2, Lay(Filled(0.3), new PageBreak(), next).Count);
        Assert.Single(Lay(new ChapterBreak(), next));
    }

    [Theory]
    [InlineData(12)]
    [InlineData(45)]
    public void A_years_table_stands_on_one_page_and_a_longer_one_leaves_no_row_or_two_alone(int rowCount)
    {
        var mm = SampleDocument.Style.Body.HeightMm;
        var table = new Table(
            [new("month"), new("m3/d")],
            [.. Enumerable.Range(1, rowCount).Select(i => TableRow.Of($"row {i}", "1.0"))]
        );
        for (var share = 0.02; share < 0.97; share += 0.01)
        {
            var pages = Lay(new Figure(new(new(100, mm * share), []), "above"), table);
            int[] rows =
            [
                .. pages
                    .Select(page => Body(page).Count(text => text.Text.StartsWith("row ", StringComparison.Ordinal)))
                    .Where(count => count > 0),
            ];
            Assert.Equal(rowCount, rows.Sum());
            Assert.All(rows, count => Assert.True(count >= 3, $"{count} rows alone under {share:0.00} of a page"));
            Assert.True(rowCount > 12 || rows.Length == 1);
        }
    }

    [Fact]
    public void TheSampleDocumentIsClean() => AssertClean(SampleDocument.Pages());

    [Fact]
    public void EveryPageSaysWhatItIs()
    {
        var pages = SampleDocument.Pages();
        for (var i = 0; i < pages.Count; i++)
        {
            var texts = pages[i].Items.OfType<TextItem>().Select(t => t.Text).ToList();
            Assert.Contains($"page {i + 1} of {pages.Count}", texts);
            Assert.Contains("Status: for construction · Revision B · Brief 3f9a61c2", texts);
            Assert.Contains("Station book", texts);
        }
    }

    [Fact]
    public void ParagraphsKeepAllTheirWords() =>
        Gen.Select(Word.Array[1, 120], Gen.Int[0, 3])
            .Sample(
                (words, bold) =>
                {
                    var spans = words.Select(
                        (w, i) => new TextSpan(w + " ", i % 4 < bold ? FontWeight.Bold : FontWeight.Regular)
                    );
                    var pages = Lay(new Paragraph(new RichText([.. spans])));
                    AssertClean(pages);
                    var lines = pages
                        .SelectMany(page => Body(page).GroupBy(t => Math.Round(t.At.YMm, 3)))
                        .Select(line => string.Concat(line.Select(t => t.Text)));
                    var isRight = TextDirection.IsRightToLeft(string.Concat(words));
                    if (!isRight)
                    {
                        // A word longer than a line is cut, so compare without spaces.
                        Assert.Equal(
                            string.Concat(words),
                            string.Concat(lines).Replace(" ", "", StringComparison.Ordinal)
                        );
                    }
                },
                iter: 60
            );

    [Fact]
    public void ALineBreakIsKept()
    {
        var texts = Body(Lay(new Paragraph("first\nsecond\n\nfourth"))[0]);
        Assert.Equal(["first", "second", "fourth"], texts.Select(t => t.Text));
        Assert.Equal(2, (texts[2].At.YMm - texts[1].At.YMm) / (texts[1].At.YMm - texts[0].At.YMm), 5e-7);
    }

    [Fact]
    public void BoldWordsStandInTheirLine()
    {
        var texts = Body(Lay(new Paragraph(RichText.Marked("holds **10 m³** of water")))[0]);
        Assert.Equal(["holds ", "10 m³ ", "of water"], texts.Select(t => t.Text));
        Assert.Equal([FontWeight.Regular, FontWeight.Bold, FontWeight.Regular], texts.Select(t => t.Style.Weight));
        Assert.Single(texts.Select(t => t.At.YMm).Distinct());
    }

    [Fact]
    public void TablesRepeatTheirHeaderAndKeepRowsWhole() =>
        Gen.Select(Word.Array[1, 14].Array[30, 70], Gen.Int[0, 30])
            .Sample(
                (cells, before) =>
                {
                    var table = new Table(
                        [new("Mark", 0) { WidthMm = 16 }, new("Note", 2), new("Mass kg", 1, HorizontalAnchor.Right)],
                        [.. cells.Select((words, i) => TableRow.Of($"M{i}", string.Join(' ', words), $"{i}.5"))]
                    );
                    Block[] blocks = [.. Enumerable.Repeat(new Paragraph("Before."), before), table];
                    var pages = Lay(blocks);
                    AssertClean(pages);
                    var tablePages = pages.Where(page => Body(page).Exists(t => IsMark(t.Text))).ToList();
                    Assert.True(tablePages.Count > 1);
                    foreach (var page in tablePages)
                    {
                        var texts = Body(page);
                        Assert.Equal(1, texts.Count(t => t.Text == "Mass kg"));
                        Assert.True(
                            texts.Find(t => t.Text == "Mass kg")!.At.YMm
                                < texts.Where(t => IsMark(t.Text)).Min(t => t.At.YMm)
                        );

                        // Whole rows: each page's first line after the header starts a row.
                        var marks = texts.Where(t => IsMark(t.Text)).ToList();
                        var notes = texts.Where(t =>
                            t.At.XMm > marks[0].At.XMm + 10
                            && t.Text != "Mass kg"
                            && t.Text != "Note"
                            && t.Text != "Before."
                        );
                        Assert.True(marks.Min(t => t.At.YMm) <= notes.Min(t => t.At.YMm) + 0.001);
                    }

                    Assert.Equal(cells.Length, pages.SelectMany(Body).Count(t => IsMark(t.Text)));
                },
                iter: 30
            );

    private static bool IsMark(string text) => text.Length > 1 && text[0] == 'M' && char.IsDigit(text[1]);

    [Fact]
    public void ARowTallerThanAPageGoesOnOverTheNext()
    {
        var words = Enumerable.Range(0, 1500).Select(i => $"w{i}").ToList();
        var pages = Lay(new Table([new("Note"), new("Kind")], [TableRow.Of(string.Join(' ', words), "long")]));
        AssertClean(pages);
        Assert.True(pages.Count > 1);
        Assert.All(pages, page => Assert.Contains(Body(page), t => t.Text == "Note"));
        var shown = pages.SelectMany(Body).SelectMany(t => t.Text.Split(' ')).Where(w => w[0] == 'w');
        Assert.Equal(words, shown);
    }

    [Fact]
    public void AHeadingNeverEndsAPage() =>
        Gen.Int[0, 60]
            .Sample(count =>
            {
                Block[] blocks =
                [
                    .. Enumerable.Repeat(new Paragraph("A line."), count),
                    new Heading(2, "The heading"),
                    new Paragraph("What follows it."),
                ];
                var page = Lay(blocks).Single(p => Body(p).Exists(t => t.Text == "The heading"));
                Assert.Contains(Body(page), t => t.Text == "What follows it.");
            });

    [Fact]
    public void APictureThatDoesNotFitIsRefusedByName()
    {
        var trouble = Assert.Throws<ArgumentException>(() =>
            Lay(new Figure(new SceneBuilder(PaperSize.A3Landscape).Build(), "Site plan"))
        );
        Assert.Contains(
            "'Site plan' is 420 x 297 mm; there is room for 173 x",
            trouble.Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void APictureDrawnBeyondItsEdgeDoesNotReachItsCaption()
    {
        var picture = new SceneBuilder(new(50, 20)).Line(Layer.Outline, new(0, 0), new(10, 45)).Build();
        var page = Lay(new Figure(picture, "The caption"))[0];
        var lineMm = page.Items.OfType<LineItem>().Where(line => line.Layer == Layer.Outline).Max(line => line.To.YMm);
        Assert.True(page.Items.OfType<TextItem>().Single(t => t.Text == "The caption").Box.TopMm > lineMm);
    }

    [Theory]
    [InlineData(FindingStatus.Stop, "STOP")]
    [InlineData(FindingStatus.Unchecked, "UNCHECKED")]
    [InlineData(FindingStatus.Look, "LOOK")]
    [InlineData(FindingStatus.Holds, "HOLDS")]
    public void ANoticeSaysItsStatusInAWord(FindingStatus status, string word) =>
        Assert.Contains(Body(Lay(new Notice(status, "Read this."))[0]), t => t.Text == word);

    [Fact]
    public void ColumnsTooTallForAPageFollowEachOther()
    {
        var many = Enumerable.Range(0, 70).Select(i => (Block)new Paragraph($"Line {i}.")).ToList();
        var pages = Lay(new Columns([new(1, many), new(2, [new Paragraph("Right.")])]));
        AssertClean(pages);
        Assert.Equal(71, pages.SelectMany(Body).Count());
    }

    [Fact]
    public void WidthsThatLeaveNoRoomAreRefused()
    {
        var trouble = Assert.Throws<ArgumentException>(() =>
            Lay(new Table([new("A", 0) { WidthMm = 172 }, new("B")], []))
        );
        Assert.Contains("Column 'B'", trouble.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Lay(new Table([new("A"), new("B")], [TableRow.Of("1", "2", "3")])));
    }
}
