namespace Shaduf.Programme;

/// <summary>A network put into time with no more people of a trade at once than there are.</summary>
/// <param name="Places">Start and finish of each activity, in the order of the network.</param>
/// <param name="Finish">When all is done.</param>
/// <param name="Added">Working time by which the limits make the whole longer [h].</param>
public sealed record Levelling(IReadOnlyList<Placed> Places, DateTime Finish, TimeSpan Added)
{
    /// <summary>Puts the activities one by one as early as those they wait for and the people allow.</summary>
    /// <param name="path">The solved network.</param>
    /// <param name="limits">People of each trade; a trade that is not named is not limited.</param>
    /// <param name="calendar">The calendar in which the added time is counted.</param>
    /// <param name="progress">What is known of activities that have begun; they keep their people.</param>
    /// <returns>The levelled programme.</returns>
    /// <exception cref="ProgrammeException">An activity alone needs more people than there are.</exception>
    /// <source>serial schedule generation, first the latest start, then the total float, then the list; Kolisch 1996</source>
    public static Levelling Of(
        CriticalPath path,
        IReadOnlyDictionary<string, int> limits,
        WorkCalendar calendar,
        Progress? progress = null
    )
    {
        var network = path.Network;
        var people = limits.ToDictionary(each => each.Key, each => new PeopleInUse(each.Key, each.Value));
        var placed = new Placed[network.Activities.Count];
        var waits = network.Before.Select(each => each.Count).ToArray();
        var ready = new PriorityQueue<int, (DateTime, TimeSpan, int)>();
        void Offer(int at) => ready.Enqueue(at, (path.Timings[at].LateStart, path.Timings[at].TotalFloat, at));
        foreach (var at in Enumerable.Range(0, waits.Length).Where(i => waits[i] == 0))
        {
            Offer(at);
        }

        while (ready.TryDequeue(out var at, out _))
        {
            placed[at] = Place(path, at, placed, people, progress);
            foreach (var (to, _) in network.After[at])
            {
                if (--waits[to] == 0)
                {
                    Offer(to);
                }
            }
        }

        var finish = placed.Max(each => each.Finish);
        return new(placed, finish, calendar.Between(path.Finish, finish));
    }

    /// <summary>How many people of a trade are at work from an instant on, until the next.</summary>
    /// <param name="network">The network.</param>
    /// <param name="trade">The trade.</param>
    /// <returns>Instants and people, in order of time.</returns>
    public IReadOnlyList<(DateTime From, int Count)> Histogram(Network network, string trade)
    {
        var changes = new SortedDictionary<DateTime, int>();
        for (var at = 0; at < Places.Count; at++)
        {
            var count = network.Activities[at].Crew.GetValueOrDefault(trade);
            changes[Places[at].Start] = changes.GetValueOrDefault(Places[at].Start) + count;
            changes[Places[at].Finish] = changes.GetValueOrDefault(Places[at].Finish) - count;
        }

        var sum = 0;
        return [.. changes.Select(change => (change.Key, sum += change.Value))];
    }

    private static Placed Place(
        CriticalPath path,
        int at,
        Placed[] placed,
        Dictionary<string, PeopleInUse> people,
        Progress? progress
    )
    {
        var activity = path.Network.Activities[at];
        var place = CriticalPath.Early(path.Network, at, placed, path.Start, progress);
        var needs = activity.Crew.Where(each => each.Value > 0 && people.ContainsKey(each.Key)).ToList();
        if (progress?.Of(activity) is null)
        {
            place = Free(activity, place, needs, people);
        }

        foreach (var (trade, count) in needs)
        {
            people[trade].Take(place, count);
        }

        return place;
    }

    private static Placed Free(
        Activity activity,
        Placed place,
        List<KeyValuePair<string, int>> needs,
        Dictionary<string, PeopleInUse> people
    )
    {
        while (true)
        {
            var later = needs.Max(need => people[need.Key].FreeFrom(place, need.Value, activity)) ?? place.Start;
            if (later <= place.Start)
            {
                return place;
            }

            place = CriticalPath.From(activity, later, place.Finish);
        }
    }
}
