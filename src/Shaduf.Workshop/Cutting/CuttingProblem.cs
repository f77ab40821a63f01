namespace Shaduf.Workshop;

/// <summary>What is cut from one bar: how many of each kind.</summary>
/// <param name="Stock">Which bar.</param>
/// <param name="Counts">Pieces of each kind.</param>
internal sealed record Pattern(int Stock, int[] Counts)
{
    public bool IsLike(Pattern other) => Stock == other.Stock && Counts.AsSpan().SequenceEqual(other.Counts);

    /// <summary>How often it can be cut from what is wanted.</summary>
    public int Repeats(int[] wanted, int[] bars)
    {
        var most = bars[Stock];
        for (var kind = 0; kind < wanted.Length; kind++)
        {
            if (Counts[kind] > 0)
            {
                most = Math.Min(most, wanted[kind] / Counts[kind]);
            }
        }

        return most;
    }
}

/// <summary>A pattern and how many bars are cut by it.</summary>
internal readonly record struct Run(Pattern Pattern, int Bars);

/// <summary>
/// An order in whole numbers. A kerf is added to every part and to the bar, so that a bar is full when the lengths sum up
/// to its room. Equal lengths are one kind; the longest comes first.
/// </summary>
/// <param name="Lengths">Length of each kind with its kerf.</param>
/// <param name="Demands">Pieces of each kind.</param>
/// <param name="Rooms">Room of each bar.</param>
/// <param name="Prices">Price of each bar, without common factor.</param>
/// <param name="Available">Bars of each; <see cref="Unlimited"/> for as many as wanted.</param>
internal sealed record CuttingProblem(int[] Lengths, int[] Demands, int[] Rooms, long[] Prices, int[] Available)
{
    /// <summary>As many as wanted.</summary>
    public const int Unlimited = int.MaxValue;

    // Lengths go into tenths of a millimetre, parts and kerf upwards and bars downwards; prices into ten-thousandths.
    private const double Tenths = 10;
    private const decimal Coins = 10_000;
    private const double Hair = 1e-6;

    /// <summary>The parts of each kind, by mark.</summary>
    public required IReadOnlyList<IReadOnlyList<CutPart>> Classes { get; init; }

    /// <summary>What one unit of price is worth.</summary>
    public required decimal PriceUnit { get; init; }

    public int Kinds => Lengths.Length;

    public int Largest => Rooms.Max();

    public bool IsUnlimited(int stock) => Available[stock] == Unlimited;

    public long CostOf(IReadOnlyList<Run> runs) => runs.Sum(run => run.Bars * Prices[run.Pattern.Stock]);

    /// <summary>Takes a run off what is wanted; gives it back for a sign of -1.</summary>
    public void Take(Run run, int[] wanted, int[] bars, int sign = 1)
    {
        for (var kind = 0; kind < wanted.Length; kind++)
        {
            wanted[kind] -= sign * run.Bars * run.Pattern.Counts[kind];
        }

        if (!IsUnlimited(run.Pattern.Stock))
        {
            bars[run.Pattern.Stock] -= sign * run.Bars;
        }
    }

    public decimal Money(long price) => price * PriceUnit;

    public static CuttingProblem Of(CutOrder order)
    {
        var kerf = Up(order.KerfMm);
        IReadOnlyList<CutPart>[] classes =
        [
            .. order
                .Parts.GroupBy(part => Up(part.LengthMm))
                .OrderByDescending(alike => alike.Key)
                .Select(alike => (IReadOnlyList<CutPart>)[.. alike.OrderBy(part => part.Mark, StringComparer.Ordinal)]),
        ];
        int[] lengths = [.. classes.Select(alike => Up(alike[0].LengthMm) + kerf)];
        int[] rooms =
        [
            .. order.Stock.Select(bar => (int)Math.Floor(((bar.LengthMm - order.EndTrimMm) * Tenths) + Hair) + kerf),
        ];
        var step = (int)lengths.Aggregate(0L, (a, b) => Common(a, b));
        long[] prices = [.. order.Stock.Select(bar => (long)decimal.Round(bar.Price * Coins))];
        var coin = prices.Aggregate(0L, Common);
        return new(
            [.. lengths.Select(length => length / step)],
            [.. classes.Select(alike => alike.Sum(part => part.Count))],
            [.. rooms.Select(room => Math.Max(0, room / Math.Max(1, step)))],
            [.. prices.Select(price => price / Math.Max(1, coin))],
            [.. order.Stock.Select(bar => bar.Count ?? Unlimited)]
        )
        {
            Classes = classes,
            PriceUnit = Math.Max(1, coin) / Coins,
        };
    }

    /// <summary>Least price by length alone.</summary>
    public long LengthBound()
    {
        var total = Lengths.Zip(Demands, (length, count) => (double)length * count).Sum();
        var least = Enumerable.Range(0, Rooms.Length).Where(i => Rooms[i] > 0).Min(i => (double)Prices[i] / Rooms[i]);
        return (long)Math.Ceiling((total * least) - Hair);
    }

    private static int Up(double mm) => (int)Math.Ceiling((mm * Tenths) - Hair);

    private static long Common(long a, long b) => b == 0 ? a : Common(b, a % b);
}
