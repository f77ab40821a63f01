using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>Side of the thing on which dimensions stand; says what they measure.</summary>
public enum DimensionSide
{
    /// <summary>Above the thing; measures across.</summary>
    Above,

    /// <summary>Below the thing; measures across.</summary>
    Below,

    /// <summary>Left of the thing; measures upwards.</summary>
    Left,

    /// <summary>Right of the thing; measures upwards.</summary>
    Right,
}

/// <summary>The distance of two points of the site.</summary>
/// <param name="From">One point.</param>
/// <param name="To">The other point.</param>
public sealed record Dimension(SitePoint From, SitePoint To)
{
    /// <summary>Text in place of the measured distance: <c>3 × 1250</c>; null for the distance in whole millimetres.</summary>
    public string? Text { get; init; }

    internal string Says(double siteMm) => Text ?? Math.Abs(siteMm).ToString("0", CultureInfo.InvariantCulture);
}

/// <summary>Distances of dimensions on the paper.</summary>
/// <param name="FirstMm">From the outermost point measured to the first dimension line [mm], up to 60; must leave
/// room for the letters.</param>
/// <param name="LaneMm">From one dimension line to the next [mm], up to 60; must leave room for the letters.</param>
/// <param name="TextSizeMm">Size of the letters [mm], 1 to 10.</param>
/// <source>ISO 129-1: 8 to 10 mm from the outline, 7 to 8 mm apart, text above the line (from memory).</source>
public sealed record DimensionLayout(double FirstMm, double LaneMm, double TextSizeMm)
{
    /// <summary>The house's distances.</summary>
    public static DimensionLayout House { get; } = new(8, 7, Lettering.BodyMm);

    // Text stands this far above its line, clear of it with its longest tails.
    internal double RiseMm => 0.3 * TextSizeMm;

    // From the line to the top of its text, and on to the terminators of the next lane.
    private double TextTopMm => RiseMm + (TextSizeMm * Lettering.AscentRatio);

    // Room left beside a text on its line, more than half a terminator.
    internal const double SideMm = 1.5;

    internal void Check()
    {
        Within.Require(TextSizeMm, 1, 10, "mm");
        Within.Require(FirstMm, TextTopMm, 60, "mm");
        Within.Require(LaneMm, TextTopMm + 1.5, 60, "mm");
    }
}
