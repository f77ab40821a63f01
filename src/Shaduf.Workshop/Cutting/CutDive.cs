namespace Shaduf.Workshop;

/// <summary>A quick good plan: whole runs of the relaxation, then the relaxation of what is left, and so on.</summary>
/// <param name="problem">What is cut.</param>
/// <param name="master">The relaxation.</param>
internal sealed class CutDive(CuttingProblem problem, PatternMaster master)
{
    // Parts of a run taken as a whole one when there is no whole run left; judgement.
    private const double NearlyOne = 0.6;

    private const int MostFills = 20;

    /// <summary>The runs in the order taken; null where scarce bars ran out in the middle.</summary>
    /// <param name="first">The relaxation of the whole order.</param>
    public IReadOnlyList<Run> Of(Relaxation first)
    {
        var (wanted, bars) = ((int[])problem.Demands.Clone(), (int[])problem.Available.Clone());
        var taken = new List<Run>();
        for (var relaxed = first; ; relaxed = master.Solve(wanted, bars, MostFills))
        {
            var before = taken.Count;
            foreach (var (pattern, runs) in relaxed.Use.OrderByDescending(use => use.Runs - Math.Floor(use.Runs)))
            {
                var isFirst = taken.Count == before;
                var whole = (int)Math.Floor(runs + 1e-6);
                if (whole >= 1 || runs >= NearlyOne)
                {
                    Take(pattern, Math.Max(1, whole), wanted, bars, taken);
                }
                else if (isFirst && relaxed.Use.All(use => use.Runs < NearlyOne))
                {
                    Take(pattern, 1, wanted, bars, taken);
                }
            }

            if (Array.TrueForAll(wanted, count => count == 0) || taken.Count == before)
            {
                return taken;
            }
        }
    }

    private void Take(Pattern pattern, int runs, int[] wanted, int[] bars, List<Run> taken)
    {
        var most = Math.Min(runs, pattern.Repeats(wanted, bars));
        if (most > 0)
        {
            var run = new Run(pattern, most);
            problem.Take(run, wanted, bars);
            taken.Add(run);
        }
    }
}
