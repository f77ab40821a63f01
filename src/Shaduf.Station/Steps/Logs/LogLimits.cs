using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>What figures can be at a station: beyond them an instrument or its unit is wrong, not the station.</summary>
/// <param name="MostFlowM3PerH">Twice the pump's full flow here [m³/h].</param>
/// <param name="MostPowerW">A third more than the modules' rated power [W].</param>
/// <param name="DeepestM">Bottom of the well, and a metre for the reading [m].</param>
/// <param name="HighestTankM">A fifth more than the tank is high [m].</param>
internal sealed record LogLimits(double MostFlowM3PerH, double MostPowerW, double DeepestM, double HighestTankM)
{
    // Bright clouds beside the sun; judgement.
    private const double MostLightWPerM2 = 1600;

    /// <summary>The limits of a design; judgement, no source.</summary>
    public static LogLimits Of(Design design) =>
        new(
            2 * Math.Max(design.Sizing.Table.FullFlowM3PerH, 0.1),
            1.33 * design.Choice.ModuleCount * design.Choice.Module.Sheet.RatedW,
            design.Source is Well well ? well.BottomM + 1 : 500,
            1.2 * design.Choice.Tank.HeightM
        );

    /// <summary>Lowest and highest of a column, with their unit.</summary>
    public (double Lowest, double Highest, string Unit) Of(LogColumn column) =>
        column switch
        {
            LogColumn.Flow => (-0.05 * MostFlowM3PerH, MostFlowM3PerH, "m3/h"),
            LogColumn.Power => (-0.05 * MostPowerW, MostPowerW, "W"),
            LogColumn.Level => (-20, DeepestM, "m"),
            LogColumn.Tank => (-0.2, HighestTankM, "m"),
            _ => (-20, MostLightWPerM2, "W/m2"),
        };
}
