namespace Shaduf.Workshop;

/// <summary>Does without bars where nested ends leave room for their pieces elsewhere.</summary>
internal static class Nesting
{
    // Beyond so many bars it is not tried.
    private const int MostBars = 200;

    /// <summary>The bars that are left.</summary>
    public static List<BarParts> Fewest(CutOrder order, List<BarParts> bars)
    {
        var layout = new BarLayout(order.KerfMm);
        var hasNests = order.Parts.Any(part => part.NestWidthMm > 0 && Math.Max(part.StartDeg, part.EndDeg) > 0);
        if (hasNests && bars.Count <= MostBars)
        {
            while (Without(order, layout, bars) is { } fewer)
            {
                bars = fewer;
            }
        }

        return bars;
    }

    // The plan without one of its bars, the emptiest first; null where every bar is needed.
    private static List<BarParts>? Without(CutOrder order, BarLayout layout, List<BarParts> bars) =>
        bars.Where(bar => bar.Stock.Price > 0)
            .OrderBy(bar => bar.Parts.Sum(part => part.LengthMm))
            .Select(gone => Spread(order, layout, [.. bars.Where(bar => !ReferenceEquals(bar, gone))], gone.Parts))
            .FirstOrDefault(fewer => fewer is not null);

    private static List<BarParts>? Spread(
        CutOrder order,
        BarLayout layout,
        List<BarParts> bars,
        IReadOnlyList<CutPart> pieces
    )
    {
        foreach (var piece in pieces.OrderByDescending(piece => piece.LengthMm))
        {
            var (at, leastMm) = (-1, double.PositiveInfinity);
            for (var i = 0; i < bars.Count; i++)
            {
                var leftMm = Left(order, layout, bars[i], piece);
                if (leftMm >= 0 && leftMm < leastMm)
                {
                    (at, leastMm) = (i, leftMm);
                }
            }

            if (at < 0)
            {
                return null;
            }

            bars[at] = bars[at] with { Parts = [.. bars[at].Parts, piece] };
        }

        return bars;
    }

    // What a bar has left with one piece more; below 0 where it is too long even with every end nested.
    private static double Left(CutOrder order, BarLayout layout, BarParts bar, CutPart piece)
    {
        var usableMm = bar.Stock.LengthMm - order.EndTrimMm;
        var hopedMm = usableMm - bar.Parts.Append(piece).Sum(ShortMm);
        return hopedMm < 0 ? -1 : usableMm - layout.LengthMm([.. bar.Parts, piece]);
    }

    // The least that a piece takes off a bar: its length less both slants.
    private static double ShortMm(CutPart part) =>
        part.LengthMm
        - (part.NestWidthMm * (Math.Tan(part.StartDeg * Math.PI / 180) + Math.Tan(part.EndDeg * Math.PI / 180)));
}
