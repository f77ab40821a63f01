using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>A kind of supply, and what one head uses with it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Of">Whom it serves: people, pupils.</param>
/// <param name="LitresPerDay">Water for each [L/d].</param>
/// <param name="Source">Where the figure comes from.</param>
public sealed record ServiceLevel(string Name, string Of, double LitresPerDay, string Source)
{
    /// <summary>The levels of the table.</summary>
    public static IReadOnlyList<ServiceLevel> All { get; } =
    [
        .. Csv.Embedded(typeof(ServiceLevel).Assembly, "ServiceLevel.csv")
            .Select(row => new ServiceLevel(row["level"], row["of"], row.Number("litres_per_day"), row["source"])),
    ];

    /// <summary>Levels for people.</summary>
    public static IReadOnlyList<ServiceLevel> ForPeople { get; } = [.. All.Where(level => level.Of == "people")];

    /// <summary>Levels for pupils.</summary>
    public static IReadOnlyList<ServiceLevel> ForPupils { get; } = [.. All.Where(level => level.Of == "pupils")];
}
