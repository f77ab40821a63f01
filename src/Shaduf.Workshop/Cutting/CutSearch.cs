namespace Shaduf.Workshop;

/// <summary>
/// The exact search: bar by bar, the longest piece still wanted first, over every pattern that holds it and could still
/// lead to a cheaper plan. What is left is bounded by column generation at every step.
/// </summary>
/// <param name="problem">What is cut.</param>
/// <param name="table">The pattern table.</param>
/// <param name="master">The relaxation.</param>
/// <param name="effort">The effort spent.</param>
internal sealed class CutSearch(CuttingProblem problem, PatternTable table, PatternMaster master, Effort effort)
{
    // Children of one step; a step with more is not searched to its end.
    private const int MostChildren = 600;

    // Fills of the table at one step: what is gained by more is less than what another step gains.
    private const int MostFills = 12;

    private readonly HashSet<State> seen = [];
    private readonly List<Run> path = [];
    private bool isWhole;
    private long effortLimit;

    /// <summary>The cheapest plan so far; null before one is found.</summary>
    public IReadOnlyList<Run>? Best { get; private set; }

    /// <summary>What a plan may cost to be taken.</summary>
    public long Goal { get; set; }

    /// <summary>What no plan can beat: the search ends when it is reached.</summary>
    public long Floor { get; set; }

    /// <summary>Whether the same pattern is run as often as it can be, for plans with few patterns; such a search proves nothing.</summary>
    public bool IsRepeating { get; init; }

    /// <summary>Takes a plan found elsewhere where it is cheap enough.</summary>
    public void Offer(IReadOnlyList<Run> plan)
    {
        if (problem.CostOf(plan) <= Goal)
        {
            (Best, Goal) = (plan, problem.CostOf(plan) - 1);
        }
    }

    /// <summary>Searches from a plan begun.</summary>
    /// <param name="begun">Bars cut already.</param>
    /// <param name="mostEffort">Effort that this search may spend.</param>
    /// <returns>Whether every plan was looked at that could have been taken.</returns>
    public bool From(IReadOnlyList<Run> begun, long mostEffort)
    {
        seen.Clear();
        path.Clear();
        path.AddRange(begun);
        isWhole = !IsRepeating;
        effortLimit = effort.Spent + mostEffort;
        var (wanted, bars) = ((int[])problem.Demands.Clone(), (int[])problem.Available.Clone());
        foreach (var run in begun)
        {
            problem.Take(run, wanted, bars);
        }

        Step(wanted, bars, problem.CostOf(begun));
        return isWhole;
    }

    private bool IsDone => Best is not null && Goal < Floor;

    private void Step(int[] wanted, int[] bars, long cost)
    {
        if (effort.IsOver || effort.Spent > effortLimit)
        {
            isWhole = false;
            return;
        }

        if (Array.TrueForAll(wanted, count => count == 0))
        {
            Offer([.. path]);
            return;
        }

        if (!seen.Add(new(wanted, bars, cost)))
        {
            return;
        }

        var relaxed = master.Solve(wanted, bars, MostFills);
        if (cost + relaxed.Bound > Goal)
        {
            return;
        }

        foreach (var child in Children(relaxed, wanted, bars, Goal - cost))
        {
            if (IsDone || effort.Spent > effortLimit)
            {
                isWhole &= IsDone;
                return;
            }

            if (cost + Relaxation.Up(relaxed.Exact + child.Lost, relaxed.Scale) <= Goal)
            {
                var run = new Run(child.Pattern, IsRepeating ? child.Pattern.Repeats(wanted, bars) : 1);
                path.Add(run);
                problem.Take(run, wanted, bars);
                Step(wanted, bars, cost + (run.Bars * problem.Prices[run.Pattern.Stock]));
                problem.Take(run, wanted, bars, -1);
                path.RemoveAt(path.Count - 1);
            }
        }
    }

    // What is lost by a pattern: its price and scarcity beyond what its pieces are worth.
    private sealed record Child(Pattern Pattern, long Lost, double Runs, int Repeats);

    private IEnumerable<Child> Children(Relaxation relaxed, int[] wanted, int[] bars, long room)
    {
        table.Fill(relaxed.Worths, wanted);
        var children = new List<Child>();
        for (var stock = 0; stock < bars.Length; stock++)
        {
            if (bars[stock] > 0)
            {
                var dear = (problem.Prices[stock] * relaxed.Scale) + relaxed.Scarcity[stock];
                var mostLost = (room * relaxed.Scale) - relaxed.Exact;
                var listed = table.Listed(stock, dear - mostLost, MostChildren);
                isWhole &= listed.Count < MostChildren;
                children.AddRange(
                    listed.Select(each => ChildOf(each.Pattern, dear - each.Worth, relaxed, wanted, bars))
                );
            }
        }

        return IsRepeating
            ? children.OrderByDescending(child => child.Repeats).ThenBy(child => child.Lost)
            : children.OrderByDescending(child => child.Runs).ThenBy(child => child.Lost);
    }

    private Child ChildOf(Pattern pattern, long lost, Relaxation relaxed, int[] wanted, int[] bars) =>
        new(
            pattern,
            lost,
            relaxed.Use.FirstOrDefault(use => use.Pattern.IsLike(pattern)).Runs,
            IsRepeating ? pattern.Repeats(wanted, bars) : 1
        );

    // What is left and what it cost to come here: searched once.
    private sealed class State : IEquatable<State>
    {
        private readonly int[] figures;
        private readonly int hash;

        public State(int[] wanted, int[] bars, long cost)
        {
            figures = [.. wanted, .. bars, (int)(cost >> 32), (int)cost];
            var code = default(HashCode);
            foreach (var figure in figures)
            {
                code.Add(figure);
            }

            hash = code.ToHashCode();
        }

        public bool Equals(State? other) => other is not null && figures.AsSpan().SequenceEqual(other.figures);

        public override bool Equals(object? obj) => Equals(obj as State);

        public override int GetHashCode() => hash;
    }
}
