using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>Equal parts to be cut.</summary>
/// <param name="Mark">The short name painted on the part.</param>
/// <param name="LengthMm">Length, long point to long point [mm], 1 to the bar less its end trim.</param>
/// <param name="Count">How many, 1 to 100000.</param>
public sealed record CutPart(string Mark, double LengthMm, int Count);

/// <summary>One piece cut from a bar.</summary>
/// <param name="Mark">The mark of its part.</param>
/// <param name="LengthMm">Its length [mm].</param>
public sealed record CutPiece(string Mark, double LengthMm);

/// <summary>One bar and what is cut from it.</summary>
/// <param name="Pieces">The pieces in cutting order.</param>
/// <param name="RemainderMm">What is left after the last cut, end trim taken off [mm]; 0 when the last cut eats it.</param>
public sealed record CutBar(IReadOnlyList<CutPiece> Pieces, double RemainderMm);

/// <summary>Which parts are cut from which bar of one stock length.</summary>
/// <param name="BarMm">Length of a bar [mm].</param>
/// <param name="KerfMm">What a cut eats [mm].</param>
/// <param name="EndTrimMm">What is cut off both ends of a bar together [mm].</param>
/// <param name="Bars">The bars, in the order they were opened.</param>
/// <param name="LengthBoundCount">Fewest bars by total length, L1: no plan has fewer.</param>
/// <param name="PairingBoundCount">Fewest bars by which parts can lie together, L2 of Martello and Toth: no plan has fewer.</param>
public sealed record BarPlan(
    double BarMm,
    double KerfMm,
    double EndTrimMm,
    IReadOnlyList<CutBar> Bars,
    int LengthBoundCount,
    int PairingBoundCount
)
{
    // Lengths that differ by less are equal: sums of tenths of a millimetre in binary.
    private const double FitToleranceMm = 1e-6;

    /// <summary>Bars to buy.</summary>
    public int BarCount => Bars.Count;

    /// <summary>Fewest bars that any plan could use, by the better of both bounds.</summary>
    public int LowerBoundCount => Math.Max(LengthBoundCount, PairingBoundCount);

    /// <summary>Bars by which this plan may miss the best one at most; 0 proves it best.</summary>
    public int GapCount => BarCount - LowerBoundCount;

    /// <summary>
    /// Lays the longest part first into the first bar that has room. Parts fit a bar when their lengths and the kerfs
    /// between them are no longer than the bar less its end trim. Equal lengths go by mark, so every run gives the same
    /// plan.
    /// </summary>
    /// <param name="parts">The parts; none gives a plan without bars.</param>
    /// <param name="barMm">Length of a bar [mm], 100 to 20000.</param>
    /// <param name="kerfMm">What a cut eats [mm], 0 to 20.</param>
    /// <param name="endTrimMm">What is cut off both ends of a bar together [mm], 0 to 500, less than the bar.</param>
    /// <returns>The plan with its lower bounds; it may use more bars than the best plan.</returns>
    /// <exception cref="ArgumentException">A part is longer than a bar less its end trim; the message names its mark.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range, or NaN.</exception>
    /// <source>First-fit decreasing: Johnson, Demers, Ullman, Garey, Graham, SIAM J. Comput. 3 (1974) (from memory); bounds: Martello and Toth, Knapsack Problems, 1990, chapter 8</source>
    public static BarPlan FirstFitDecreasing(
        IReadOnlyList<CutPart> parts,
        double barMm,
        double kerfMm,
        double endTrimMm
    )
    {
        Within.Require(barMm, 100, 20_000, "mm");
        Within.Require(kerfMm, 0, 20, "mm");
        Within.Require(endTrimMm, 0, Math.Min(500, barMm - 1), "mm");
        var usableMm = barMm - endTrimMm;
        foreach (var part in parts)
        {
            Require(part, usableMm);
        }

        // With a kerf added to every part and to the bar, the kerfs between parts need no further thought.
        var roomMm = usableMm + kerfMm;
        return new(
            barMm,
            kerfMm,
            endTrimMm,
            Lay(parts, kerfMm, roomMm),
            LengthBound(parts, kerfMm, roomMm),
            PairingBound(parts, kerfMm, roomMm)
        );
    }

    private static void Require(CutPart part, double usableMm)
    {
        Within.RequireCount(part.Count, 1, 100_000);
        if (part.LengthMm > usableMm + FitToleranceMm)
        {
            throw new ArgumentException(
                FormattableString.Invariant(
                    $"Part {part.Mark} is {part.LengthMm} mm long and the bar less its end trim {usableMm} mm: splice it or buy a longer bar."
                ),
                nameof(part)
            );
        }

        Within.Require(part.LengthMm, 1, double.PositiveInfinity, "mm");
    }

    private static List<CutBar> Lay(IReadOnlyList<CutPart> parts, double kerfMm, double roomMm)
    {
        var opened = new List<(List<CutPiece> Pieces, double LeftMm)>();
        var pieces = parts
            .OrderByDescending(part => part.LengthMm)
            .ThenBy(part => part.Mark, StringComparer.Ordinal)
            .SelectMany(part => Enumerable.Repeat(new CutPiece(part.Mark, part.LengthMm), part.Count));
        foreach (var piece in pieces)
        {
            var takesMm = piece.LengthMm + kerfMm;
            var at = opened.FindIndex(bar => takesMm <= bar.LeftMm + FitToleranceMm);
            if (at < 0)
            {
                opened.Add(([piece], roomMm - takesMm));
                continue;
            }

            opened[at].Pieces.Add(piece);
            opened[at] = (opened[at].Pieces, opened[at].LeftMm - takesMm);
        }

        // The last cut takes a kerf off the remainder, or what is left of it.
        return [.. opened.Select(bar => new CutBar(bar.Pieces, Math.Max(0, bar.LeftMm - kerfMm)))];
    }

    private static int LengthBound(IReadOnlyList<CutPart> parts, double kerfMm, double roomMm) =>
        WholeBars(parts.Sum(part => part.Count * (part.LengthMm + kerfMm)), roomMm);

    // For every length a up to half a bar: parts longer than the bar less a lie alone, the other long parts open a bar
    // each, and the parts from a to half a bar fill what those leave and then bars of their own.
    private static int PairingBound(IReadOnlyList<CutPart> parts, double kerfMm, double roomMm)
    {
        var half = roomMm / 2;
        var sized = parts.Select(part => (SizeMm: part.LengthMm + kerfMm, part.Count)).ToList();
        var best = 0;
        foreach (var a in sized.Select(part => part.SizeMm).Where(size => size <= half).Append(0).Distinct())
        {
            var openers = sized.Where(part => part.SizeMm > half + FitToleranceMm).ToList();
            var shared = openers.Where(part => part.SizeMm <= roomMm - a + FitToleranceMm).ToList();
            var small = sized.Where(part => part.SizeMm >= a && part.SizeMm <= half + FitToleranceMm);
            var leftMm = shared.Sum(part => part.Count * (roomMm - part.SizeMm));
            var overflowMm = small.Sum(part => part.Count * part.SizeMm) - leftMm;
            best = Math.Max(best, openers.Sum(part => part.Count) + Math.Max(0, WholeBars(overflowMm, roomMm)));
        }

        return best;
    }

    private static int WholeBars(double lengthMm, double roomMm) => (int)Math.Ceiling(lengthMm / roomMm - 1e-9);
}
