using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The long section: chainage across, elevation up, with source, water levels, pipe, tank and hydraulic grade line.</summary>
public static class LongSection
{
    private const double LeftMm = 22;
    private const double RightMm = 12;
    private const double TopMm = 10;
    private const double BottomMm = 32;

    // Paper width of a thing too slender for the scale, and how far a pipe lies below its ground at least.
    private const double TankMm = 7;
    private const double LeastCoverMm = 1.1;

    /// <summary>Composes the picture.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Size of the picture, at least 120 x 80 mm.</param>
    /// <returns>The picture; the heights are stretched, and both scales are written on it.</returns>
    public static Scene Of(Design design, PaperSize size)
    {
        var route = design.Brief.Lift.Route;
        var choice = design.Choice;
        var tankTopM = route[^1].ElevationM + design.Brief.Tank.StandM + choice.Tank.HeightM;
        var bottomM = route[0].ElevationM - design.Source.BottomM;
        var topM = Math.Max(
            Math.Max(tankTopM, design.Works.Main.Profile.Points[0].GradeM),
            route.Max(point => point.ElevationM)
        );
        var across = BookScale.FittingOneToFactor(route[^1].ChainageM * 1000, size.WidthMm - LeftMm - RightMm);
        var upright = BookScale.FittingOneToFactor((topM - bottomM) * 1000, size.HeightMm - TopMm - BottomMm);
        var placing = new SiteToPaper(across, SitePoint.Metres(0, bottomM), new(LeftMm, size.HeightMm - BottomMm))
        {
            VerticalOneToFactor = upright,
        };
        var view = new SceneBuilder(size).View(placing);
        Axes(view, design, bottomM, topM);
        Ground(view, route);
        view.Builder.About("source");
        SourceMarks.Draw(view, design);
        view.Builder.About("lift");
        Pipe(view, design);
        view.Builder.About("tank");
        Tank(view, design, tankTopM);
        view.Builder.About("");
        MainMarks.Draw(view, design, size.HeightMm - BottomMm);
        view.Builder.Text(
            new(LeftMm, size.HeightMm - 3),
            Invariant($"lengths 1:{across:0}, heights 1:{upright:0}, levels in metres above sea level"),
            TextStyle.Small
        );
        return view.Builder.Build("long section");
    }

    private static void Axes(SiteView view, Design design, double bottomM, double topM)
    {
        var builder = view.Builder;
        LevelGrid.Draw(view, bottomM, topM, builder.Size.WidthMm - RightMm);
        var lastMm = double.MinValue;
        foreach (var point in design.Brief.Lift.Route)
        {
            var at = view.At(SitePoint.Metres(point.ChainageM, bottomM));
            builder.Line(Layer.Grid, at, view.At(SitePoint.Metres(point.ChainageM, point.ElevationM)));
            if (at.XMm - lastMm > 11)
            {
                builder.Text(
                    at.Moved(0, 5),
                    Invariant($"{point.ChainageM:0}"),
                    TextStyle.Small with
                    {
                        Horizontal = HorizontalAnchor.Centre,
                    }
                );
                lastMm = at.XMm;
            }
        }

        builder.Text(
            new(LeftMm, builder.Size.HeightMm - BottomMm + 9),
            $"distance from the {design.Source.Head}, m",
            TextStyle.Small
        );
    }

    private static void Ground(SiteView view, IReadOnlyList<RoutePoint> route)
    {
        var line = route.Select(point => SitePoint.Metres(point.ChainageM, point.ElevationM)).ToList();
        view.Polyline(Layer.Ground, line);
        var below = line.Select(view.At).Select(point => point.Moved(0, 2.2)).Reverse();
        view.Builder.Hatch(HatchPattern.Diagonal, [.. line.Select(view.At), .. below], spacingMm: 1.6);
    }

    private static void Pipe(SiteView view, Design design)
    {
        var route = design.Brief.Lift.Route;
        var end = view.At(SitePoint.Metres(route[^1].ChainageM, design.Brief.Lift.InletM));
        view.Builder.Polyline(
            Layer.Pipe,
            [
                .. route
                    .Select(point =>
                        (
                            Ground: view.At(SitePoint.Metres(point.ChainageM, point.ElevationM)),
                            Pipe: view.At(SitePoint.Metres(point.ChainageM, point.ElevationM - design.Works.CoverM))
                        )
                    )
                    .Select(at => at.Pipe with { YMm = Math.Max(at.Pipe.YMm, at.Ground.YMm + LeastCoverMm) }),
                end,
            ]
        );
        GradeLine(view, design);
    }

    private static void GradeLine(SiteView view, Design design)
    {
        var points = design.Works.Main.Profile.Points;
        view.Builder.Polyline(
            Layer.Water,
            [.. points.Select(point => view.At(SitePoint.Metres(point.ChainageM, point.GradeM)))]
        );
        view.Builder.Text(
            view.At(SitePoint.Metres(0, points[0].GradeM)).Moved(2, -1.5),
            Invariant($"hydraulic grade line at {design.ShownFlowM3PerH:0.0} m3/h"),
            TextStyle.Small with
            {
                IsOpaque = true,
            }
        );
    }

    private static void Tank(SiteView view, Design design, double tankTopM)
    {
        var end = design.Brief.Lift.Route[^1];
        var floor = view.At(SitePoint.Metres(end.ChainageM, end.ElevationM + design.Brief.Tank.StandM));
        var top = view.At(SitePoint.Metres(end.ChainageM, tankTopM));
        var heightMm = Math.Max(3, floor.YMm - top.YMm);
        var ground = view.At(SitePoint.Metres(end.ChainageM, end.ElevationM));
        Under(view, design.Brief.Tank, (floor, ground));
        view.Builder.Rectangle(
            Layer.Outline,
            new(floor.XMm, floor.YMm - heightMm, floor.XMm + TankMm, floor.YMm),
            Palette.White
        );
        view.Builder.Area(Layer.Water, WaterInTank(floor, heightMm).Corners, Palette.Water.Tint(0.25));
        view.Builder.Text(
            new(floor.XMm + TankMm, floor.YMm - heightMm - 1.5),
            Invariant(
                $"tank {design.Choice.TankM3:0.#} m3{Standing(design.Brief.Tank)}, inlet {design.Brief.Lift.InletM:0.0}"
            ),
            TextStyle.Small with
            {
                Horizontal = HorizontalAnchor.Right,
                IsOpaque = true,
            }
        );
    }

    // What the tank stands on; nothing where it stands on the ground or a low slab.
    private static void Under(SiteView view, TankBrief tank, (PaperPoint Floor, PaperPoint Ground) at)
    {
        var (floor, ground) = at;
        if (ground.YMm - floor.YMm < 0.5)
        {
            return;
        }

        var right = floor.XMm + TankMm;
        switch (tank.Stand.Kind)
        {
            case StandKind.Mound:
                PaperPoint[] mound =
                [
                    floor.Moved(-0.5, 0),
                    new(right + 0.5, floor.YMm),
                    new(right + 3, ground.YMm),
                    ground.Moved(-3, 0),
                ];
                view.Builder.Hatch(HatchPattern.Earth, mound).Polygon(Layer.Ground, mound);
                break;
            case StandKind.Masonry:
                view.Builder.Hatch(
                        HatchPattern.Diagonal,
                        [floor, new(right, floor.YMm), new(right, ground.YMm), ground],
                        spacingMm: 1.6
                    )
                    .Rectangle(Layer.Concrete, new(floor.XMm, floor.YMm, right, ground.YMm));
                break;
            default:
                view.Builder.Line(Layer.Steel, floor.Moved(1, 0), ground.Moved(1, 0))
                    .Line(Layer.Steel, new(right - 0.4, floor.YMm), new(right - 0.4, ground.YMm))
                    .Line(Layer.Ground, ground, new(right + 2, ground.YMm));
                break;
        }
    }

    private static string Standing(TankBrief tank) =>
        tank.StandM <= 0 ? ""
        : tank.Stand.Kind == StandKind.Mound ? Invariant($" on a mound of {tank.StandM:0.0} m")
        : Invariant($", floor {tank.StandM:0.0} m above the ground");

    private static PaperBox WaterInTank(PaperPoint floor, double heightMm) =>
        new(floor.XMm + 0.4, floor.YMm - (heightMm * 0.75), floor.XMm + TankMm - 0.4, floor.YMm - 0.4);
}
