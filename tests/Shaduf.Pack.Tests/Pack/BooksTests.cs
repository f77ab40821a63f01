using UglyToad.PdfPig;

namespace Shaduf.Pack.Tests;

/// <summary>The books and the offer, each with what its reader needs.</summary>
public sealed class BooksTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    public static TheoryData<string> Names => ExamplePacks.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void The_crew_carries_a_dozen_sheets_at_most_without_colour(string name)
    {
        var pages = CrewBook.Pages(packs[name].Design, packs[name].Stamp);
        Assert.InRange(pages.Count, 8, CrewBook.MostSheets);
        Assert.All(
            pages.SelectMany(page => page.Items).OfType<PolyItem>().Select(item => item.Fill).OfType<Colour>(),
            fill => Assert.True(fill.Red == fill.Green && fill.Green == fill.Blue)
        );
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_first_page_says_what_stops_or_is_unchecked(string name)
    {
        var pack = packs[name];
        var isOpen = pack.Design.Worst is Working.FindingStatus.Stop or Working.FindingStatus.Unchecked;
        foreach (var file in new[] { "engineer-book.pdf", "crew-book.pdf", "client-book.pdf", "offer.pdf" })
        {
            using var document = PdfDocument.Open(pack.Files[file]);
            var words = document.GetPage(1).GetWords().Select(word => word.Text).ToList();
            Assert.Equal(isOpen, words.Contains("UNCHECKED") || words.Contains("STOP"));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Nothing_of_the_new_books_overlaps_or_leaves_its_page(string name)
    {
        var (design, stamp) = (packs[name].Design, packs[name].Stamp);
        foreach (
            var page in CrewBook
                .Pages(design, stamp)
                .Concat(ClientBook.Pages(design, stamp))
                .Concat(OfferPaper.Pages(design, stamp))
        )
        {
            Assert.Empty(page.TextsOutside());
            Assert.Empty(page.TextOverlaps());
            Assert.Empty(page.MissingCharacters());
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_offers_lines_come_to_the_price(string name)
    {
        var design = packs[name].Design;
        Assert.Equal(design.Offer.Total - design.Offer.Tax, OfferPaper.Lines(design).Sum(line => line.Price));
        Assert.All(OfferPaper.Lines(design), line => Assert.True(line.Price > 0));
    }
}
