using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>A tap stand on its apron, cut through the post and the drain.</summary>
internal static class TapStandPicture
{
    private const double TapMm = 600;

    /// <summary>Composes the picture.</summary>
    /// <param name="stands">The tap stands.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static Scene Of(TapStands stands, double oneToFactor)
    {
        const double m = 1000;
        var (apron, slab, kerb) = (TapStands.ApronM * m, TapStands.SlabM * m, TapStands.KerbWidthM * m);
        var (high, post, inlet) = (TapStands.KerbHeightM * m, TapStands.PostM * m, TapStands.InletM * m);
        var view = new SceneBuilder(new(600, 400)).View(new(oneToFactor, new(0, 0), new(200, 250)));
        view.Concrete(new(0, 0), new(apron, slab));
        view.Concrete(new(0, slab), new(kerb, slab + high));
        view.Concrete(new(apron - kerb, slab), new(apron, slab + high));
        view.Concrete(new(kerb + 100, slab), new(kerb + 100 + post, TapStands.PostHeightM * m));
        view.Line(Layer.Ground, new(-400, 0), new(0, 0)).Line(Layer.Ground, new(apron, 0), new(apron + 1000, 0));
        var tap = kerb + 100 + post;
        view.Polyline(
            Layer.Pipe,
            [
                new(-400, -600),
                new(tap - (post / 2), -600),
                new(tap - (post / 2), slab + TapMm),
                new(tap + 150, slab + TapMm),
                new(tap + 150, slab + TapMm - 60),
            ]
        );
        view.Polyline(
            Layer.Water,
            [new(apron - kerb - 60, slab), new(apron - kerb - 60, -inlet + 60), new(apron + 1000, -inlet)]
        );
        view.Leader(
            new(apron + 800, -inlet + 12),
            6,
            9,
            Invariant($"drain to the soakaway, 10 m away:\n{stands.SoakawayText}")
        );
        view.Leader(new(tap + 150, slab + TapMm), 14, -6, "tap; jar stand of stone under it");
        view.Dimensions(
            DimensionSide.Below,
            [new(new(0, -600), new(apron, -600)), new(new(kerb + 100, -600), new(tap, -600))]
        );
        view.Dimensions(
            DimensionSide.Left,
            [
                new(new(-400, 0), new(-400, slab)),
                new(new(-400, slab), new(-400, slab + TapMm)),
                new(new(-400, 0), new(-400, TapStands.PostHeightM * m)),
                new(new(-400, -600), new(-400, 0)),
            ]
        );
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(drawn.LeftMm, drawn.BottomMm + 5),
            Invariant(
                $"1:{oneToFactor:0.##}, millimetres; apron {apron:0} square, kerb {kerb:0} x {high:0}, {stands.Count} alike"
            ),
            TextStyle.Small
        );
        return view.Builder.Build("tap stand").Trimmed();
    }
}
