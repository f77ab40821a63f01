namespace Shaduf.Pack;

/// <summary>A picture composed once; back ends only copy it out.</summary>
/// <param name="Size">Size of the picture.</param>
/// <param name="Items">What is drawn, from the bottom to the top.</param>
public sealed record Scene(PaperSize Size, IReadOnlyList<SceneItem> Items)
{
    /// <summary>What the picture shows, for those who cannot see it; empty when it only decorates.</summary>
    public string Title { get; init; } = "";

    /// <summary>The measured box of each text, in the order drawn.</summary>
    /// <returns>The boxes.</returns>
    public IReadOnlyList<TextBox> TextBoxes() => [.. Items.OfType<TextItem>().Select(item => item.TextBox)];

    /// <summary>Pairs of texts that lie over each other.</summary>
    /// <returns>The pairs; empty when every text can be read.</returns>
    public IReadOnlyList<(TextBox First, TextBox Second)> TextOverlaps()
    {
        var boxes = TextBoxes();
        return
        [
            .. boxes.SelectMany(
                (first, i) =>
                    boxes.Skip(i + 1).Where(second => first.Overlaps(second)).Select(second => (first, second))
            ),
        ];
    }

    /// <summary>Texts that leave a frame.</summary>
    /// <param name="frame">The frame; the sheet itself when left out.</param>
    /// <returns>The boxes of those texts.</returns>
    public IReadOnlyList<TextBox> TextsOutside(PaperBox? frame = null) =>
        [.. TextBoxes().Where(box => !box.IsInside(frame ?? Size.Box))];

    /// <summary>Characters that no shipped font has; they are drawn as the replacement mark and must be reported.</summary>
    /// <returns>The characters, each once, in order of code point; empty when all can be drawn.</returns>
    public IReadOnlyList<string> MissingCharacters() => Lettering.Missing([this]);

    /// <summary>The smallest box round all that is drawn; null when nothing is.</summary>
    /// <returns>The box.</returns>
    public PaperBox? Bounds()
    {
        var boxes = Items.Select(item => item.Box).ToList();
        return boxes.Count == 0
            ? null
            : new(
                boxes.Min(b => b.LeftMm),
                boxes.Min(b => b.TopMm),
                boxes.Max(b => b.RightMm),
                boxes.Max(b => b.BottomMm)
            );
    }

    /// <summary>The picture cut to what is drawn, with a margin all round.</summary>
    /// <param name="marginMm">Margin [mm], 0 to 100.</param>
    /// <returns>The smaller or larger picture.</returns>
    public Scene Trimmed(double marginMm = 1)
    {
        var bounds = (Bounds() ?? new PaperBox(0, 0, 0, 0)).Grown(marginMm);
        return this with
        {
            Size = new(bounds.WidthMm, bounds.HeightMm),
            Items = [.. Items.Select(item => item.Moved(-bounds.LeftMm, -bounds.TopMm))],
        };
    }
}
