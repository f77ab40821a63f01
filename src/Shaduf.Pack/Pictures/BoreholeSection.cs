using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The borehole with its levels, depths to scale, widths not: casing, seal, screens, water, pump, probes.</summary>
public static class BoreholeSection
{
    private const double TopMm = 14;
    private const double BottomMm = 8;
    private const double CentreMm = 66;
    private const double HalfBoreMm = 7;
    private const double HalfHoleMm = 10;
    private const double LabelMm = 96;
    private const double LabelPitchMm = 4.6;

    private sealed record Mark(double DepthM, string Text, Layer Layer);

    /// <summary>Composes the picture.</summary>
    /// <param name="design">The design.</param>
    /// <param name="well">The borehole.</param>
    /// <param name="size">Size of the picture, at least 150 x 110 mm.</param>
    /// <returns>The picture.</returns>
    public static Scene Of(Design design, Well well, PaperSize size)
    {
        var flowM3PerH = design.ShownFlowM3PerH;
        var depthM = Math.Max(well.BottomM, well.PumpSettingM);
        var scale = BookScale.FittingOneToFactor(depthM * 1000, size.HeightMm - TopMm - BottomMm);
        var placing = new SiteToPaper(scale, SitePoint.Metres(0, 0), new(CentreMm, TopMm));
        var view = new SceneBuilder(size).View(placing);
        Axis(view, depthM);
        Head(view, design.Survey["casing"]);
        Hole(view, well);
        Water(view, well, well.LevelM(flowM3PerH));
        Equipment(view, well);
        Labels(view, Marks(well, flowM3PerH), size.HeightMm - BottomMm);
        Spans(view, well, well.LevelM(flowM3PerH));
        view.Builder.Text(
            new(0, size.HeightMm - 1),
            Invariant($"depths 1:{scale:0}, widths not to scale"),
            TextStyle.Small
        );
        return view.Builder.Build("borehole");
    }

    private static PaperPoint Down(SiteView view, double depthM, double sideMm = 0) =>
        view.At(SitePoint.Metres(0, -depthM)).Moved(sideMm, 0);

    private static void Axis(SiteView view, double depthM)
    {
        var step = depthM switch
        {
            > 250 => 50,
            > 100 => 20,
            > 40 => 10,
            > 20 => 5,
            > 8 => 2,
            _ => 1,
        };
        view.Builder.Text(new(0, TopMm - 5), "depth, m", TextStyle.Small with { Weight = FontWeight.Bold });
        view.Builder.Line(Layer.Thin, Down(view, 0, 10 - CentreMm), Down(view, depthM, 10 - CentreMm));
        for (var at = 0; at <= depthM; at += step)
        {
            var tick = Down(view, at, 10 - CentreMm);
            view.Builder.Line(Layer.Thin, tick.Moved(-1.2, 0), tick);
            view.Builder.Text(
                tick.Moved(-2, 0),
                Invariant($"{at}"),
                TextStyle.Small with
                {
                    Horizontal = HorizontalAnchor.Right,
                    Vertical = VerticalAnchor.Middle,
                }
            );
        }
    }

    private static void Head(SiteView view, double casingMm)
    {
        var builder = view.Builder;
        var ground = Down(view, 0);
        foreach (var side in new[] { -1, 1 })
        {
            var (near, far) = (ground.Moved(side * HalfHoleMm, 0), ground.Moved(side * 26, 0));
            builder.Line(Layer.Ground, near, far);
            builder.Hatch(HatchPattern.Diagonal, [near, far, far.Moved(0, 2), near.Moved(0, 2)], spacingMm: 1.6);
            builder.Rectangle(
                Layer.Concrete,
                PaperBox.Round([ground.Moved(side * HalfBoreMm, -1.6), ground.Moved(side * 20, 0)]),
                Palette.Steel.Tint(0.8)
            );
        }

        builder.Rectangle(
            Layer.Steel,
            new(ground.XMm - HalfBoreMm - 1.5, ground.YMm - 5.2, ground.XMm + HalfBoreMm + 1.5, ground.YMm - 4),
            Palette.Steel
        );
        builder.Polyline(Layer.Pipe, [ground.Moved(0, -4), ground.Moved(0, -8), ground.Moved(24, -8)]);
        builder.Text(
            new(LabelMm, ground.YMm - 7),
            Invariant($"cover with riser hanger; casing {casingMm:0} mm, 0.3 m above the slab"),
            TextStyle.Small
        );
    }

    private static void Hole(SiteView view, Well well)
    {
        var builder = view.Builder;
        var (source, depthM) = (well.Survey.Brief, well.BottomM);
        foreach (var side in new[] { -1, 1 })
        {
            builder.Line(Layer.Thin, Down(view, 0, side * HalfHoleMm), Down(view, depthM, side * HalfHoleMm));
            if (source.SealM is { } sealM)
            {
                builder.Hatch(
                    HatchPattern.Cross,
                    [
                        Down(view, 0, side * HalfBoreMm),
                        Down(view, 0, side * HalfHoleMm),
                        Down(view, sealM, side * HalfHoleMm),
                        Down(view, sealM, side * HalfBoreMm),
                    ],
                    spacingMm: 1
                );
            }

            var at = 0.0;
            foreach (var screen in source.Screens)
            {
                Casing(view, side, at, screen.TopM);
                Screen(view, side, screen);
                at = screen.BottomM;
            }

            Casing(view, side, at, depthM);
        }

        builder.Line(Layer.Outline, Down(view, depthM, -HalfBoreMm), Down(view, depthM, HalfBoreMm));
    }

    private static void Casing(SiteView view, int side, double fromM, double toM) =>
        view.Builder.Line(
            Layer.Outline,
            Down(view, fromM, side * HalfBoreMm).Moved(0, fromM > 0 ? 0 : -4),
            Down(view, toM, side * HalfBoreMm)
        );

    private static void Screen(SiteView view, int side, ScreenBrief screen)
    {
        var (top, bottom) = (Down(view, screen.TopM, side * HalfBoreMm), Down(view, screen.BottomM, side * HalfBoreMm));
        for (var yMm = top.YMm; yMm <= bottom.YMm; yMm += 1.2)
        {
            view.Builder.Line(Layer.Outline, new(top.XMm - 0.9, yMm), new(top.XMm + 0.9, yMm));
        }
    }

    private static void Water(SiteView view, Well well, double levelM)
    {
        var builder = view.Builder;
        var pumpingM = Math.Min(levelM, well.BottomM);
        PaperPoint[] Column(double fromM, double toM) =>
            [
                Down(view, fromM, -HalfBoreMm),
                Down(view, fromM, HalfBoreMm),
                Down(view, toM, HalfBoreMm),
                Down(view, toM, -HalfBoreMm),
            ];
        builder.Area(Layer.Water, Column(pumpingM, well.BottomM), Palette.Water.Tint(0.35));
        if (well.RestDryM < pumpingM)
        {
            builder.Area(Layer.Water, Column(well.RestDryM, pumpingM), Palette.Water.Tint(0.12));
        }

        foreach (var side in new[] { -1, 1 })
        {
            // Water round the borehole leans towards it while the pump runs.
            builder.Polyline(
                Layer.Water,
                [
                    Down(view, well.RestDryM, side * 26),
                    Down(view, well.RestDryM + (0.25 * (pumpingM - well.RestDryM)), side * 16),
                    Down(view, pumpingM, side * HalfHoleMm),
                ]
            );
        }
    }

    private static void Equipment(SiteView view, Well well)
    {
        var builder = view.Builder;
        var intake = Down(view, well.PumpSettingM);
        builder.Line(Layer.Pipe, Down(view, 0).Moved(0, -4), intake.Moved(0, -4));
        builder.Rectangle(
            Layer.Steel,
            new(intake.XMm - 3, intake.YMm - 5, intake.XMm + 3, intake.YMm),
            Palette.Steel.Tint(0.3)
        );
        builder.Rectangle(
            Layer.Steel,
            new(intake.XMm - 2.6, intake.YMm + 0.6, intake.XMm + 2.6, intake.YMm + 5),
            Palette.Steel
        );
        foreach (var depthM in new[] { well.StopProbeM, well.StartProbeM })
        {
            builder.Circle(Layer.Electric, Down(view, depthM, 5), 0.7, Palette.Sun);
        }
    }

    private static List<Mark> Marks(Well well, double flowM3PerH)
    {
        var source = well.Survey.Brief;
        var marks = new List<Mark>
        {
            new(well.Survey.RestLevelM, "water at rest on the day of the test", Layer.Water),
            new(well.RestDryM, "water at rest, end of the dry season", Layer.Water),
            new(well.LevelM(flowM3PerH), Invariant($"water while {flowM3PerH:0.0} m3/h are pumped then"), Layer.Water),
            new(well.StartProbeM, "probe: the pump may start", Layer.Electric),
            new(well.StopProbeM, "probe: the pump stops", Layer.Electric),
            new(well.PumpSettingM, "intake of the pump; the motor hangs below", Layer.Steel),
            new(well.BottomM, "bottom", Layer.Outline),
        };
        if (source.SealM is { } sealM)
        {
            marks.Add(new(sealM, "end of the grouted seal", Layer.Outline));
        }

        foreach (var screen in source.Screens)
        {
            marks.Add(new(screen.TopM, Invariant($"screen from here to {screen.BottomM:0.#} m"), Layer.Outline));
        }

        return [.. marks.OrderBy(mark => mark.DepthM)];
    }

    // From the top down no nearer than the pitch, then pushed up from the lower edge.
    private static void Labels(SiteView view, List<Mark> marks, double lowestMm)
    {
        var rows = new double[marks.Count];
        for (var i = 0; i < marks.Count; i++)
        {
            var wishedMm = Down(view, marks[i].DepthM).YMm;
            rows[i] = i == 0 ? wishedMm : Math.Max(wishedMm, rows[i - 1] + LabelPitchMm);
        }

        for (var i = marks.Count - 1; i >= 0; i--)
        {
            rows[i] = Math.Min(rows[i], i == marks.Count - 1 ? lowestMm : rows[i + 1] - LabelPitchMm);
        }

        for (var i = 0; i < marks.Count; i++)
        {
            var at = Down(view, marks[i].DepthM);
            view.Builder.Line(marks[i].Layer, at.Moved(-HalfBoreMm, 0), at.Moved(HalfBoreMm, 0));
            view.Builder.Polyline(
                Layer.Dimension,
                [
                    at.Moved(HalfBoreMm, 0),
                    at.Moved(HalfHoleMm + 8, 0),
                    new(LabelMm - 4, rows[i]),
                    new(LabelMm - 1, rows[i]),
                ]
            );
            view.Builder.Text(
                new(LabelMm, rows[i]),
                Invariant($"{marks[i].DepthM:0.0} m  {marks[i].Text}"),
                TextStyle.Small with
                {
                    Vertical = VerticalAnchor.Middle,
                }
            );
        }
    }

    private static void Spans(SiteView view, Well well, double pumpingM)
    {
        double[] depths = [0, well.RestDryM, pumpingM, well.PumpSettingM, well.BottomM];
        var leftM = -HalfHoleMm * view.Placing.OneToFactor / 1000;
        var spans = depths
            .Zip(depths.Skip(1))
            .Where(pair => pair.Second - pair.First > 0.05)
            .Select(pair => new Dimension(SitePoint.Metres(leftM, -pair.First), SitePoint.Metres(leftM, -pair.Second))
            {
                Text = Invariant($"{pair.Second - pair.First:0.0} m"),
            });
        view.Dimensions(DimensionSide.Left, [.. spans], new(8, 7, Lettering.SmallMm));
    }
}
