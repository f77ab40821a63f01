using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A loan for the client, paid back by the month.</summary>
/// <param name="Months">Number of instalments.</param>
/// <param name="InterestPerYear">Interest [1/year], a twelfth of it each month.</param>
public sealed record CreditBrief(int Months, double InterestPerYear);

/// <summary>How the price is paid, and how long it stands.</summary>
/// <param name="RetentionShare">Share kept back of each payment; null when not said.</param>
/// <param name="DefectsDays">Time after handover until the last of it is paid [d]; null when not said.</param>
/// <param name="ValidityDays">How long the offer stands [d]; null when not said.</param>
/// <param name="Stages">Stages at which the client pays; empty when not said.</param>
/// <param name="Credit">A loan; null when none is offered.</param>
public sealed record PaymentBrief(
    double? RetentionShare,
    double? DefectsDays,
    double? ValidityDays,
    IReadOnlyList<PaymentStage> Stages,
    CreditBrief? Credit
)
{
    private static IReadOnlyList<(string Word, string Activity, string Name)> Events { get; } =
    [
        ("order", "order", "with the order"),
        ("steel", "steel", "when the steel is in the yard"),
        ("goods", "goods", "when modules, pump and tank are there"),
        ("racks", "see-stand", "when the racks stand"),
        ("concrete", "pour", "when the footings are poured"),
        ("modules", "modules", "when the modules are set"),
        ("water", "prove", "when water has been measured into the tank"),
        ("handover", "hand-over", "at handover"),
    ];

    /// <summary>Stages of a client who has agreed on none.</summary>
    public static IReadOnlyList<PaymentStage> Usual { get; } =
    [Stage(0, 0.4), Stage(2, 0.3), Stage(6, 0.2), Stage(7, 0.1)];

    /// <summary>Reads the mapping <c>money.payment</c>.</summary>
    /// <param name="fields">The mapping; null when there is none.</param>
    /// <returns>What it says.</returns>
    internal static PaymentBrief Read(FieldMap? fields)
    {
        if (fields is null)
        {
            return new(null, null, null, [], null);
        }

        var payment = new PaymentBrief(
            fields.Known("retention", Measure.Share, 0, 0.2, "Kept back of each payment against defects."),
            fields.Known("defects", Measure.TimeDays, 0, 1100, "From handover until the last of it is paid."),
            fields.Known("validity", Measure.TimeDays, 1, 365, "How long the offer stands."),
            fields.Items("stages", 0, 12, "When the client pays what share of the price.", ReadStage),
            ReadCredit(fields.OptionalMap("credit", "A loan for the client, paid back by the month."))
        );
        var sum = payment.Stages.Sum(stage => stage.Share);
        if (fields.AreSound("stages") && payment.Stages.Count > 0 && Math.Abs(sum - 1) > 1e-9)
        {
            fields.Complain(
                "stages",
                Invariant($"the shares add up to {sum * 100:0.##} %"),
                "shares that add up to 100 % are accepted"
            );
        }

        fields.Done();
        return payment;
    }

    private static PaymentStage Stage(int at, double share) => new(Events[at].Name, Events[at].Activity, share);

    private static PaymentStage ReadStage(FieldMap fields)
    {
        var at = fields.OneOf("on", [.. Events.Select((each, i) => (each.Word, i))], "What has happened by then.");
        var stage = Stage(at, fields.Quantity("share", Measure.Share, 0.001, 1, "Share of the price."));
        fields.Done();
        return stage;
    }

    private static CreditBrief? ReadCredit(FieldMap? fields)
    {
        if (fields is null)
        {
            return null;
        }

        var credit = new CreditBrief(
            fields.Count("months", 1, 240, "Number of monthly instalments."),
            fields.Quantity("interest", Measure.SharePerYear, 0, 1, "Interest; a twelfth of it each month.")
        );
        fields.Done();
        return credit;
    }
}
