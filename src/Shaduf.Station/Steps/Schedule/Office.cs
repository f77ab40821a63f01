using Shaduf.Money;
using Shaduf.Programme;

namespace Shaduf.Station;

/// <summary>What the office makes of a takeoff: when what is done, what it costs, how it is paid.</summary>
/// <param name="Takeoff">The takeoff, with the preliminaries that the programme asks for.</param>
/// <param name="Programme">When what is done.</param>
/// <param name="Bill">The takeoff priced.</param>
/// <param name="Offer">The price.</param>
/// <param name="Payment">How the client pays.</param>
/// <param name="Cash">The builder's money over the time of the works.</param>
/// <param name="Purchases">What is bought from whom, in the sizes that are sold.</param>
public sealed record Office(
    Takeoff Takeoff,
    StationProgramme Programme,
    Bill Bill,
    Offer Offer,
    PaymentPlan Payment,
    CashCurve Cash,
    IReadOnlyList<Purchase> Purchases
)
{
    /// <summary>The rest of the programme from the day of the report; null before work begins.</summary>
    public StationProgramme? Forecast { get; init; }

    private static bool IsBought(QuantityLine line) =>
        line.Section is not (BillSection.General or BillSection.ProvisionalSums) && line.Item != Labour.Item;

    /// <summary>Works it out.</summary>
    /// <param name="file">The brief with its prices.</param>
    /// <param name="survey">Settled figures.</param>
    /// <param name="works">The works.</param>
    /// <param name="measured">What was taken off them.</param>
    /// <returns>All of it.</returns>
    internal static Office Of(StationFile file, Survey survey, Works works, Takeoff measured)
    {
        var programme = StationProgramme.Of((file.Brief, survey), works, measured.Lines, file.Dated);
        var takeoff = measured with
        {
            Lines =
            [
                .. Preliminaries.Of(programme),
                .. measured.Lines,
                .. ProvisionalSum.Lines(file.Brief.Money.Provisional),
            ],
        };
        var bill = Bill.Price(takeoff.Lines, file.Prices);
        var offer = Offer.From(bill, new(survey["contingency"], survey["overhead"], survey["markup"], survey["tax"]));
        var stages = file.Brief.Money.Payment.Stages;
        var payment = PaymentPlan.Of(
            offer.Total,
            stages.Count > 0 ? stages : PaymentBrief.Usual,
            survey["retention"],
            bill.MinorDigits
        );
        return new(
            takeoff,
            programme,
            bill,
            offer,
            payment,
            StationCash.Of(bill, offer, payment, programme, survey["defects"]),
            Purchase.Of(bill, file.Prices, IsBought)
        )
        {
            Forecast = file.Brief.Progress is { } report
                ? StationProgramme.Of((file.Brief, survey), works, measured.Lines, file.Dated, report)
                : null,
        };
    }
}
