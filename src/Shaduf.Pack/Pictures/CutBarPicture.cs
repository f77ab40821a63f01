using Shaduf.Workshop;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Bars with what is cut from each: marks, lengths and saw angles in the order of cutting.</summary>
public static class CutBarPicture
{
    private const double BarLeftMm = 14;
    private const double BarHeightMm = 5;
    private const double LineMm = 3.6;
    private const double SquareDeg = 0.05;

    // The bars are drawn too high for their length: slants as steep as the saw's would fill short pieces.
    private const double SlantRatio = 0.3;
    private static readonly TextStyle s_mark = TextStyle.Small.Centred with { Weight = FontWeight.Bold };

    /// <summary>Composes the picture.</summary>
    /// <param name="bars">Bars that are cut alike once each, and how many there are.</param>
    /// <param name="longestMm">Length of the longest bar on the page [mm], above 0.</param>
    /// <param name="widthMm">Width of the picture [mm], 100 to 400.</param>
    /// <returns>The picture: lengths to one scale, heights not.</returns>
    public static Scene Of(IReadOnlyList<(CutBar Bar, int Count)> bars, double longestMm, double widthMm)
    {
        var builder = new SceneBuilder(new(widthMm, 10));
        var perMm = (widthMm - BarLeftMm - 1) / longestMm;
        var topMm = 1.0;
        foreach (var (bar, count) in bars)
        {
            builder.Text(
                new(0, topMm + BarHeightMm - 1.3),
                Invariant($"{count} x"),
                TextStyle.Body with
                {
                    Weight = FontWeight.Bold,
                }
            );
            Bar(builder, bar, new(BarLeftMm, topMm), perMm);
            topMm += BarHeightMm + LineMm;
            foreach (var line in Lines(bar, widthMm - BarLeftMm))
            {
                builder.Text(new(BarLeftMm, topMm), line, TextStyle.Small);
                topMm += LineMm;
            }

            topMm += 1.5;
        }

        topMm -= LineMm;

        var scene = builder.Build("what is cut from each bar");
        return scene with { Size = new(widthMm, topMm) };
    }

    private static void Bar(SceneBuilder builder, CutBar bar, PaperPoint at, double perMm)
    {
        var usedMm = bar.Pieces.Count == 0 ? 0 : bar.Pieces[^1].ToMm;
        var bottom = at.YMm + BarHeightMm;
        builder.Rectangle(
            Layer.Thin,
            new(at.XMm, at.YMm, at.XMm + (bar.Stock.LengthMm * perMm), bottom),
            Palette.White
        );
        if (bar.RemainderMm >= CutPlan.KeptMm)
        {
            var from = at.XMm + (usedMm * perMm);
            builder.Hatch(
                HatchPattern.Diagonal,
                new PaperBox(from, at.YMm, from + (bar.RemainderMm * perMm), bottom).Corners
            );
        }

        foreach (var piece in bar.Pieces)
        {
            Piece(builder, piece, at, perMm);
        }
    }

    private static void Piece(SceneBuilder builder, CutPiece piece, PaperPoint at, double perMm)
    {
        var (left, right) = (at.XMm + (piece.FromMm * perMm), at.XMm + (piece.ToMm * perMm));
        var most = (right - left) / 2.5;
        var (start, end) = (Slant(piece.StartDeg, most), Slant(piece.EndDeg, most));
        PaperPoint[] outline =
        [
            new(left + (piece.StartsLongAbove ? 0 : start), at.YMm),
            new(right - (piece.EndsLongAbove ? 0 : end), at.YMm),
            new(right - (piece.EndsLongAbove ? end : 0), at.YMm + BarHeightMm),
            new(left + (piece.StartsLongAbove ? start : 0), at.YMm + BarHeightMm),
        ];
        builder.About(piece.Mark).Polygon(Layer.Outline, outline, Palette.White).About("");
        if (Lettering.WidthMm(piece.Mark, s_mark.SizeMm, s_mark.Weight) + start + end + 1 < right - left)
        {
            builder.Text(new((left + right + start - end) / 2, at.YMm + (BarHeightMm / 2)), piece.Mark, s_mark);
        }
    }

    private static double Slant(double angleDeg, double mostMm) =>
        Math.Min(mostMm, SlantRatio * BarHeightMm * Math.Tan(angleDeg * Math.PI / 180));

    // The pieces in words, equal neighbours together, over as many lines as they need.
    private static IEnumerable<string> Lines(CutBar bar, double widthMm)
    {
        var line = "";
        foreach (var words in Words(bar))
        {
            var longer = line.Length == 0 ? words : $"{line},  {words}";
            if (line.Length > 0 && Lettering.WidthMm(longer + ",", Lettering.SmallMm) > widthMm)
            {
                yield return line + ",";
                longer = words;
            }

            line = longer;
        }

        yield return line;
    }

    private static IEnumerable<string> Words(CutBar bar)
    {
        for (var i = 0; i < bar.Pieces.Count; )
        {
            var (piece, same) = (bar.Pieces[i], 1);
            while (i + same < bar.Pieces.Count && IsAlike(piece, bar.Pieces[i + same]))
            {
                same++;
            }

            var times = same == 1 ? "" : Invariant($"{same} x ");
            yield return Invariant($"{times}{piece.Mark} {piece.LengthMm:0.#}{Saw(piece)}");
            i += same;
        }

        var length = Invariant($"bar {bar.Stock.LengthMm:0.#}");
        yield return bar.RemainderMm >= CutPlan.KeptMm
            ? Invariant($"keep {bar.RemainderMm:0} of the {length}")
            : Invariant($"{bar.RemainderMm:0} left of the {length}");
        if (bar.Stock.IsOffcut)
        {
            yield return "an offcut of the yard";
        }
    }

    private static bool IsAlike(CutPiece a, CutPiece b) =>
        a.Mark == b.Mark
        && Math.Abs(a.StartDeg - b.StartDeg) < SquareDeg
        && Math.Abs(a.EndDeg - b.EndDeg) < SquareDeg
        && (a.IsNested == b.IsNested || Math.Max(a.StartDeg, a.EndDeg) < SquareDeg);

    private static string Saw(CutPiece piece)
    {
        var isSquare = Math.Max(piece.StartDeg, piece.EndDeg) < SquareDeg;
        var nested = piece.IsNested ? ", first end by the cut before" : "";
        return isSquare ? "" : Invariant($" (saw {piece.StartDeg:0.#} / {piece.EndDeg:0.#}{nested})");
    }
}
