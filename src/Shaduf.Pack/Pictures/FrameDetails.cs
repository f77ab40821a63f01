using Shaduf.Station;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Where the frame lies on its tubes, cut: channel, holder, or rail with its clamp.</summary>
internal static class FrameDetails
{
    private const double ShownMm = 110;
    private const double PlateMm = 5;

    /// <summary>The details of a rack.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="moduleMm">Thickness of a module [mm].</param>
    /// <param name="welds">Its welds.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static IReadOnlyList<Scene> Of(
        Rack rack,
        double moduleMm,
        IReadOnlyList<WeldMark> welds,
        double oneToFactor
    ) =>
        (rack.Sections.Channel, rack.Clamping) switch
        {
            ({ } channel, _) when rack.Grid.Rows > 1 =>
            [
                Channel(rack, (channel, moduleMm), welds, oneToFactor, isHolder: false),
                Channel(rack, (channel, moduleMm), welds, oneToFactor, isHolder: true),
                .. RemovableSidePicture.Of(rack, channel, welds, oneToFactor),
            ],
            ({ } channel, _) =>
            [
                Channel(rack, (channel, moduleMm), welds, oneToFactor, isHolder: false),
                .. RemovableSidePicture.Of(rack, channel, welds, oneToFactor),
            ],
            (_, { } clamping) => [Rail(rack, clamping, welds, oneToFactor), Clamp(rack, clamping, oneToFactor)],
            _ => [],
        };

    /// <summary>A picture with room on all sides.</summary>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    internal static SiteView Begun(double oneToFactor) =>
        new SceneBuilder(new(500, 400)).View(new(oneToFactor, new(0, 0), new(200, 200)));

    // Cut square to the row: the cross tube runs across the picture, up the slope to the right.
    private static Scene Channel(
        Rack rack,
        (SlideInChannel Channel, double ModuleMm) size,
        IReadOnlyList<WeldMark> welds,
        double oneToFactor,
        bool isHolder
    )
    {
        var (channel, tube) = (size.Channel, rack.Sections.Tube.SideMm);
        var view = Begun(oneToFactor);
        var left = isHolder ? -ShownMm : -20;
        view.Rectangle(Layer.Steel, new(left, -tube), new(ShownMm, 0), Palette.White);
        foreach (var side in isHolder ? new[] { 1, -1 } : [1])
        {
            SectionPictures.Angles(view, channel.LegMm, channel.OuterDepthMm, channel.ThicknessMm, side);
            var (edge, end) = (side * (channel.WebMm + 3), side * ShownMm);
            view.Rectangle(
                Layer.Module,
                new(Math.Min(edge, end), channel.ThicknessMm),
                new(Math.Max(edge, end), channel.ThicknessMm + size.ModuleMm),
                Palette.Water.Tint(0.18)
            );
        }

        view.Dimensions(
            DimensionSide.Right,
            [new(new(ShownMm, 0), new(ShownMm, channel.OuterDepthMm)), new(new(ShownMm, -tube), new(ShownMm, 0))]
        );
        Symbol(view, welds, isHolder ? "holder to cross tube and stubs" : "cross tube to channel", (new(0, 0), 14, 16));
        Symbol(view, welds, "lap of the channels", (new(channel.ThicknessMm, channel.LegMm), -22, -14));
        return Titled(
            view,
            oneToFactor,
            isHolder ? "middle holder on a cross tube" : "long side of the frame on a cross tube"
        );
    }

    private static Scene Rail(Rack rack, RackClamping clamping, IReadOnlyList<WeldMark> welds, double oneToFactor)
    {
        var (rail, tube) = (rack.Sections.Angle.SideMm, rack.Sections.Tube.SideMm);
        var view = Begun(oneToFactor);
        view.Rectangle(Layer.Steel, new(-ShownMm, -tube), new(ShownMm, 0), Palette.White);
        Tube(view, (-rail / 2, 0), rail, rack.Sections.Angle.WallMm);
        view.Rectangle(
            Layer.Module,
            new(-ShownMm, rail),
            new(ShownMm, rail + clamping.ModuleThicknessMm),
            Palette.Water.Tint(0.18)
        );
        view.Dimensions(
            DimensionSide.Right,
            [
                new(new(ShownMm, -tube), new(ShownMm, 0)),
                new(new(ShownMm, 0), new(ShownMm, rail)),
                new(new(ShownMm, rail), new(ShownMm, rail + clamping.ModuleThicknessMm)),
            ]
        );
        Symbol(view, welds, "rail to cross tube", (new(-rail / 2, 0), -40, -12));
        return Titled(view, oneToFactor, "rail on a cross tube, cut square to the row");
    }

    // Cut along the row between two modules.
    private static Scene Clamp(Rack rack, RackClamping clamping, double oneToFactor)
    {
        var (rail, gap, thick) = (rack.Sections.Angle.SideMm, clamping.GapMm, clamping.ModuleThicknessMm);
        var view = Begun(oneToFactor);
        view.Rectangle(Layer.Steel, new(-ShownMm, 0), new(ShownMm, rail), Palette.White);
        foreach (var side in new[] { -1, 1 })
        {
            var (edge, end) = (side * gap / 2, side * ShownMm);
            view.Rectangle(
                Layer.Module,
                new(Math.Min(edge, end), rail),
                new(Math.Max(edge, end), rail + thick),
                Palette.Water.Tint(0.18)
            );
        }

        view.Rectangle(
            Layer.Outline,
            new(-gap / 2 - 12, rail + thick),
            new((gap / 2) + 12, rail + thick + PlateMm),
            Palette.Steel.Tint(0.5)
        );
        view.Line(Layer.Outline, new(0, rail - 12), new(0, rail + thick + PlateMm + 8));
        view.Dimensions(
            DimensionSide.Above,
            [new(new(-gap / 2, rail + thick + PlateMm + 8), new(gap / 2, rail + thick + PlateMm + 8))]
        );
        view.Leader(new((gap / 2) + 8, rail + thick + (PlateMm / 2)), 14, -8, "clamp and bolt by the module's card");
        return Titled(view, oneToFactor, "clamp between two modules, cut along the rail");
    }

    private static void Tube(SiteView view, (double X, double Y) corner, double side, double wall)
    {
        view.Rectangle(
            Layer.Outline,
            new(corner.X, corner.Y),
            new(corner.X + side, corner.Y + side),
            Palette.Steel.Tint(0.35)
        );
        view.Rectangle(
            Layer.Outline,
            new(corner.X + wall, corner.Y + wall),
            new(corner.X + side - wall, corner.Y + side - wall),
            Palette.White
        );
    }

    /// <summary>The symbol of a weld, so far from its tip on the paper.</summary>
    /// <param name="view">The picture.</param>
    /// <param name="welds">All welds.</param>
    /// <param name="name">Name of the weld.</param>
    /// <param name="where">Its tip, and how far right and down of it the symbol begins.</param>
    internal static void Symbol(
        SiteView view,
        IReadOnlyList<WeldMark> welds,
        string name,
        (SitePoint Tip, double RightMm, double DownMm) where
    )
    {
        if (welds.FirstOrDefault(weld => weld.Line.Seam.Name == name) is { } weld)
        {
            var tip = view.At(where.Tip);
            WeldSymbol.Draw(view.Builder, tip, tip.Moved(where.RightMm, where.DownMm), weld);
        }
    }

    /// <summary>The picture with what it shows below it.</summary>
    /// <param name="view">The picture.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    /// <param name="says">What it shows.</param>
    internal static Scene Titled(SiteView view, double oneToFactor, string says)
    {
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(drawn.LeftMm, drawn.BottomMm + 5),
            Invariant($"1:{oneToFactor:0.##}, millimetres; {says}"),
            TextStyle.Small
        );
        return view.Builder.Build(says).Trimmed();
    }
}
