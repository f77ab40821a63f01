using Shaduf.Power;
using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>One product's data sheet.</summary>
/// <param name="Name">The name that briefs and price books use.</param>
/// <param name="About">What it is, for people.</param>
/// <param name="IsPlanningData">A generic card for planning: to be replaced by the supplier's data sheet before ordering.</param>
public abstract record Card(string Name, string About, bool IsPlanningData);

/// <summary>Size and mass of a photovoltaic module.</summary>
/// <param name="LengthMm">Long side of the frame [mm].</param>
/// <param name="WidthMm">Short side of the frame [mm].</param>
/// <param name="ThicknessMm">Depth of the frame [mm].</param>
/// <param name="EdgeToCellMm">From the frame's outer edge to the nearest cell [mm].</param>
/// <param name="MassKg">Mass [kg].</param>
public sealed record ModuleBody(double LengthMm, double WidthMm, double ThicknessMm, double EdgeToCellMm, double MassKg)
{
    /// <summary>Area within the frame's outer edges [m²].</summary>
    public double AreaM2 => LengthMm * WidthMm / 1e6;
}

/// <summary>A photovoltaic module of crystalline silicon.</summary>
public sealed record ModuleCard(string Name, string About, bool IsPlanningData, ModuleSheet Sheet, ModuleBody Body)
    : Card(Name, About, IsPlanningData)
{
    /// <summary>Kind of cell; null when the card does not say.</summary>
    public CellKind? Cells { get; init; }

    /// <summary>What its maker allows for each way of holding it.</summary>
    public HoldingSheet Holding { get; init; } = HoldingSheet.Unknown;
}

/// <summary>Kind of a silicon cell.</summary>
public enum CellKind
{
    /// <summary>P-type: loses one to two per cent in its first days in the sun.</summary>
    PType,

    /// <summary>N-type: loses little in its first days in the sun.</summary>
    NType,
}

/// <summary>How a pump is built, and what that asks of its place.</summary>
public abstract record PumpBody;

/// <summary>A pump that hangs in the water with its motor.</summary>
/// <param name="DiameterMm">Largest diameter with the cable guard [mm].</param>
/// <param name="MotorMm">Diameter of the motor [mm].</param>
/// <param name="SubmergenceM">Least water above the intake [m].</param>
/// <param name="LowestCoolingMPerS">Least speed of water past the motor [m/s].</param>
public sealed record SubmersibleBody(double DiameterMm, double MotorMm, double SubmergenceM, double LowestCoolingMPerS)
    : PumpBody;

/// <summary>A pump that stands beside the water with a dry motor and draws.</summary>
/// <param name="Npsh">Net positive suction head that it requires.</param>
public sealed record SurfaceBody(NpshCurve Npsh) : PumpBody;

/// <summary>A pump with its motor.</summary>
/// <param name="Name">The name that briefs and price books use.</param>
/// <param name="About">What it is, for people.</param>
/// <param name="IsPlanningData">A generic card for planning.</param>
/// <param name="Curve">The curve fitted to its data sheet.</param>
/// <param name="Motor">Its motor.</param>
/// <param name="MassKg">Mass of pump and motor [kg].</param>
/// <param name="Body">How it is built.</param>
public sealed record PumpCard(
    string Name,
    string About,
    bool IsPlanningData,
    IPumpCurve Curve,
    MotorSheet Motor,
    double MassKg,
    PumpBody Body
) : Card(Name, About, IsPlanningData)
{
    /// <summary>Its body in the water; asked of submersible pumps only.</summary>
    internal SubmersibleBody InWater =>
        Body as SubmersibleBody ?? throw new InvalidOperationException($"'{Name}' is no submersible pump");

    /// <summary>Its body beside the water; asked of surface pumps only.</summary>
    internal SurfaceBody BesideWater =>
        Body as SurfaceBody ?? throw new InvalidOperationException($"'{Name}' is no surface pump");

    /// <summary>What a helical rotor needs besides; null for a centrifugal pump.</summary>
    public RotorCard? Rotor { get; init; }
}

/// <summary>What a pump with a helical rotor needs besides.</summary>
/// <param name="ReliefHeadM">Opening head of its relief valve [m].</param>
/// <param name="BreakawayShare">Torque that breaks the rotor loose, over the rated torque.</param>
public sealed record RotorCard(double ReliefHeadM, double BreakawayShare);

/// <summary>What a drive's card says of its output's cable and of surges; null where it is silent.</summary>
/// <param name="BareM">Longest motor cable without an output filter [m].</param>
/// <param name="SlopeM">Longest motor cable with a slope filter [m].</param>
/// <param name="RiseUs">Rise time of the output's pulses [µs].</param>
/// <param name="WithstandKV">Impulse voltage that the input withstands [kV].</param>
public sealed record DriveLimits(double? BareM, double? SlopeM, double? RiseUs, double? WithstandKV);

/// <summary>A drive that runs a pump's motor from the array.</summary>
/// <param name="Name">The name that briefs and price books use.</param>
/// <param name="About">What it is, for people.</param>
/// <param name="IsPlanningData">A generic card for planning.</param>
/// <param name="Sheet">Its data sheet.</param>
/// <param name="LowestMotorV">Lowest rated voltage of a motor that it may drive [V].</param>
/// <param name="HighestMotorV">Highest rated voltage of a motor that it may drive [V].</param>
/// <param name="Limits">What its card says of cable and surges.</param>
public sealed record DriveCard(
    string Name,
    string About,
    bool IsPlanningData,
    DriveSheet Sheet,
    double LowestMotorV,
    double HighestMotorV,
    DriveLimits Limits
) : Card(Name, About, IsPlanningData)
{
    /// <summary>Whether it may drive a motor: kind, rated voltage, and current with what derating leaves.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="deratingShare">Share of its current left at the site's height and heat, 0 to 1.</param>
    /// <returns>True when it may.</returns>
    public bool Fits(MotorSheet motor, double deratingShare) =>
        Sheet.Drives == motor.Kind
        && motor.RatedV >= LowestMotorV
        && motor.RatedV <= HighestMotorV
        && Sheet.LargestMotorA * deratingShare >= motor.RatedA;
}

/// <summary>Where a pipe may be used.</summary>
public enum PipeUse
{
    /// <summary>Hangs in the borehole and carries the pump.</summary>
    Riser,

    /// <summary>From open water to a surface pump, with less than the air's pressure inside.</summary>
    Suction,

    /// <summary>From the wellhead to the tank.</summary>
    Main,

    /// <summary>From the tank to the taps.</summary>
    Tap,
}

/// <summary>A pipe.</summary>
/// <param name="Name">The name that briefs and price books use.</param>
/// <param name="About">What it is, for people.</param>
/// <param name="IsPlanningData">A generic card for planning.</param>
/// <param name="Uses">Where it may be used.</param>
/// <param name="OuterMm">Outside diameter [mm].</param>
/// <param name="BoreMm">Smallest inside diameter [mm].</param>
/// <param name="RoughnessMm">Roughness for design [mm].</param>
/// <param name="PressureBar">Nominal pressure at 20 °C [bar].</param>
/// <param name="ModulusGPa">Short-term modulus of the wall [GPa].</param>
/// <param name="LosesStrengthWhenWarm">Whether its pressure class falls above 20 °C (polyethylene, PVC).</param>
/// <param name="MassKgPerM">Mass [kg/m].</param>
public sealed record PipeCard(
    string Name,
    string About,
    bool IsPlanningData,
    IReadOnlyList<PipeUse> Uses,
    double OuterMm,
    double BoreMm,
    double RoughnessMm,
    double PressureBar,
    double ModulusGPa,
    bool LosesStrengthWhenWarm,
    double MassKgPerM
) : Card(Name, About, IsPlanningData);

/// <summary>Where a cable may be used.</summary>
public enum CableUse
{
    /// <summary>Single core in the sun, module to drive.</summary>
    String,

    /// <summary>Drive to motor, in the ground and down the borehole.</summary>
    Motor,

    /// <summary>Earth conductor, a single green and yellow core.</summary>
    Earth,
}

/// <summary>A cable.</summary>
/// <param name="Name">The name that briefs and price books use.</param>
/// <param name="About">What it is, for people.</param>
/// <param name="IsPlanningData">A generic card for planning.</param>
/// <param name="Use">Where it may be used.</param>
/// <param name="SizeMm2">Cross-section of a core [mm²].</param>
/// <param name="Conductor">Kind of conductor.</param>
/// <param name="AmpacityA">Current it carries as laid [A]: string cable in air of 60 °C, motor cable in air of 30 °C.</param>
public sealed record CableCard(
    string Name,
    string About,
    bool IsPlanningData,
    CableUse Use,
    double SizeMm2,
    Conductor Conductor,
    double AmpacityA
) : Card(Name, About, IsPlanningData);

/// <summary>Shape of a steel section.</summary>
public enum SectionShape
{
    /// <summary>Equal angle.</summary>
    EqualAngle,

    /// <summary>Square hollow section, cold formed.</summary>
    SquareHollow,

    /// <summary>Circular hollow section.</summary>
    CircularHollow,
}

/// <summary>A steel section as sold.</summary>
/// <param name="Name">The name that briefs and price books use.</param>
/// <param name="About">What it is, for people.</param>
/// <param name="IsPlanningData">A generic card for planning.</param>
/// <param name="Shape">Its shape.</param>
/// <param name="SizeMm">Leg, side or diameter [mm].</param>
/// <param name="WallMm">Thickness [mm].</param>
/// <param name="RootRadiusMm">Root radius of an angle [mm]; 0 for tubes.</param>
/// <param name="BarM">Length of the bar as sold [m].</param>
public sealed record SectionCard(
    string Name,
    string About,
    bool IsPlanningData,
    SectionShape Shape,
    double SizeMm,
    double WallMm,
    double RootRadiusMm,
    double BarM
) : Card(Name, About, IsPlanningData);

/// <summary>A water tank.</summary>
/// <param name="Name">The name that briefs and price books use.</param>
/// <param name="About">What it is, for people.</param>
/// <param name="IsPlanningData">A generic card for planning.</param>
/// <param name="VolumeM3">Volume to the overflow [m³].</param>
/// <param name="UsefulM3">Volume between outlet and float [m³].</param>
/// <param name="DiameterM">Diameter, or the side of a square tank [m].</param>
/// <param name="HeightM">Height of the shell [m].</param>
public sealed record TankCard(
    string Name,
    string About,
    bool IsPlanningData,
    double VolumeM3,
    double UsefulM3,
    double DiameterM,
    double HeightM
) : Card(Name, About, IsPlanningData)
{
    /// <summary>Shape of its plan.</summary>
    public TankShape Shape { get; init; }

    /// <summary>Mass of the empty tank [kg]; null where the sheet does not say.</summary>
    public double? MassKg { get; init; }

    /// <summary>Side of a panel of a square tank [m].</summary>
    public double PanelM { get; init; } = UsualPanelM;

    /// <summary>Side of a pressed panel [m]; common practice, no source.</summary>
    public const double UsualPanelM = 1.22;
}

/// <summary>Shape of a tank's plan.</summary>
public enum TankShape
{
    /// <summary>Round.</summary>
    Round,

    /// <summary>Square, put together from panels.</summary>
    Square,
}
