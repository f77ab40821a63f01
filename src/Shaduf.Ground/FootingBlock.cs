using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>Concrete poured against the sides of its pit, with a square plinth above the ground for each column on it.</summary>
/// <param name="LengthMm">Length of the pit [mm], 200 to 25000.</param>
/// <param name="WidthMm">Width of the pit [mm], 200 to 5000.</param>
/// <param name="DepthMm">Depth of the pit [mm], 200 to 3000.</param>
/// <param name="PlinthSideMm">Side of a plinth [mm], 0 to the smaller side of the pit; 0 for none.</param>
/// <param name="PlinthHeightMm">Height of a plinth above the ground [mm], 0 to 1000; 0 for none.</param>
public sealed record FootingBlock(
    double LengthMm,
    double WidthMm,
    double DepthMm,
    double PlinthSideMm,
    double PlinthHeightMm
)
{
    /// <summary>Plinths on it: columns that stand on it.</summary>
    public int PlinthCount { get; init; } = 1;

    /// <summary>Concrete in the ground [m3].</summary>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range, or NaN.</exception>
    /// <source>Volume of a prism</source>
    public double BlockM3
    {
        get
        {
            Within.Require(LengthMm, 200, 25_000, "mm");
            Within.Require(WidthMm, 200, 5000, "mm");
            Within.Require(DepthMm, 200, 3000, "mm");
            return LengthMm * WidthMm * DepthMm * 1e-9;
        }
    }

    /// <summary>Concrete above the ground [m3].</summary>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range, or NaN.</exception>
    /// <source>Volume of a prism</source>
    public double PlinthM3
    {
        get
        {
            Within.Require(PlinthSideMm, 0, Math.Min(LengthMm, WidthMm), "mm");
            Within.Require(PlinthHeightMm, 0, 1000, "mm");
            Within.RequireCount(PlinthCount, 1, 30);
            return PlinthCount * PlinthSideMm * PlinthSideMm * PlinthHeightMm * 1e-9;
        }
    }

    /// <summary>All concrete, nothing added for waste [m3].</summary>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range, or NaN.</exception>
    /// <source>Volume of a prism</source>
    public double ConcreteM3 => BlockM3 + PlinthM3;

    /// <summary>Ground dug out, as it lies [m3]: the block is poured against it, without working space.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range, or NaN.</exception>
    /// <source>Volume of a prism</source>
    public double ExcavationM3 => BlockM3;
}
