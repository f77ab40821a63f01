using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>What stands under the first cross tube, as it is cut: columns, struts or brace, foot pieces, with every level.</summary>
internal static class RackBent
{
    private static readonly PaperSize s_room = new(900, 900);

    /// <summary>Composes the picture from the solid model.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="footings">Its footings.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static Scene Of(Rack rack, Footings footings, double oneToFactor)
    {
        var bent = new RackEnd(rack, rack.TubePlacesMm[0]);
        var view = new SceneBuilder(s_room).View(new(oneToFactor, new(0, 0), new(200, 600)));
        Concrete(view, bent, footings);
        foreach (var at in bent.FeetMm)
        {
            var half = rack.Sections.Tube.SideMm / 2;
            view.Rectangle(
                Layer.Steel,
                new(at.XMm - half, at.YMm - half),
                new(at.XMm + half, at.YMm + half),
                Palette.White
            );
        }

        foreach (var part in bent.Parts.OrderBy(part => part.Mark[0] == 'T' ? 1 : 0))
        {
            RackEnd.Tube(view, part);
            view.Line(Layer.Centre, RackEnd.At(part.Shape.Start), RackEnd.At(part.Shape.End));
        }

        Caps(view, rack, bent);
        Marks(view, bent);
        Levels(view, rack, bent, footings);
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(drawn.LeftMm, drawn.BottomMm + 5),
            Invariant(
                $"1:{oneToFactor:0.##}, millimetres; under the cross tube at {rack.TubePlacesMm[0]:0}, seen from the left end; slanting figures: along the slope"
            ),
            TextStyle.Small
        );
        return view.Builder.Build("columns and struts").Trimmed();
    }

    // Thin: the sheet is about the steel.
    private static void Concrete(SiteView view, RackEnd bent, Footings footings)
    {
        var block = footings.Block;
        var columns = bent.ColumnsMm;
        IReadOnlyList<double> middles = footings.Form == FootingForm.Beam ? [(columns[0] + columns[^1]) / 2] : columns;
        foreach (var y in middles)
        {
            var ground = bent.GroundMm(y);
            view.Rectangle(
                Layer.Thin,
                new(y - (block.WidthMm / 2), ground - block.DepthMm),
                new(y + (block.WidthMm / 2), ground)
            );
        }

        foreach (var y in columns)
        {
            var ground = bent.GroundMm(y);
            view.Rectangle(
                Layer.Thin,
                new(y - (block.PlinthSideMm / 2), ground),
                new(y + (block.PlinthSideMm / 2), ground + block.PlinthHeightMm)
            );
        }

        var (left, right) = (Math.Min(-200, middles[0] - block.WidthMm), bent.PlanMm + 200);
        view.Line(Layer.Ground, new(left, bent.GroundMm(left)), new(right, bent.GroundMm(right)));
    }

    // The plates between wide columns and the cross tube.
    private static void Caps(SiteView view, Rack rack, RackEnd bent)
    {
        foreach (var cap in rack.Steel.Plates)
        {
            var (half, low) = (cap.LengthMm / 2, -rack.Sections.Tube.SideMm - cap.ThicknessMm);
            SitePoint At(double slope, double off) => RackEnd.At(rack.Setting.OnSlope(0, slope, off));
            foreach (var slope in bent.Parts.Where(part => part.Mark[0] == 'C').Select(rack.HeadSlopeMm))
            {
                view.Polygon(
                    Layer.Steel,
                    [
                        At(slope - half, low),
                        At(slope + half, low),
                        At(slope + half, low + cap.ThicknessMm),
                        At(slope - half, low + cap.ThicknessMm),
                    ],
                    Palette.Steel.Tint(0.5)
                );
                view.Leader(At(slope + half, low + (cap.ThicknessMm / 2)), 14, -18, $"{cap.Mark} {cap.Sizes}");
            }
        }
    }

    private static void Marks(SiteView view, RackEnd bent)
    {
        foreach (var part in bent.Parts)
        {
            var share = part.Mark[0] switch
            {
                'C' => 0.62,
                'T' => 0.06,
                _ => 0.5,
            };
            RackEnd.Balloon(view, part, share, isFirst: part.Shape.Start.YMm < bent.PlanMm / 2);
        }
    }

    // Left: the lowest column from its foot up; right: the highest one. Below: places across the row.
    private static void Levels(SiteView view, Rack rack, RackEnd bent, Footings footings)
    {
        var columns = bent.Parts.Where(part => part.Mark[0] == 'C').OrderBy(part => part.Shape.Start.YMm).ToList();
        var joints = bent
            .Parts.Where(part => part.Mark[0] is 'B' or 'D')
            .SelectMany(part => new[] { (part.Mark, At: part.Shape.Start), (part.Mark, At: part.Shape.End) })
            .ToList();
        Side(view, bent, (DimensionSide.Left, columns[0], Math.Min(0, columns[0].Shape.Start.YMm)), joints);
        if (columns.Count > 1)
        {
            Side(view, bent, (DimensionSide.Right, columns[^1], bent.PlanMm), joints);
        }

        var lowest = columns.Min(part =>
            Math.Min(part.Shape.Start.ZMm, bent.GroundMm(part.Shape.Start.YMm) - footings.Block.DepthMm)
        );
        view.Dimensions(
            DimensionSide.Below,
            [
                .. columns.Select(part => new Dimension(new(0, lowest), new(part.Shape.Start.YMm, lowest))),
                new(new(0, lowest), new(bent.PlanMm, lowest)),
            ]
        );
        foreach (var (i, part) in columns.Index())
        {
            view.AlignedDimension(
                new(
                    RackEnd.At(rack.Setting.OnSlope(0, 0, 0)),
                    RackEnd.At(rack.Setting.OnSlope(0, rack.HeadSlopeMm(part), 0))
                )
                {
                    Text = Invariant($"{rack.HeadSlopeMm(part):0}"),
                },
                8 + (7 * i)
            );
        }
    }

    private static void Side(
        SiteView view,
        RackEnd bent,
        (DimensionSide Side, Part Column, double AtMm) seen,
        IReadOnlyList<(string Mark, Point At)> joints
    )
    {
        var (foot, head) = (seen.Column.Shape.Start, seen.Column.Shape.End);
        var reach = seen.Column.Section.SideMm;
        var ground = bent.GroundMm(foot.YMm);
        SitePoint At(double zMm) => new(seen.AtMm, zMm);
        var held = joints.Where(joint => Math.Abs(joint.At.YMm - foot.YMm) < reach).OrderBy(joint => joint.At.ZMm);
        view.Dimensions(
            seen.Side,
            [
                new(At(foot.ZMm), At(ground)),
                .. held.Select(joint => new Dimension(At(ground), At(joint.At.ZMm))
                {
                    Text = Invariant($"{joint.Mark} {joint.At.ZMm - ground:0}"),
                }),
                new(At(ground), At(head.ZMm)),
                new(At(foot.ZMm), At(head.ZMm)),
            ]
        );
    }
}
