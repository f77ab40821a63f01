namespace Shaduf.Pack;

/// <summary>Running text broken into lines of a width.</summary>
/// <param name="Lines">The lines; the spans of each keep the spaces between them.</param>
/// <param name="SizeMm">Size of the letters [mm].</param>
/// <param name="IsRightToLeft">Whether the text is read from the right.</param>
internal sealed record WrappedText(IReadOnlyList<IReadOnlyList<TextSpan>> Lines, double SizeMm, bool IsRightToLeft)
{
    internal double LineMm => SizeMm * Lettering.LineRatio;

    internal double HeightMm => Lines.Count * LineMm;

    internal static WrappedText Of(RichText text, double widthMm, double sizeMm)
    {
        var lines = new List<IReadOnlyList<TextSpan>>();
        foreach (var paragraph in Paragraphs(text))
        {
            lines.AddRange(Broken(paragraph, widthMm, sizeMm));
        }

        return new(lines, sizeMm, TextDirection.IsRightToLeft(text.Plain));
    }

    /// <summary>The items of one line, with its upper edge at a height.</summary>
    internal IEnumerable<SceneItem> Draw(int line, PaperPoint topLeft, double widthMm, HorizontalAnchor anchor)
    {
        var spans = IsRightToLeft ? Lines[line].Reverse() : Lines[line];
        var lineMm = Lines[line].Sum(span => Lettering.WidthMm(span.Text, SizeMm, span.Weight));
        var freeMm = widthMm - lineMm;
        var startMm = (anchor, IsRightToLeft) switch
        {
            (HorizontalAnchor.Centre, _) => freeMm / 2,
            (HorizontalAnchor.Right, _) or (HorizontalAnchor.Left, true) => freeMm,
            _ => 0,
        };
        var letters = SizeMm * (Lettering.AscentRatio + Lettering.DescentRatio);
        var baselineMm = ((LineMm - letters) / 2) + (SizeMm * Lettering.AscentRatio);
        var at = topLeft.Moved(startMm, baselineMm);
        foreach (var span in spans)
        {
            yield return new TextItem(Layer.Text, at, span.Text, new(SizeMm) { Weight = span.Weight });
            at = at.Moved(Lettering.WidthMm(span.Text, SizeMm, span.Weight), 0);
        }
    }

    /// <summary>The items of all lines, from an upper left corner downwards.</summary>
    internal IEnumerable<SceneItem> DrawAll(PaperPoint topLeft, double widthMm, HorizontalAnchor anchor) =>
        Enumerable
            .Range(0, Lines.Count)
            .SelectMany(line => Draw(line, topLeft.Moved(0, line * LineMm), widthMm, anchor));

    // A word may change its weight in the middle, so it is a list of spans without spaces.
    private sealed class Word
    {
        public List<TextSpan> Spans { get; } = [];

        public double WidthMm(double sizeMm) => Spans.Sum(span => Lettering.WidthMm(span.Text, sizeMm, span.Weight));

        public void Add(string text, FontWeight weight)
        {
            if (text.Length > 0)
            {
                Spans.Add(new(text, weight));
            }
        }
    }

    private static List<List<Word>> Paragraphs(RichText text)
    {
        var paragraphs = new List<List<Word>> { new() };
        var word = new Word();
        void EndWord()
        {
            if (word.Spans.Count > 0)
            {
                paragraphs[^1].Add(word);
                word = new();
            }
        }

        foreach (var span in text.Spans)
        {
            var start = 0;
            for (var i = 0; i < span.Text.Length; i++)
            {
                if (span.Text[i] is not (' ' or '\t' or '\r' or '\n'))
                {
                    continue;
                }

                word.Add(span.Text[start..i], span.Weight);
                start = i + 1;
                EndWord();
                if (span.Text[i] == '\n')
                {
                    paragraphs.Add([]);
                }
            }

            word.Add(span.Text[start..], span.Weight);
        }

        EndWord();
        return paragraphs;
    }

    private static List<IReadOnlyList<TextSpan>> Broken(List<Word> words, double widthMm, double sizeMm)
    {
        var spaceMm = Lettering.WidthMm(" ", sizeMm);
        var lines = new List<IReadOnlyList<TextSpan>>();
        var line = new List<Word>();
        var lineMm = 0.0;
        foreach (var word in words.SelectMany(word => Cut(word, widthMm, sizeMm)))
        {
            var wordMm = word.WidthMm(sizeMm);
            if (line.Count > 0 && lineMm + spaceMm + wordMm > widthMm)
            {
                lines.Add(Joined(line));
                line.Clear();
            }

            lineMm = line.Count == 0 ? wordMm : lineMm + spaceMm + wordMm;
            line.Add(word);
        }

        lines.Add(Joined(line));
        return lines;
    }

    // Words of a line with spaces between them; neighbours of one weight become one span.
    private static List<TextSpan> Joined(List<Word> words)
    {
        var spans = new List<TextSpan>();
        foreach (var word in words)
        {
            for (var i = 0; i < word.Spans.Count; i++)
            {
                var space = i == 0 && spans.Count > 0 ? " " : "";
                var span = word.Spans[i];
                if (spans.Count > 0 && spans[^1].Weight == span.Weight)
                {
                    spans[^1] = spans[^1] with { Text = spans[^1].Text + space + span.Text };
                    continue;
                }

                if (space.Length > 0)
                {
                    spans[^1] = spans[^1] with { Text = spans[^1].Text + space };
                }

                spans.Add(span);
            }
        }

        return spans;
    }

    // A word wider than the line is cut between characters.
    private static IEnumerable<Word> Cut(Word word, double widthMm, double sizeMm)
    {
        if (word.WidthMm(sizeMm) <= widthMm)
        {
            yield return word;
            yield break;
        }

        var piece = new Word();
        var pieceMm = 0.0;
        foreach (var span in word.Spans)
        {
            foreach (var grapheme in Graphemes.Of(span.Text))
            {
                var graphemeMm = Lettering.WidthMm(grapheme, sizeMm, span.Weight);
                if (piece.Spans.Count > 0 && pieceMm + graphemeMm > widthMm)
                {
                    yield return piece;
                    piece = new();
                    pieceMm = 0;
                }

                if (piece.Spans.Count > 0 && piece.Spans[^1].Weight == span.Weight)
                {
                    piece.Spans[^1] = span with { Text = piece.Spans[^1].Text + grapheme };
                }
                else
                {
                    piece.Add(grapheme, span.Weight);
                }

                pieceMm += graphemeMm;
            }
        }

        yield return piece;
    }
}
