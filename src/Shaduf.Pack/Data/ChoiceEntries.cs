using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>The cheapest way to a share of the demand; the cost is that of what differs.</summary>
public sealed record FrontEntry(
    double MetShare,
    double Cost,
    string Pump,
    string Module,
    int ModuleCount,
    double TiltDeg,
    string Tank,
    int TankCount,
    string Main,
    string Riser
);

/// <summary>One way of lifting the water over the years; amounts of today, the cumulative cost at its worth today.</summary>
public sealed record WayEntry(
    decimal Capital,
    decimal CarePerYear,
    decimal FuelPerYear,
    decimal Total,
    decimal PerM3,
    IReadOnlyList<decimal> Cumulative
);

/// <summary>The generator set of the comparison.</summary>
public sealed record SetEntry(
    double RatedKW,
    double LoadShare,
    double FlowM3PerH,
    double HoursPerYear,
    double FuelLPerYear
);

/// <summary>Solar against diesel.</summary>
public sealed record LifeCycleEntry(
    string Currency,
    int Years,
    WayEntry Solar,
    WayEntry? Diesel,
    SetEntry? Set,
    int? BreakEvenYear,
    int? BreakEvenYearFuelHalf,
    int? BreakEvenYearFuelDearer,
    IReadOnlyList<string> Unpriced
);

/// <summary>The station in a harder year.</summary>
public sealed record SensitivityEntry(string Id, string Name, string Says, double WorstMetShare, double YearMetShare);

/// <summary>Builds the entries of <c>design.json</c> on the choice.</summary>
internal static class ChoiceEntries
{
    public static IReadOnlyList<FrontEntry> FrontOf(Design design) =>
        [
            .. ChoiceCharts
                .ShownFront(design)
                .Select(point => new FrontEntry(
                    R(point.Share),
                    R(point.Cost),
                    point.Choice.Pump.Name,
                    point.Choice.Module.Name,
                    point.Choice.ModuleCount,
                    point.Choice.Facing.TiltDeg,
                    point.Choice.Tank.Name,
                    point.Choice.TankCount,
                    point.Choice.Lift.Main.Name,
                    point.Choice.Lift.Foot.Card.Name
                )),
        ];

    public static LifeCycleEntry LifeCycleOf(LifeCycle life) =>
        new(
            life.Currency,
            life.YearCount,
            WayOf(life.Solar),
            life.Diesel is { } diesel ? WayOf(diesel) : null,
            life.Set is { } set
                ? new(set.RatedKW, R(set.LoadShare), R(set.FlowM3PerH), R(set.HoursPerYear), R(set.FuelLPerYear))
                : null,
            life.BreakEvenYear,
            life.BreakEvenByFuel.Half,
            life.BreakEvenByFuel.Dearer,
            life.Unpriced
        );

    public static IReadOnlyList<SensitivityEntry> SensitivityOf(Sensitivity sensitivity) =>
        [
            .. sensitivity.Years.Select(year => new SensitivityEntry(
                year.Id,
                year.Name,
                year.Says,
                R(year.WorstShare),
                R(year.YearShare)
            )),
        ];

    private static WayEntry WayOf(WayOfLifting way) =>
        new(
            Money(way.Plan.Capital),
            Money(way.Plan.CarePerYear),
            Money(way.Plan.FuelPerYear),
            Money(way.Total),
            Math.Round(way.PerM3, 4, MidpointRounding.AwayFromZero),
            [.. way.Cumulative.Select(Money)]
        );

    private static decimal Money(decimal amount) => Math.Round(amount, 2, MidpointRounding.AwayFromZero);

    private static double R(double value) => Math.Round(value, 4, MidpointRounding.AwayFromZero);
}
