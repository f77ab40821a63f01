namespace Shaduf.Store;

/// <summary>A station in the list.</summary>
/// <param name="Id">Its lasting number.</param>
/// <param name="Name">Its name in the list.</param>
/// <param name="IsArchived">Whether it is put away.</param>
/// <param name="EditNumber">Number of its last edit, 0 before the first.</param>
/// <param name="Made">When it was made.</param>
/// <param name="Changed">When it was last edited.</param>
public sealed record StationEntry(
    Guid Id,
    string Name,
    bool IsArchived,
    int EditNumber,
    DateTimeOffset Made,
    DateTimeOffset Changed
);

/// <summary>A station's brief as text, after a number of edits.</summary>
/// <param name="Id">The station.</param>
/// <param name="Name">Its name in the list.</param>
/// <param name="Text">The brief, the same text as <c>station.yaml</c>.</param>
/// <param name="EditNumber">Number of the last edit in it: the next edit must name it.</param>
public sealed record StationText(Guid Id, string Name, string Text, int EditNumber);

/// <summary>What became of an edit.</summary>
/// <param name="IsKept">
/// Whether it is kept. When not, somebody else edited first: nothing was changed and <paramref name="Now"/> is theirs.
/// </param>
/// <param name="Now">The station as it is kept now.</param>
public sealed record EditOutcome(bool IsKept, StationText Now);

/// <summary>One line of a station's journal.</summary>
/// <param name="Number">Number of the edit, from 1.</param>
/// <param name="What">What it did, in a few words.</param>
/// <param name="Edit">The edit.</param>
/// <param name="TakesBack">Number of the edit that it takes back; null for none.</param>
/// <param name="At">When it was confirmed.</param>
public sealed record JournalLine(int Number, string What, TextEdit Edit, int? TakesBack, DateTimeOffset At);

/// <summary>A version that was saved.</summary>
/// <param name="Number">Number of the version, from 1.</param>
/// <param name="Note">What the person wrote about it.</param>
/// <param name="EditNumber">Number of the last edit in it.</param>
/// <param name="At">When it was saved.</param>
public sealed record SavedVersion(int Number, string Note, int EditNumber, DateTimeOffset At);
