using System.Globalization;
using System.Text.RegularExpressions;

namespace Shaduf.House.Tests;

/// <summary>A parameter's valid range, as its doc comment states it after the [unit].</summary>
/// <param name="Lowest">Smallest value; negative infinity when none is stated.</param>
/// <param name="Highest">Largest value; infinity when none is stated.</param>
/// <param name="AboveLowest">Whether the smallest value itself is outside.</param>
/// <param name="BelowHighest">Whether the largest value itself is outside.</param>
internal sealed record DocumentedRange(double Lowest, double Highest, bool AboveLowest, bool BelowHighest)
{
    // How far an open end is tried.
    private const double Far = 1e6;

    private const string Number =
        @"(?:[-−+]?(?:\d{1,3}(?:[ , ]\d{3})+|\d+)(?:\.\d+)?(?:[eE][-−+]?\d+)?|[-−+]?(?:infinity|∞))";

    private static readonly Regex s_closed = new(
        $@"(?<above>above|more than|greater than)?\s*(?<![\w.])(?<lo>{Number})\s*%?\s+to\s+(?<below>below|less than|under)?\s*(?<hi>{Number})"
    );

    private static readonly Regex s_low = new(
        $@"(?<above>above|more than|greater than)\s+(?<lo>{Number})|at least\s+(?<lo>{Number})"
    );

    private static readonly Regex s_high = new(
        $@"(?<below>below|less than|under)\s+(?<hi>{Number})|(?:at most|up to)\s+(?<hi>{Number})"
    );

    /// <summary>Reads '0 to 10', 'above 0 to 10', 'at least 0', 'above 0, at most 5', 'below 90', 'any'; null when none is stated.</summary>
    public static DocumentedRange? Read(string text)
    {
        var stated = AfterUnit(text);
        var closed = s_closed.Match(stated);
        var low = closed.Success ? closed : s_low.Match(stated);
        var high = closed.Success ? closed : s_high.Match(stated);
        return low.Success || high.Success || Regex.IsMatch(stated, @"\bany\b")
            ? new(
                low.Success ? Parse(low.Groups["lo"].Value) : double.NegativeInfinity,
                high.Success ? Parse(high.Groups["hi"].Value) : double.PositiveInfinity,
                low.Groups["above"].Success,
                high.Groups["below"].Success
            )
            : null;
    }

    /// <summary>Whether a range is stated at all: one that can be read, or '0 to the volume dug', which leans on another.</summary>
    public static bool IsStated(string text) =>
        Read(text) is not null || Regex.IsMatch(AfterUnit(text), $@"(?<![\w.]){Number}\s+to\s");

    /// <summary>A value inside, from a share of the way: 0 and 1 give the ends, or just inside them.</summary>
    public double At(double share)
    {
        var lowest = double.IsInfinity(Lowest) ? Math.Min(-Far, Highest - Far) : Lowest;
        var highest = double.IsInfinity(Highest) ? Math.Max(Far, Lowest + Far) : Highest;
        var inset = 1e-9 * (highest - lowest);
        var (first, last) = (AboveLowest ? lowest + inset : lowest, BelowHighest ? highest - inset : highest);
        return Math.Clamp((first * (1 - share)) + (last * share), first, last);
    }

    /// <summary>Values just outside the ends that are stated.</summary>
    public IEnumerable<double> Outside()
    {
        if (double.IsFinite(Lowest))
        {
            yield return AboveLowest ? Lowest : Lowest - Step(Lowest);
        }

        if (double.IsFinite(Highest))
        {
            yield return BelowHighest ? Highest : Highest + Step(Highest);
        }
    }

    /// <summary>Whole numbers just outside the ends that are stated.</summary>
    public IEnumerable<double> OutsideCounts() =>
        new[] { AboveLowest ? Lowest : Lowest - 1, BelowHighest ? Highest : Highest + 1 }.Where(double.IsFinite);

    private static string AfterUnit(string text) => text[(text.IndexOf(']', StringComparison.Ordinal) + 1)..];

    private static double Step(double end) => Math.Max(1e-6 * Math.Abs(end), 1e-6);

    private static double Parse(string text)
    {
        var plain = Regex.Replace(text, "[ , ]", "").Replace('−', '-');
        return plain.TrimStart('+', '-') is "infinity" or "∞"
            ? (plain[0] == '-' ? double.NegativeInfinity : double.PositiveInfinity)
            : double.Parse(plain, CultureInfo.InvariantCulture);
    }
}
