namespace Shaduf.Programme;

/// <summary>Activities with the links between them, in an order in which each follows all that it waits for.</summary>
public sealed class Network
{
    private Network(IReadOnlyList<Activity> activities, IReadOnlyList<Link> links)
    {
        (Activities, Links) = (activities, links);
        var index = IndexOf(activities);
        Before = [.. activities.Select(_ => new List<(int, Link)>())];
        After = [.. activities.Select(_ => new List<(int, Link)>())];
        foreach (var link in links)
        {
            var (from, to) = (Find(index, link.From), Find(index, link.To));
            Before[to].Add((from, link));
            After[from].Add((to, link));
        }

        Order = InOrder();
    }

    /// <summary>The activities, as given.</summary>
    public IReadOnlyList<Activity> Activities { get; }

    /// <summary>The links, as given.</summary>
    public IReadOnlyList<Link> Links { get; }

    internal IReadOnlyList<int> Order { get; }

    internal List<(int From, Link Link)>[] Before { get; }

    internal List<(int To, Link Link)>[] After { get; }

    /// <summary>A network.</summary>
    /// <param name="activities">The activities, at least one.</param>
    /// <param name="links">The links.</param>
    /// <returns>The network.</returns>
    /// <exception cref="ProgrammeException">Two activities of one key, negative work, a link to none, or a ring, with its activities by name.</exception>
    public static Network Of(IReadOnlyList<Activity> activities, IReadOnlyList<Link> links)
    {
        if (activities.Count == 0)
        {
            throw new ProgrammeException("there is no activity");
        }

        return activities.FirstOrDefault(each => each.Work < TimeSpan.Zero) is { } negative
            ? throw new ProgrammeException($"'{negative.Name}' takes less than no time")
            : new(activities, links);
    }

    internal int IndexOf(string key) => Find(IndexOf(Activities), key);

    private static Dictionary<string, int> IndexOf(IReadOnlyList<Activity> activities)
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < activities.Count; i++)
        {
            if (!index.TryAdd(activities[i].Key, i))
            {
                throw new ProgrammeException($"two activities are called '{activities[i].Key}'");
            }
        }

        return index;
    }

    private static int Find(Dictionary<string, int> index, string key) =>
        index.TryGetValue(key, out var at) ? at : throw new ProgrammeException($"there is no activity '{key}'");

    private int[] InOrder()
    {
        var waits = Before.Select(each => each.Count).ToArray();
        var order = new List<int>(Activities.Count);
        var ready = new Queue<int>(Enumerable.Range(0, Activities.Count).Where(i => waits[i] == 0));
        while (ready.TryDequeue(out var at))
        {
            order.Add(at);
            foreach (var (to, _) in After[at])
            {
                if (--waits[to] == 0)
                {
                    ready.Enqueue(to);
                }
            }
        }

        return order.Count == Activities.Count ? [.. order] : throw new ProgrammeException(Ring(waits));
    }

    // Whoever still waits, waits for one that still waits: going back from any of them ends in the ring.
    private string Ring(int[] waits)
    {
        var path = new List<int>();
        var at = Array.FindIndex(waits, wait => wait > 0);
        while (!path.Contains(at))
        {
            path.Add(at);
            at = Before[at].First(each => waits[each.From] > 0).From;
        }

        // Told from the activity that stands first in the list.
        var ring = path.Skip(path.IndexOf(at)).Reverse().ToList();
        var first = ring.IndexOf(ring.Min());
        ring = [.. ring.Skip(first), .. ring.Take(first)];
        var names = ring.Append(ring[0]).Select(i => $"'{Activities[i].Name}'");
        return $"activities wait for each other in a ring: {string.Join(" before ", names)}";
    }
}
