using Shaduf.Money;
using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>One month of the promise.</summary>
/// <param name="DemandM3PerDay">Water asked for, losses included [m³/d].</param>
/// <param name="SupplyM3PerDay">Water that the uses receive, never more than the demand [m³/d].</param>
/// <param name="PumpableM3PerDay">Water that could be pumped with a tank that is never full [m³/d].</param>
/// <param name="SunKWhPerM2Day">Sun on the modules [kWh/m²/d].</param>
/// <param name="MetShare">Share of the demand that is met.</param>
public sealed record MonthPromise(
    double DemandM3PerDay,
    double SupplyM3PerDay,
    double PumpableM3PerDay,
    double SunKWhPerM2Day,
    double MetShare
);

/// <summary>Everything that was computed for a brief.</summary>
/// <param name="File">The brief with its cards and prices.</param>
/// <param name="Survey">Settled figures and assumptions.</param>
/// <param name="Demand">Demand.</param>
/// <param name="Sky">Sun and tilt.</param>
/// <param name="Layout">Where racks, fence and pole stand, and what else is near.</param>
/// <param name="Source">Levels, yield, and where the pump draws.</param>
/// <param name="Sizing">The choice and the runners-up.</param>
/// <param name="Year">Monthly sums of the year run.</param>
/// <param name="Trace">The year run by hour.</param>
/// <param name="Months">The promise by month, January first.</param>
/// <param name="Works">Electrics, racks, footings, guard, taps.</param>
/// <param name="Findings">All findings, worst first.</param>
/// <param name="Workings">Calculations written out.</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record Design(
    StationFile File,
    Survey Survey,
    DemandYear Demand,
    Sky Sky,
    ArrayLayout Layout,
    Source Source,
    Sizing Sizing,
    YearRun Year,
    YearTrace Trace,
    IReadOnlyList<MonthPromise> Months,
    Works Works,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<WorkingSheet> Workings,
    IReadOnlyList<ChoiceNote> Notes
)
{
    /// <summary>What the office made of the takeoff.</summary>
    public required Office Office { get; init; }

    /// <summary>Quantities.</summary>
    public Takeoff Takeoff => Office.Takeoff;

    /// <summary>Quantities priced.</summary>
    public Bill Bill => Office.Bill;

    /// <summary>The offer's total.</summary>
    public Offer Offer => Office.Offer;

    /// <summary>When what is done.</summary>
    public StationProgramme Programme => Office.Programme;

    /// <summary>The station in harder years; run once the works are designed.</summary>
    public Sensitivity Sensitivity { get; init; } = null!;

    /// <summary>What was measured, held against the promise; null before the station is measured.</summary>
    public Proof? Proof { get; init; }

    /// <summary>The cost over the years, against a diesel set; reckoned once the bill is priced.</summary>
    public LifeCycle LifeCycle { get; init; } = null!;

    /// <summary>The energy of the year, from light on the ground to water in the tank; written once the year is run.</summary>
    public EnergyLedger Ledger { get; init; } = null!;

    /// <summary>The chosen tilt and direction beside others; run once the choice is made.</summary>
    public FacingTable Facing { get; init; } = null!;

    /// <summary>The brief.</summary>
    public Brief Brief => File.Brief;

    /// <summary>What was chosen.</summary>
    public Choice Choice => Sizing.Choice;

    /// <summary>The findings that keep a stand's drawing from being released; empty where it may be built.</summary>
    public IReadOnlyList<Finding> StandWithheldBy =>
        [
            .. Findings.Where(finding =>
                finding.Id.StartsWith("stand/", StringComparison.Ordinal)
                && finding.Status is FindingStatus.Stop or FindingStatus.Unchecked
            ),
        ];

    /// <summary>The worst status of all findings.</summary>
    public FindingStatus Worst => Findings.Max(finding => finding.Status);

    /// <summary>Flow at which heads and levels are shown: the largest of the year, or a trickle within the yield when nothing flows [m³/h].</summary>
    public double ShownFlowM3PerH =>
        Sizing.Table.FullFlowM3PerH > 0 ? Sizing.Table.FullFlowM3PerH : Math.Min(Source.YieldM3PerH / 10, 0.1);
}
