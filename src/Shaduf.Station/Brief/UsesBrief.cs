using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>People or pupils at one level of supply.</summary>
/// <param name="Name">What they are called in tables.</param>
/// <param name="Count">How many today.</param>
/// <param name="Level">Level of supply by name; null when not said.</param>
/// <param name="EachLPerDay">Water for each [L/d]; null to take the level's figure.</param>
/// <param name="Pattern">Draw pattern by name.</param>
/// <param name="ArePupils">Whether they are day or boarding pupils.</param>
public sealed record HeadsBrief(
    string Name,
    int Count,
    string? Level,
    double? EachLPerDay,
    string Pattern,
    bool ArePupils
);

/// <summary>A clinic.</summary>
/// <param name="Outpatients">Out-patients a day.</param>
/// <param name="OutpatientLPerDay">Water for each [L/d].</param>
/// <param name="Beds">Beds.</param>
/// <param name="BedLPerDay">Water for each [L/d].</param>
/// <param name="Pattern">Draw pattern by name.</param>
public sealed record ClinicBrief(
    int Outpatients,
    double? OutpatientLPerDay,
    int Beds,
    double? BedLPerDay,
    string Pattern
);

/// <summary>A herd.</summary>
/// <param name="Animal">Kind of animal.</param>
/// <param name="Count">How many.</param>
/// <param name="EachLPerDay">Water for each, every day of the year [L/d]; null to take the table's, by the heat.</param>
/// <param name="Pattern">Draw pattern by name.</param>
public sealed record HerdBrief(string Animal, int Count, double? EachLPerDay, string Pattern);

/// <summary>What a plot's water is worked out from.</summary>
/// <param name="Curve">The crop, its four stages known.</param>
/// <param name="PlantedIndex">Day of planting, 0 on the first of January.</param>
/// <param name="LeachingShare">Share of the water that must pass through the roots to carry salt away; null for none.</param>
public sealed record PlantingBrief(CropCurve Curve, int PlantedIndex, double? LeachingShare);

/// <summary>A watered plot.</summary>
/// <param name="Crop">What grows there.</param>
/// <param name="AreaM2">Area [m²].</param>
/// <param name="NeedMmPerDay">Water that the crop needs from irrigation, January first [mm/d]; empty when worked out from the planting.</param>
/// <param name="Planting">Crop and day of planting; null when the need is given.</param>
/// <param name="ReachingShare">Share of the water that reaches the roots; null when not said.</param>
/// <param name="Pattern">Draw pattern by name.</param>
public sealed record PlotBrief(
    string Crop,
    double AreaM2,
    IReadOnlyList<double> NeedMmPerDay,
    PlantingBrief? Planting,
    double? ReachingShare,
    string Pattern
);

/// <summary>A use that is the same every day.</summary>
/// <param name="Name">What it is.</param>
/// <param name="LPerDay">Water [L/d].</param>
/// <param name="Pattern">Draw pattern by name.</param>
public sealed record FixedUseBrief(string Name, double LPerDay, string Pattern);

/// <summary>Over what the share of the demand that is met is measured.</summary>
public enum TargetSpan
{
    /// <summary>The month that is met worst.</summary>
    WorstMonth,

    /// <summary>The whole year.</summary>
    Year,
}

/// <summary>Who drinks, and how much.</summary>
public sealed record UsesBrief(
    double? DesignYears,
    double? GrowthPerYearShare,
    double? LossShare,
    double? TargetShare,
    double? PeakDayFactor,
    IReadOnlyList<HeadsBrief> People,
    HeadsBrief? School,
    ClinicBrief? Clinic,
    IReadOnlyList<HerdBrief> Livestock,
    IReadOnlyList<PlotBrief> Plots,
    IReadOnlyList<FixedUseBrief> Fixed,
    IReadOnlyList<DrawPattern> Patterns
)
{
    /// <summary>Over what the target is measured.</summary>
    public TargetSpan TargetSpan { get; init; }

    /// <summary>A draw pattern by its name: one of the brief's own, or of the table.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The pattern.</returns>
    public DrawPattern PatternOf(string name) =>
        Patterns.FirstOrDefault(pattern => pattern.Name == name) ?? DrawPattern.Named(name);
}
