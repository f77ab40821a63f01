using System.Globalization;
using Shaduf.Station;
using static Shaduf.Pack.DesignEntries;

namespace Shaduf.Pack;

/// <summary>The offer.</summary>
public sealed record MoneyEntry(
    string Currency,
    decimal Direct,
    decimal Contingency,
    decimal Overhead,
    decimal Profit,
    decimal Tax,
    decimal Total,
    bool IsComplete,
    IReadOnlyList<string> Unpriced
)
{
    /// <summary>What the site costs whatever is built on it; beside the direct cost.</summary>
    public required decimal Preliminaries { get; init; }

    /// <summary>Section L of the bill: provisional sums.</summary>
    public required decimal Provisional { get; init; }

    /// <summary>How the client pays, in order.</summary>
    public required IReadOnlyList<PaymentEntry> Payment { get; init; }

    /// <summary>The builder's own money in the work at most; 0 when the client always pays ahead.</summary>
    public required decimal OwnMoney { get; init; }
}

/// <summary>A line of the bill.</summary>
public sealed record QuantityEntry(
    string Code,
    string Item,
    string Description,
    string Unit,
    double Quantity,
    decimal? Rate,
    decimal? Amount,
    string Origin
)
{
    /// <summary>What is needed as built, before waste and whole pieces.</summary>
    public required double NetQuantity { get; init; }

    /// <summary>Where the quantity can be traced: parts, cards, figures of this file, fields of the brief, sheets, methods.</summary>
    public required IReadOnlyList<LineOrigin> Origins { get; init; }
}

/// <summary>A payment of the client.</summary>
/// <param name="When">When it is due, in plain words.</param>
/// <param name="Earned">Its share of the price.</param>
/// <param name="Retained">What the client keeps back of it.</param>
/// <param name="Due">What is paid.</param>
public sealed record PaymentEntry(string When, decimal Earned, decimal Retained, decimal Due);

/// <summary>One item to buy.</summary>
public sealed record PurchaseEntry(
    string Supplier,
    string Item,
    string Unit,
    decimal NeededUnits,
    decimal SoldUnits,
    int PieceCount,
    decimal? Cost
);

/// <summary>One activity.</summary>
public sealed record ActivityEntry(
    string Key,
    string Name,
    string Start,
    string End,
    bool IsCritical,
    bool IsHold,
    double ManDays
);

/// <summary>The programme of the works.</summary>
public sealed record ProgrammeEntry(
    string Start,
    string Finish,
    int PeopleCount,
    IReadOnlyList<ActivityEntry> Activities
);

/// <summary>Entries of the office.</summary>
internal static class OfficeEntries
{
    public static ProgrammeEntry ProgrammeOf(StationProgramme programme) =>
        new(
            Minute(programme.Start),
            Minute(programme.Finish),
            programme.PeopleCount,
            [
                .. programme.Activities.Select(each => new ActivityEntry(
                    each.Timing.Activity.Key,
                    each.Timing.Activity.Name,
                    Minute(each.Place.Start),
                    Minute(each.Place.Finish),
                    each.Timing.IsCritical,
                    each.IsHold,
                    R(each.ManDays)
                )),
            ]
        );

    public static IReadOnlyList<PurchaseEntry> PurchasesOf(Design design) =>
        [
            .. design.Office.Purchases.Select(each => new PurchaseEntry(
                each.Supplier,
                each.Item,
                each.Unit,
                each.NeededUnits,
                each.SoldUnits,
                each.PieceCount,
                each.Cost
            )),
        ];

    public static MoneyEntry MoneyOf(Design design)
    {
        var (offer, payment) = (design.Offer, design.Office.Payment);
        return new(
            offer.Currency,
            offer.Direct,
            offer.Contingency,
            offer.Overhead,
            offer.Profit,
            offer.Tax,
            offer.Total,
            offer.Complete,
            offer.Unpriced
        )
        {
            Preliminaries = offer.Preliminaries,
            Provisional = offer.Provisional,
            Payment =
            [
                .. payment.Payments.Select(each => new PaymentEntry(
                    each.Stage.Name,
                    each.Earned,
                    each.Retained,
                    each.Due
                )),
                new("at handover: half of what was kept back", 0, 0, payment.AtCompletion),
                new("when the time for defects is over: the rest of it", 0, 0, payment.AtEnd),
            ],
            OwnMoney = Math.Max(0, -(design.Office.Cash.Lowest?.Balance ?? 0)),
        };
    }

    private static string Minute(DateTime at) => at.ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture);
}
