using System.Text;
using CsCheck;
using Shaduf.Working;

namespace Shaduf.Pack.Tests;

public sealed class LetteringTests
{
    [Theory]
    [InlineData("1111")]
    [InlineData("0000")]
    [InlineData("1234")]
    public void FiguresAreEquallyWide(string figures) =>
        Assert.Equal(Lettering.WidthMm("8888", 3.5), Lettering.WidthMm(figures, 3.5), 1e-9);

    [Fact]
    public void WidthGrowsWithSizeAndWeight()
    {
        Assert.Equal(2 * Lettering.WidthMm("Pump", 3), Lettering.WidthMm("Pump", 6), 1e-9);
        Assert.True(Lettering.WidthMm("Pump", 3, FontWeight.Bold) > Lettering.WidthMm("Pump", 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lettering.WidthMm("Pump", double.NaN));
    }

    [Fact]
    public void EveryCharacterOfTheTradeCanBeDrawn() =>
        Assert.Empty(
            Lettering.MissingCharacters([
                "m² m³ ° Ω ρ η Δ µ → ← ↑ ↓ × ± ≤ ≥ ≈ √ Ø ½ – — “ ” € £ ₦ ₹ ğ ş Ł ő ŋ ɛ ɔ ƙ ɗ ẹ ọ ṣ ☐ ☑ ✓ ₀₁₂ ∞ ∠ ‰ ∑",
            ])
        );

    [Fact]
    public void ControlCharactersAreMissing() => Assert.Equal(["\t"], Lettering.MissingCharacters(["a\tb"]));

    [Theory]
    [InlineData("محطة المياه", true)]
    [InlineData("Колодец у реки", true)]
    [InlineData("Πηγάδι", true)]
    [InlineData("गाँव का कुआँ", false)]
    [InlineData("村井", false)]
    public void WordsThatNoFontHasAreToldWithTheirField(string name, bool canBeDrawn)
    {
        var found = Lettering.Check([new("station.name", 7, name)]).ToList();
        Assert.Equal(canBeDrawn ? 0 : 1, found.Count);
        Assert.All(
            found,
            finding =>
            {
                Assert.Equal(FindingStatus.Look, finding.Status);
                Assert.Contains("station.name (line 7)", finding.Says, StringComparison.Ordinal);
                Assert.Contains("U+", finding.Says, StringComparison.Ordinal);
            }
        );
    }

    [Fact]
    public void ShortenedTextFitsAndSaysSo() =>
        Gen.Double[5, 80]
            .Sample(roomMm =>
            {
                const string name = "Tamarind Well at the foot of the northern hill";
                var shown = Lettering.Shortened(name, roomMm, TextStyle.Body);
                Assert.True(Lettering.WidthMm(shown, Lettering.BodyMm) <= roomMm);
                Assert.True(shown == name || shown.EndsWith('…'));
            });

    [Fact]
    public void ArabicLettersAreJoinedAndRunFromTheRight()
    {
        // Joined, the word takes other glyphs than its letters do alone, and the first letter stands furthest right.
        var word = ShapedText.Of("بئر", FontWeight.Regular).Runs.Single();
        var alone = "بئر".Select(c => ShapedText.Of(c.ToString(), FontWeight.Regular).Runs.Single().Glyphs[0]).ToList();
        Assert.Empty(word.Glyphs.Intersect(alone.Take(2)));
        Assert.Equal(0u, word.Clusters[^1]);
        Assert.True(word.XEm[^1] > word.XEm[0]);
    }

    [Theory]
    [InlineData("abc 12", "abc 12")]
    [InlineData("ab אב 12 cd", "ab 12 |בא| cd")]
    [InlineData("אב 12.5 גד", "דג |12.5| בא")]
    [InlineData("אב ab cd גד", "דג |ab cd| בא")]
    public void WritingFromTheRightKeepsItsPlaceInTheLine(string text, string seen)
    {
        // What stands from left to right, each run turned the way it is drawn.
        var runs = ShapedText
            .Of(text, FontWeight.Regular)
            .Runs.Select(run =>
            {
                var read = Encoding.UTF8.GetString(run.Text);
                return run.Clusters[0] > run.Clusters[^1] ? string.Concat(read.Reverse()) : read;
            });
        Assert.Equal(seen.Replace("|", "", StringComparison.Ordinal), string.Concat(runs));
    }
}
