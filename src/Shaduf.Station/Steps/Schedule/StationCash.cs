using Shaduf.Money;
using Shaduf.Programme;

namespace Shaduf.Station;

/// <summary>The builder's money over the time of the works.</summary>
internal static class StationCash
{
    private const string Steel = "steel";
    private const string Goods = "goods";
    private const string LastWork = "prove";
    private const string HandOver = "hand-over";

    /// <summary>
    /// The curve: labour is paid while it works, steel and goods while they are on their way, the rest of a section with
    /// its labour, preliminaries with all labour. Of what the client pays, tax is passed on as it comes in.
    /// </summary>
    /// <param name="bill">The priced bill.</param>
    /// <param name="offer">The offer.</param>
    /// <param name="payment">How the client pays.</param>
    /// <param name="programme">The programme.</param>
    /// <param name="defectsDays">From handover until the last is paid [d].</param>
    /// <returns>The curve.</returns>
    public static CashCurve Of(
        Bill bill,
        Offer offer,
        PaymentPlan payment,
        StationProgramme programme,
        double defectsDays
    )
    {
        var network = programme.Path.Network;
        var places = programme.Levelled.Places;
        var kept = offer.Total > 0 ? 1 - (offer.Tax / offer.Total) : 1;
        decimal Net(decimal amount) => Math.Round(amount * kept, bill.MinorDigits, MidpointRounding.AwayFromZero);
        DateTime At(string key) => programme.PlaceOf(key).Finish;
        return CashCurve.Of(
            network,
            places,
            Costs(bill, programme),
            [
                .. payment.Payments.Select(each => (At(each.Stage.Event), Net(each.Due))),
                (At(HandOver), Net(payment.AtCompletion)),
                (At(HandOver).AddDays(defectsDays), Net(payment.AtEnd)),
            ]
        );
    }

    /// <summary>What each activity costs; all of them together are direct cost, preliminaries and provisional sums.</summary>
    /// <param name="bill">The priced bill.</param>
    /// <param name="programme">The programme.</param>
    /// <returns>Cost by key.</returns>
    public static IReadOnlyDictionary<string, decimal> Costs(Bill bill, StationProgramme programme)
    {
        var costs = new Dictionary<string, decimal>();
        void Add(string key, decimal amount) => costs[key] = costs.GetValueOrDefault(key) + amount;
        foreach (
            var line in bill.Lines.Where(line =>
                line.Quantity.Section is not (BillSection.General or BillSection.ProvisionalSums)
            )
        )
        {
            Add(KeyOf(line.Quantity), line.Amount ?? 0);
        }

        var works = programme.Activities.Where(each => each.ManDays > 0).ToList();
        var all = works.Sum(each => each.ManDays);
        var left = bill.Preliminaries;
        foreach (var work in works)
        {
            var share = Math.Round(
                bill.Preliminaries * (decimal)(work.ManDays / all),
                bill.MinorDigits,
                MidpointRounding.AwayFromZero
            );
            left -= share;
            Add(work.Timing.Activity.Key, share);
        }

        Add(LastWork, left + bill.Provisional);
        return costs;
    }

    private static string KeyOf(QuantityLine line) =>
        line.Item == Labour.Item ? StationProgramme.ActivityOf(Labour.IdOf(line))
        : line.Section is BillSection.Steelwork ? Steel
        : line.Section is BillSection.Ground ? "pour"
        : line.Section is BillSection.FenceAndGate ? "fence"
        : line.Section is BillSection.Commissioning ? LastWork
        : Goods;
}
