namespace Shaduf.Station;

/// <summary>A place where pipes to the taps meet.</summary>
/// <param name="Name">Its name.</param>
/// <param name="LevelM">Level of the ground [m]; null when unknown.</param>
public sealed record JunctionBrief(string Name, double? LevelM);

/// <summary>A pipe to the taps, on its way from the tank.</summary>
/// <param name="From">Name of the point that feeds it; the tank's by <see cref="TapsBrief.TankName"/>.</param>
/// <param name="To">Name of the point it leads to.</param>
/// <param name="LengthM">Length [m].</param>
/// <param name="Pipe">Card; null to choose.</param>
/// <param name="Field">Where the brief names the card.</param>
public sealed record TapPipeBrief(string From, string To, double LengthM, string? Pipe, string Field);

/// <summary>One tap, or the manifold of a watered plot.</summary>
/// <param name="Name">Its name.</param>
/// <param name="ElevationM">Level of its mouth [m].</param>
/// <param name="FlowM3PerH">Flow when open [m³/h].</param>
/// <param name="NeedM">Head wanted while it is open [m]; null for the usual.</param>
/// <param name="IsManifold">Whether drip or sprinkler lines begin there, with no tap stand.</param>
public sealed record TapBrief(string Name, double ElevationM, double FlowM3PerH, double? NeedM, bool IsManifold);

/// <summary>Taps by gravity: a tree of pipes from the tank.</summary>
/// <param name="Junctions">Places where pipes meet.</param>
/// <param name="Pipes">The pipes, each after the one that feeds it.</param>
/// <param name="Taps">The taps.</param>
public sealed record TapsBrief(
    IReadOnlyList<JunctionBrief> Junctions,
    IReadOnlyList<TapPipeBrief> Pipes,
    IReadOnlyList<TapBrief> Taps
)
{
    /// <summary>Name of the tank among the points.</summary>
    public const string TankName = "tank";

    /// <summary>Name of the one junction of a brief that lists none.</summary>
    public const string JunctionName = "junction";
}
