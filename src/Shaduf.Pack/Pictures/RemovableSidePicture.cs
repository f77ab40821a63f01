using Shaduf.Station;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>How the removable side is bolted under the frame: cut along the row, and from below.</summary>
internal static class RemovableSidePicture
{
    private const double ShownMm = 150;

    /// <summary>The two pictures.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="channel">Its channel.</param>
    /// <param name="welds">Its welds.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static IEnumerable<Scene> Of(
        Rack rack,
        SlideInChannel channel,
        IReadOnlyList<WeldMark> welds,
        double oneToFactor
    ) => [Cut(channel, rack, welds, oneToFactor), Below(channel, rack, oneToFactor)];

    // x runs along the row; 0 is the outside of the removable side.
    private static Scene Cut(SlideInChannel channel, Rack rack, IReadOnlyList<WeldMark> welds, double oneToFactor)
    {
        var (view, angle) = (FrameDetails.Begun(oneToFactor), rack.Sections.Angle);
        var (leg, thick, gauge) = (channel.LegMm, channel.ThicknessMm, RemovableSide.GaugeMm(angle));
        view.Rectangle(
            Layer.Steel,
            new(-ShownMm, 0),
            new(-leg - channel.ThicknessMm + channel.WebMm, channel.OuterDepthMm),
            Palette.White
        );
        view.Rectangle(Layer.Thin, new(-ShownMm, thick), new(0, channel.OuterDepthMm - thick));

        // F3 with its lips to the left.
        var (lower, upper) = SectionPictures.AngleOutlines(leg, channel.OuterDepthMm, thick, -1);
        view.Polygon(Layer.Outline, lower, Palette.Steel.Tint(0.3))
            .Polygon(Layer.Outline, upper, Palette.Steel.Tint(0.3));
        foreach (var side in new[] { -1, 1 })
        {
            SitePoint At(double x, double z) => new(-leg + (side * x), z);
            SitePoint[] lug = [At(0, 0), At(leg, 0), At(leg, -thick), At(thick, -thick), At(thick, -leg), At(0, -leg)];
            view.Hatch(side < 0 ? HatchPattern.Diagonal : HatchPattern.DiagonalBack, lug).Polygon(Layer.Outline, lug);
        }

        Bolt(view, (-leg, -gauge), 2 * thick);
        view.Leader(new(-leg + (leg * 0.8), -thick / 2), 16, 8, Invariant($"{RemovableSide.LugMark} on F3"));
        view.Leader(
            new(-leg - (leg * 0.8), -thick / 2),
            -26,
            12,
            Invariant($"{RemovableSide.LugMark} on F1{(rack.Grid.Rows > 1 ? ", F4" : "")}")
        );
        view.Leader(new(-leg + 12, -gauge), 18, 12, Invariant($"2 bolts M{RemovableSide.BoltMm:0} x 30"));
        view.Dimensions(DimensionSide.Left, [new(new(-ShownMm, -gauge), new(-ShownMm, 0))]);
        view.Dimensions(DimensionSide.Above, [new(new(-leg, channel.OuterDepthMm), new(0, channel.OuterDepthMm))]);
        FrameDetails.Symbol(view, welds, RemovableSide.WeldName, (new(-2 * leg, -thick), -10, 24));
        return FrameDetails.Titled(
            view,
            oneToFactor,
            "removable side F3, cut along the row: lugs back to back under the frame"
        );
    }

    private static void Bolt(SiteView view, (double X, double Z) at, double gripMm)
    {
        var half = RemovableSide.BoltMm / 2;
        view.Rectangle(
            Layer.Steel,
            new(at.X - (gripMm / 2) - 9, at.Z - 8),
            new(at.X - (gripMm / 2) - 2, at.Z + 8),
            Palette.White
        );
        view.Rectangle(
            Layer.Steel,
            new(at.X + (gripMm / 2) + 2, at.Z - 8),
            new(at.X + (gripMm / 2) + 10, at.Z + 8),
            Palette.White
        );
        view.Rectangle(
            Layer.Steel,
            new(at.X + (gripMm / 2) + 10, at.Z - half),
            new(at.X - (gripMm / 2) - 2 + 30, at.Z + half),
            Palette.White
        );
        foreach (var side in new[] { -1, 1 })
        {
            view.Rectangle(
                Layer.Steel,
                new(at.X + (side * gripMm / 2), at.Z - 10),
                new(at.X + (side * ((gripMm / 2) + 2)), at.Z + 10),
                Palette.White
            );
        }
    }

    // Seen from above as if the lugs lay on top: F1 runs to the left, F3 up the slope; F3's flat leg is cut back where it passes F1's.
    private static Scene Below(SlideInChannel channel, Rack rack, double oneToFactor)
    {
        var view = FrameDetails.Begun(oneToFactor);
        var (leg, lug) = (channel.LegMm, RemovableSide.LugMm(channel));
        view.Rectangle(Layer.Steel, new(-ShownMm, 0), new(0, leg), Palette.White);
        view.Rectangle(Layer.Steel, new(-leg, channel.WebMm + channel.CutBackMm), new(0, ShownMm), Palette.White);
        view.Rectangle(Layer.Hidden, new(-channel.WebMm, channel.WebMm), new(0, channel.WebMm + channel.CutBackMm));
        foreach (var side in new[] { -1, 1 })
        {
            view.Rectangle(
                Layer.Outline,
                new(-leg + (side < 0 ? -leg : 0), 0),
                new(-leg + (side < 0 ? 0 : leg), lug),
                Palette.Steel.Tint(0.3)
            );
        }

        foreach (var way in new[] { -1, 1 })
        {
            var at = (lug / 2) + (way * RemovableSide.SpacingMm / 2);
            view.Line(Layer.Centre, new(-leg - 25, at), new(-leg + 30, at));
        }

        view.Dimensions(
            DimensionSide.Right,
            [
                new(new(0, 0), new(0, lug)),
                new(new(0, (lug - RemovableSide.SpacingMm) / 2), new(0, (lug + RemovableSide.SpacingMm) / 2)),
                new(new(0, channel.WebMm), new(0, channel.WebMm + channel.CutBackMm))
                {
                    Text = Invariant($"{channel.CutBackMm:0.#} cut back"),
                },
            ]
        );
        view.Leader(new(-leg * 2.6, leg / 2), -8, 10, "F1");
        view.Leader(new(-leg / 2, ShownMm * 0.85), -16, -4, "F3");
        return FrameDetails.Titled(
            view,
            oneToFactor,
            "corner of F1 and F3 from above, grey: lugs under the frame; broken: F3 cut back"
        );
    }
}
