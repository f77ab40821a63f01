using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>What lightning protection asks of the electrics.</summary>
/// <param name="Rod">How a lightning rod stands to the array.</param>
/// <param name="ImpulseKA">Impulse current that an arrester's pole must bear when the rod is bonded [kA].</param>
public sealed record LightningAsk(LightningRod Rod, double ImpulseKA)
{
    /// <summary>What the masts ask: nothing, or type 1 where the racks must be joined to them.</summary>
    /// <param name="lightning">The station's lightning protection.</param>
    /// <returns>What is asked.</returns>
    public static LightningAsk Of(GuardLightning lightning) =>
        lightning.Protection is { } rods
            ? new(lightning.KeepsDistance ? LightningRod.Apart : LightningRod.Bonded, SurgeProtection.ImpulseKA(rods))
            : new(LightningRod.None, SurgeProtection.ImpulseKA(LightningClass.I));
}

/// <summary>Isolators, fuses, arresters and earth of the station.</summary>
/// <param name="Lightning">What lightning protection asks.</param>
/// <param name="IsFar">Whether the array stands so far from the drive that it needs its own isolator and arresters.</param>
/// <param name="IsolatorV">Voltage that an isolator must break [V].</param>
/// <param name="IsolatorA">Current that an isolator must break [A].</param>
/// <param name="Isolator">The isolator; null when no card serves.</param>
/// <param name="Fuse">The string fuse; null when none is needed or no card serves.</param>
/// <param name="DirectNeed">What the arresters of the direct side must do.</param>
/// <param name="DirectWithstandKV">Impulse voltage that the drive's input withstands [kV].</param>
/// <param name="DirectArrester">Arresters of the direct side; null when no card serves.</param>
/// <param name="MotorNeed">What the arresters at the wellhead must do; null when the motor's cable is short or its motor brushless.</param>
/// <param name="MotorArrester">Arresters at the wellhead; null when none is needed or no card serves.</param>
/// <param name="FaultA">Current that an earth conductor must bear [A].</param>
/// <param name="FrameEarth">Earth conductor from frames and rack to the drive.</param>
/// <param name="MotorEarth">Earth core of the motor's cable.</param>
/// <param name="EarthCard">Cable for the earth conductor; null when no card serves.</param>
public sealed record Protection(
    LightningAsk Lightning,
    bool IsFar,
    double IsolatorV,
    double IsolatorA,
    IsolatorCard? Isolator,
    FuseCard? Fuse,
    SurgeNeed DirectNeed,
    double DirectWithstandKV,
    ArresterCard? DirectArrester,
    SurgeNeed? MotorNeed,
    ArresterCard? MotorArrester,
    double FaultA,
    EarthSize FrameEarth,
    EarthSize MotorEarth,
    CableCard? EarthCard
)
{
    /// <summary>Heat coefficient of a separate copper conductor in PVC, A √s/mm².</summary>
    public const double ApartCoefficient = 143;

    /// <summary>Heat coefficient of a copper core in a PVC cable, A √s/mm².</summary>
    public const double CoreCoefficient = 115;

    /// <summary>Time of the fault: nothing clears it, and the adiabatic law ends here [s].</summary>
    public const double FaultS = 5;

    /// <summary>A drive lets twice its largest motor current flow before it stops itself; common practice, no source.</summary>
    private const double DriveFaultFactor = 2;

    /// <summary>Places on the direct side that need isolator and arresters: the drive, and the array when it stands far.</summary>
    public int PlaceCount => IsFar ? 2 : 1;

    /// <summary>Where strings are brought together: 'at the array' or 'at the drive'.</summary>
    public string BoxPlace => IsFar ? "at the array" : "at the drive";

    /// <summary>Chooses the protection.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="fuse">Whether the strings need fuses.</param>
    /// <param name="ways">Ways from array to drive and from drive to motor [m].</param>
    /// <param name="coldV">Open-circuit voltage of a string at the record low [V].</param>
    /// <param name="lightning">What lightning protection asks.</param>
    /// <param name="shelf">The cards.</param>
    /// <returns>The protection.</returns>
    public static Protection Of(
        Choice choice,
        StringFuse fuse,
        (double ArrayM, double MotorM) ways,
        double coldV,
        LightningAsk lightning,
        CardShelf shelf
    )
    {
        var (module, drive, motor) = (choice.Module.Sheet, choice.Drive, choice.Pump.Motor);
        var breakA = ArrayCurrent.DesignA(module, choice.StringCount);
        var openV = choice.SeriesCount * module.OpenCircuitV;
        var withstandKV = WithstandKV(drive);
        var direct = SurgeProtection.Direct(coldV, openV, withstandKV, lightning.ImpulseKA, lightning.Rod, ways.ArrayM);
        var atWell = MotorNeedOf(motor, lightning, ways.MotorM);
        var faultA = Math.Max(breakA, DriveFaultFactor * drive.Sheet.LargestMotorA);
        var run = lightning.Rod == LightningRod.Bonded ? EarthRun.FrameWithRod : EarthRun.Frame;
        var frame = EquipmentEarth.For(faultA, FaultS, ApartCoefficient, run);
        return new(
            lightning,
            ways.ArrayM > SurgeProtection.LongCableM,
            coldV,
            breakA,
            shelf
                .All<IsolatorCard>()
                .Where(card => card.LargestV >= coldV && card.LargestA >= breakA)
                .OrderBy(card => card.LargestA)
                .ThenBy(card => card.LargestV)
                .FirstOrDefault(),
            fuse.Needed ? FuseOf(fuse, coldV, shelf) : null,
            direct,
            withstandKV,
            Smallest(shelf, ArresterSide.Direct, direct),
            atWell,
            atWell is { } need ? Smallest(shelf, ArresterSide.Motor, need) : null,
            faultA,
            frame,
            EquipmentEarth.For(faultA, FaultS, CoreCoefficient, EarthRun.InCable),
            shelf
                .All<CableCard>()
                .Where(card => card.Use == CableUse.Earth && card.SizeMm2 >= frame.SizeMm2)
                .MinBy(card => card.SizeMm2)
        );
    }

    // The largest rating between the limits: it ages least.
    private static FuseCard? FuseOf(StringFuse fuse, double coldV, CardShelf shelf) =>
        shelf
            .All<FuseCard>()
            .Where(card => card.RatedA > fuse.AboveA && card.RatedA <= fuse.AtMostA && card.LargestV >= coldV)
            .MaxBy(card => card.RatedA);

    private static double WithstandKV(DriveCard drive) =>
        drive.Limits.WithstandKV
        ?? ImpulseWithstand.WithstandKV(Math.Min(1500, drive.Sheet.LargestDcV), OvervoltageCategory.CategoryTwo);

    private static SurgeNeed? MotorNeedOf(MotorSheet motor, LightningAsk lightning, double cableM) =>
        motor.Kind == MotorKind.ThreePhase && cableM > SurgeProtection.LongCableM
            ? SurgeProtection.Motor(
                motor.RatedV,
                ImpulseWithstand.WithstandKV(motor.RatedV / Math.Sqrt(3), OvervoltageCategory.CategoryThree),
                lightning.ImpulseKA,
                lightning.Rod,
                cableM
            )
            : null;

    private static ArresterCard? Smallest(CardShelf shelf, ArresterSide side, SurgeNeed need) =>
        shelf
            .All<ArresterCard>()
            .Where(card => card.Serves(side, need))
            .OrderByDescending(card => card.TypeNumber)
            .ThenBy(card => card.ContinuousV)
            .FirstOrDefault();
}
