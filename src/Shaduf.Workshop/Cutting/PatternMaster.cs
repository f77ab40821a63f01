namespace Shaduf.Workshop;

/// <summary>The cutting problem with parts of bars allowed, solved.</summary>
/// <param name="Bound">No plan is cheaper: reckoned in whole numbers from the worths, so that rounding cannot spoil it.</param>
/// <param name="Worths">What a piece of each kind is worth, in units of 1/<paramref name="Scale"/> of a price.</param>
/// <param name="Scarcity">What one more bar of a scarce length is worth, likewise.</param>
/// <param name="Exact">The bound before it is rounded up, likewise; below 0 where many bars are scarce and few pieces wanted.</param>
/// <param name="Scale">Units of worth in one of price.</param>
/// <param name="Use">The patterns used, and how often.</param>
internal sealed record Relaxation(
    long Bound,
    long[] Worths,
    long[] Scarcity,
    long Exact,
    long Scale,
    IReadOnlyList<(Pattern Pattern, double Runs)> Use
)
{
    /// <summary>A price that a bound in units of worth allows: rounded up, and never below nothing.</summary>
    public static long Up(long exact, long scale) => exact <= 0 ? 0 : ((exact - 1) / scale) + 1;
}

/// <summary>
/// Column generation: the simplex method over the patterns found so far, and the pattern table to find one that would
/// make the plan cheaper, until there is none.
/// </summary>
/// <param name="problem">What is cut.</param>
/// <param name="table">The pattern table.</param>
/// <param name="effort">The effort spent.</param>
/// <source>Gilmore and Gomory, Operations Research 9 (1961) and 11 (1963); bound of unfinished rounds: Farley, Operations Research 38 (1990)</source>
internal sealed class PatternMaster(CuttingProblem problem, PatternTable table, Effort effort)
{
    private const double Hair = 1e-9;
    private const int MostOthers = 12;
    private readonly List<SimplexColumn> pool = [];
    private int others;
    private readonly int[] scarce =
    [
        .. Enumerable.Range(0, problem.Rooms.Length).Where(stock => !problem.IsUnlimited(stock)),
    ];

    // Worths of a bar stay below 2^50, those of a plan below 2^60.
    private readonly long scale = Math.Max(
        1,
        Math.Min(1L << 50, (1L << 60) / (problem.Demands.Sum(count => (long)count) + 1))
            / Math.Max(1, problem.Prices.Max())
    );

    /// <summary>Solves for what is still wanted.</summary>
    /// <param name="wanted">Pieces of each kind.</param>
    /// <param name="bars">Bars of each length.</param>
    /// <param name="mostFills">How often the pattern table may be filled; the bound holds whenever it ends.</param>
    public Relaxation Solve(int[] wanted, int[] bars, int mostFills = int.MaxValue)
    {
        var simplex = Started(wanted, bars);
        SimplexColumn[] known = [.. pool.Where(column => Goes(column.Pattern!, wanted, bars))];
        var most = 1000 + (200 * simplex.Rows);
        for (var (round, fills) = (0, 0); round < most && !effort.IsOver; round++)
        {
            effort.Spend(((long)simplex.Rows * simplex.Rows) + (known.Length * 8L));
            var duals = simplex.Duals();
            var column = simplex.Slack(duals) ?? Cheapest(known, duals);
            if (column is null && fills++ < mostFills)
            {
                column = Found(wanted, bars, duals, ref known);
            }

            if (column is null)
            {
                break;
            }

            simplex.Enter(column);
        }

        return Rounded(simplex, wanted, bars);
    }

    private static bool Goes(Pattern pattern, int[] wanted, int[] bars)
    {
        for (var kind = 0; kind < wanted.Length; kind++)
        {
            if (pattern.Counts[kind] > wanted[kind])
            {
                return false;
            }
        }

        return bars[pattern.Stock] > 0;
    }

    // Each kind alone on the bar that is cheapest for it.
    private Simplex Started(int[] wanted, int[] bars)
    {
        double[] rights = [.. wanted.Select(count => (double)count), .. scarce.Select(stock => (double)bars[stock])];
        var simplex = new Simplex(problem.Kinds, rights);
        for (var kind = 0; kind < problem.Kinds; kind++)
        {
            if (wanted[kind] > 0)
            {
                simplex.Begin(kind, Column(Alone(kind, wanted[kind])));
            }
        }

        return simplex;
    }

    private Pattern Alone(int kind, int wanted)
    {
        var stock = Enumerable
            .Range(0, problem.Rooms.Length)
            .Where(i => problem.IsUnlimited(i) && problem.Rooms[i] >= problem.Lengths[kind])
            .MinBy(i => (double)problem.Prices[i] / Math.Min(wanted, problem.Rooms[i] / problem.Lengths[kind]));
        var counts = new int[problem.Kinds];
        counts[kind] = Math.Min(wanted, problem.Rooms[stock] / problem.Lengths[kind]);
        return new(stock, counts);
    }

    private SimplexColumn Column(Pattern pattern)
    {
        var entries = new List<(int Row, double Value)>();
        for (var kind = 0; kind < problem.Kinds; kind++)
        {
            if (pattern.Counts[kind] > 0)
            {
                entries.Add((kind, pattern.Counts[kind]));
            }
        }

        if (!problem.IsUnlimited(pattern.Stock))
        {
            entries.Add((problem.Kinds + Array.IndexOf(scarce, pattern.Stock), 1));
        }

        return new(problem.Prices[pattern.Stock], [.. entries], pattern);
    }

    private SimplexColumn? Cheapest(SimplexColumn[] known, double[] duals)
    {
        var (least, best) = (-Hair * problem.Prices.Max(), (SimplexColumn?)null);
        foreach (var column in known)
        {
            var reduced = column.Price;
            foreach (var (row, value) in column.Entries)
            {
                reduced -= duals[row] * value;
            }

            if (reduced < least)
            {
                (least, best) = (reduced, column);
            }
        }

        return best;
    }

    private double Scarce(int stock, double[] duals) =>
        problem.IsUnlimited(stock) ? 0 : duals[problem.Kinds + Array.IndexOf(scarce, stock)];

    private SimplexColumn? Found(int[] wanted, int[] bars, double[] duals, ref SimplexColumn[] known)
    {
        table.Fill(Whole(duals), wanted);
        var (least, best) = (-Hair * problem.Prices.Max() * scale, -1);
        for (var stock = 0; stock < bars.Length; stock++)
        {
            var reduced = ((problem.Prices[stock] - Scarce(stock, duals)) * scale) - table.Most(stock);
            if (bars[stock] > 0 && reduced < least)
            {
                (least, best) = (reduced, stock);
            }
        }

        if (best < 0)
        {
            return null;
        }

        SimplexColumn[] found = [Column(table.Best(best)), .. Others(best).Select(Column)];
        pool.AddRange(found);
        known = [.. known, .. found];
        return found[0];
    }

    // Some more that hold a kind each: most of them lower the price too, and the table need not be filled for them.
    private IEnumerable<Pattern> Others(int stock)
    {
        var step = Math.Max(1, problem.Kinds / MostOthers);
        for (var kind = others++ % step; kind < problem.Kinds; kind += step)
        {
            if (table.With(stock, kind) is { } pattern)
            {
                yield return pattern;
            }
        }
    }

    // What a bar to be had in any number can be worth to its price, the most of all and a hair more; 1 when none is above it.
    private double Excess() =>
        Enumerable
            .Range(0, problem.Rooms.Length)
            .Where(stock => problem.IsUnlimited(stock) && table.Most(stock) > problem.Prices[stock] * scale)
            .Select(stock => (double)table.Most(stock) / (problem.Prices[stock] * scale) * (1 + 1e-12))
            .DefaultIfEmpty(1)
            .Max();

    private long[] Whole(double[] duals) =>
        [.. duals.Take(problem.Kinds).Select(dual => (long)Math.Max(0, dual * scale))];

    // Worths lowered until no bar to be had in any number is worth more than its price: then they bound every plan.
    private Relaxation Rounded(Simplex simplex, int[] wanted, int[] bars)
    {
        var worths = Whole(simplex.Duals());
        table.Fill(worths, wanted);
        while (Excess() is > 1 and var excess)
        {
            worths = [.. worths.Select(worth => (long)(worth / excess))];
            table.Fill(worths, wanted);
        }

        var scarcity = new long[bars.Length];
        var exact = worths.Zip(wanted, (worth, count) => worth * count).Sum();
        foreach (var stock in scarce.Where(stock => bars[stock] > 0))
        {
            scarcity[stock] = Math.Max(0, table.Most(stock) - (problem.Prices[stock] * scale));
            exact -= scarcity[stock] * bars[stock];
        }

        return new(Relaxation.Up(exact, scale), worths, scarcity, exact, scale, simplex.Use());
    }
}
