using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Level lines across a section, with their figures at the left.</summary>
internal static class LevelGrid
{
    /// <summary>Draws the lines.</summary>
    /// <param name="view">The section.</param>
    /// <param name="bottomM">Lowest level [m].</param>
    /// <param name="topM">Highest level [m].</param>
    /// <param name="rightMm">Where the lines end on the paper [mm].</param>
    public static void Draw(SiteView view, double bottomM, double topM, double rightMm)
    {
        var step = (topM - bottomM) switch
        {
            > 160 => 20,
            > 80 => 10,
            > 30 => 5,
            _ => 2,
        };
        for (var level = Math.Ceiling(bottomM / step) * step; level <= topM; level += step)
        {
            var at = view.At(SitePoint.Metres(0, level));
            view.Builder.Line(Layer.Grid, at.Moved(-8, 0), new(rightMm, at.YMm));
            view.Builder.Text(
                at.Moved(-9, 1),
                Invariant($"{level:0}"),
                TextStyle.Small with
                {
                    Horizontal = HorizontalAnchor.Right,
                }
            );
        }
    }
}
