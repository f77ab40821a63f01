namespace Shaduf.Workshop;

/// <summary>A plan in whole numbers with its proof.</summary>
/// <param name="Runs">Patterns and how often each is cut.</param>
/// <param name="Cost">Its price.</param>
/// <param name="Bound">No plan is cheaper.</param>
internal sealed record Solved(IReadOnlyList<Run> Runs, long Cost, long Bound);

/// <summary>From a first plan to the cheapest one.</summary>
internal static class CutSolver
{
    // Bars of the dive that are searched again, one number after another, before the whole is searched.
    private static readonly IReadOnlyList<int> s_undone = [10, 20, 40];

    /// <summary>Longest piece first into the first bar with room; then every bar as cheap as what it holds allows.</summary>
    public static IReadOnlyList<Run> FirstFit(CuttingProblem problem)
    {
        var opened = new List<(int Stock, int[] Counts, int Room)>();
        var left = (int[])problem.Available.Clone();
        for (var kind = 0; kind < problem.Kinds; kind++)
        {
            var from = 0;
            for (var piece = 0; piece < problem.Demands[kind]; piece++)
            {
                var length = problem.Lengths[kind];
                while (from < opened.Count && opened[from].Room < length)
                {
                    from++;
                }

                if (from == opened.Count)
                {
                    opened.Add((Opened(problem, left, length), new int[problem.Kinds], 0));
                    opened[from] = opened[from] with { Room = problem.Rooms[opened[from].Stock] };
                }

                opened[from].Counts[kind]++;
                opened[from] = opened[from] with { Room = opened[from].Room - length };
            }
        }

        return Alike(opened.Select(bar => Cheaper(problem, left, new(bar.Stock, bar.Counts))));
    }

    /// <summary>The cheapest plan that the effort allows, and what no plan can beat.</summary>
    public static Solved Solve(CuttingProblem problem, long mostEffort)
    {
        var effort = new Effort(mostEffort);
        var table = new PatternTable(problem, effort);
        var master = new PatternMaster(problem, table, effort);
        var relaxed = master.Solve(problem.Demands, problem.Available);
        var bound = Math.Max(relaxed.Bound, problem.LengthBound());
        var search = new CutSearch(problem, table, master, effort) { Goal = long.MaxValue, Floor = bound };
        search.Offer(FirstFit(problem));
        var isWhole = false;
        if (search.Goal >= bound)
        {
            var dive = new CutDive(problem, master).Of(relaxed);
            search.Offer(dive.Sum(run => Pieces(run)) == problem.Demands.Sum() ? dive : search.Best!);
            foreach (var undone in s_undone.TakeWhile(_ => search.Goal >= bound))
            {
                search.From(Begun(dive, undone), mostEffort / 8);
            }
        }

        if (search.Goal >= bound)
        {
            isWhole = search.From([], mostEffort);
        }

        var cost = problem.CostOf(search.Best!);
        return Fewer(problem, new(search.Best!, cost, isWhole ? cost : bound), new(mostEffort / 4));
    }

    private static int Pieces(Run run) => run.Bars * run.Pattern.Counts.Sum();

    // The dive without its last bars.
    private static List<Run> Begun(IReadOnlyList<Run> dive, int undone)
    {
        var begun = dive.ToList();
        while (begun.Count > 0 && undone > 0)
        {
            var less = Math.Min(undone, begun[^1].Bars);
            undone -= less;
            begun[^1] = begun[^1] with { Bars = begun[^1].Bars - less };
            if (begun[^1].Bars == 0)
            {
                begun.RemoveAt(begun.Count - 1);
            }
        }

        return begun;
    }

    // The same price with fewer patterns, where the effort finds one.
    private static Solved Fewer(CuttingProblem problem, Solved solved, Effort effort)
    {
        var table = new PatternTable(problem, effort);
        var search = new CutSearch(problem, table, new(problem, table, effort), effort)
        {
            Goal = solved.Cost,
            Floor = solved.Cost,
            IsRepeating = true,
        };
        search.From([], effort.Left);
        var merged = PatternMerge.Of(problem, Alike(solved.Runs));
        var repeated = search.Best is { } best ? PatternMerge.Of(problem, Alike(best)) : merged;
        return solved with { Runs = repeated.Count < merged.Count ? repeated : merged };
    }

    private static int Opened(CuttingProblem problem, int[] left, int length)
    {
        var stock = Enumerable
            .Range(0, left.Length)
            .Where(i => left[i] > 0 && problem.Rooms[i] >= length)
            .MinBy(i => ((double)problem.Prices[i] / problem.Rooms[i], -problem.Rooms[i]));
        left[stock] -= problem.IsUnlimited(stock) ? 0 : 1;
        return stock;
    }

    private static Pattern Cheaper(CuttingProblem problem, int[] left, Pattern pattern)
    {
        var used = pattern.Counts.Zip(problem.Lengths, (count, length) => count * length).Sum();
        left[pattern.Stock] += problem.IsUnlimited(pattern.Stock) ? 0 : 1;
        var stock = Enumerable
            .Range(0, left.Length)
            .Where(i => left[i] > 0 && problem.Rooms[i] >= used)
            .MinBy(i => (problem.Prices[i], problem.Rooms[i]));
        left[stock] -= problem.IsUnlimited(stock) ? 0 : 1;
        return pattern with { Stock = stock };
    }

    private static List<Run> Alike(IEnumerable<Pattern> patterns) =>
        Alike(patterns.Select(pattern => new Run(pattern, 1)));

    private static List<Run> Alike(IEnumerable<Run> runs)
    {
        var alike = new List<Run>();
        foreach (var run in runs)
        {
            var at = alike.FindIndex(other => other.Pattern.IsLike(run.Pattern));
            if (at < 0)
            {
                alike.Add(run);
            }
            else
            {
                alike[at] = alike[at] with { Bars = alike[at].Bars + run.Bars };
            }
        }

        return alike;
    }
}
