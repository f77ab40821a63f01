namespace Shaduf.Programme;

/// <summary>A network put into time by the critical path method.</summary>
public sealed class CriticalPath
{
    private CriticalPath(Network network, DateTime start, IReadOnlyList<Timing> timings)
    {
        (Network, Start, Timings) = (network, start, timings);
        Finish = timings.Max(each => each.EarlyFinish);
    }

    /// <summary>The network.</summary>
    public Network Network { get; }

    /// <summary>When work may begin.</summary>
    public DateTime Start { get; }

    /// <summary>When all is done.</summary>
    public DateTime Finish { get; }

    /// <summary>The activities in the order of the network.</summary>
    public IReadOnlyList<Timing> Timings { get; }

    /// <summary>The critical activities in the order of their start.</summary>
    public IReadOnlyList<Timing> Critical =>
        [.. Timings.Where(each => each.IsCritical).OrderBy(each => each.EarlyStart).ThenBy(each => each.EarlyFinish)];

    /// <summary>Solves a network.</summary>
    /// <param name="network">The network.</param>
    /// <param name="start">When work may begin.</param>
    /// <param name="calendar">The calendar in which floats are counted.</param>
    /// <param name="progress">What is known of activities that have begun; null when none has.</param>
    /// <returns>The solved network.</returns>
    /// <exception cref="ProgrammeException">A calendar without work, or progress that cannot be.</exception>
    /// <source>Kelley and Walker 1959; forward and backward pass of the precedence diagram with four kinds of link</source>
    public static CriticalPath Of(Network network, DateTime start, WorkCalendar calendar, Progress? progress = null)
    {
        var early = new Placed[network.Activities.Count];
        foreach (var at in network.Order)
        {
            early[at] = Early(network, at, early, start, progress);
        }

        var end = early.Max(each => each.Finish);
        var late = new Placed[network.Activities.Count];
        foreach (var at in network.Order.Reverse())
        {
            late[at] = Known(progress, network.Activities[at], early[at], Late(network, at, late, early[at], end));
        }

        return new(
            network,
            start,
            [
                .. Enumerable
                    .Range(0, early.Length)
                    .Select(at => Timed(network, at, early, late, (calendar, end, progress))),
            ]
        );
    }

    /// <summary>The earliest place of an activity behind those that it waits for.</summary>
    internal static Placed Early(Network network, int at, Placed[] placed, DateTime start, Progress? progress)
    {
        var activity = network.Activities[at];
        if (progress?.Of(activity) is { } known)
        {
            return known;
        }

        var (from, until) = (progress is null || progress.Date < start ? start : progress.Date, DateTime.MinValue);
        foreach (var (before, link) in network.Before[at])
        {
            var bound = (link.IsFromStart ? placed[before].Start : placed[before].Finish) + link.Lag;
            if (link.IsToFinish)
            {
                until = bound > until ? bound : until;
            }
            else
            {
                from = bound > from ? bound : from;
            }
        }

        return From(activity, from, until);
    }

    /// <summary>An activity from an instant on; where it may not be finished before another, it starts so late that it need not wait.</summary>
    internal static Placed From(Activity activity, DateTime from, DateTime until)
    {
        if (until > from)
        {
            var back = activity.Calendar.Subtract(until, activity.Work);
            from = back > from ? back : from;
        }

        // An event takes place at once, whatever the hour.
        if (activity.Work == TimeSpan.Zero)
        {
            var at = until > from ? until : from;
            return new(at, at);
        }

        var begin = activity.Calendar.Next(from);
        var end = activity.Calendar.Add(begin, activity.Work);
        return new(begin, end > until ? end : until);
    }

    private static Placed Late(Network network, int at, Placed[] late, Placed early, DateTime end)
    {
        var (start, finish) = (DateTime.MaxValue, end);
        foreach (var (after, link) in network.After[at])
        {
            var bound = (link.IsToFinish ? late[after].Finish : late[after].Start) - link.Lag;
            if (link.IsFromStart)
            {
                start = bound < start ? bound : start;
            }
            else
            {
                finish = bound < finish ? bound : finish;
            }
        }

        var activity = network.Activities[at];
        var begin = activity.Calendar.Subtract(finish, activity.Work);
        return start < begin ? new(start, Earlier(finish, Done(activity, start, early))) : new(begin, finish);
    }

    // An activity that waits for another before it is finished takes longer than its work.
    private static DateTime Done(Activity activity, DateTime start, Placed early) =>
        activity.Calendar.Add(start, activity.Work) is var end && start >= early.Start && end < early.Finish
            ? early.Finish
            : end;

    private static DateTime Earlier(DateTime one, DateTime other) => one < other ? one : other;

    // What has begun keeps its start, what is finished both its ends.
    private static Placed Known(Progress? progress, Activity activity, Placed early, Placed late) =>
        progress?.Told(activity) is not { } told ? late
        : told.Finished is null ? new(early.Start, late.Finish)
        : early;

    private static Timing Timed(
        Network network,
        int at,
        Placed[] early,
        Placed[] late,
        (WorkCalendar Calendar, DateTime End, Progress? Progress) whole
    )
    {
        var told = whole.Progress?.Told(network.Activities[at]);
        var total = told is null
            ? Slack(whole.Calendar, early[at].Start, late[at].Start)
            : Slack(whole.Calendar, early[at].Finish, late[at].Finish);
        var free = Slack(whole.Calendar, early[at].Finish, whole.End);
        foreach (var (after, link) in network.After[at])
        {
            var from = (link.IsFromStart ? early[at].Start : early[at].Finish) + link.Lag;
            var slack = Slack(whole.Calendar, from, link.IsToFinish ? early[after].Finish : early[after].Start);
            free = slack < free ? slack : free;
        }

        return new(
            network.Activities[at],
            early[at].Start,
            early[at].Finish,
            late[at].Start,
            late[at].Finish,
            total,
            free < total ? free : total
        )
        {
            IsDone = told?.Finished is not null,
        };
    }

    private static TimeSpan Slack(WorkCalendar calendar, DateTime early, DateTime late) =>
        late >= early ? calendar.Between(early, late) : -calendar.Between(late, early);
}
