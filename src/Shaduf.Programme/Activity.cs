namespace Shaduf.Programme;

/// <summary>A piece of work, a wait, or an event.</summary>
/// <param name="Key">Short name, unique.</param>
/// <param name="Name">What is done.</param>
/// <param name="Work">How long it takes in its calendar, at least 0; 0 is an event [h].</param>
/// <param name="Calendar">When it goes on.</param>
public sealed record Activity(string Key, string Name, TimeSpan Work, WorkCalendar Calendar)
{
    /// <summary>How many people of each trade it keeps from its start to its finish.</summary>
    public IReadOnlyDictionary<string, int> Crew { get; init; } = new Dictionary<string, int>();
}

/// <summary>Which ends of two activities a link joins.</summary>
public enum LinkKind
{
    /// <summary>The second starts after the first is finished.</summary>
    FinishToStart,

    /// <summary>The second starts after the first has started.</summary>
    StartToStart,

    /// <summary>The second is finished after the first is finished.</summary>
    FinishToFinish,

    /// <summary>The second is finished after the first has started.</summary>
    StartToFinish,
}

/// <summary>What must come before what.</summary>
/// <param name="From">Key of the first activity.</param>
/// <param name="To">Key of the second.</param>
/// <param name="Kind">Which ends are joined.</param>
/// <param name="Lag">Least time between them, running day and night; negative where they may overlap [h].</param>
public sealed record Link(string From, string To, LinkKind Kind = LinkKind.FinishToStart, TimeSpan Lag = default)
{
    /// <summary>Whether it holds the first activity by its start.</summary>
    public bool IsFromStart => Kind is LinkKind.StartToStart or LinkKind.StartToFinish;

    /// <summary>Whether it holds the second activity by its finish.</summary>
    public bool IsToFinish => Kind is LinkKind.FinishToFinish or LinkKind.StartToFinish;
}
