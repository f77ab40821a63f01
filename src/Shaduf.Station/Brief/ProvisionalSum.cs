using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Money set aside for work that is not yet defined; spent on the client's instruction, by what it costs.</summary>
/// <param name="For">The work.</param>
/// <param name="Sum">The sum, in the price book's currency.</param>
public sealed record ProvisionalSum(string For, double Sum)
{
    /// <summary>Reads the list <c>money.provisional</c>.</summary>
    /// <param name="money">The mapping <c>money</c>; null when there is none.</param>
    /// <returns>The sums.</returns>
    internal static IReadOnlyList<ProvisionalSum> Read(FieldMap? money) =>
        money?.Items(
            "provisional",
            0,
            20,
            "Money set aside for work that is not yet defined: rock, ground water, a road to mend.",
            fields =>
            {
                var sum = new ProvisionalSum(
                    fields.Text("for", "The work."),
                    fields.Number("sum", 0, 1e9, "The sum, in the price book's currency.")
                );
                fields.Done();
                return sum;
            }
        )
        ?? [];

    /// <summary>The sums as lines of the bill.</summary>
    /// <param name="sums">The sums.</param>
    internal static IEnumerable<QuantityLine> Lines(IReadOnlyList<ProvisionalSum> sums) =>
        sums.Select(
            (sum, i) =>
                new QuantityLine(
                    Invariant($"provisional-{i + 1}"),
                    BillSection.ProvisionalSums,
                    $"provisional sum: {sum.For}",
                    "sum",
                    1,
                    "agreed sum of the brief, money.provisional; spent on instruction, settled by what it costs"
                )
                {
                    AgreedSum = (decimal)sum.Sum,
                }
        );
}
