namespace Shaduf.Workshop;

/// <summary>Two patterns of one bar made one, where their pieces share out evenly over their bars.</summary>
internal static class PatternMerge
{
    /// <summary>Merges until no two patterns can be merged.</summary>
    public static IReadOnlyList<Run> Of(CuttingProblem problem, IReadOnlyList<Run> runs)
    {
        List<Run> merged = [.. runs];
        for (var first = 0; first < merged.Count; first++)
        {
            for (var second = first + 1; second < merged.Count; second++)
            {
                if (One(problem, merged[first], merged[second]) is { } one)
                {
                    merged.RemoveAt(second);
                    merged[first] = one;
                    (first, second) = (-1, merged.Count);
                }
            }
        }

        return merged;
    }

    private static Run? One(CuttingProblem problem, Run a, Run b)
    {
        var bars = a.Bars + b.Bars;
        if (a.Pattern.Stock != b.Pattern.Stock)
        {
            return null;
        }

        var counts = new int[problem.Kinds];
        var used = 0L;
        for (var kind = 0; kind < counts.Length; kind++)
        {
            var pieces = (a.Bars * a.Pattern.Counts[kind]) + (b.Bars * b.Pattern.Counts[kind]);
            if (pieces % bars != 0)
            {
                return null;
            }

            counts[kind] = pieces / bars;
            used += (long)counts[kind] * problem.Lengths[kind];
        }

        return used <= problem.Rooms[a.Pattern.Stock] ? new Run(new(a.Pattern.Stock, counts), bars) : null;
    }
}
