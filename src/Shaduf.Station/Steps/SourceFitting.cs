using Shaduf.Money;
using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>One fitting between the water and the main.</summary>
/// <param name="Order">Place in the direction of the flow, from 1.</param>
/// <param name="Item">Item of the price book; empty when it stands elsewhere in the bill.</param>
/// <param name="Count">How many.</param>
/// <param name="What">What it is.</param>
/// <param name="Why">What it is for.</param>
public sealed record SourceFitting(int Order, string Item, int Count, string What, string Why)
{
    /// <summary>The head of a borehole, in the direction of the flow.</summary>
    /// <source>common practice, no source; order of water supply works</source>
    public static IReadOnlyList<SourceFitting> OfWellhead { get; } = Read("wellhead.csv");

    /// <summary>A surface pump, in the direction of the flow.</summary>
    /// <source>common practice, no source</source>
    public static IReadOnlyList<SourceFitting> OfIntake { get; } = Read("intake.csv");

    /// <summary>What of them is bought.</summary>
    /// <param name="fittings">The fittings.</param>
    /// <param name="origin">Where they come from.</param>
    /// <returns>A quantity for each item.</returns>
    internal static IEnumerable<QuantityLine> Bought(IReadOnlyList<SourceFitting> fittings, string origin) =>
        fittings
            .Where(fitting => fitting.Item.Length > 0)
            .GroupBy(fitting => fitting.Item)
            .Select(same => new QuantityLine(
                same.Key,
                BillSection.SourceAndPump,
                same.First().What,
                "nr",
                same.Sum(fitting => fitting.Count),
                origin
            ));

    private static IReadOnlyList<SourceFitting> Read(string file) =>
        [
            .. Csv.Embedded(typeof(SourceFitting).Assembly, file)
                .Select(row => new SourceFitting(
                    (int)row.Number("order"),
                    row["item"],
                    (int)row.Number("count"),
                    row["what"],
                    row["why"]
                )),
        ];
}
