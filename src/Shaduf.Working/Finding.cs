namespace Shaduf.Working;

/// <summary>One check of the design, with its value, its limit and where the limit comes from.</summary>
/// <param name="Id">Stable name, trade first: <c>water/pump-setting</c>.</param>
/// <param name="Status">What the check came to.</param>
/// <param name="Says">One plain sentence for the builder: what was checked and what follows.</param>
/// <param name="Value">The figure found, in <paramref name="Unit"/>; null when there is none.</param>
/// <param name="Limit">The figure it is held against, in <paramref name="Unit"/>; null when there is none.</param>
/// <param name="Unit">Unit of value and limit; empty for a plain count or ratio.</param>
/// <param name="Source">Standard, clause or 'common practice, no source'.</param>
public sealed record Finding(
    string Id,
    FindingStatus Status,
    string Says,
    double? Value,
    double? Limit,
    string Unit,
    string Source
)
{
    /// <summary>Names of the assumptions that this finding leans on; empty when it leans on none.</summary>
    public IReadOnlyList<string> LeansOn { get; init; } = [];

    /// <summary>A check of a value against an upper limit: holds at or below it, stops above it (NaN stops).</summary>
    /// <param name="id">Stable name, trade first.</param>
    /// <param name="value">The figure found.</param>
    /// <param name="limit">The largest figure that holds.</param>
    /// <param name="unit">Unit of both.</param>
    /// <param name="says">One plain sentence for the builder.</param>
    /// <param name="source">Where the limit comes from.</param>
    /// <returns>The finding.</returns>
    public static Finding AtMost(string id, double value, double limit, string unit, string says, string source) =>
        new(id, value <= limit ? FindingStatus.Holds : FindingStatus.Stop, says, value, limit, unit, source);

    /// <summary>A check of a value against a lower limit: holds at or above it, stops below it (NaN stops).</summary>
    /// <param name="id">Stable name, trade first.</param>
    /// <param name="value">The figure found.</param>
    /// <param name="limit">The smallest figure that holds.</param>
    /// <param name="unit">Unit of both.</param>
    /// <param name="says">One plain sentence for the builder.</param>
    /// <param name="source">Where the limit comes from.</param>
    /// <returns>The finding.</returns>
    public static Finding AtLeast(string id, double value, double limit, string unit, string says, string source) =>
        new(id, value >= limit ? FindingStatus.Holds : FindingStatus.Stop, says, value, limit, unit, source);
}
