namespace Shaduf.Station;

/// <summary>
/// The arrangements that no other beats in cost and share together: cost and share rise from each to the next. Its
/// length does not grow with the number of arrangements offered.
/// </summary>
internal sealed class CostFront
{
    private readonly List<Arrangement> points = [];

    /// <summary>The arrangements, cheapest first.</summary>
    public IReadOnlyList<Arrangement> Points => points;

    /// <summary>The largest share had for a cost; below 0 when nothing is that cheap.</summary>
    public double ShareAt(double cost) => After(cost) is > 0 and var after ? points[after - 1].Share : -1;

    /// <summary>The cheapest arrangement with a share of at least this; null when none has.</summary>
    public Arrangement? Cheapest(double share) => points.Find(each => each.Share >= share);

    /// <summary>Whether an arrangement belongs in: none that is as cheap meets as much.</summary>
    public bool Takes(double cost, double share) => ShareAt(cost) < share;

    /// <summary>Takes in an arrangement that belongs in, and drops those that it beats.</summary>
    public void Add(Arrangement arrangement)
    {
        var after = After(arrangement.Cost);
        var from = after > 0 && points[after - 1].Cost == arrangement.Cost ? after - 1 : after;
        var to = after;
        while (to < points.Count && points[to].Share <= arrangement.Share)
        {
            to++;
        }

        points.RemoveRange(from, to - from);
        points.Insert(from, arrangement);
    }

    // Index of the first point that is dearer.
    private int After(double cost)
    {
        var (low, high) = (0, points.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = points[middle].Cost <= cost ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
