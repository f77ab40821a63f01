using Shaduf.Power;
using Shaduf.Working;
using static System.FormattableString;

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

/// <summary>Strings, drive and cables.</summary>
/// <param name="ColdV">Open-circuit voltage of a string at the record low [V].</param>
/// <param name="HotV">Voltage at maximum power on the hottest day [V].</param>
/// <param name="AgedV">The same after ten years [V].</param>
/// <param name="HotCellDegC">Hottest cell [°C].</param>
/// <param name="Fuse">Whether string fuses are needed.</param>
/// <param name="DeratingShare">Share of the drive's current left by height and heat.</param>
/// <param name="RecordHighDegC">Hottest air on record [°C].</param>
/// <param name="DriveAirDegC">Air that the drive is derated for: the record, or the most that drives are rated for [°C].</param>
/// <param name="Cables">The cables.</param>
public sealed record Electrics(
    double ColdV,
    double HotV,
    double AgedV,
    double HotCellDegC,
    StringFuse Fuse,
    double DeratingShare,
    double RecordHighDegC,
    double DriveAirDegC,
    IReadOnlyList<CableRun> Cables
)
{
    /// <summary>Largest drop from array to drive; common practice, no source.</summary>
    public const double StringDropShare = 0.02;

    private const double MostDriveAirDegC = 50;

    // Largest conductor temperatures: cross-linked insulation in the sun, PVC or rubber in the well.
    private const double StringConductorDegC = 90;
    private const double MotorConductorDegC = 70;

    // Bought beyond the measured way: slack, loops and ends; common practice, no source.
    internal const double CableWasteShare = 0.05;

    /// <summary>Sizes strings and cables for the choice.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="shelf">The cards.</param>
    /// <returns>The electrics.</returns>
    public static Electrics Of(Choice choice, Brief brief, Survey survey, CardShelf shelf)
    {
        var module = choice.Module.Sheet;
        var hotDegC = survey["record-high"] + Sizing.CellAboveAirK;
        return new(
            StringVoltage.ColdOpenCircuitV(module, choice.SeriesCount, survey["record-low"]),
            StringVoltage.HotMaximumPowerV(module, choice.SeriesCount, hotDegC),
            StringVoltage.AgedHotMaximumPowerV(module, choice.SeriesCount, hotDegC),
            hotDegC,
            StringFuse.For(module, choice.StringCount),
            DeratingShareOf(brief, survey),
            survey["record-high"],
            DriveAirDegCOf(survey),
            [StringCable(choice, survey, shelf), MotorCable(choice, survey, shelf)]
        );
    }

    /// <summary>Share of a drive's current left at the site's height and heat.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <returns>The share.</returns>
    internal static double DeratingShareOf(Brief brief, Survey survey) =>
        DriveDerating.Share(Math.Max(0, brief.Site.ElevationM), DriveAirDegCOf(survey));

    // Beyond this no maker gives a derating: the drive must be kept cooler, and a finding says so.
    private static double DriveAirDegCOf(Survey survey) => Math.Min(MostDriveAirDegC, survey["record-high"]);

    private static CableRun StringCable(Choice choice, Survey survey, CardShelf shelf)
    {
        var module = choice.Module.Sheet;
        var duty = new CableDuty(
            Math.Max(module.MaximumPowerA, ArrayCurrent.UnfusedStringCableA(module, choice.StringCount)),
            survey["string-cable"],
            choice.SeriesCount * module.MaximumPowerV,
            StringDropShare,
            CableSupply.Dc,
            new(Math.Min(70, survey["record-high"] + 20), StringConductorDegC)
        );
        return Run(
            "string-cable",
            "strings to drive",
            shelf,
            CableUse.String,
            duty,
            2 * choice.StringCount * duty.LengthM
        );
    }

    private static CableRun MotorCable(Choice choice, Survey survey, CardShelf shelf)
    {
        var motor = choice.Pump.Motor;
        var supply =
            motor.Kind == MotorKind.ThreePhase
                ? CableSupply.ThreePhase(motor.PowerFactor, motor.RatedHz)
                : CableSupply.Dc;
        var duty = new CableDuty(
            motor.RatedA,
            survey["motor-cable"] + choice.Lift.RiserM,
            motor.RatedV,
            1 - Hydraulics.MotorCableKeptShare,
            supply,
            new(Math.Min(50, survey["record-high"]), MotorConductorDegC)
        );
        return Run("motor-cable", "drive to motor", shelf, CableUse.Motor, duty, duty.LengthM);
    }

    // A string cable's card speaks of air of 60 degC (EN 50618), a motor cable's of 30 degC (IEC 60364-5-52).
    private static double AirShare(CableUse use, double airDegC) =>
        use == CableUse.String
            ? Ampacity.PvTemperatureFactor(airDegC)
            : Ampacity.AirTemperatureFactor(Insulation.Pvc70, airDegC);

    private static CableRun Run(string id, string name, CardShelf shelf, CableUse use, CableDuty duty, double netM)
    {
        var cards = shelf.All<CableCard>().Where(card => card.Use == use).ToList();
        var air = AirShare(use, duty.Warmth.SurroundingsDegC);
        var choice = CableSize.Smallest(
            [.. cards.Select(card => new CableOption(card.Name, card.SizeMm2, card.Conductor, card.AmpacityA * air))],
            duty
        );
        return new(
            id,
            name,
            cards.FirstOrDefault(card => card.Name == choice.Fit?.Option.Name),
            choice,
            duty,
            netM * (1 + CableWasteShare)
        );
    }
}
