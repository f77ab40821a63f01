namespace Shaduf.Workshop;

/// <summary>Which parts are cut from which bar.</summary>
/// <param name="Order">What was asked for.</param>
/// <param name="Bars">The bars; bars that are cut alike stand together.</param>
/// <param name="Cost">Price of the bars.</param>
/// <param name="BoundCost">No plan of square cuts is cheaper.</param>
public sealed record CutPlan(CutOrder Order, IReadOnlyList<CutBar> Bars, decimal Cost, decimal BoundCost)
{
    /// <summary>Offcuts at least so long are kept [mm]; common practice, no source.</summary>
    public const double KeptMm = 500;

    // Some seconds on an old machine for thousands of parts; effort, not time, so that every run ends at the same plan.
    private const long LeastEffort = 1_000_000_000;
    private const long EffortOfPiece = 1_000_000;

    /// <summary>Bars used.</summary>
    public int BarCount => Bars.Count;

    /// <summary>Whether no plan of square cuts can be cheaper.</summary>
    public bool IsProven => Cost <= BoundCost;

    /// <summary>What this plan may cost more than the cheapest one at most; 0 proves it.</summary>
    public decimal GapCost => Math.Max(0, Cost - BoundCost);

    /// <summary>Least number of bars, where only one length is used; null otherwise.</summary>
    public int? LeastBarCount => Order.Stock.Count == 1 ? (int)Math.Ceiling(BoundCost / Order.Stock[0].Price) : null;

    /// <summary>Bars that are cut alike, once each, and how many there are.</summary>
    public IEnumerable<(CutBar Bar, int Count)> Alike =>
        Bars.GroupBy(bar => (bar.Stock, bar.Pattern)).Select(alike => (alike.First(), alike.Count()));

    /// <summary>Different patterns.</summary>
    public int PatternCount => Alike.Count();

    /// <summary>Length of the bars [mm].</summary>
    public double StockMm => Bars.Sum(bar => bar.Stock.LengthMm);

    /// <summary>Length of the parts, long point to long point [mm].</summary>
    public double PartsMm => Bars.Sum(bar => bar.Pieces.Sum(piece => piece.LengthMm));

    /// <summary>Length of the offcuts worth keeping [mm].</summary>
    public double KeptOffcutsMm => Bars.Where(bar => bar.RemainderMm >= KeptMm).Sum(bar => bar.RemainderMm);

    /// <summary>
    /// The cheapest plan: column generation for the bound, and an exact search from it. Then, never dearer: few
    /// patterns, the rest in few long offcuts, slanting ends nested.
    /// </summary>
    /// <param name="order">What is cut, from what.</param>
    /// <returns>The plan with its proof, or with the gap that the effort left.</returns>
    /// <exception cref="ArgumentException">The order cannot be cut; the message says why.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range, or NaN.</exception>
    /// <source>Gilmore and Gomory, Operations Research 9 (1961) and 11 (1963); proper patterns: Nitsche, Scheithauer and Terno, European J. Oper. Res. 112 (1999)</source>
    public static CutPlan Cheapest(CutOrder order) =>
        Of(
            order,
            problem =>
            {
                var solved = CutSolver.Solve(problem, LeastEffort + (EffortOfPiece * problem.Demands.Sum()));
                return solved with { Runs = OffcutShift.Of(problem, solved.Runs) };
            },
            bars => Nesting.Fewest(order, bars)
        );

    /// <summary>A quick plan to compare prices with: longest part first into the first bar that has room.</summary>
    /// <param name="order">What is cut, from what.</param>
    /// <returns>The plan with the bound by length alone.</returns>
    /// <exception cref="ArgumentException">The order cannot be cut; the message says why.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range, or NaN.</exception>
    /// <source>First-fit decreasing: Johnson, Demers, Ullman, Garey, Graham, SIAM J. Comput. 3 (1974) (from memory)</source>
    public static CutPlan FirstFit(CutOrder order) =>
        Of(
            order,
            problem =>
            {
                var runs = CutSolver.FirstFit(problem);
                return new(runs, problem.CostOf(runs), problem.LengthBound());
            },
            bars => bars
        );

    private static CutPlan Of(
        CutOrder order,
        Func<CuttingProblem, Solved> solve,
        Func<List<BarParts>, List<BarParts>> nest
    )
    {
        order.Require();
        if (order.Parts.Count == 0)
        {
            return new(order, [], 0, 0);
        }

        var problem = CuttingProblem.Of(order);
        var solved = solve(problem);
        var layout = new BarLayout(order.KerfMm);
        CutBar[] bars =
        [
            .. nest(Named(order, problem, solved.Runs))
                .Select(bar => layout.Of(bar, bar.Stock.LengthMm - order.EndTrimMm)),
        ];
        return new(order, bars, bars.Sum(bar => bar.Stock.Price), problem.Money(solved.Bound));
    }

    // Pieces of one length get their marks one after another.
    private static List<BarParts> Named(CutOrder order, CuttingProblem problem, IReadOnlyList<Run> runs)
    {
        Queue<CutPart>[] waiting =
        [
            .. problem.Classes.Select(alike => new Queue<CutPart>(
                alike.SelectMany(part => Enumerable.Repeat(part, part.Count))
            )),
        ];
        return
        [
            .. runs.OrderByDescending(run => run.Pattern.Counts, ByLongest())
                .Where(run => run.Pattern.Counts.Any(count => count > 0))
                .SelectMany(run => Enumerable.Repeat(run.Pattern, run.Bars))
                .Select(pattern => new BarParts(
                    order.Stock[pattern.Stock],
                    [
                        .. pattern.Counts.SelectMany(
                            (count, kind) => Enumerable.Range(0, count).Select(_ => waiting[kind].Dequeue())
                        ),
                    ]
                )),
        ];
    }

    private static Comparer<int[]> ByLongest() =>
        Comparer<int[]>.Create((a, b) => a.Zip(b, (x, y) => x.CompareTo(y)).FirstOrDefault(order => order != 0));
}
