using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>A tap stand on its apron, cut through the post and the drain.</summary>
internal static class TapStandPicture
{
    // From the kerb to the post, and from the post to the mouth of the tap.
    private const double BesideMm = 100;
    private const double MouthMm = 150;

    /// <summary>Composes the picture.</summary>
    /// <param name="stands">The tap stands.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static Scene Of(TapStands stands, double oneToFactor)
    {
        const double m = 1000;
        var (apron, slab, kerb) = (TapStands.ApronM * m, TapStands.SlabM * m, TapStands.KerbWidthM * m);
        var (high, post, inlet) = (TapStands.KerbHeightM * m, TapStands.PostM * m, TapStands.InletM * m);
        var (top, tapMm) = (slab + (TapStands.PostHeightM * m), slab + (TapStands.TapM * m));
        var view = new SceneBuilder(new(600, 400)).View(new(oneToFactor, new(0, 0), new(200, 250)));
        view.Concrete(new(0, 0), new(apron, slab));
        view.Concrete(new(0, slab), new(kerb, slab + high));
        view.Concrete(new(apron - kerb, slab), new(apron, slab + high));
        view.Concrete(new(kerb + BesideMm, slab), new(kerb + BesideMm + post, top));
        view.Line(Layer.Ground, new(-400, 0), new(0, 0)).Line(Layer.Ground, new(apron, 0), new(apron + 1000, 0));
        var tap = kerb + BesideMm + post;
        view.Polyline(
            Layer.Pipe,
            [
                new(-400, -600),
                new(tap - (post / 2), -600),
                new(tap - (post / 2), tapMm),
                new(tap + MouthMm, tapMm),
                new(tap + MouthMm, tapMm - 60),
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
            Invariant(
                $"drain {TapStands.DrainMm:0} mm, 1 in {TapStands.FallNumber:0}, to the soakaway, 10 m away:\n{stands.SoakawayText}"
            )
        );
        view.Leader(
            new(tap + MouthMm, tapMm),
            14,
            -6,
            Invariant($"tap {TapStands.TapMm:0} mm, one more beside it;\njar stand of stone under it")
        );
        view.Leader(
            new(tap - (post / 2), -300),
            12,
            9,
            Invariant($"pipe {TapStands.TapMm:0} mm up the post, stopcock\nin a box beside the apron")
        );
        Sizes(view, tap);
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(drawn.LeftMm, drawn.BottomMm + 5),
            Invariant(
                $"1:{oneToFactor:0.##}, millimetres; apron {apron:0} x {apron:0}, kerb {kerb:0} wide x {high:0} high, post {post:0} x {post:0}, {stands.Count} alike"
            ),
            TextStyle.Small
        );
        return view.Builder.Build("tap stand").Trimmed();
    }

    private static void Sizes(SiteView view, double tap)
    {
        const double m = 1000;
        var (apron, slab, kerb) = (TapStands.ApronM * m, TapStands.SlabM * m, TapStands.KerbWidthM * m);
        var (top, tapMm) = (slab + (TapStands.PostHeightM * m), slab + (TapStands.TapM * m));
        SitePoint Low(double x) => new(x, -600);
        view.DimensionChain(
            DimensionSide.Below,
            [Low(0), Low(kerb), Low(kerb + BesideMm), Low(tap), Low(tap + MouthMm), Low(apron - kerb), Low(apron)]
        );
        view.Dimensions(
            DimensionSide.Left,
            [
                new(new(-400, 0), new(-400, slab)),
                new(new(-400, slab), new(-400, tapMm)),
                new(new(-400, slab), new(-400, top)),
                new(new(-400, -600), new(-400, 0)),
            ]
        );
    }
}
