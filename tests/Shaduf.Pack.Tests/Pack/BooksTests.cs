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

    [Fact]
    public void Provisional_sums_stand_apart_without_profit_and_are_told_to_the_client()
    {
        var (with, without) = (
            packs["hilltop-village"],
            ExamplePacks.Make(
                ExamplePacks.Changed(
                    "hilltop-village",
                    ("    - { for: rock in the pits and the trench, sum: 6000 }\n", "")
                )
            )
        );
        var (offer, less) = (with.Design.Offer, without.Design.Offer);
        Assert.Equal((6000m, 0m), (offer.Provisional, less.Provisional));
        Assert.Equal((less.Direct, less.Overhead, less.Profit), (offer.Direct, offer.Overhead, offer.Profit));
        Assert.Equal(Math.Round(6000m * 1.16m, 2), offer.Total - less.Total);
        Assert.DoesNotContain(
            with.Design.Office.Purchases,
            each => each.Item.StartsWith("provisional", StringComparison.Ordinal)
        );
        using var document = PdfDocument.Open(with.Files["offer.pdf"]);
        Assert.Contains(
            "Provisional sum",
            string.Join(' ', document.GetPages().Select(page => page.Text)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_missed_in_the_tests_stands_in_the_books_and_not_on_the_offer()
    {
        var pack = packs["hilltop-village"];
        bool Tells(string file)
        {
            using var document = PdfDocument.Open(pack.Files[file]);
            return document.GetPages().Any(page => page.Text.Contains("NOT ACCEPTED", StringComparison.Ordinal));
        }

        Assert.True(Tells("client-book.pdf") && Tells("crew-book.pdf") && Tells("engineer-book.pdf"));
        Assert.False(Tells("offer.pdf"));
    }
}
