namespace Shaduf.Workshop;

/// <summary>Gathers what is left over on few bars, without another bar or another pattern.</summary>
internal static class OffcutShift
{
    // Beyond so many single bars the gain is not worth the search.
    private const int MostBars = 300;

    /// <summary>
    /// Changes pieces between bars that are cut by a pattern of their own, as long as one bar is left with more.
    /// </summary>
    public static IReadOnlyList<Run> Of(CuttingProblem problem, IReadOnlyList<Run> runs)
    {
        int[] single = [.. runs.Index().Where(run => run.Item.Bars == 1).Select(run => run.Index)];
        if (single.Length > MostBars)
        {
            return runs;
        }

        Run[] moved =
        [
            .. runs.Select(run => run with { Pattern = run.Pattern with { Counts = [.. run.Pattern.Counts] } }),
        ];
        bool isBetter;
        do
        {
            isBetter = false;
            foreach (var a in single)
            {
                foreach (var b in single.Where(b => b != a))
                {
                    isBetter |= Moved(problem, moved[a].Pattern, moved[b].Pattern);
                }
            }
        } while (isBetter);

        return moved;
    }

    // A longer piece of the emptier bar against a shorter one, or none, of the fuller bar.
    private static bool Moved(CuttingProblem problem, Pattern full, Pattern empty)
    {
        var (fullLeft, emptyLeft) = (Left(problem, full), Left(problem, empty));
        if (fullLeft > emptyLeft)
        {
            return false;
        }

        for (var gives = 0; gives < problem.Kinds; gives++)
        {
            for (var takes = problem.Kinds; takes > gives && empty.Counts[gives] > 0; takes--)
            {
                var isNone = takes == problem.Kinds;
                var more = problem.Lengths[gives] - (isNone ? 0 : problem.Lengths[takes]);
                if (more <= fullLeft && (isNone || full.Counts[takes] > 0))
                {
                    Change(full, empty, gives, isNone ? -1 : takes);
                    return true;
                }
            }
        }

        return false;
    }

    private static void Change(Pattern full, Pattern empty, int gives, int takes)
    {
        empty.Counts[gives]--;
        full.Counts[gives]++;
        if (takes >= 0)
        {
            full.Counts[takes]--;
            empty.Counts[takes]++;
        }
    }

    private static long Left(CuttingProblem problem, Pattern pattern) =>
        problem.Rooms[pattern.Stock]
        - pattern.Counts.Zip(problem.Lengths, (count, length) => (long)count * length).Sum();
}
