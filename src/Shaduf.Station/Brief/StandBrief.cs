namespace Shaduf.Station;

/// <summary>What the tank's floor stands on.</summary>
public enum StandKind
{
    /// <summary>Legs of steel with braces, designed here.</summary>
    Steel,

    /// <summary>A wall, slab or pier of masonry or concrete.</summary>
    Masonry,

    /// <summary>A mound or terrace of earth.</summary>
    Mound,
}

/// <summary>The stand under the tank as the brief has it; a null is to choose.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="LegCount">Legs, 4 to 8.</param>
/// <param name="BayCount">Bays of diagonals one over the other.</param>
/// <param name="PlatformM">Side of the square platform [m].</param>
/// <param name="FallShare">Fall of the ground under it, the steeper direction.</param>
public sealed record StandBrief(StandKind Kind, int? LegCount, int? BayCount, double? PlatformM, double FallShare)
{
    /// <summary>A stand of which the brief says nothing.</summary>
    public static StandBrief Open { get; } = new(StandKind.Steel, null, null, null, 0);

    /// <summary>Section card of the legs.</summary>
    public string? Leg { get; init; }

    /// <summary>Section card of the diagonals, an angle.</summary>
    public string? Diagonal { get; init; }

    /// <summary>Section card of the horizontals.</summary>
    public string? Horizontal { get; init; }

    /// <summary>Section card of the row beams.</summary>
    public string? Beam { get; init; }

    /// <summary>Section card of the joists.</summary>
    public string? Joist { get; init; }

    /// <summary>Side of a square footing block [mm].</summary>
    public double? FootingSideMm { get; init; }

    /// <summary>Depth of a footing block [mm].</summary>
    public double? FootingDepthMm { get; init; }
}
