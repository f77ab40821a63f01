using Shaduf.Station;
using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>Text as the shipped fonts write it: its width, and the characters that they lack.</summary>
public static class Lettering
{
    /// <summary>What is drawn in place of a word whose letters no font has.</summary>
    public const string NoFont = "[no font]";

    private const int MostFields = 6;
    private const int MostCodes = 12;

    /// <summary>Size of small notes [mm], 8 point.</summary>
    public const double SmallMm = 2.8;

    /// <summary>Size of body text [mm], 10 point.</summary>
    public const double BodyMm = 3.5;

    /// <summary>Size of drawing text [mm] whose capitals are 2.5 mm high.</summary>
    public const double DrawingMm = 3.8;

    /// <summary>Size of titles [mm], 14 point.</summary>
    public const double TitleMm = 5;

    /// <summary>Height of the tallest unaccented letters above the line, as part of the size.</summary>
    public const double AscentRatio = 0.75;

    /// <summary>Depth of the letters under the line, as part of the size.</summary>
    public const double DescentRatio = 0.22;

    /// <summary>Height of capitals, as part of the size.</summary>
    /// <source>OS/2 sCapHeight of Source Sans 3: 660 of 1000 units.</source>
    public const double CapitalRatio = 0.66;

    /// <summary>From one line of a text to the next, as part of the size.</summary>
    public const double LineRatio = 1.32;

    /// <summary>Width of a line of text as it will be drawn.</summary>
    /// <param name="text">The text; one line.</param>
    /// <param name="sizeMm">Size of the letters [mm], 0.5 to 100.</param>
    /// <param name="weight">Weight of the letters.</param>
    /// <returns>The width [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is out of range.</exception>
    public static double WidthMm(string text, double sizeMm, FontWeight weight = FontWeight.Regular)
    {
        Within.Require(sizeMm, 0.5, 100, "mm");
        return ShapedText.Of(text, weight).WidthEm * sizeMm;
    }

    /// <summary>A text cut to a width, with an ellipsis where something was left out.</summary>
    /// <param name="text">The text; one line.</param>
    /// <param name="roomMm">The width it may take [mm].</param>
    /// <param name="style">Size and weight.</param>
    /// <returns>The text itself when it fits.</returns>
    public static string Shortened(string text, double roomMm, TextStyle style)
    {
        if (WidthMm(text, style.SizeMm, style.Weight) <= roomMm)
        {
            return text;
        }

        var kept = Graphemes.Of(text);
        while (kept.Count > 0 && WidthMm(string.Concat(kept) + "…", style.SizeMm, style.Weight) > roomMm)
        {
            kept.RemoveAt(kept.Count - 1);
        }

        return string.Concat(kept).TrimEnd() + "…";
    }

    /// <summary>Characters that no shipped font has in one weight or the other.</summary>
    /// <param name="texts">The texts.</param>
    /// <returns>The characters with their marks, each once, in order; empty when all can be drawn.</returns>
    public static IReadOnlyList<string> MissingCharacters(IEnumerable<string> texts) =>
        Missing(texts.SelectMany(text => Enum.GetValues<FontWeight>().Select(weight => ShapedText.Of(text, weight))));

    internal static IReadOnlyList<string> Missing(IEnumerable<Scene> scenes) =>
        Missing(
            scenes
                .SelectMany(scene => scene.Items.OfType<TextItem>())
                .Select(item => ShapedText.Of(item.Text, item.Style.Weight))
        );

    internal static IReadOnlyList<string> Missing(IEnumerable<ShapedText> texts) =>
        [.. texts.SelectMany(text => text.Missing).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>Words of a brief that the shipped fonts cannot write.</summary>
    /// <param name="words">The brief's words.</param>
    /// <returns>Nothing when all can be written; else a finding that looks at each field.</returns>
    public static IEnumerable<Finding> Check(IReadOnlyList<BriefWord> words)
    {
        List<(BriefWord Word, IReadOnlyList<string> Missing)> lacking =
        [
            .. words
                .Select(word => (Word: word, Missing: MissingCharacters([word.Text])))
                .Where(each => each.Missing.Count > 0),
        ];
        if (lacking.Count == 0)
        {
            yield break;
        }

        var codes = lacking
            .SelectMany(each => each.Missing)
            .SelectMany(character => character.EnumerateRunes())
            .Distinct()
            .Take(MostCodes)
            .Select(rune => $"U+{rune.Value:X4}");
        var fields = lacking.Take(MostFields).Select(each => $"{each.Word.Field} (line {each.Word.Line})");
        yield return new(
            "pack/lettering",
            FindingStatus.Look,
            $"no font at hand has the letters of {string.Join(", ", fields)}{(lacking.Count > MostFields ? $" and {lacking.Count - MostFields} more" : "")}: {string.Join(' ', codes)}. Drawings and books say '{NoFont}' in their place; write those words in Latin, Greek, Cyrillic, Arabic or Hebrew letters",
            lacking.Count,
            0,
            "fields",
            "the fonts shipped"
        );
    }
}
