namespace Shaduf.Station;

/// <summary>What dust takes of an array, from week to week, and when it was washed off.</summary>
/// <param name="CleanRatio">The array's ratio when it is clean: nine weeks of ten lie below it.</param>
/// <param name="LostShare">What the last two weeks lack of it.</param>
/// <param name="PerWeekRatio">Change from week to week between washings; negative when dust settles.</param>
/// <param name="WashedWeeks">Weeks, as numbered, in which it rose at once: washed by hand or by rain.</param>
public sealed record Soiling(
    double CleanRatio,
    double LostShare,
    double PerWeekRatio,
    IReadOnlyList<double> WashedWeeks
)
{
    /// <summary>Fewest weeks that tell anything.</summary>
    public const int FewestWeeks = 6;

    // A rise of 2 % within a week, thrice the usual change: a washing; judgement.
    private const double WashedRatio = 0.02;
    private const double UsualFactor = 3;

    /// <summary>Reads it from the ratios of weeks.</summary>
    /// <param name="weeks">Number of each week, rising.</param>
    /// <param name="ratios">Power over that of the clean array in the same light, week by week.</param>
    /// <returns>The soiling; null with fewer than <see cref="FewestWeeks"/> weeks.</returns>
    public static Soiling? Of(IReadOnlyList<double> weeks, IReadOnlyList<double> ratios)
    {
        if (ratios.Count < FewestWeeks)
        {
            return null;
        }

        double[] changes = [.. Enumerable.Range(1, ratios.Count - 1).Select(i => ratios[i] - ratios[i - 1])];
        var usual = Middle([.. changes.Select(Math.Abs)]);
        var rise = Math.Max(WashedRatio, UsualFactor * usual);
        int[] washed = [.. Enumerable.Range(1, changes.Length).Where(i => changes[i - 1] >= rise)];
        var clean = ratios.Order().ElementAt((int)(0.9 * (ratios.Count - 1)));
        return new(
            clean,
            1 - ((ratios[^1] + ratios[^2]) / 2 / clean),
            BetweenWashings(weeks, ratios, washed),
            // Washed in the middle of a week, it rises in that week and in the next: told once.
            [.. washed.Where(i => !washed.Contains(i - 1)).Select(i => weeks[i])]
        );
    }

    // The middle of the slopes between all weeks that no washing parts.
    private static double BetweenWashings(IReadOnlyList<double> weeks, IReadOnlyList<double> ratios, int[] washed)
    {
        double[] slopes =
        [
            .. from j in Enumerable.Range(1, ratios.Count - 1)
            from i in Enumerable.Range(0, j)
            where !washed.Any(at => i < at && at <= j)
            select (ratios[j] - ratios[i]) / (weeks[j] - weeks[i]),
        ];
        return slopes.Length == 0 ? 0 : Middle(slopes);
    }

    private static double Middle(double[] values)
    {
        Array.Sort(values);
        return (values[(values.Length - 1) / 2] + values[values.Length / 2]) / 2;
    }
}
