namespace Shaduf.Workshop;

/// <summary>A bar and the parts that are cut from it, in no order.</summary>
internal sealed record BarParts(BarStock Stock, IReadOnlyList<CutPart> Parts);

/// <summary>
/// Puts the pieces of a bar in their order: longest first, and two slanting ends of one angle against each other, so that
/// one cut parts them.
/// </summary>
/// <param name="kerfMm">What a square cut eats [mm].</param>
internal sealed class BarLayout(double kerfMm)
{
    // Saw angles that differ by less are one setting of the saw.
    private const double SameDeg = 0.05;

    /// <summary>The bar with its pieces laid.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="usableMm">Length of the bar less its end trim [mm].</param>
    public CutBar Of(BarParts bar, double usableMm)
    {
        var pieces = Laid(bar.Parts);
        var leftMm = usableMm - (pieces.Count == 0 ? 0 : pieces[^1].ToMm + kerfMm);
        return new(bar.Stock, pieces, Math.Max(0, leftMm));
    }

    /// <summary>Length that the pieces take, the last cut left out [mm].</summary>
    public double LengthMm(IReadOnlyList<CutPart> parts) => parts.Count == 0 ? 0 : Laid(parts)[^1].ToMm;

    private List<CutPiece> Laid(IReadOnlyList<CutPart> parts)
    {
        List<CutPart> waiting =
        [
            .. parts.OrderByDescending(part => part.LengthMm).ThenBy(part => part.Mark, StringComparer.Ordinal),
        ];
        var laid = new List<CutPiece>();
        CutPart? before = null;
        while (waiting.Count > 0)
        {
            var nested = before is null ? null : waiting.Find(part => Nests(before, laid[^1], part) is not null);
            var part = nested ?? waiting[0];
            waiting.Remove(part);
            laid.Add(nested is null ? Beside(part, laid) : Nests(before!, laid[^1], part)!);
            before = part;
        }

        return laid;
    }

    // After a square cut, its squarer end first, so that the other can be nested.
    private CutPiece Beside(CutPart part, List<CutPiece> laid)
    {
        var isTurned = part.StartDeg > part.EndDeg + SameDeg;
        var fromMm = laid.Count == 0 ? 0 : laid[^1].ToMm + kerfMm;
        return Piece(part, fromMm, isTurned, startsAbove: true);
    }

    // Against a slanting end; null where that does not go or saves nothing.
    private CutPiece? Nests(CutPart before, CutPiece last, CutPart part)
    {
        var isSame = Math.Abs(part.StartDeg - last.EndDeg) < SameDeg;
        if (
            last.EndDeg < SameDeg
            || !(before.NestWidthMm > 0)
            || part.NestWidthMm != before.NestWidthMm
            || !(HasShortSide(before) && HasShortSide(part))
            || !(isSame || Math.Abs(part.EndDeg - last.EndDeg) < SameDeg)
        )
        {
            return null;
        }

        var angle = last.EndDeg * Math.PI / 180;
        var stepMm = (kerfMm / Math.Cos(angle)) - (part.NestWidthMm * Math.Tan(angle));
        return stepMm < kerfMm
            ? Piece(part, last.ToMm + stepMm, !isSame, !last.EndsLongAbove) with
            {
                IsNested = true,
            }
            : null;
    }

    // Between the slanting ends something is left of every side.
    private static bool HasShortSide(CutPart part) =>
        part.LengthMm
        > part.NestWidthMm * (Math.Tan(part.StartDeg * Math.PI / 180) + Math.Tan(part.EndDeg * Math.PI / 180));

    private static CutPiece Piece(CutPart part, double fromMm, bool isTurned, bool startsAbove) =>
        new(part.Mark, part.LengthMm, fromMm)
        {
            StartDeg = isTurned ? part.EndDeg : part.StartDeg,
            EndDeg = isTurned ? part.StartDeg : part.EndDeg,
            StartsLongAbove = startsAbove,
            EndsLongAbove = startsAbove == part.IsTrapezoid,
        };
}
