namespace Shaduf.Programme;

/// <summary>What a day takes and brings.</summary>
/// <param name="Day">The day.</param>
/// <param name="Paid">Cost of its work, in the programme's currency.</param>
/// <param name="Received">Money received.</param>
/// <param name="Balance">All received less all paid, at its end.</param>
public sealed record CashDay(DateOnly Day, decimal Paid, decimal Received, decimal Balance);

/// <summary>The money of a programme over time.</summary>
/// <param name="Days">Days on which money moves, in order.</param>
public sealed record CashCurve(IReadOnlyList<CashDay> Days)
{
    /// <summary>The day on which most of the builder's own money is in the work; null when none ever moves.</summary>
    public CashDay? Lowest => Days.MinBy(day => day.Balance);

    /// <summary>Spreads the cost of each activity evenly over its working time.</summary>
    /// <param name="network">The network.</param>
    /// <param name="places">Start and finish of each activity, in its order.</param>
    /// <param name="costs">Cost by the key of an activity; one that is not named costs nothing.</param>
    /// <param name="receipts">Money received, by the instant.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ProgrammeException">A cost of an activity that there is not.</exception>
    public static CashCurve Of(
        Network network,
        IReadOnlyList<Placed> places,
        IReadOnlyDictionary<string, decimal> costs,
        IEnumerable<(DateTime At, decimal Amount)> receipts
    )
    {
        var paid = new SortedDictionary<DateOnly, (decimal Paid, decimal Received)>();
        void Move(DateOnly day, decimal cost, decimal income)
        {
            var (so, far) = paid.GetValueOrDefault(day);
            paid[day] = (so + cost, far + income);
        }

        foreach (var (key, cost) in costs)
        {
            var at = network.IndexOf(key);
            foreach (var (day, share) in Spread(network.Activities[at].Calendar, places[at], cost))
            {
                Move(day, share, 0);
            }
        }

        foreach (var (at, amount) in receipts)
        {
            Move(DateOnly.FromDateTime(at), 0, amount);
        }

        var balance = 0m;
        return new([
            .. paid.Select(day =>
            {
                balance += day.Value.Received - day.Value.Paid;
                return new CashDay(day.Key, day.Value.Paid, day.Value.Received, balance);
            }),
        ]);
    }

    // The last day takes what the others leave, so that nothing is lost in rounding.
    private static IEnumerable<(DateOnly Day, decimal Cost)> Spread(WorkCalendar calendar, Placed place, decimal cost)
    {
        var whole = calendar.Between(place.Start, place.Finish);
        var left = cost;
        var last = DateOnly.FromDateTime(place.Finish);
        for (var day = DateOnly.FromDateTime(place.Start); day < last; day = day.AddDays(1))
        {
            var (begin, end) = (day.ToDateTime(TimeOnly.MinValue), day.AddDays(1).ToDateTime(TimeOnly.MinValue));
            var work = calendar.Between(begin > place.Start ? begin : place.Start, end);
            if (whole > TimeSpan.Zero && work > TimeSpan.Zero)
            {
                var share = Math.Round(cost * (decimal)(work / whole), 2);
                left -= share;
                yield return (day, share);
            }
        }

        yield return (last, left);
    }
}
