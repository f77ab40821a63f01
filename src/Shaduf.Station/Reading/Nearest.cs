namespace Shaduf.Station;

/// <summary>The known word that a mistyped one most likely meant.</summary>
internal static class Nearest
{
    /// <summary>The nearest word, by the fewest letters added, dropped, changed or swapped.</summary>
    /// <param name="word">What was written.</param>
    /// <param name="known">What is known.</param>
    /// <returns>The nearest, or null when none is near (more than a third of its letters differ).</returns>
    public static string? Of(string word, IEnumerable<string> known)
    {
        var best = known
            .Select(candidate => (candidate, Distance: Distance(word, candidate)))
            .OrderBy(pair => pair.Distance)
            .ThenBy(pair => pair.candidate, StringComparer.Ordinal)
            .FirstOrDefault();
        return best.candidate is not null && best.Distance <= Math.Max(1, best.candidate.Length / 3)
            ? best.candidate
            : null;
    }

    /// <summary>What is accepted in the place of a mistyped word: the nearest one, or all of them.</summary>
    /// <param name="word">What was written.</param>
    /// <param name="known">What is known.</param>
    /// <returns>A question, or a list.</returns>
    public static string Or(string word, IReadOnlyCollection<string> known) =>
        Of(word, known) is { } nearest ? $"did you mean '{nearest}'?" : $"{string.Join(", ", known)} are accepted";

    // Damerau-Levenshtein, optimal string alignment.
    private static int Distance(string a, string b)
    {
        if (a.Length > 60 || b.Length > 60)
        {
            return int.MaxValue;
        }

        var cost = CostsFromNothing(a.Length, b.Length);
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var change = char.ToLowerInvariant(a[i - 1]) == char.ToLowerInvariant(b[j - 1]) ? 0 : 1;
                cost[i, j] = Math.Min(Math.Min(cost[i - 1, j] + 1, cost[i, j - 1] + 1), cost[i - 1, j - 1] + change);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    cost[i, j] = Math.Min(cost[i, j], cost[i - 2, j - 2] + 1);
                }
            }
        }

        return cost[a.Length, b.Length];
    }

    // The table's edges: a word's first letters against none, each added or dropped.
    private static int[,] CostsFromNothing(int aLength, int bLength)
    {
        var cost = new int[aLength + 1, bLength + 1];
        for (var i = 0; i <= aLength; i++)
        {
            cost[i, 0] = i;
        }

        for (var j = 0; j <= bLength; j++)
        {
            cost[0, j] = j;
        }

        return cost;
    }
}
