using System.Numerics;

namespace Shaduf.Workshop;

/// <summary>Effort spent, in elementary operations: a limit that falls at the same place in every run.</summary>
/// <param name="limit">The most that may be spent.</param>
internal sealed class Effort(long limit)
{
    public long Spent { get; private set; }

    public bool IsOver => Spent >= limit;

    public long Left => limit - Spent;

    public void Spend(long operations) => Spent += operations;
}

/// <summary>
/// The most that pieces still wanted can be worth in a bar, for every room up to the longest bar: the bounded knapsack,
/// one layer for each kind on top of the layers of the shorter kinds.
/// </summary>
/// <param name="problem">What is cut.</param>
/// <param name="effort">The effort spent.</param>
internal sealed class PatternTable(CuttingProblem problem, Effort effort)
{
    private readonly long[][] layers = new long[problem.Kinds + 1][];
    private readonly long[][] own = [.. Enumerable.Range(0, problem.Kinds).Select(_ => new long[problem.Largest + 1])];
    private long[] worth = [];
    private int[] left = [];

    /// <summary>Fills the table.</summary>
    /// <param name="worths">What a piece of each kind is worth, not below 0.</param>
    /// <param name="wanted">Pieces of each kind still wanted.</param>
    public void Fill(long[] worths, int[] wanted)
    {
        (worth, left) = (worths, wanted);
        var size = problem.Largest + 1;
        layers[problem.Kinds] = new long[size];
        for (var kind = problem.Kinds - 1; kind >= 0; kind--)
        {
            layers[kind] = worths[kind] <= 0 || wanted[kind] == 0 ? layers[kind + 1] : Layer(kind, size);
        }
    }

    /// <summary>The most that a bar can be worth.</summary>
    public long Most(int stock) => layers[0][problem.Rooms[stock]];

    /// <summary>A pattern worth the most, filled up with what else goes in.</summary>
    public Pattern Best(int stock) => Traced(stock, new int[problem.Kinds], problem.Rooms[stock])!;

    /// <summary>A pattern that holds a kind and is worth much beside it; null where the kind is not wanted or has no room.</summary>
    public Pattern? With(int stock, int kind)
    {
        var room = problem.Rooms[stock] - problem.Lengths[kind];
        var counts = new int[problem.Kinds];
        counts[kind] = 1;
        return left[kind] == 0 || room < 0 ? null : Traced(stock, counts, room);
    }

    // The pieces by which the table came to its figure, on top of those given; null where those were the last of their kind.
    private Pattern? Traced(int stock, int[] counts, int room)
    {
        for (var kind = 0; kind < problem.Kinds; kind++)
        {
            var (more, length) = (0, problem.Lengths[kind]);
            while (layers[kind][room] != (more * worth[kind]) + layers[kind + 1][room - (more * length)])
            {
                more++;
            }

            counts[kind] += more;
            room -= more * length;
            if (counts[kind] > left[kind])
            {
                return null;
            }
        }

        for (var kind = 0; kind < problem.Kinds; kind++)
        {
            var more = Math.Min(left[kind] - counts[kind], room / problem.Lengths[kind]);
            counts[kind] += more;
            room -= more * problem.Lengths[kind];
        }

        return new(stock, counts);
    }

    /// <summary>
    /// The patterns that hold the longest kind still wanted, leave no room for a piece still wanted and are worth at least
    /// so much.
    /// </summary>
    /// <param name="stock">The bar.</param>
    /// <param name="least">The least that they are worth.</param>
    /// <param name="most">Patterns after which the list ends.</param>
    public List<(Pattern Pattern, long Worth)> Listed(int stock, long least, int most)
    {
        var found = new List<(Pattern, long)>();
        var lead = Array.FindIndex(left, count => count > 0);
        Extend(new(stock, least, most, lead, found), new int[problem.Kinds], (lead, problem.Rooms[stock], 0));
        return found;
    }

    private sealed record Listing(int Stock, long Least, int Most, int Lead, List<(Pattern, long)> Found);

    private void Extend(Listing listing, int[] counts, (int Kind, int Room, long Worth) at)
    {
        effort.Spend(4);
        if (listing.Found.Count >= listing.Most || at.Worth + layers[at.Kind][at.Room] < listing.Least)
        {
            return;
        }

        if (at.Kind == problem.Kinds)
        {
            if (IsFull(counts, at.Room))
            {
                listing.Found.Add((new(listing.Stock, (int[])counts.Clone()), at.Worth));
            }

            return;
        }

        var length = problem.Lengths[at.Kind];
        for (var count = Math.Min(left[at.Kind], at.Room / length); count >= (at.Kind == listing.Lead ? 1 : 0); count--)
        {
            counts[at.Kind] = count;
            Extend(listing, counts, (at.Kind + 1, at.Room - (count * length), at.Worth + (count * worth[at.Kind])));
        }

        counts[at.Kind] = 0;
    }

    private bool IsFull(int[] counts, int room)
    {
        for (var kind = problem.Kinds - 1; kind >= 0; kind--)
        {
            if (counts[kind] < left[kind])
            {
                return problem.Lengths[kind] > room;
            }
        }

        return true;
    }

    private long[] Layer(int kind, int size)
    {
        var (length, below, layer) = (problem.Lengths[kind], layers[kind + 1], own[kind]);
        below.AsSpan().CopyTo(layer);
        var most = Math.Min(left[kind], (size - 1) / length);
        effort.Spend((long)most * size / 4);
        for (var count = 1; count <= most; count++)
        {
            Raise(layer.AsSpan(count * length), below.AsSpan(0, size - (count * length)), count * worth[kind]);
        }

        return layer;
    }

    // Each figure of the layer, or the figure below with so much more, whichever is larger.
    private static void Raise(Span<long> layer, ReadOnlySpan<long> below, long more)
    {
        var (width, at, added) = (Vector<long>.Count, 0, new Vector<long>(more));
        for (; at <= layer.Length - width; at += width)
        {
            var candidate = new Vector<long>(below[at..]) + added;
            Vector.Max(candidate, new Vector<long>(layer[at..])).CopyTo(layer[at..]);
        }

        for (; at < layer.Length; at++)
        {
            layer[at] = Math.Max(layer[at], below[at] + more);
        }
    }
}
