using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>On a long section: the borehole or the open water at its start, with the levels.</summary>
internal static class SourceMarks
{
    // Paper widths of things too slender for the scale.
    private const double BoreholeMm = 3;
    private const double WaterMm = 9;

    /// <summary>Draws the source.</summary>
    /// <param name="view">The section.</param>
    /// <param name="design">The design.</param>
    public static void Draw(SiteView view, Design design)
    {
        var groundM = design.Brief.Lift.Route[0].ElevationM;
        PaperPoint Down(double depthM) => view.At(SitePoint.Metres(0, groundM - depthM));
        switch (design.Source)
        {
            case Well well:
                Borehole(view, well, design.ShownFlowM3PerH, Down);
                break;
            case Intake intake:
                Water(view, intake, Down);
                break;
        }
    }

    private static void Borehole(SiteView view, Well well, double flowM3PerH, Func<double, PaperPoint> down)
    {
        var builder = view.Builder;
        var (top, bottom) = (down(0), down(well.BottomM));
        foreach (var side in new[] { -BoreholeMm / 2, BoreholeMm / 2 })
        {
            builder.Line(Layer.Outline, top.Moved(side, -1.5), bottom.Moved(side, 0));
        }

        builder.Line(Layer.Outline, bottom.Moved(-BoreholeMm / 2, 0), bottom.Moved(BoreholeMm / 2, 0));
        var pumpingM = well.LevelM(flowM3PerH);
        builder.Area(
            Layer.Water,
            Column(down(pumpingM), bottom, -BoreholeMm / 2, BoreholeMm / 2),
            Palette.Water.Tint(0.25)
        );
        var intake = down(well.PumpSettingM);
        builder.Line(Layer.Pipe, top.Moved(0, -1.5), intake);
        builder.Rectangle(
            Layer.Steel,
            new(intake.XMm - 1, intake.YMm - 1, intake.XMm + 1, intake.YMm + 4),
            Palette.Steel
        );
        Labels(
            view,
            [
                (well.RestDryM, Invariant($"water at rest, end of dry season: {well.RestDryM:0.0} m")),
                (pumpingM, Invariant($"water at {flowM3PerH:0.0} m3/h: {pumpingM:0.0} m")),
                (well.PumpSettingM, Invariant($"pump intake: {well.PumpSettingM:0.0} m")),
                (well.BottomM, Invariant($"bottom: {well.BottomM:0.0} m")),
            ],
            down
        );
    }

    private static void Water(SiteView view, Intake intake, Func<double, PaperPoint> down)
    {
        var (builder, survey) = (view.Builder, intake.Survey);
        PaperPoint At(double levelM) => down(survey.GroundM - levelM);
        builder.Area(
            Layer.Water,
            Column(At(survey.LowestM), At(survey.BedM), -WaterMm, -1.5),
            Palette.Water.Tint(0.25)
        );
        builder.Polyline(
            Layer.Pipe,
            [At(intake.StrainerM).Moved(-WaterMm / 2, 0), At(survey.PumpM).Moved(-1, 0), At(survey.PumpM)]
        );
        builder.Circle(Layer.Steel, At(survey.PumpM), 1, Palette.Steel);
        var name = survey.Brief.Name;
        Labels(
            view,
            [
                (survey.GroundM - survey.FloodM, Invariant($"highest flood of the {name}: {survey.FloodM:0.0} m")),
                (survey.GroundM - survey.LowestM, Invariant($"lowest water: {survey.LowestM:0.0} m")),
                (survey.GroundM - survey.BedM, Invariant($"bottom: {survey.BedM:0.0} m")),
            ],
            down
        );
    }

    private static PaperPoint[] Column(PaperPoint top, PaperPoint bottom, double leftMm, double rightMm) =>
        [top.Moved(leftMm, 0), top.Moved(rightMm, 0), bottom.Moved(rightMm, 0), bottom.Moved(leftMm, 0)];

    // Right of the source, pushed apart so that none overlaps its neighbour.
    private static void Labels(
        SiteView view,
        IReadOnlyList<(double DepthM, string Text)> labels,
        Func<double, PaperPoint> down
    )
    {
        var lastMm = double.MinValue;
        foreach (var (depthM, text) in labels)
        {
            var at = down(depthM);
            var labelMm = Math.Max(at.YMm, lastMm + 4.2);
            lastMm = labelMm;
            view.Builder.Line(Layer.Water, at.Moved(-BoreholeMm / 2, 0), at.Moved(BoreholeMm / 2, 0));
            view.Builder.Polyline(
                Layer.Dimension,
                [at.Moved(BoreholeMm / 2, 0), new(at.XMm + 6, labelMm), new(at.XMm + 8, labelMm)]
            );
            view.Builder.Text(new(at.XMm + 9, labelMm + 1), text, TextStyle.Small with { IsOpaque = true });
        }
    }
}
