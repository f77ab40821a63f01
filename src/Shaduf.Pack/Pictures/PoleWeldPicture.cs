using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The welds of a pole on its foot and at its splices.</summary>
internal static class PoleWeldPicture
{
    private const double OneToFactor = 5;
    private const double RowMm = 11;

    /// <summary>Composes the picture.</summary>
    /// <param name="column">The pole.</param>
    /// <param name="welds">Its welds.</param>
    public static Scene Of(LightColumn column, IReadOnlyList<WeldMark> welds)
    {
        var (foot, radius) = (column.Foot, column.Size.DiameterMm / 2);
        var view = new SceneBuilder(new(400, 300)).View(new(OneToFactor, new(0, 0), new(180, 220)));
        var topMm = foot.ThicknessMm + (3 * foot.GussetMm);
        foreach (var way in new[] { -1, 1 })
        {
            view.Polygon(
                Layer.Steel,
                [
                    new(way * radius, foot.ThicknessMm),
                    new(way * (radius + foot.GussetMm), foot.ThicknessMm),
                    new(way * radius, foot.ThicknessMm + foot.GussetMm),
                ],
                Palette.White
            );
        }

        view.Rectangle(Layer.Steel, new(-foot.SideMm / 2, 0), new(foot.SideMm / 2, foot.ThicknessMm), Palette.White);
        view.Rectangle(Layer.Steel, new(-radius, foot.ThicknessMm), new(radius, topMm), Palette.White);
        view.Line(Layer.Centre, new(0, -20), new(0, topMm + 20));
        SitePoint Tip(WeldMark weld, int side) =>
            weld.Kind == WeldKind.SquareButt ? new(side * radius, topMm - (foot.GussetMm * 0.4))
            : weld.IsAllRound ? new(side * radius, foot.ThicknessMm)
            : new(side * (radius + (foot.GussetMm * 0.6)), foot.ThicknessMm);
        foreach (var splice in welds.Where(weld => weld.Kind == WeldKind.SquareButt))
        {
            var at = Tip(splice, 1).YMm;
            view.Line(Layer.Outline, new(-radius, at), new(radius, at));
        }

        var drawn = view.Builder.Build().Bounds()!.Value;
        var rows = welds.CountBy(Side).ToDictionary(each => each.Key, _ => 0);
        foreach (var weld in welds)
        {
            var side = Side(weld);
            var tip = view.At(Tip(weld, side));
            var elbow = tip with
            {
                XMm = side < 0 ? drawn.LeftMm - 8 : drawn.RightMm + 8,
                YMm = tip.YMm - 14 - (RowMm * rows[side]++),
            };
            WeldSymbol.Draw(view.Builder, tip, elbow, weld);
        }

        var all = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(all.LeftMm, all.BottomMm + 5),
            Invariant(
                $"1:{OneToFactor:0}, millimetres; foot of {column.Pole.Mark}: each gusset is welded on both sides to pole and plate{(column.Pole.SplicesMm.Count > 0 ? "; the splice stands higher, see the parts" : "")}"
            ),
            TextStyle.Small
        );
        return view.Builder.Build("welds of a pole").Trimmed();
    }

    // Gussets on the left, the tube on the right.
    private static int Side(WeldMark weld) => weld is { Kind: WeldKind.Fillet, IsAllRound: false } ? -1 : 1;
}
