using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>One fitting of the wellhead.</summary>
/// <param name="Order">Place in the direction of the flow, from 1.</param>
/// <param name="Item">Item of the price book; empty when it stands elsewhere in the bill.</param>
/// <param name="Count">How many.</param>
/// <param name="What">What it is.</param>
/// <param name="Why">What it is for.</param>
public sealed record WellheadFitting(int Order, string Item, int Count, string What, string Why)
{
    /// <summary>The head of a borehole, in the direction of the flow.</summary>
    /// <source>common practice, no source; order of water supply works</source>
    public static IReadOnlyList<WellheadFitting> All { get; } =
    [
        .. Csv.Embedded(typeof(WellheadFitting).Assembly, "wellhead.csv")
            .Select(row => new WellheadFitting(
                (int)row.Number("order"),
                row["item"],
                (int)row.Number("count"),
                row["what"],
                row["why"]
            )),
    ];
}
