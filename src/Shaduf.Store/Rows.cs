namespace Shaduf.Store;

/// <summary>A station as it is kept: its text after its last edit.</summary>
internal sealed class StationRow
{
    public Guid Id { get; init; }

    public required string Name { get; set; }

    public required string Text { get; set; }

    /// <summary>Number of the last edit, 0 before the first: whoever edits must have seen it.</summary>
    public int EditNumber { get; set; }

    public bool IsArchived { get; set; }

    /// <summary>When it was made [ticks of UTC]: a provider that cannot order dates orders these.</summary>
    public long MadeTicks { get; init; }

    public long ChangedTicks { get; set; }
}

/// <summary>One line of the journal.</summary>
internal sealed class EditRow
{
    public Guid StationId { get; init; }

    public int Number { get; init; }

    public int Start { get; init; }

    public required string Removed { get; init; }

    public required string Inserted { get; init; }

    public required string What { get; init; }

    /// <summary>Number of the edit that this one takes back; null for none.</summary>
    public int? TakesBack { get; init; }

    public long AtTicks { get; init; }
}

/// <summary>A file that an edit changed: what lay there before it and after it; null for no file.</summary>
internal sealed class FileEditRow
{
    public Guid StationId { get; init; }

    public int Number { get; init; }

    public required string Name { get; init; }

    public byte[]? Before { get; init; }

    public byte[]? After { get; init; }
}

/// <summary>A version that was saved by name.</summary>
internal sealed class VersionRow
{
    public Guid StationId { get; init; }

    public int Number { get; init; }

    public int EditNumber { get; init; }

    public required string Note { get; init; }

    public required string Text { get; init; }

    public long AtTicks { get; init; }
}

/// <summary>A file that lies beside the brief: a card, a price book, a weather record, a log.</summary>
internal sealed class FileRow
{
    public Guid StationId { get; init; }

    public required string Name { get; init; }

    public required byte[] Bytes { get; set; }

    public long AtTicks { get; set; }
}
