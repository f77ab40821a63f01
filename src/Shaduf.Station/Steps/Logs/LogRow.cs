namespace Shaduf.Station;

/// <summary>A row of a log, in the program's own units; null for what it does not tell.</summary>
/// <param name="Line">Line of the file.</param>
/// <param name="Second">End of its interval: seconds from the start of year 1, by the standard time of the site.</param>
/// <param name="FlowM3PerH">Flow [m³/h].</param>
/// <param name="PowerW">Power at the drive's input [W].</param>
/// <param name="LevelM">Depth to the water in the well [m].</param>
/// <param name="TankM">Height of the water in the tank [m].</param>
/// <param name="LightWPerM2">Light on the plane [W/m²].</param>
internal readonly record struct LogRow(
    long Line,
    long Second,
    double? FlowM3PerH,
    double? PowerW,
    double? LevelM,
    double? TankM,
    double? LightWPerM2
)
{
    /// <summary>Whether it tells the same as another row.</summary>
    public bool TellsTheSame(in LogRow other) => this with { Line = 0 } == other with { Line = 0 };

    /// <summary>The end of its interval.</summary>
    public DateTime At => new(Second * TimeSpan.TicksPerSecond);
}
