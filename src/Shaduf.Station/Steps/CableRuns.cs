using System.Collections.Immutable;
using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>The runs of cable from the strings to the motor.</summary>
internal static class CableRuns
{
    /// <summary>Largest drop from array to drive; common practice, no source.</summary>
    public const double DirectDropShare = 0.02;

    // Largest drop from drive to motor; common practice, no source.
    private const double MotorDropShare = 0.03;

    /// <summary>Bought beyond the measured way: slack, loops and ends; common practice, no source.</summary>
    public const double WasteShare = 0.05;

    // Of the drop from array to drive, what the strings' own leads may take when one cable goes on from their box.
    private const double LeadsDropShare = 0.005;

    // Largest conductor temperatures: cross-linked insulation in the sun, PVC or rubber on the way to the motor.
    private const double StringConductorDegC = 90;
    private const double MotorConductorDegC = 70;

    // Air under modules and along a rack in the sun, above the record; EN 50618 is used from 60 to 70 degC.
    private const double SunAboveAirK = 20;
    private const double MostSunDegC = 70;

    // Soil round the duct at its worst: dry sand; depth of the duct; the way from the drive's terminals to the ground.
    private const double DrySoilMKPerW = 3;
    private const double DuctDepthM = 0.7;
    private const double AtDriveM = 1;

    /// <summary>Sizes the runs.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="survey">Settled figures.</param>
    /// <param name="shelf">The cards.</param>
    /// <param name="layout">The strings on the racks.</param>
    /// <param name="protection">Fuses, and where the strings meet.</param>
    /// <returns>The runs in order; the motor's last.</returns>
    public static IReadOnlyList<CableRun> Of(
        Choice choice,
        Survey survey,
        CardShelf shelf,
        StringLayout layout,
        Protection protection
    )
    {
        var hasMain = protection.IsFar && choice.StringCount > 1;
        return
        [
            Strings(choice, survey, shelf, layout, (hasMain, protection.Fuse)),
            .. hasMain ? [Main(choice, survey, shelf)] : Array.Empty<CableRun>(),
            Motor(choice.Pump.Motor, choice.Lift, survey, shelf),
        ];
    }

    // From each string to where the strings meet, or to the drive when they meet there.
    private static CableRun Strings(
        Choice choice,
        Survey survey,
        CardShelf shelf,
        StringLayout layout,
        (bool Exists, FuseCard? Fuse) main
    )
    {
        var module = choice.Module.Sheet;
        var wayM = main.Exists ? 0 : survey["string-cable"];
        var longestM = layout.Strings.Max(route => route.HomeM) + wayM;
        var duty = new CableDuty(
            module.MaximumPowerA,
            Math.Max(
                ArrayCurrent.DesignA(module, 1),
                main.Fuse?.RatedA ?? ArrayCurrent.UnfusedStringCableA(module, choice.StringCount)
            ),
            choice.SeriesCount * module.MaximumPowerV,
            main.Exists ? LeadsDropShare : DirectDropShare,
            CableSupply.Dc,
            StringConductorDegC,
            [InTheSun(survey, longestM, Math.Min(9, choice.StringCount))]
        );
        return Run(
            "string-cable",
            (main.Exists, choice.StringCount) switch
            {
                (true, _) => "strings to their box",
                (_, 1) => "string to drive",
                _ => "strings to drive",
            },
            (shelf, CableUse.String),
            duty,
            2 * layout.Strings.Sum(route => route.HomeM + wayM)
        );
    }

    private static CableRun Main(Choice choice, Survey survey, CardShelf shelf)
    {
        var module = choice.Module.Sheet;
        var duty = new CableDuty(
            choice.StringCount * module.MaximumPowerA,
            ArrayCurrent.DesignA(module, choice.StringCount),
            choice.SeriesCount * module.MaximumPowerV,
            DirectDropShare - LeadsDropShare,
            CableSupply.Dc,
            StringConductorDegC,
            [InTheSun(survey, survey["string-cable"], 1)]
        );
        return Run("dc-cable", "box to drive", (shelf, CableUse.String), duty, 2 * duty.LengthM);
    }

    /// <summary>Sizes the cable from the drive to the motor, which hangs on the pump and its pipes alone.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="lift">The pipes.</param>
    /// <param name="survey">Settled figures.</param>
    /// <param name="shelf">The cards.</param>
    /// <returns>The run.</returns>
    public static CableRun Motor(MotorSheet motor, Lift lift, Survey survey, CardShelf shelf)
    {
        var supply =
            motor.Kind == MotorKind.ThreePhase
                ? CableSupply.ThreePhase(motor.PowerFactor, motor.RatedHz)
                : CableSupply.Dc;
        var duty = new CableDuty(
            motor.RatedA,
            motor.RatedA,
            motor.RatedV,
            MotorDropShare,
            supply,
            MotorConductorDegC,
            MotorWay(lift, survey)
        );
        return Run("motor-cable", "drive to motor", (shelf, CableUse.Motor), duty, duty.LengthM);
    }

    // The card's figure for air is taken in the duct and in the water too: the true ones are higher.
    private static ImmutableArray<CableStretch> MotorWay(Lift lift, Survey survey)
    {
        var airDegC = Electrics.DriveAirDegCOf(survey);
        var groundDegC = Math.Clamp(survey.Climate.AirDegC.Max(), 0, 50);
        var waterDegC = survey["water-temperature"];
        var atDriveM = Math.Min(AtDriveM, survey["motor-cable"] / 2);
        var (cableM, where) = lift.Foot.Cable;
        return
        [
            new("in the air", atDriveM, airDegC, Ampacity.AirTemperatureFactor(Insulation.Pvc70, airDegC)),
            new(
                "in a duct in dry ground",
                survey["motor-cable"] - atDriveM,
                groundDegC,
                Ampacity.GroundTemperatureFactor(Insulation.Pvc70, groundDegC)
                    * Ampacity.SoilFactor(DrySoilMKPerW)
                    * Ampacity.DepthFactor(DuctDepthM)
                    * Ampacity.GroupingFactor(1)
            ),
            .. cableM > 0
                ? [new(where, cableM, waterDegC, Ampacity.AirTemperatureFactor(Insulation.Pvc70, waterDegC))]
                : Array.Empty<CableStretch>(),
        ];
    }

    private static CableStretch InTheSun(Survey survey, double lengthM, int circuits)
    {
        var airDegC = Math.Clamp(survey["record-high"] + SunAboveAirK, -40, MostSunDegC);
        return new(
            circuits == 1 ? "in the sun" : $"in the sun, {circuits} pairs side by side",
            lengthM,
            airDegC,
            Ampacity.PvTemperatureFactor(airDegC) * Ampacity.GroupingFactor(circuits)
        );
    }

    private static CableRun Run(
        string id,
        string name,
        (CardShelf Shelf, CableUse Use) from,
        CableDuty duty,
        double netM
    )
    {
        var cards = from.Shelf.All<CableCard>().Where(card => card.Use == from.Use).ToList();
        var choice = CableSize.Smallest(
            [.. cards.Select(card => new CableOption(card.Name, card.SizeMm2, card.Conductor, card.AmpacityA))],
            duty
        );
        return new(
            id,
            name,
            cards.FirstOrDefault(card => card.Name == choice.Fit?.Option.Name),
            choice,
            duty,
            netM * (1 + WasteShare)
        );
    }
}
