namespace Shaduf.Programme;

/// <summary>People of one trade over time: from each instant on, so many are at work.</summary>
internal sealed class PeopleInUse(string trade, int limit)
{
    private readonly List<DateTime> instants = [DateTime.MinValue];
    private readonly List<int> inUse = [0];

    /// <summary>When, at the earliest, an activity can go on without a break; its own start when it can at once.</summary>
    public DateTime? FreeFrom(Placed place, int count, Activity activity)
    {
        if (count > limit)
        {
            throw new ProgrammeException($"'{activity.Name}' needs {count} of {trade}, and there are {limit}");
        }

        // The last instant inside the activity at which too many are at work: not before the next one.
        for (var i = At(place.Finish); i >= 0 && (i + 1 == instants.Count || instants[i + 1] > place.Start); i--)
        {
            if (inUse[i] + count > limit && instants[i] < place.Finish)
            {
                return instants[i + 1];
            }
        }

        return place.Start;
    }

    /// <summary>Takes people from start to finish.</summary>
    public void Take(Placed place, int count)
    {
        var (from, to) = (Split(place.Start), Split(place.Finish));
        for (var i = from; i < to; i++)
        {
            inUse[i] += count;
        }
    }

    private int At(DateTime instant)
    {
        var found = instants.BinarySearch(instant);
        return found >= 0 ? found : ~found - 1;
    }

    private int Split(DateTime instant)
    {
        var at = At(instant);
        if (instants[at] == instant)
        {
            return at;
        }

        instants.Insert(at + 1, instant);
        inUse.Insert(at + 1, inUse[at]);
        return at + 1;
    }
}
