namespace Shaduf.Station;

/// <summary>Kind of open water.</summary>
public enum OpenWater
{
    /// <summary>A river or stream.</summary>
    River,

    /// <summary>A pond, lake or dam.</summary>
    Pond,

    /// <summary>A canal.</summary>
    Canal,

    /// <summary>A wide well, open at the top, with the pump beside it.</summary>
    OpenWell,
}

/// <summary>Where a surface pump stands.</summary>
public enum PumpStand
{
    /// <summary>On the bank, above the flood.</summary>
    Bank,

    /// <summary>On a raft that goes up and down with the water.</summary>
    Raft,
}

/// <summary>What open water is in one month; a null is as the whole year.</summary>
/// <param name="LevelM">Lowest level in the month, above sea [m].</param>
/// <param name="WaterDegC">Hottest water of the month [°C].</param>
/// <param name="MayTakeM3PerDay">Water that may be taken [m³/d].</param>
/// <param name="MayTakeM3PerH">Flow that may be taken [m³/h].</param>
public sealed record SurfaceMonthBrief(
    double? LevelM,
    double? WaterDegC,
    double? MayTakeM3PerDay,
    double? MayTakeM3PerH
);

/// <summary>The pipe from the water to the pump.</summary>
/// <param name="Pipe">Card of the pipe; null to choose.</param>
/// <param name="LengthM">Its length from strainer to pump [m]; null when unknown.</param>
/// <param name="HoseM">Length of the hose from a raft to the bank [m]; null when unknown.</param>
/// <param name="Fittings">Foot valve, strainer, bends; empty for the usual ones.</param>
public sealed record SuctionBrief(string? Pipe, double? LengthM, double? HoseM, IReadOnlyList<FittingBrief> Fittings);

/// <summary>A river, pond, canal or open well with a surface pump. Levels are above sea.</summary>
/// <param name="Kind">Kind of water.</param>
/// <param name="NormalM">Usual level [m].</param>
/// <param name="LowestM">Lowest level of the dry season [m]; null when unknown.</param>
/// <param name="FloodM">Highest flood that anybody remembers [m]; null when unknown.</param>
/// <param name="BedM">Bottom where the water is drawn [m]; null when unknown.</param>
/// <param name="MayTakeM3PerH">Flow that may be taken [m³/h]; null when unknown.</param>
/// <param name="MayTakeM3PerDay">Water that may be taken in a day [m³/d]; null when nothing limits it.</param>
/// <param name="Stand">Where the pump stands; null to choose.</param>
/// <param name="PumpM">Level of the pump's shaft on the bank [m]; null to choose.</param>
/// <param name="Suction">The pipe from the water to the pump.</param>
/// <param name="Months">January first; empty when no month differs.</param>
/// <param name="WaterDegC">Temperature of the water [°C]; null when unknown.</param>
public sealed record SurfaceBrief(
    OpenWater Kind,
    double NormalM,
    double? LowestM,
    double? FloodM,
    double? BedM,
    double? MayTakeM3PerH,
    double? MayTakeM3PerDay,
    PumpStand? Stand,
    double? PumpM,
    SuctionBrief Suction,
    IReadOnlyList<SurfaceMonthBrief> Months,
    double? WaterDegC
) : SourceBrief(WaterDegC)
{
    /// <summary>Water drawn from, in words.</summary>
    public string Name =>
        Kind switch
        {
            OpenWater.River => "river",
            OpenWater.Pond => "pond",
            OpenWater.Canal => "canal",
            _ => "open well",
        };

    /// <summary>Lowest level known [m].</summary>
    internal double LowestKnownM => LowestM ?? NormalM;

    /// <inheritdoc/>
    public override double LowestWaterM(double groundM) => groundM - LowestKnownM;
}
