using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>One step of the energy's way.</summary>
/// <param name="Id">Stable name.</param>
/// <param name="Says">What the energy has come through.</param>
/// <param name="Stage">light, electricity or water.</param>
/// <param name="KWhPerYear">What is left of it after the step.</param>
/// <param name="KeptShare">Of what the step before left.</param>
/// <param name="MonthsKWh">What is left by month, January first.</param>
public sealed record LedgerEntry(
    string Id,
    string Says,
    string Stage,
    double KWhPerYear,
    double KeptShare,
    IReadOnlyList<double> MonthsKWh
);

/// <summary>The chosen array in a plane.</summary>
/// <param name="TiltDeg">Tilt.</param>
/// <param name="AzimuthDeg">Direction.</param>
/// <param name="WorstMonth">Month with the least light for the demand.</param>
/// <param name="LightShare">Light for the demand there, over the chosen plane's.</param>
/// <param name="WorstMetShare">Demand met in the worst month.</param>
public sealed record FacingEntry(
    double TiltDeg,
    double AzimuthDeg,
    string WorstMonth,
    double LightShare,
    double WorstMetShare
);

/// <summary>The chosen plane beside others.</summary>
/// <param name="Chosen">The chosen one.</param>
/// <param name="RuleOfThumb">Tilted by the latitude towards the equator; shown, not used.</param>
/// <param name="Tilts">Other tilts in the chosen direction.</param>
public sealed record FacingsEntry(FacingEntry Chosen, FacingEntry RuleOfThumb, IReadOnlyList<FacingEntry> Tilts);

/// <summary>Builds the entries on light and energy.</summary>
internal static class EnergyEntries
{
    public static IReadOnlyList<LedgerEntry> LedgerOf(EnergyLedger ledger) =>
        [
            .. ledger.Rows.Select(
                (row, i) =>
                    new LedgerEntry(
                        row.Id,
                        row.Says,
                        row.Stage.ToString().ToLowerInvariant(),
                        DesignEntries.R(row.KWh),
                        Math.Round(ledger.KeptShare(i), 6, MidpointRounding.AwayFromZero),
                        [.. row.KWhByMonth.Select(DesignEntries.R)]
                    )
            ),
        ];

    public static FacingsEntry FacingsOf(FacingTable facing) =>
        new(Of(facing.Chosen), Of(facing.ByThumb), [.. facing.Rows.Select(Of)]);

    private static FacingEntry Of(FacingRow row) =>
        new(
            row.Facing.TiltDeg,
            row.Facing.AzimuthDeg,
            YearCalendarNames.Months[row.WorstMonth],
            DesignEntries.R(row.LightShare),
            DesignEntries.R(row.MetShare)
        );
}
