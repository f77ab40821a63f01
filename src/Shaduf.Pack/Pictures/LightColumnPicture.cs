using Shaduf.Ground;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The foot of a light column: from the side on its block, and its plate from above.</summary>
public static class LightColumnPicture
{
    /// <summary>Composes the picture.</summary>
    /// <param name="column">The column.</param>
    /// <param name="block">The block under it.</param>
    /// <param name="size">Size of the picture, at least 120 x 60 mm.</param>
    /// <param name="oneToFactor">n of the scale 1:n; left out, a scale of the book's that fits.</param>
    /// <returns>The picture, to scale.</returns>
    public static Scene Of(LightColumn column, FootingBlock block, PaperSize size, double? oneToFactor = null)
    {
        var foot = column.Foot;
        var pole = column.Steel.Parts[0];
        var heightMm = (2 * foot.GussetMm) + foot.ThicknessMm + PoleFoot.GroutMm + block.DepthMm;
        var scale =
            oneToFactor
            ?? Math.Max(
                BookScale.FittingOneToFactor(heightMm, size.HeightMm - 40),
                BookScale.FittingOneToFactor(block.LengthMm + foot.SideMm, size.WidthMm - 110)
            );
        var builder = new SceneBuilder(size);
        var topMm = 14 + (((2 * foot.GussetMm) + foot.ThicknessMm + 30) / scale);
        Side(
            builder.View(new(scale, new(0, 0), new(36 + (block.LengthMm / 2 / scale), topMm))),
            column,
            block,
            pole.Section.SideMm
        );
        Plate(
            builder.View(new(scale, new(0, 0), new(size.WidthMm - 8 - (foot.SideMm / 2 / scale), topMm + 4))),
            foot,
            pole.Section.SideMm
        );
        var drawn = builder.Build().Bounds()!.Value;
        builder.Text(
            new(drawn.LeftMm, drawn.BottomMm + 5),
            Invariant(
                $"1:{scale:0.##}, millimetres; {pole.Mark} {pole.Section.Name}, {pole.LengthMm:0} long; left from the side, right the plate from above"
            ),
            TextStyle.Small
        );
        return builder.Build("foot of a light column");
    }

    private static void Side(SiteView view, LightColumn column, FootingBlock block, double poleMm)
    {
        var (foot, plates) = (column.Foot, column.Steel.Plates);
        var (half, bolt, radius) = (foot.SideMm / 2, foot.BoltSpacingMm / 2, poleMm / 2);
        var plateTop = foot.ThicknessMm;
        var (side, bottom) = (block.LengthMm / 2, -PoleFoot.GroutMm - block.DepthMm);
        view.Concrete(new(-side, -PoleFoot.GroutMm), new(side, bottom));
        view.Line(Layer.Ground, new(-side - 200, -PoleFoot.GroutMm), new(-side, -PoleFoot.GroutMm));
        view.Line(Layer.Ground, new(side, -PoleFoot.GroutMm), new(side + 200, -PoleFoot.GroutMm));
        foreach (var way in new[] { -1, 1 })
        {
            view.Polygon(
                Layer.Steel,
                [
                    new(way * radius, plateTop),
                    new(way * (radius + foot.GussetMm), plateTop),
                    new(way * radius, plateTop + foot.GussetMm),
                ],
                Palette.White
            );
        }

        view.Rectangle(Layer.Steel, new(-half, 0), new(half, plateTop), Palette.White);
        foreach (var way in new[] { -1, 1 })
        {
            AnchorBolt.Draw(
                view,
                way * bolt,
                foot.BoltMm,
                (-PoleFoot.GroutMm - foot.BoltInConcreteMm, foot.BoltLengthMm),
                (0, plateTop)
            );
        }

        view.Rectangle(Layer.Steel, new(-radius, plateTop), new(radius, plateTop + (2 * foot.GussetMm)), Palette.White);
        view.Leader(new(half, plateTop / 2), 8, -8, Invariant($"{plates[0].Mark} plate {plates[0].Sizes}"));
        view.Leader(
            new(bolt, -foot.BoltInConcreteMm * 0.5),
            view.Placing.LengthMm(side - bolt) + 6,
            4,
            Invariant(
                $"4 bolts M{foot.BoltMm:0}, {foot.BoltLengthMm:0} long, each with\nthree nuts and washers: one at the\nend, one under, one on the plate"
            )
        );
        view.Leader(
            new(radius + (foot.GussetMm * 0.3), plateTop + (foot.GussetMm * 0.5)),
            14,
            -12,
            Invariant($"{plates[1].Count} {plates[1].Mark} gussets {plates[1].Sizes}")
        );
        Heights(view, foot, -side - 200, bottom);
        view.Dimensions(DimensionSide.Below, [new(new(-side, bottom), new(side, bottom))]);
    }

    private static void Heights(SiteView view, PoleFoot foot, double left, double bottom)
    {
        var (ground, plateTop) = (-PoleFoot.GroutMm, foot.ThicknessMm);
        view.Dimensions(
            DimensionSide.Left,
            [
                new(new(left, bottom), new(left, ground)),
                new(new(left, ground - foot.BoltInConcreteMm), new(left, ground)),
                new(new(left, ground), new(left, 0)) { Text = Invariant($"{PoleFoot.GroutMm:0} grout") },
                new(new(left, plateTop), new(left, ground - foot.BoltInConcreteMm + foot.BoltLengthMm))
                {
                    Text = Invariant(
                        $"{foot.BoltLengthMm - foot.BoltInConcreteMm - PoleFoot.GroutMm - plateTop:0} above"
                    ),
                },
            ]
        );
    }

    private static void Plate(SiteView view, PoleFoot foot, double poleMm)
    {
        var (half, bolt, radius) = (foot.SideMm / 2, foot.BoltSpacingMm / 2, poleMm / 2);
        view.Rectangle(Layer.Steel, new(-half, -half), new(half, half), Palette.White);
        view.Circle(Layer.Steel, new(0, 0), radius);
        foreach (var (x, y) in new[] { (-1, -1), (-1, 1), (1, -1), (1, 1) })
        {
            view.Circle(Layer.Steel, new(x * bolt, y * bolt), PoleFoot.HoleMm(foot.BoltMm) / 2);
        }

        var thick = foot.GussetThicknessMm / 2;
        foreach (var side in new[] { -1, 1 })
        {
            view.Rectangle(Layer.Steel, new(side * radius, -thick), new(side * (radius + foot.GussetMm), thick));
            view.Rectangle(Layer.Steel, new(-thick, side * radius), new(thick, side * (radius + foot.GussetMm)));
        }

        view.Dimensions(
            DimensionSide.Below,
            [new(new(-half, -half), new(half, -half)), new(new(-bolt, -half), new(bolt, -half))]
        );
    }
}
