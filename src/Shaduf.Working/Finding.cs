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

    /// <summary>Whether it lies beyond what is judged here, so that an engineer decides.</summary>
    public bool IsHandedOver { get; init; }

    /// <summary>What lies beyond what is judged here and is handed over to an engineer.</summary>
    /// <param name="id">Stable name, trade first.</param>
    /// <param name="value">The figure found.</param>
    /// <param name="limit">The figure up to which it is judged.</param>
    /// <param name="unit">Unit of both.</param>
    /// <param name="says">One plain sentence for the builder.</param>
    /// <param name="source">Where the limit comes from.</param>
    /// <returns>The finding, unchecked.</returns>
    public static Finding HandedOver(string id, double value, double limit, string unit, string says, string source) =>
        new(id, FindingStatus.Unchecked, says, value, limit, unit, source) { IsHandedOver = true };

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

    /// <summary>A figure against a lower limit that other findings already check: below it a person looks, and what breaks is counted where it is checked.</summary>
    /// <param name="id">Stable name, trade first.</param>
    /// <param name="value">The figure found.</param>
    /// <param name="limit">The smallest figure that holds.</param>
    /// <param name="unit">Unit of both.</param>
    /// <param name="says">One plain sentence for the builder.</param>
    /// <param name="source">Where the limit comes from.</param>
    /// <returns>The finding.</returns>
    public static Finding Told(string id, double value, double limit, string unit, string says, string source) =>
        new(id, value >= limit ? FindingStatus.Holds : FindingStatus.Look, says, value, limit, unit, source);
}
