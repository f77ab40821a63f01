namespace Shaduf.Parts;

/// <summary>
/// Where a member over several supports is spliced: near the quarter of a span, where the moment of a continuous beam is
/// small, never at a support or in the middle of a span.
/// </summary>
public static class SplicePlaces
{
    /// <summary>Shortest piece [mm]; common practice, no source.</summary>
    public const double ShortestMm = 500;

    /// <summary>Least distance between the splices of two bars side by side [mm]; common practice, no source.</summary>
    public const double StaggerMm = 300;

    // Distance from a support as a share of the span, and from the free end as a share of an overhang.
    private static readonly double[] s_ofSpan = [0.15, 0.2, 0.25, 0.3];
    private static readonly double[] s_ofOverhang = [0.2, 0.3, 0.4];

    /// <summary>
    /// The fewest splices that the bars allow, so placed that a bar beside it, turned end for end, has its own elsewhere.
    /// </summary>
    /// <param name="lengthMm">Length of the member [mm], above 0.</param>
    /// <param name="supportsMm">Places where it is held, from its start, in order [mm].</param>
    /// <param name="longestMm">Longest piece [mm], 1,000 to 50,000.</param>
    /// <returns>
    /// Distances of the splices from the start [mm], none where one piece does; where no place is good, whole bars are laid
    /// from the start.
    /// </returns>
    /// <source>
    /// The moment of a uniformly loaded beam fixed at both ends is nought at 0.211 of its span; the shares around it:
    /// common practice, no source
    /// </source>
    public static IReadOnlyList<double> Of(double lengthMm, IReadOnlyList<double> supportsMm, double longestMm)
    {
        if (lengthMm <= longestMm)
        {
            return [];
        }

        List<double> good = [.. Good(lengthMm, supportsMm).Order()];
        var first = Fewest(good, lengthMm, longestMm);
        for (var splices = first; splices is not null; splices = Fewest(good, lengthMm, longestMm))
        {
            var crowded = splices.LastOrDefault(at =>
                splices.Any(other => Math.Abs(lengthMm - other - at) < StaggerMm)
            );
            if (crowded == 0)
            {
                return splices;
            }

            good.Remove(crowded);
        }

        return first ?? Part.Splices(lengthMm, longestMm);
    }

    /// <summary>Places good for a splice.</summary>
    /// <param name="lengthMm">Length of the member [mm].</param>
    /// <param name="supportsMm">Places where it is held, in order [mm].</param>
    /// <returns>The places, in no order [mm].</returns>
    public static IEnumerable<double> Good(double lengthMm, IReadOnlyList<double> supportsMm)
    {
        foreach (var (from, to) in supportsMm.Zip(supportsMm.Skip(1)))
        {
            foreach (var share in s_ofSpan)
            {
                yield return from + (share * (to - from));
                yield return to - (share * (to - from));
            }
        }

        if (supportsMm.Count > 0)
        {
            foreach (var share in s_ofOverhang)
            {
                yield return share * supportsMm[0];
                yield return lengthMm - (share * (lengthMm - supportsMm[^1]));
            }
        }
    }

    /// <summary>Whether every splice lies at a good place.</summary>
    /// <param name="splicesMm">The splices [mm].</param>
    /// <param name="lengthMm">Length of the member [mm].</param>
    /// <param name="supportsMm">Places where it is held, in order [mm].</param>
    public static bool AreGood(IReadOnlyList<double> splicesMm, double lengthMm, IReadOnlyList<double> supportsMm) =>
        splicesMm.All(at => Good(lengthMm, supportsMm).Any(good => Math.Abs(good - at) < 1));

    // Shortest way from the start to the end over good places; null where there is none.
    private static double[]? Fewest(List<double> good, double lengthMm, double longestMm)
    {
        double[] stops = [0, .. good, lengthMm];
        var pieces = new int[stops.Length];
        var before = new int[stops.Length];
        for (var to = 1; to < stops.Length; to++)
        {
            (pieces[to], before[to]) = (int.MaxValue, -1);
            for (var from = to - 1; from >= 0; from--)
            {
                var piece = stops[to] - stops[from];
                if (piece >= ShortestMm && piece <= longestMm && pieces[from] < pieces[to] - 1)
                {
                    (pieces[to], before[to]) = (pieces[from] + 1, from);
                }
            }
        }

        if (before[^1] < 0)
        {
            return null;
        }

        var splices = new List<double>();
        for (var at = before[^1]; at > 0; at = before[at])
        {
            splices.Insert(0, stops[at]);
        }

        return [.. splices];
    }
}
