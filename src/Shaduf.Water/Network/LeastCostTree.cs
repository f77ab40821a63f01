namespace Shaduf.Water;

/// <summary>A pipe that could be laid: what it loses and what it costs.</summary>
/// <param name="LossM">Head lost at the pipe's flow [m], at least 0.</param>
/// <param name="Cost">Cost of the whole length, in any currency.</param>
public sealed record PipeOption(double LossM, decimal Cost);

/// <summary>The cheapest pipes of a branched network.</summary>
/// <param name="OptionIndices">Chosen option of each pipe; empty when nothing serves.</param>
/// <param name="Cost">Cost of them all.</param>
public sealed record LeastCostTree(IReadOnlyList<int> OptionIndices, decimal Cost)
{
    /// <summary>Whether any set of options leaves every point its head.</summary>
    public bool Serves => OptionIndices.Count > 0;

    /// <summary>
    /// Chooses an option for each pipe so that every point has the head it needs and the whole costs least. From the
    /// tips to the tank each point keeps every level that it could ask for with the least cost of all that lies below:
    /// no set of pipes is left out that could be cheapest. Levels and losses are counted in whole millimetres, losses
    /// and needs rounded up, which bounds the work and errs to the safe side.
    /// </summary>
    /// <param name="tree">The network.</param>
    /// <param name="sourceM">Level of the water in the tank [m].</param>
    /// <param name="options">What could be laid for each pipe, at least one each.</param>
    /// <returns>The cheapest choice; the first of several alike.</returns>
    /// <exception cref="ArgumentException">A pipe has no option, or the tree is out of order.</exception>
    /// <source>dynamic programming on a tree (Bellman 1957): least cost by level asked for, losses adding along each way</source>
    public static LeastCostTree Choose(
        GravityTree tree,
        double sourceM,
        IReadOnlyList<IReadOnlyList<PipeOption>> options
    )
    {
        if (options.Count != tree.Pipes.Count || options.Any(each => each.Count == 0))
        {
            throw new ArgumentException("each pipe needs at least one option", nameof(options));
        }

        var fed = tree.Fed();
        var sourceMm = (long)Math.Floor((sourceM * 1000) + 1e-6);
        var below = new List<Step>[tree.Pipes.Count];
        var through = new List<Step>[tree.Pipes.Count];
        for (var i = tree.Pipes.Count - 1; i >= 0; i--)
        {
            below[i] = Point(tree.Pipes[i], [.. fed[i].Select(each => through[each])], sourceMm);
            through[i] = Through(below[i], options[i], sourceMm);
        }

        var roots = Enumerable.Range(0, tree.Pipes.Count).Where(i => tree.Pipes[i].UpstreamIndex < 0).ToList();
        var whole = Merge(long.MinValue, [.. roots.Select(root => through[root])], sourceMm);
        return whole.Count == 0
            ? new([], 0)
            : new(Trace(tree, fed, (below, through), whole[^1], roots), whole[^1].Cost);
    }

    // The level asked for [mm], what all below costs, the option taken, and which step of each of those fed it takes.
    private sealed record Step(long LevelMm, decimal Cost, int Option, int Next, int[] Fed);

    private static long UpMm(double metres) => (long)Math.Ceiling((metres * 1000) - 1e-6);

    private static List<Step> Point(TreePipe pipe, List<Step>[] fed, long sourceMm)
    {
        var own = pipe.NeedM is { } need ? UpMm(pipe.LevelM + need) : long.MinValue;
        if (!pipe.BreaksPressure)
        {
            return Merge(own, fed, sourceMm);
        }

        // What lies below starts from the break-pressure tank, whatever comes into it.
        var rest = Merge(long.MinValue, fed, (long)Math.Floor((pipe.LevelM * 1000) + 1e-6));
        return rest.Count == 0 ? [] : [rest[^1] with { LevelMm = Math.Max(own, UpMm(pipe.LevelM)) }];
    }

    // All that a point feeds starts from one level: for each level that matters, the least cost of each. Rising levels, falling costs.
    private static List<Step> Merge(long ownMm, List<Step>[] fed, long sourceMm)
    {
        if (ownMm > sourceMm || fed.Any(each => each.Count == 0))
        {
            return [];
        }

        var leastMm = fed.Select(each => each[0].LevelMm).Append(ownMm).Max();
        var levels = fed.SelectMany(each => each.Select(step => step.LevelMm))
            .Where(level => level > leastMm && level <= sourceMm)
            .Append(leastMm)
            .Where(level => level <= sourceMm)
            .Distinct()
            .Order();
        return Cheapest(fed, levels);
    }

    // At each level the cheapest step of each that is fed which asks for no more.
    private static List<Step> Cheapest(List<Step>[] fed, IEnumerable<long> levels)
    {
        var at = new int[fed.Length];
        var merged = new List<Step>();
        foreach (var level in levels)
        {
            for (var f = 0; f < fed.Length; f++)
            {
                while (at[f] + 1 < fed[f].Count && fed[f][at[f] + 1].LevelMm <= level)
                {
                    at[f]++;
                }
            }

            merged.Add(new(level, fed.Select((each, f) => each[at[f]].Cost).Sum(), -1, -1, [.. at]));
        }

        return merged;
    }

    private static List<Step> Through(List<Step> point, IReadOnlyList<PipeOption> options, long sourceMm)
    {
        var all = point
            .SelectMany(
                (step, next) =>
                    options.Select((option, o) => new Step(Before(step, option), step.Cost + option.Cost, o, next, []))
            )
            .Where(step => step.LevelMm <= sourceMm)
            .OrderBy(step => step.LevelMm)
            .ThenBy(step => step.Cost);
        var kept = new List<Step>();
        foreach (var step in all)
        {
            if (kept.Count == 0 || step.Cost < kept[^1].Cost)
            {
                kept.Add(step);
            }
        }

        return kept;
    }

    private static long Before(Step step, PipeOption option) =>
        step.LevelMm == long.MinValue ? long.MinValue : step.LevelMm + UpMm(option.LossM);

    private static int[] Trace(
        GravityTree tree,
        List<int>[] fed,
        (List<Step>[] Below, List<Step>[] Through) steps,
        Step whole,
        List<int> roots
    )
    {
        var chosen = new int[tree.Pipes.Count];
        var open = new Stack<(int Pipe, int Step)>(roots.Select((root, r) => (root, whole.Fed[r])));
        while (open.TryPop(out var each))
        {
            var step = steps.Through[each.Pipe][each.Step];
            chosen[each.Pipe] = step.Option;
            var point = steps.Below[each.Pipe][step.Next];
            for (var f = 0; f < fed[each.Pipe].Count; f++)
            {
                open.Push((fed[each.Pipe][f], point.Fed[f]));
            }
        }

        return chosen;
    }
}
