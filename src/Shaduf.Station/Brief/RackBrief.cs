namespace Shaduf.Station;

/// <summary>Grade of steel as the merchant states it.</summary>
public enum SteelBrief
{
    /// <summary>Nothing is known of it.</summary>
    Unmarked,

    /// <summary>S235.</summary>
    S235,

    /// <summary>S275.</summary>
    S275,

    /// <summary>S355.</summary>
    S355,
}

/// <summary>The steel under the modules.</summary>
public sealed record RackBrief(
    int? Rows,
    int? Columns,
    double? LowEdgeM,
    double? DepthClearanceMm,
    double? RowClearanceMm,
    string? Angle,
    string? Tube,
    string? Column,
    double? FootingSideMm,
    double? FootingDepthMm,
    string? Mix
)
{
    /// <summary>How it holds the modules.</summary>
    public RackType Type { get; init; }

    /// <summary>Lines of columns; null to choose.</summary>
    public int? Lines { get; init; }

    /// <summary>Cross tubes or rafters along the row; null to choose.</summary>
    public int? Tubes { get; init; }

    /// <summary>Which way the modules lie.</summary>
    public ModuleWay Way { get; init; }

    /// <summary>Card of the rails; null to choose.</summary>
    public string? Rail { get; init; }

    /// <summary>Where rails run under a module, from either end of the sides that the clamps hold [mm]; null to choose.</summary>
    public double? RailsAtMm { get; init; }

    /// <summary>Slope of the ground; level when it is left out.</summary>
    public RackGround Ground { get; init; }

    /// <summary>Solid area below the plane over the whole area below it, square to the wind; null when not said.</summary>
    public double? BlockageShare { get; init; }

    /// <summary>Grade of the steel.</summary>
    public SteelBrief Steel { get; init; }

    /// <summary>Whether walls were measured or come with a certificate.</summary>
    public bool IsWallMeasured { get; init; }

    /// <summary>Strength class of the concrete of the footings; null for what the mix gives.</summary>
    public string? ConcreteClass { get; init; }

    /// <summary>Whether somebody weighs the parts and presses samples of the concrete.</summary>
    public bool HasConcreteControl { get; init; }

    /// <summary>The crew that carries and welds it.</summary>
    public CrewBrief Crew { get; init; } = CrewBrief.Unknown;

    /// <summary>The saw and the yard.</summary>
    public WorkshopBrief Workshop { get; init; } = WorkshopBrief.Unknown;
}
