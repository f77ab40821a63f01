namespace Shaduf.Programme;

/// <summary>What has happened to an activity.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Started">When it was begun.</param>
/// <param name="Finished">When it was finished; null while it goes on.</param>
/// <param name="DoneShare">How much of it is done, 0 to 1; 1 when it is finished.</param>
public sealed record ActivityProgress(string Key, DateTime Started, DateTime? Finished, double DoneShare);

/// <summary>What has happened by a date; what is left goes on from there.</summary>
public sealed class Progress
{
    private readonly Dictionary<string, ActivityProgress> known;

    /// <summary>Progress of a network.</summary>
    /// <param name="network">The network.</param>
    /// <param name="date">Date of the report; nothing that is left is done before it.</param>
    /// <param name="known">The activities that have begun.</param>
    /// <exception cref="ProgrammeException">An unknown activity, one told twice, begun or finished after the report, finished before it was begun, or done to less than nothing or more than all.</exception>
    public Progress(Network network, DateTime date, IReadOnlyList<ActivityProgress> known)
    {
        (Date, this.known) = (date, new(StringComparer.Ordinal));
        foreach (var each in known)
        {
            var name = network.Activities[network.IndexOf(each.Key)].Name;
            var fault =
                each.Started > date || each.Finished > date ? "is told for a day after the report"
                : each.Finished < each.Started ? "was finished before it was begun"
                : !(each.DoneShare is >= 0 and <= 1) ? "is done to a share that is not between 0 and 1"
                : each.Finished is not null && each.DoneShare < 1 ? "is finished but not all done"
                : !this.known.TryAdd(each.Key, each) ? "is told twice"
                : null;
            if (fault is not null)
            {
                throw new ProgrammeException($"'{name}' {fault}");
            }
        }
    }

    /// <summary>Date of the report.</summary>
    public DateTime Date { get; }

    /// <summary>Activities that were begun before all that they wait for was done: the programme was not kept, or its links are wrong.</summary>
    /// <param name="network">The network.</param>
    /// <returns>Pairs of activities: the one that was begun, the one that was not done.</returns>
    public IReadOnlyList<(Activity Begun, Activity NotDone)> OutOfOrder(Network network) =>
        [
            .. from link in network.Links
            where link.Kind == LinkKind.FinishToStart && known.ContainsKey(link.To)
            let before = known.GetValueOrDefault(link.From)
            where before?.Finished is not { } finished || finished + link.Lag > known[link.To].Started
            select (network.Activities[network.IndexOf(link.To)], network.Activities[network.IndexOf(link.From)]),
        ];

    internal ActivityProgress? Told(Activity activity) => known.GetValueOrDefault(activity.Key);

    internal Placed? Of(Activity activity)
    {
        if (Told(activity) is not { } told)
        {
            return null;
        }

        return told.Finished is { } finished
            ? new(told.Started, finished)
            : new(told.Started, Later(Date, activity.Calendar.Add(Date, activity.Work * (1 - told.DoneShare))));
    }

    private static DateTime Later(DateTime one, DateTime other) => one > other ? one : other;
}
