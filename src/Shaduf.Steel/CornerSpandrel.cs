namespace Shaduf.Steel;

/// <summary>
/// The piece between a square corner and the quarter circle that rounds it, for radius 1; areas grow with the square
/// of the radius, second moments with its fourth power.
/// </summary>
/// <source>EN 10219-2:2006, annex B (A_g, h_g, I_gg); the product of inertia by integration</source>
internal static class CornerSpandrel
{
    /// <summary>Area at radius 1.</summary>
    public const double AreaFactor = 1 - Math.PI / 4;

    /// <summary>Distance of the centroid from the square corner, along each side, at radius 1.</summary>
    public const double CentroidFactor = (10 - 3 * Math.PI) / (12 - 3 * Math.PI);

    /// <summary>Second moment about its own centroid, parallel to a side, at radius 1.</summary>
    public const double InertiaFactor = 1.0 / 3 - Math.PI / 16 - 1 / (3 * (12 - 3 * Math.PI));

    /// <summary>Product of inertia about its own centroid at radius 1, sides along two positive or two negative axes.</summary>
    public const double ProductFactor = 19.0 / 24 - Math.PI / 4 - AreaFactor * CentroidFactor * CentroidFactor;
}
