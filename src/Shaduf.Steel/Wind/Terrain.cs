using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Category of the ground over which the wind comes.</summary>
/// <param name="Name">0, I, II, III or IV.</param>
/// <param name="RoughnessM">Roughness length z0 [m].</param>
/// <param name="LeastHeightM">Height below which the wind is taken as at this height, z_min [m].</param>
/// <param name="About">What the ground is like.</param>
public sealed record Terrain(string Name, double RoughnessM, double LeastHeightM, string About)
{
    /// <summary>All categories, the smoothest first.</summary>
    public static IReadOnlyList<Terrain> All { get; } =
    [
        .. Csv.Embedded(typeof(Terrain).Assembly, "Terrain.csv")
            .Select(row => new Terrain(
                row["name"],
                row.Number("roughnessM"),
                row.Number("leastHeightM"),
                row["about"]
            )),
    ];

    /// <summary>A category by name.</summary>
    /// <param name="name">0, I, II, III or IV.</param>
    /// <returns>The category.</returns>
    /// <exception cref="ArgumentException">There is no such category.</exception>
    /// <source>EN 1991-1-4:2005, table 4.1</source>
    public static Terrain Of(string name) =>
        All.SingleOrDefault(each => each.Name == name)
        ?? throw new ArgumentException(
            $"there is no terrain '{name}'; accepted: {string.Join(", ", All.Select(each => each.Name))}",
            nameof(name)
        );
}
