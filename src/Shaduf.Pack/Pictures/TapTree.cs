using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The taps by gravity: way from the tank across, level up, with pipes, grade lines and the heads left.</summary>
public static class TapTree
{
    private const double LeftMm = 20;
    private const double TopMm = 9;
    private const double BottomMm = 16;
    private const double LabelsMm = 64;
    private const double LabelMm = 4.4;
    private const double TankMm = 6;
    private const double BalloonsMm = 6;

    /// <summary>Height that the picture needs for its labels [mm].</summary>
    /// <param name="design">The design.</param>
    /// <returns>Height [mm], 75 to 230.</returns>
    public static double HeightMm(Design design) =>
        Math.Clamp((design.Works.Taps.Heads.Count(Speaks) * LabelMm) + TopMm + BottomMm, 85, 230);

    /// <summary>Composes the picture.</summary>
    /// <param name="design">The design; with taps.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture; the heights are stretched, and both scales are written on it.</returns>
    public static Scene Of(Design design, PaperSize size)
    {
        var network = design.Works.Taps;
        var wayM = Ways(network);
        var bottomM = Math.Min(network.SourceM, network.Heads.Min(head => head.Point.LevelM)) - 1;
        var view = ViewOf(size, wayM.Max(), (bottomM, network.FullM));
        LevelGrid.Draw(view, bottomM, network.FullM, size.WidthMm - LabelsMm - 4);
        Lines(view, network, wayM);
        Tank(view, network);
        Points(view, network, wayM);
        Labels(view, network, wayM);
        view.Builder.Text(
            new(LeftMm - 14, size.HeightMm - 8),
            "full line: pipe with its number, where there is room; dashed: grade line, all taps open; square: break-pressure tank",
            TextStyle.Small
        );
        view.Builder.Text(new(LeftMm - 14, size.HeightMm - 3), Scales(view), TextStyle.Small);
        return view.Builder.Build("taps by gravity");
    }

    private static SiteView ViewOf(PaperSize size, double longestM, (double BottomM, double TopM) level)
    {
        var across = BookScale.FittingOneToFactor(Math.Max(1, longestM) * 1000, size.WidthMm - LeftMm - LabelsMm - 6);
        return new SceneBuilder(size).View(
            new SiteToPaper(across, SitePoint.Metres(0, level.BottomM), new(LeftMm, size.HeightMm - BottomMm))
            {
                VerticalOneToFactor = BookScale.FittingOneToFactor(
                    (level.TopM - level.BottomM) * 1000,
                    size.HeightMm - TopMm - BottomMm
                ),
            }
        );
    }

    private static string Scales(SiteView view) =>
        Invariant(
            $"lengths 1:{view.Placing.OneToFactor:0}, heights 1:{view.Placing.VerticalOneToFactor:0}, levels in metres above sea level"
        );

    private static bool Speaks(TapHead head) => head.IsTap || head.Point.Kind == TapPointKind.BreakPressureTank;

    private static double[] Ways(TapNetwork network)
    {
        var wayM = new double[network.Heads.Count];
        for (var i = 0; i < wayM.Length; i++)
        {
            var point = network.Heads[i].Point;
            wayM[i] = point.LengthM + (point.UpstreamIndex < 0 ? 0 : wayM[point.UpstreamIndex]);
        }

        return wayM;
    }

    private static void Lines(SiteView view, TapNetwork network, double[] wayM)
    {
        var balloons = new List<(int Number, PaperPoint At)>();
        for (var i = 0; i < wayM.Length; i++)
        {
            var head = network.Heads[i];
            var up = head.Point.UpstreamIndex;
            var fromM = up < 0 ? 0 : wayM[up];
            var (levelM, gradeM) = StartOf(network, up);
            var (from, to) = (
                view.At(SitePoint.Metres(fromM, levelM)),
                view.At(SitePoint.Metres(wayM[i], head.Point.LevelM))
            );
            view.Builder.Line(Layer.Pipe, from, to);
            view.Line(Layer.Water, SitePoint.Metres(fromM, gradeM), SitePoint.Metres(wayM[i], head.GradeM));
            if (Free(from, to, [.. balloons.Select(each => each.At)]) is { } free)
            {
                balloons.Add((i + 1, free));
            }
        }

        balloons.ForEach(each => Number(view, each.Number, each.At));
    }

    // A break-pressure tank starts again from its own level.
    private static (double LevelM, double GradeM) StartOf(TapNetwork network, int up) =>
        up < 0 ? (network.SourceM, network.SourceM)
        : network.Heads[up].Point.Kind == TapPointKind.BreakPressureTank
            ? (network.Heads[up].Point.LevelM, network.Heads[up].Point.LevelM)
        : (network.Heads[up].Point.LevelM, network.Heads[up].GradeM);

    private static void Number(SiteView view, int number, PaperPoint at) =>
        view
            .Builder.Circle(Layer.Dimension, at, 2.2, Palette.White)
            .Text(at, Invariant($"{number}"), TextStyle.Small.Centred);

    // The place along the pipe that is farthest from the numbers already set; none where no place is clear of them.
    private static PaperPoint? Free(PaperPoint from, PaperPoint to, IReadOnlyList<PaperPoint> taken)
    {
        double RoomMm(PaperPoint point) =>
            taken
                .Select(each => Math.Sqrt(Math.Pow(each.XMm - point.XMm, 2) + Math.Pow(each.YMm - point.YMm, 2)))
                .DefaultIfEmpty(BalloonsMm)
                .Min();
        var best = new[] { 0.5, 0.6, 0.4, 0.7, 0.3, 0.8, 0.2 }
            .Select(share => new PaperPoint(
                from.XMm + (share * (to.XMm - from.XMm)),
                from.YMm + (share * (to.YMm - from.YMm))
            ))
            .MaxBy(point => Math.Min(BalloonsMm, RoomMm(point)))!;
        return RoomMm(best) >= BalloonsMm - 1 ? best : null;
    }

    private static void Tank(SiteView view, TapNetwork network)
    {
        var (floor, full) = (
            view.At(SitePoint.Metres(0, network.SourceM)),
            view.At(SitePoint.Metres(0, network.FullM))
        );
        view.Builder.Rectangle(
            Layer.Outline,
            new(floor.XMm - TankMm, Math.Min(full.YMm, floor.YMm - 2), floor.XMm, floor.YMm),
            Palette.Water.Tint(0.25)
        );
        view.Builder.Text(
            new(floor.XMm - TankMm, Math.Min(full.YMm, floor.YMm - 2) - 1.5),
            Invariant($"tank: floor {network.SourceM:0.0}, full {network.FullM:0.0}"),
            TextStyle.Small with
            {
                IsOpaque = true,
            }
        );
    }

    private static void Points(SiteView view, TapNetwork network, double[] wayM)
    {
        foreach (var (i, head) in network.Heads.Index())
        {
            var at = view.At(SitePoint.Metres(wayM[i], head.Point.LevelM));
            if (head.Point.Kind == TapPointKind.BreakPressureTank)
            {
                view.Builder.Rectangle(
                    Layer.Outline,
                    new(at.XMm - 1.4, at.YMm - 1.4, at.XMm + 1.4, at.YMm + 1.4),
                    Palette.White
                );
            }
            else
            {
                view.Builder.Circle(
                    Layer.Outline,
                    at,
                    head.IsTap ? 1.1 : 0.7,
                    head.IsTap ? Palette.White : Palette.Ink
                );
            }
        }
    }

    // In a column at the right, in the order of their heights, pushed apart and never below the foot.
    private static void Labels(SiteView view, TapNetwork network, double[] wayM)
    {
        var size = view.Builder.Size;
        var labels = network
            .Heads.Select(
                (head, i) => (Head: head, Number: i + 1, At: view.At(SitePoint.Metres(wayM[i], head.Point.LevelM)))
            )
            .Where(each => Speaks(each.Head))
            .OrderBy(each => each.At.YMm)
            .ThenByDescending(each => each.At.XMm)
            .ToList();
        var column = size.WidthMm - LabelsMm;
        var lastMm = TopMm - LabelMm;
        for (var i = 0; i < labels.Count; i++)
        {
            var (head, number, at) = labels[i];
            var lowestMm = size.HeightMm - BottomMm - ((labels.Count - 1 - i) * LabelMm);
            lastMm = Math.Min(lowestMm, Math.Max(at.YMm, lastMm + LabelMm));
            view.Builder.Polyline(Layer.Thin, [at.Moved(1.4, 0), new(column - 3, lastMm), new(column - 1, lastMm)]);
            view.Builder.Text(new(column, lastMm + 1), Says(head, number), TextStyle.Small with { IsOpaque = true });
        }
    }

    private static string Says(TapHead head, int number)
    {
        var text = head.IsTap
            ? Invariant($"{number} {head.Name}: {head.ResidualM:0.0} m open, {head.StaticM:0.0} m at rest")
            : Invariant($"{number} {head.Name} at {head.Point.LevelM:0.0}");
        var name = head.Name;
        while (name.Length > 1 && Lettering.WidthMm(text, Lettering.SmallMm) > LabelsMm - 2)
        {
            name = name[..^1];
            text = Invariant($"{number} {name.TrimEnd()}..: {head.ResidualM:0.0} m open, {head.StaticM:0.0} m at rest");
        }

        return text;
    }
}
