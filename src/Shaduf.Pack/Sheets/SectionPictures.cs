using Shaduf.Parts;
using Shaduf.Station;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The sections of a rack's steel at 1:1: channel with its module, holder, tubes.</summary>
internal static class SectionPictures
{
    private const double RoomMm = 26;

    /// <summary>The pictures, each as large as its section and its dimensions.</summary>
    public static IEnumerable<Scene> Of(Rack rack)
    {
        if (rack.Sections.Channel is { } channel)
        {
            yield return Channel(channel, "channel, two angles welded at the lap", isHolder: false);
            if (rack.Grid.Rows > 1)
            {
                yield return Channel(channel, "middle holder, two channels back to back", isHolder: true);
            }
        }

        foreach (
            var section in rack
                .Steel.Groups.Select(group => group.Section)
                .Distinct()
                .Where(section => section.Outline == Outline.SquareTube)
                .OrderBy(section => section.SideMm)
        )
        {
            yield return Tube(section);
        }
    }

    private static Scene Channel(SlideInChannel channel, string title, bool isHolder)
    {
        var (leg, depth, thick) = (channel.LegMm, channel.OuterDepthMm, channel.ThicknessMm);
        var leftMm = isHolder ? leg + thick : 0;
        var view = View(leftMm + leg + thick, depth, leftMm);
        foreach (var side in isHolder ? new[] { 1, -1 } : [1])
        {
            Angles(view, leg, depth, thick, side);
        }

        view.Dimensions(DimensionSide.Below, [new(new(0, 0), new(leg, 0)), new(new(0, 0), new(2 * thick, 0))]);
        view.Dimensions(
            DimensionSide.Right,
            [
                new(new(leg + thick, thick), new(leg + thick, depth - thick)),
                new(new(leg + thick, 0), new(leg + thick, depth)),
            ]
        );
        return Titled(view, Invariant($"{title}: legs {leg:0.#}, wall {thick:0.#}, lap {channel.LapMm:0.#}"));
    }

    /// <summary>The two angles of a channel, cut and hatched.</summary>
    internal static void Angles(SiteView view, double leg, double depth, double thick, int side)
    {
        var (lower, upper) = AngleOutlines(leg, depth, thick, side);
        view.Hatch(HatchPattern.Diagonal, lower).Polygon(Layer.Outline, lower);
        view.Hatch(HatchPattern.DiagonalBack, upper).Polygon(Layer.Outline, upper);
    }

    /// <summary>The two angles of a channel, cut: the lower stands outside, the upright leg of the upper lies inside it.</summary>
    /// <param name="leg">Their legs [mm].</param>
    /// <param name="depth">Depth of the channel, outside [mm].</param>
    /// <param name="thick">Their thickness [mm].</param>
    /// <param name="side">1 with the lips to the right, -1 to the left.</param>
    internal static (SitePoint[] Lower, SitePoint[] Upper) AngleOutlines(
        double leg,
        double depth,
        double thick,
        int side
    )
    {
        SitePoint At(double x, double y) => new(side * x, y);
        return (
            [At(0, 0), At(leg, 0), At(leg, thick), At(thick, thick), At(thick, leg), At(0, leg)],
            [
                At(thick, depth - leg),
                At(2 * thick, depth - leg),
                At(2 * thick, depth - thick),
                At(leg + thick, depth - thick),
                At(leg + thick, depth),
                At(thick, depth),
            ]
        );
    }

    private static Scene Tube(Section section)
    {
        var (side, wall) = (section.SideMm, section.WallMm);
        var view = View(side, side, 0);
        view.Rectangle(Layer.Outline, new(0, 0), new(side, side));
        view.Rectangle(Layer.Outline, new(wall, wall), new(side - wall, side - wall));
        view.Dimensions(DimensionSide.Below, [new(new(0, 0), new(side, 0))]);
        return Titled(view, Invariant($"{section.Name}: {side:0.#} x {side:0.#}, wall {wall:0.#}; corners round"));
    }

    private static SiteView View(double widthMm, double heightMm, double leftMm)
    {
        var builder = new SceneBuilder(new(widthMm + (2 * RoomMm), heightMm + (2 * RoomMm)));
        return builder.View(new(1, new(0, 0), new(leftMm + 4, heightMm + 8)));
    }

    private static Scene Titled(SiteView view, string title)
    {
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(new(drawn.LeftMm, drawn.BottomMm + 6), title, TextStyle.Small);
        return view.Builder.Build(title).Trimmed();
    }
}
