using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>
/// A quarter of a light column's plate at 1:1, to be laid on the centre lines of a board and turned over them for the other
/// three bolts, with a bar to check the print.
/// </summary>
internal static class BoltTemplate
{
    // Room of a hole round its bolt: the bolts stand straight and the template still lifts off; common practice, no source.
    private const double RoomMm = 0.5;
    private const double BarMm = 100;

    /// <summary>Composes the template.</summary>
    /// <param name="foot">The foot of the column.</param>
    public static Scene Of(PoleFoot foot)
    {
        var (half, bolt, hole) = (foot.SideMm / 2, foot.BoltSpacingMm / 2, (foot.BoltMm / 2) + RoomMm);
        var view = new SceneBuilder(new(600, 600)).View(new(1, new(0, 0), new(100, 400)));
        view.Polyline(Layer.Outline, [new(0, half), new(half, half), new(half, 0)]);
        view.Line(Layer.Centre, new(-8, 0), new(half, 0)).Line(Layer.Centre, new(0, -8), new(0, half));
        view.Circle(Layer.Outline, new(bolt, bolt), hole);
        view.Line(Layer.Centre, new(bolt - (2 * hole), bolt), new(bolt + (2 * hole), bolt));
        view.Line(Layer.Centre, new(bolt, bolt - (2 * hole)), new(bolt, bolt + (2 * hole)));
        view.Dimensions(DimensionSide.Below, [new(new(0, 0), new(bolt, bolt)), new(new(0, 0), new(half, 0))]);
        view.Dimensions(DimensionSide.Left, [new(new(0, 0), new(bolt, bolt)), new(new(0, 0), new(0, half))]);
        foreach (
            var (i, line) in new[]
            {
                Invariant(
                    $"hole of the board {2 * hole:0.0} mm for M{foot.BoltMm:0}; of the plate {PoleFoot.HoleMm(foot.BoltMm):0} mm"
                ),
                Invariant($"bolt to bolt {foot.BoltSpacingMm:0}"),
                Invariant($"diagonals {foot.BoltSpacingMm * Math.Sqrt(2):0.0}"),
            }.Index()
        )
        {
            view.Builder.Text(view.At(new(6, 0)).Moved(0, -14 + (i * 4)), line, TextStyle.Small);
        }

        Bar(view.Builder, view.At(new(0, half)).Moved(0, -6));
        return view.Builder.Build("bolt template").Trimmed();
    }

    private static void Bar(SceneBuilder builder, PaperPoint at)
    {
        var end = at.Moved(BarMm, 0);
        builder.Line(Layer.Outline, at, end);
        builder.Line(Layer.Outline, at.Moved(0, -1.5), at.Moved(0, 1.5));
        builder.Line(Layer.Outline, end.Moved(0, -1.5), end.Moved(0, 1.5));
        builder.Text(at.Moved(0, -2.4), "1:1: print at 100 %, this bar must measure 100 mm", TextStyle.Small);
    }
}
