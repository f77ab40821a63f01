namespace Shaduf.Programme;

/// <summary>When an activity can and must take place. Floats are working time of the programme's own calendar.</summary>
/// <param name="Activity">The activity.</param>
/// <param name="EarlyStart">When it can start.</param>
/// <param name="EarlyFinish">When it can be finished.</param>
/// <param name="LateStart">When it must start, or the whole ends later.</param>
/// <param name="LateFinish">When it must be finished.</param>
/// <param name="TotalFloat">By how much it may slip before the whole ends later; negative when it is late already [h].</param>
/// <param name="FreeFloat">By how much it may slip before any other activity does, no more than the total float [h].</param>
public sealed record Timing(
    Activity Activity,
    DateTime EarlyStart,
    DateTime EarlyFinish,
    DateTime LateStart,
    DateTime LateFinish,
    TimeSpan TotalFloat,
    TimeSpan FreeFloat
)
{
    /// <summary>Whether it is finished.</summary>
    public bool IsDone { get; init; }

    /// <summary>Whether it is still to be finished and the whole ends later when it does.</summary>
    public bool IsCritical => !IsDone && TotalFloat <= TimeSpan.Zero;
}

/// <summary>Start and finish of an activity.</summary>
/// <param name="Start">Its start.</param>
/// <param name="Finish">Its finish.</param>
public readonly record struct Placed(DateTime Start, DateTime Finish);
