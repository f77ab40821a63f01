using System.Globalization;
using Shaduf.Station;
using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>
/// The sky as the rearmost rack sees it: direction across, height upwards, with the sun's paths, the skyline, and what
/// stands near.
/// </summary>
internal static class SunPaths
{
    private static readonly IReadOnlyList<(int Month, string Says, Layer Layer)> Days =
    [
        (6, "21 June", new("Path6", 0.5, Palette.Sun)),
        (3, "21 March, near 23 September", new("Path3", 0.5, Palette.Clay) { DashMm = [4, 1.5] }),
        (12, "21 December", new("Path12", 0.5, Palette.Water) { DashMm = [1.2, 1.2] }),
    ];

    private static readonly IReadOnlyList<string> Winds = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"];

    /// <summary>Composes the picture.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Its size.</param>
    /// <returns>The picture.</returns>
    public static Scene Of(Design design, PaperSize size)
    {
        var frame = new ChartFrame(size);
        frame.Legend(
            [.. Days.Select(day => day.Says), "skyline", "stands near, by number"],
            (builder, i, box) => Sample(builder, i, box)
        );
        var ticks = new Ticks(0, 90, 15);
        var plot = frame.Plot(ChartFrame.WidestMm(ticks), ChartFrame.LabelHeightMm, 4, true);
        frame.YAxis(plot, ticks, "height above the level, deg");
        var sky = new SkyPaper(plot, design.Sky.Facing.AzimuthDeg);
        Skyline(frame.Builder, sky, design.Sky.Horizon);
        PaperPoint?[] tops =
        [
            .. design.Layout.Things.Select(thing => Thing(frame.Builder, sky, thing, design.Layout.Eye)),
        ];

        foreach (var day in Days)
        {
            Path(frame.Builder, sky, new(design.Brief.Site.Place), day);
        }

        foreach (var (i, top) in tops.Index().Where(each => each.Item is not null))
        {
            var xMm = Math.Clamp(top!.Value.XMm, plot.LeftMm + 4, plot.RightMm - 4);
            frame.Builder.Balloon(new(xMm, top.Value.YMm - 3.6), Invariant($"{i + 1}"));
        }

        frame.XAxis(
            plot,
            [.. sky.Winds.Select(wind => (sky.XMm(wind.AzimuthDeg), wind.Name))],
            new(false, 1, 20),
            "direction; the middle is where the modules face; small figures are hours of the clock"
        );
        return frame.Builder.Build("sun paths, skyline and what stands near");
    }

    private static void Sample(SceneBuilder builder, int i, PaperBox box)
    {
        if (i < Days.Count)
        {
            builder.Line(Days[i].Layer, new(box.LeftMm, box.Centre.YMm), new(box.RightMm, box.Centre.YMm));
        }
        else if (i == Days.Count)
        {
            builder.Rectangle(Layer.Thin, box, Palette.Leaf.Tint(0.35));
        }
        else
        {
            builder.Rectangle(Layer.Thin, box, Palette.White).Hatch(HatchPattern.Diagonal, box.Corners, spacingMm: 1.2);
        }
    }

    private static void Skyline(SceneBuilder builder, SkyPaper sky, Horizon horizon)
    {
        if (horizon.IsFree)
        {
            return;
        }

        List<PaperPoint> line =
        [
            .. Enumerable
                .Range(-180, 361)
                .Select(turnDeg => sky.At(turnDeg, horizon.ElevationDeg(sky.Azimuth(turnDeg)))),
        ];
        builder.Area(Layer.Thin, [sky.At(-180, 0), .. line, sky.At(180, 0)], Palette.Leaf.Tint(0.35));
        builder.Polyline(Layer.Thin, line);
    }

    // Column by column: the lowest and the highest direction that the thing hides. Gives the top of its widest piece.
    private static PaperPoint? Thing(SceneBuilder builder, SkyPaper sky, NearThing thing, Spot eye)
    {
        var pieces = new List<List<Column>> { new() };
        for (var turnDeg = -180.0; turnDeg <= 180; turnDeg += 0.5)
        {
            if (Hidden(thing, eye, turnDeg, sky.Azimuth(turnDeg)) is { } column)
            {
                pieces[^1].Add(column);
            }
            else if (pieces[^1].Count > 0)
            {
                pieces.Add([]);
            }
        }

        pieces.RemoveAll(piece => piece.Count == 0);
        foreach (var piece in pieces)
        {
            PaperPoint[] outline =
            [
                sky.At(piece[0].TurnDeg - 0.25, piece[0].LowDeg),
                sky.At(piece[0].TurnDeg - 0.25, piece[0].HighDeg),
                .. piece.Select(column => sky.At(column.TurnDeg, column.HighDeg)),
                sky.At(piece[^1].TurnDeg + 0.25, piece[^1].HighDeg),
                sky.At(piece[^1].TurnDeg + 0.25, piece[^1].LowDeg),
                .. piece.AsEnumerable().Reverse().Select(column => sky.At(column.TurnDeg, column.LowDeg)),
            ];
            builder.Hatch(HatchPattern.Diagonal, outline, spacingMm: 1.2).Polygon(Layer.Thin, outline);
        }

        return pieces.MaxBy(piece => piece.Count) is { } widest
            ? sky.At(widest[widest.Count / 2].TurnDeg, widest[widest.Count / 2].HighDeg)
            : null;
    }

    private static Column? Hidden(NearThing thing, Spot eye, double turnDeg, double azimuthDeg)
    {
        const int stepsInDeg = 4;
        bool Hides(int step)
        {
            var sun = SunDirection.Of(new(90 - ((double)step / stepsInDeg), azimuthDeg));
            return thing.Screens.Any(screen => screen.Hides(eye, sun));
        }

        // From both ends: what lies between the lowest and the highest need not be asked.
        var steps = Enumerable.Range(0, 89 * stepsInDeg);
        var low = steps.FirstOrDefault(Hides, -1);
        return low < 0
            ? null
            : new(turnDeg, low / (double)stepsInDeg, (steps.Reverse().First(Hides) + 0.5) / stepsInDeg);
    }

    /// <summary>What a thing hides in one direction.</summary>
    private readonly record struct Column(double TurnDeg, double LowDeg, double HighDeg);

    private static void Path(SceneBuilder builder, SkyPaper sky, YearSun sun, (int Month, string Says, Layer Layer) day)
    {
        var midnightH = (new DateOnly(YearCalendar.Year, day.Month, 21).DayOfYear - 1) * 24;
        var piece = new List<PaperPoint>();
        var before = 0.0;
        for (var minute = 0; minute <= 24 * 60; minute += 4)
        {
            var angles = sun.DirectionAt(midnightH + (minute / 60.0)).Angles;
            var turnDeg = sky.Turn(angles.AzimuthDeg);
            if (piece.Count > 0 && (angles.ZenithDeg > 90 || Math.Abs(turnDeg - before) > 90))
            {
                Close(builder, piece, day.Layer);
            }

            if (angles.ZenithDeg <= 90)
            {
                piece.Add(sky.At(turnDeg, 90 - angles.ZenithDeg));
                before = turnDeg;
            }
        }

        Close(builder, piece, day.Layer);
        Hours(builder, sky, sun, midnightH, isNamed: day.Month != 3);
    }

    private static void Close(SceneBuilder builder, List<PaperPoint> piece, Layer layer)
    {
        if (piece.Count > 1)
        {
            builder.Polyline(layer, [.. piece]);
        }

        piece.Clear();
    }

    private static void Hours(SceneBuilder builder, SkyPaper sky, YearSun sun, int midnightH, bool isNamed)
    {
        for (var hour = 0; hour < 24; hour++)
        {
            var angles = sun.DirectionAt(midnightH + hour).Angles;
            if (angles.ZenithDeg > 88)
            {
                continue;
            }

            var at = sky.At(sky.Turn(angles.AzimuthDeg), 90 - angles.ZenithDeg);
            builder.Circle(Layer.Thin, at, 0.7, Palette.White);
            if (isNamed && hour % 3 == 0)
            {
                builder.Text(
                    at.Moved(0, -2.6),
                    hour.ToString(CultureInfo.InvariantCulture),
                    TextStyle.Small.Centred with
                    {
                        IsOpaque = true,
                    }
                );
            }
        }
    }

    /// <summary>Where a direction of the sky lies on the paper; turns count clockwise from where the modules face.</summary>
    private sealed record SkyPaper(PaperBox Plot, double FacingDeg)
    {
        public double Azimuth(double turnDeg) => (turnDeg + FacingDeg + 720) % 360;

        public double Turn(double azimuthDeg)
        {
            var turnDeg = (azimuthDeg - FacingDeg + 720) % 360;
            return turnDeg > 180 ? turnDeg - 360 : turnDeg;
        }

        public double XMm(double azimuthDeg) => At(Turn(azimuthDeg), 0).XMm;

        public PaperPoint At(double turnDeg, double elevationDeg) =>
            new(
                Plot.LeftMm + ((Math.Clamp(turnDeg, -180, 180) + 180) / 360 * Plot.WidthMm),
                Plot.BottomMm - (elevationDeg / 90 * Plot.HeightMm)
            );

        public IEnumerable<(double AzimuthDeg, string Name)> Winds =>
            SunPaths.Winds.Select((name, i) => (i * 45.0, name)).OrderBy(wind => Turn(wind.Item1));
    }
}
