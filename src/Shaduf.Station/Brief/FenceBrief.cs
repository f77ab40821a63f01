namespace Shaduf.Station;

/// <summary>A point of the fence by compass and tape, from the middle of the front rack's low edge.</summary>
/// <param name="Place">Where it is.</param>
/// <param name="LevelM">Ground there above that under the low left corner of the front rack [m]; null: on the slope of the ground under the racks.</param>
public sealed record FenceCornerBrief(SitePlace Place, double? LevelM);

/// <summary>The gate in the fence, as asked.</summary>
/// <param name="Side">Side of the fence, from 1: from the point of that number to the next; of the rectangle round the racks the first lies before the low edge, then right, behind, left. Null to choose.</param>
/// <param name="AtShare">Where on that side: 0 as near to its start as a post can stand, 1 to its end; null: in the middle.</param>
/// <param name="WidthM">Width between its posts [m]; null: usual.</param>
public sealed record FenceGateBrief(int? Side, double? AtShare, double? WidthM)
{
    /// <summary>A gate of which nothing is said.</summary>
    public static FenceGateBrief Unsaid { get; } = new(null, null, null);
}

/// <summary>A fence, as asked.</summary>
/// <param name="MarginM">Free ground between racks and fence [m]; null: usual.</param>
/// <param name="Line">The line along which it stands; none: a rectangle round the racks.</param>
/// <param name="Gate">Its gate.</param>
public sealed record FenceBrief(double? MarginM, IReadOnlyList<FenceCornerBrief> Line, FenceGateBrief Gate);
