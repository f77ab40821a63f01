using Shaduf.Sun;

namespace Shaduf.Station;

/// <summary>What was chosen to lift the water.</summary>
/// <param name="Pump">Pump and motor.</param>
/// <param name="Drive">Drive.</param>
/// <param name="Module">Module.</param>
/// <param name="SeriesCount">Modules in a string.</param>
/// <param name="StringCount">Strings.</param>
/// <param name="Grid">How the modules stand.</param>
/// <param name="Facing">Tilt and azimuth of the modules.</param>
/// <param name="Lift">Pipes.</param>
/// <param name="Tank">Tank.</param>
/// <param name="TankCount">Tanks alike.</param>
public sealed record Choice(
    PumpCard Pump,
    DriveCard Drive,
    ModuleCard Module,
    int SeriesCount,
    int StringCount,
    RackGrid Grid,
    PlaneFacing Facing,
    Lift Lift,
    TankCard Tank,
    int TankCount
)
{
    /// <summary>All modules.</summary>
    public int ModuleCount => SeriesCount * StringCount;

    /// <summary>Power of the array at 1000 W/m² and 25 °C [W].</summary>
    public double ArrayW => ModuleCount * Module.Sheet.RatedW;

    /// <summary>Volume of the tanks to the overflow [m³].</summary>
    public double TankM3 => TankCount * Tank.VolumeM3;

    /// <summary>Useful volume of the tanks [m³].</summary>
    public double UsefulM3 => TankCount * Tank.UsefulM3;
}
