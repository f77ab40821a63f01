using Shaduf.Working;

namespace Shaduf.Money;

/// <summary>What is added to the direct cost; overhead, profit and tax each on the running total before it.</summary>
/// <param name="ContingencyShare">Contingency on direct cost alone, for named risks, 0 to 1.</param>
/// <param name="OverheadShare">Overhead on direct cost, preliminaries and contingency, 0 to 1.</param>
/// <param name="MarkupShare">Profit as mark-up on cost so far, not margin on price, 0 to 9; see <see cref="MarkUp"/>.</param>
/// <param name="TaxShare">Tax on everything before it, 0 to 1.</param>
public sealed record OfferTerms(double ContingencyShare, double OverheadShare, double MarkupShare, double TaxShare);

/// <summary>The price to the client, from direct cost to total.</summary>
/// <param name="Direct">Direct cost of the priced lines.</param>
/// <param name="Contingency">Contingency.</param>
/// <param name="Overhead">Overhead.</param>
/// <param name="Profit">Profit.</param>
/// <param name="Tax">Tax.</param>
/// <param name="Total">Sum of all of them.</param>
/// <param name="Currency">Currency of all amounts.</param>
/// <param name="Unpriced">Items of the bill without a rate; the total leaves them out.</param>
public sealed record Offer(
    decimal Direct,
    decimal Contingency,
    decimal Overhead,
    decimal Profit,
    decimal Tax,
    decimal Total,
    string Currency,
    IReadOnlyList<string> Unpriced
)
{
    /// <summary>Section A of the bill: what the site costs whatever is built on it; beside the direct cost.</summary>
    public decimal Preliminaries { get; init; }

    /// <summary>Section L of the bill, without overhead and profit: spent on the client's instruction only.</summary>
    public decimal Provisional { get; init; }

    /// <summary>Whether every line of the bill has a price; an offer that is not complete must not go out.</summary>
    public bool Complete => Unpriced.Count == 0;

    /// <summary>Builds the price up from a bill, each amount rounded to the minor unit, half away from zero.</summary>
    /// <param name="bill">The priced bill.</param>
    /// <param name="terms">The shares.</param>
    /// <returns>The offer; it carries on which items are not priced.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside its range, or NaN.</exception>
    /// <source>Compounded percentages, provisional sums beside them and taxed with the rest; common practice, no source</source>
    public static Offer From(Bill bill, OfferTerms terms)
    {
        Within.Require(terms.ContingencyShare, 0, 1, "");
        Within.Require(terms.OverheadShare, 0, 1, "");
        Within.Require(terms.MarkupShare, 0, 9, "");
        Within.Require(terms.TaxShare, 0, 1, "");
        decimal Of(decimal sum, double share) =>
            Math.Round(sum * (decimal)share, bill.MinorDigits, MidpointRounding.AwayFromZero);
        var contingency = Of(bill.Direct, terms.ContingencyShare);
        var running = bill.Direct + bill.Preliminaries + contingency;
        var overhead = Of(running, terms.OverheadShare);
        running += overhead;
        var profit = Of(running, terms.MarkupShare);
        running += profit + bill.Provisional;
        var tax = Of(running, terms.TaxShare);
        return new(bill.Direct, contingency, overhead, profit, tax, running + tax, bill.Currency, bill.Unpriced)
        {
            Preliminaries = bill.Preliminaries,
            Provisional = bill.Provisional,
        };
    }
}
