using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Open water with its levels, the suction pipe and the pump, heights and lengths to one scale.</summary>
public static class IntakeSection
{
    private const double TopMm = 12;
    private const double BottomMm = 10;
    private const double LeftMm = 18;
    private const double LabelMm = 54;
    private const double LabelPitchMm = 4.6;

    // Water drawn beyond the strainer, and ground beyond the pump [m].
    private const double WaterM = 1.0;
    private const double LandM = 1.0;
    private const double PumpHeadroomM = 1.0;

    /// <summary>Composes the picture.</summary>
    /// <param name="build">What is built beside the water.</param>
    /// <param name="size">Size of the picture, at least 150 x 90 mm.</param>
    /// <returns>The picture.</returns>
    public static Scene Of(IntakeBuild build, PaperSize size)
    {
        var survey = build.Intake.Survey;
        var topM = Math.Max(Math.Max(survey.PumpM, survey.FloodM), survey.GroundM) + PumpHeadroomM;
        var pumpX = PumpXM(build);
        var scale = Math.Max(
            BookScale.FittingOneToFactor((topM - survey.BedM) * 1000, size.HeightMm - TopMm - BottomMm),
            BookScale.FittingOneToFactor((pumpX + WaterM + LandM) * 1000, size.WidthMm - LeftMm - LabelMm)
        );
        var placing = new SiteToPaper(
            scale,
            SitePoint.Metres(-WaterM, survey.BedM),
            new(LeftMm, size.HeightMm - BottomMm)
        );
        var view = new SceneBuilder(size).View(placing);
        Ground(view, build, pumpX);
        Water(view, build, pumpX);
        Pump(view, build, pumpX);
        Labels(view, Marks(build), pumpX + LandM);
        Spans(view, build);
        view.Builder.Text(
            new(LeftMm, size.HeightMm - 1),
            Invariant($"heights and lengths 1:{scale:0}, levels in metres above sea level"),
            TextStyle.Small
        );
        return view.Builder.Build("intake");
    }

    // The suction pipe lies straight: what its length leaves beside its rise.
    private static double PumpXM(IntakeBuild build)
    {
        var riseM = build.Intake.Survey.PumpM - build.Intake.StrainerM;
        return Math.Sqrt(Math.Max(1, Math.Pow(build.Pipe.SuctionM, 2) - (riseM * riseM)));
    }

    private static IReadOnlyList<SitePoint> Bank(IntakeBuild build, double pumpX)
    {
        var survey = build.Intake.Survey;
        var shoreX = survey.Stand == PumpStand.Bank ? pumpX - 0.8 : pumpX + 0.8;
        var footX = survey.Stand == PumpStand.Bank ? 0.6 : pumpX + 0.4;
        return
        [
            SitePoint.Metres(-WaterM, survey.BedM),
            SitePoint.Metres(Math.Min(footX, shoreX), survey.BedM),
            SitePoint.Metres(shoreX, Math.Max(survey.GroundM, survey.BedM)),
            SitePoint.Metres(pumpX + LandM, Math.Max(survey.GroundM, survey.BedM)),
        ];
    }

    private static void Ground(SiteView view, IntakeBuild build, double pumpX)
    {
        var bank = Bank(build, pumpX);
        view.Polyline(Layer.Ground, bank);
        var below = bank.Select(view.At).Select(point => point.Moved(0, 2.2)).Reverse();
        view.Builder.Hatch(HatchPattern.Diagonal, [.. bank.Select(view.At), .. below], spacingMm: 1.6);
    }

    private static void Water(SiteView view, IntakeBuild build, double pumpX)
    {
        var survey = build.Intake.Survey;
        var bank = Bank(build, pumpX);
        double ShoreX(double levelM)
        {
            var (foot, shore) = (bank[1], bank[2]);
            var share = Math.Clamp((levelM - survey.BedM) / Math.Max(0.01, survey.GroundM - survey.BedM), 0, 1);
            return (foot.XMm + (share * (shore.XMm - foot.XMm))) / 1000;
        }

        view.Builder.Area(
            Layer.Water,
            [
                view.At(SitePoint.Metres(-WaterM, survey.BedM)),
                view.At(SitePoint.Metres(ShoreX(survey.BedM), survey.BedM)),
                view.At(SitePoint.Metres(ShoreX(survey.LowestM), survey.LowestM)),
                view.At(SitePoint.Metres(-WaterM, survey.LowestM)),
            ],
            Palette.Water.Tint(0.3)
        );
        foreach (var levelM in new[] { survey.LowestM, survey.Brief.NormalM, survey.FloodM })
        {
            view.Line(Layer.Water, SitePoint.Metres(-WaterM, levelM), SitePoint.Metres(ShoreX(levelM), levelM));
        }
    }

    private static void Pump(SiteView view, IntakeBuild build, double pumpX)
    {
        var (builder, survey) = (view.Builder, build.Intake.Survey);
        var strainer = view.At(SitePoint.Metres(0, build.Intake.StrainerM));
        var shaft = view.At(SitePoint.Metres(pumpX, survey.PumpM));
        Under(view, build, pumpX);
        Suction(view, build, pumpX, (strainer, shaft));
        builder.Rectangle(
            Layer.Steel,
            new(strainer.XMm - 1.4, strainer.YMm - 1, strainer.XMm + 1.4, strainer.YMm + 2.5),
            Palette.Steel.Tint(0.6)
        );
        builder.Circle(Layer.Steel, shaft, 1.8, Palette.Steel.Tint(0.4));
        builder.Rectangle(
            Layer.Steel,
            new(shaft.XMm + 1.8, shaft.YMm - 1.4, shaft.XMm + 6.5, shaft.YMm + 1.4),
            Palette.Steel
        );
        builder.Polyline(
            Layer.Pipe,
            [
                shaft.Moved(0, -1.8),
                shaft.Moved(0, -4.5),
                view.At(SitePoint.Metres(pumpX + LandM, survey.PumpM)) with
                {
                    YMm = shaft.YMm - 4.5,
                },
            ]
        );
    }

    // The plinth on the bank, or the raft.
    private static void Under(SiteView view, IntakeBuild build, double pumpX)
    {
        var survey = build.Intake.Survey;
        if (survey.Stand == PumpStand.Bank)
        {
            var half = build.Plinth.SideM / 2;
            view.Rectangle(
                Layer.Concrete,
                SitePoint.Metres(pumpX - half, survey.GroundM - 0.1),
                SitePoint.Metres(pumpX + half, Math.Max(survey.PumpM - 0.2, survey.GroundM)),
                Palette.Steel.Tint(0.8)
            );
            view.Leader(
                SitePoint.Metres(pumpX, survey.GroundM),
                -8,
                26,
                Invariant(
                    $"plinth {build.Plinth.SideM * 1000:0} x {build.Plinth.SideM * 1000:0}, {build.Plinth.ThickM * 1000:0} thick"
                )
            );
        }
        else
        {
            view.Rectangle(
                Layer.Outline,
                SitePoint.Metres(pumpX - 0.9, survey.LowestM - 0.2),
                SitePoint.Metres(pumpX + 0.3, survey.LowestM + 0.1),
                Palette.White
            );
        }
    }

    // Straight, or over the edge of the bank.
    private static void Suction(
        SiteView view,
        IntakeBuild build,
        double pumpX,
        (PaperPoint Strainer, PaperPoint Shaft) ends
    )
    {
        var (strainer, shaft) = ends;
        var shore = view.At(Bank(build, pumpX)[2]).Moved(0, -1.2);
        var isOver = build.Intake.Survey.Stand == PumpStand.Bank && shore.YMm > shaft.YMm && shore.XMm < shaft.XMm - 3;
        view.Builder.Polyline(
            Layer.Pipe,
            isOver ? [strainer, shore, shaft.Moved(-3, 0), shaft] : [strainer, shaft.Moved(-3, 0), shaft]
        );
        var middle = new PaperPoint((strainer.XMm + shaft.XMm) / 2, (strainer.YMm + shaft.YMm) / 2);
        view.Builder.Leader(
            isOver ? new((strainer.XMm + shore.XMm) / 2, (strainer.YMm + shore.YMm) / 2) : middle,
            middle.Moved(-12, -16),
            Invariant($"suction pipe {build.Pipe.Card.Name}, {build.Pipe.SuctionM:0.#} m")
        );
    }

    private static List<(double LevelM, string Text, Layer Layer)> Marks(IntakeBuild build)
    {
        var survey = build.Intake.Survey;
        return
        [
            .. new List<(double LevelM, string Text, Layer Layer)>
            {
                (survey.FloodM, "highest flood", Layer.Water),
                (survey.PumpM, "shaft of the pump", Layer.Steel),
                (survey.GroundM, "ground at the main's start", Layer.Ground),
                (survey.Brief.NormalM, "usual water", Layer.Water),
                (survey.LowestM, "lowest water", Layer.Water),
                (build.StopM, "stop of the float switch", Layer.Electric),
                (build.Intake.StrainerM, "strainer and foot valve", Layer.Steel),
                (survey.BedM, "bottom", Layer.Ground),
            }.OrderByDescending(mark => mark.LevelM),
        ];
    }

    // At the right edge, from the top down no nearer than the pitch, then pushed up from the lower edge.
    private static void Labels(SiteView view, List<(double LevelM, string Text, Layer Layer)> marks, double rightM)
    {
        var edge = view.At(SitePoint.Metres(rightM, 0)).XMm;
        var rows = new double[marks.Count];
        double Wished(int i) => view.At(SitePoint.Metres(0, marks[i].LevelM)).YMm;
        for (var i = 0; i < marks.Count; i++)
        {
            rows[i] = i == 0 ? Wished(0) : Math.Max(Wished(i), rows[i - 1] + LabelPitchMm);
        }

        var lowestMm = view.Builder.Size.HeightMm - BottomMm + 1;
        for (var i = marks.Count - 1; i >= 0; i--)
        {
            rows[i] = Math.Min(rows[i], i == marks.Count - 1 ? lowestMm : rows[i + 1] - LabelPitchMm);
        }

        for (var i = 0; i < marks.Count; i++)
        {
            view.Builder.Polyline(
                Layer.Dimension,
                [new(edge + 1, Wished(i)), new(edge + 4, Wished(i)), new(edge + 8, rows[i]), new(edge + 10, rows[i])]
            );
            view.Builder.Line(marks[i].Layer, new(edge - 2, Wished(i)), new(edge + 1, Wished(i)));
            view.Builder.Text(
                new(edge + 11, rows[i]),
                Invariant($"{marks[i].LevelM:0.00} m  {marks[i].Text}"),
                TextStyle.Small with
                {
                    Vertical = VerticalAnchor.Middle,
                }
            );
        }
    }

    private static void Spans(SiteView view, IntakeBuild build)
    {
        var survey = build.Intake.Survey;
        double[] levels = [survey.BedM, build.Intake.StrainerM, survey.LowestM, survey.PumpM];
        var spans = levels
            .Zip(levels.Skip(1))
            .Where(pair => pair.Second - pair.First > 0.02)
            .Select(pair => new Dimension(SitePoint.Metres(-WaterM, pair.First), SitePoint.Metres(-WaterM, pair.Second))
            {
                Text = Invariant($"{pair.Second - pair.First:0.00} m"),
            });
        view.Dimensions(DimensionSide.Left, [.. spans], new(6, 7, Lettering.SmallMm));
    }
}
