using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>One run of cable.</summary>
/// <param name="Id">Short name: 'string-cable'.</param>
/// <param name="Name">What it joins.</param>
/// <param name="Card">The cable; null when none of the cards does the duty.</param>
/// <param name="Choice">How it was chosen.</param>
/// <param name="Duty">What it must do.</param>
/// <param name="BoughtM">Length to buy, all runs [m].</param>
public sealed record CableRun(
    string Id,
    string Name,
    CableCard? Card,
    CableChoice Choice,
    CableDuty Duty,
    double BoughtM
);

/// <summary>Strings, drive, cables and what protects them.</summary>
/// <param name="ColdV">Open-circuit voltage of a string at the record low [V].</param>
/// <param name="HotV">Voltage at maximum power on the hottest day [V].</param>
/// <param name="AgedV">The same in the design year, after ten years at least [V].</param>
/// <param name="AgeYears">Age that is reckoned with [years].</param>
/// <param name="HotCellDegC">Hottest cell [°C].</param>
/// <param name="Fuse">Whether string fuses are needed.</param>
/// <param name="DeratingShare">Share of the drive's current left by height and heat.</param>
/// <param name="RecordHighDegC">Hottest air on record [°C].</param>
/// <param name="DriveAirDegC">Air that the drive is derated for: the record, or the most that drives are rated for [°C].</param>
/// <param name="Cables">The cables, from the strings to the motor.</param>
/// <param name="Layout">Where the strings' modules stand and how they are wired.</param>
/// <param name="Protection">Isolators, fuses, arresters, earth.</param>
/// <param name="Filter">The filter between drive and motor cable.</param>
/// <param name="Lowest">Lowest frequency of the drive.</param>
public sealed record Electrics(
    double ColdV,
    double HotV,
    double AgedV,
    int AgeYears,
    double HotCellDegC,
    StringFuse Fuse,
    double DeratingShare,
    double RecordHighDegC,
    double DriveAirDegC,
    IReadOnlyList<CableRun> Cables,
    StringLayout Layout,
    Protection Protection,
    MotorFilter Filter,
    LowestSpeed Lowest
)
{
    private const double MostDriveAirDegC = 50;

    /// <summary>The cable from the drive to the motor.</summary>
    public CableRun MotorCable => Cables[^1];

    /// <summary>Drop between strings and drive at their working current, as a share of their voltage; the limit where no cable fits.</summary>
    public double DirectDropShare =>
        Cables.SkipLast(1).Sum(run => run.Choice.Fit?.DropShare ?? run.Duty.LargestDropShare);

    /// <summary>Drop between drive and motor at its rated current, filter and cable, as a share of its voltage.</summary>
    public double MotorDropShare =>
        Filter.DropShare + (MotorCable.Choice.Fit?.DropShare ?? MotorCable.Duty.LargestDropShare);

    /// <summary>Sizes strings, cables and protection for the choice.</summary>
    /// <param name="sizing">The choice and the pump on its pipes.</param>
    /// <param name="ground">Brief, survey and cards.</param>
    /// <param name="rack">The racks.</param>
    /// <param name="lightning">What lightning protection asks.</param>
    /// <returns>The electrics.</returns>
    public static Electrics Of(Sizing sizing, SizingGround ground, Rack rack, LightningAsk lightning)
    {
        var (choice, survey, shelf) = (sizing.Choice, ground.Survey, ground.Shelf);
        var module = choice.Module.Sheet;
        var coldV = StringVoltage.ColdOpenCircuitV(module, choice.SeriesCount, survey["record-low"]);
        var hotDegC = ground.HotCellDegC;
        var fuse = StringFuse.For(module, choice.StringCount);
        var layout = StringLayout.Of(choice, rack);
        var motorM = MotorCableM(survey, choice.Lift);
        var protection = Protection.Of(choice, fuse, (survey["string-cable"], motorM), coldV, lightning, shelf);
        return new(
            coldV,
            StringVoltage.HotMaximumPowerV(module, choice.SeriesCount, hotDegC),
            StringVoltage.AgedHotMaximumPowerV(module, choice.SeriesCount, hotDegC, ground.AgeYears),
            ground.AgeYears,
            hotDegC,
            fuse,
            DeratingShareOf(ground.Brief, survey),
            survey["record-high"],
            DriveAirDegCOf(survey),
            CableRuns.Of(choice, survey, shelf, layout, protection),
            layout,
            protection,
            MotorFilter.Of(choice.Pump, choice.Drive, motorM, shelf),
            LowestSpeed.Of(
                sizing.Hydraulics,
                sizing.Table.HighestRatio,
                ground.Source.NeedOf(choice.Pump, sizing.Table, survey)
            )
        );
    }

    /// <summary>Cable from the drive to the motor [m].</summary>
    /// <param name="survey">Settled figures.</param>
    /// <param name="lift">The pipes; the drop cable is as long as the riser, a raft's as the hose.</param>
    /// <returns>Length [m].</returns>
    public static double MotorCableM(Survey survey, Lift lift) => survey["motor-cable"] + lift.Foot.Cable.LengthM;

    /// <summary>Share of a drive's current left at the site's height and heat.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <returns>The share.</returns>
    internal static double DeratingShareOf(Brief brief, Survey survey) =>
        DriveDerating.Share(Math.Max(0, brief.Site.ElevationM), DriveAirDegCOf(survey));

    // Beyond this no maker gives a derating: the drive must be kept cooler, and a finding says so.
    internal static double DriveAirDegCOf(Survey survey) => Math.Min(MostDriveAirDegC, survey["record-high"]);
}
