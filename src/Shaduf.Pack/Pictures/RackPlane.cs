using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The rack seen square on its plane: frame, holders, cross tubes, stubs, columns and modules, with dimensions.</summary>
public static class RackPlane
{
    private const double SideRoomMm = 38;
    private const double LevelRoomMm = 44;

    // Middle to middle of two balloons that do not touch.
    private const double BalloonMm = 7;

    /// <summary>Composes the picture from the solid model.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="size">Size of the picture, at least 120 x 80 mm.</param>
    /// <param name="oneToFactor">n of the scale 1:n; left out, a scale of the book's that fits.</param>
    /// <returns>The picture, to scale.</returns>
    public static Scene Of(Rack rack, PaperSize size, double? oneToFactor = null)
    {
        var scale = oneToFactor ?? BookScale.FittingOneToFactor(LeastOneToFactor(rack, size), 1);
        var view = new SceneBuilder(size).View(new(scale, new(0, 0), new(28, size.HeightMm - 26)));
        Modules(view, rack);
        var plane = new PlaneView(rack.Setting);
        foreach (var part in rack.Steel.Parts)
        {
            Draw(view, plane, part);
        }

        Columns(view, plane, rack);
        Marks(view, plane, rack);
        Dimensions(view, rack);
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(view.At(new(0, 0)).XMm, drawn.BottomMm + 5),
            Invariant($"1:{scale:0.##}, millimetres; seen square on the plane, low edge below"),
            TextStyle.Small
        );
        return view.Builder.Build("rack, seen square on its plane");
    }

    /// <summary>The n of the largest scale 1:n at which the picture fits, not rounded.</summary>
    internal static double LeastOneToFactor(Rack rack, PaperSize size) =>
        Math.Max(rack.Size.LengthMm / (size.WidthMm - SideRoomMm), rack.Size.DepthMm / (size.HeightMm - LevelRoomMm));

    private static void Dimensions(SiteView view, Rack rack)
    {
        var places = rack.TubePlacesMm;
        view.DimensionChain(
            DimensionSide.Below,
            [new(0, 0), .. places.Select(x => new SitePoint(x, 0)), new(rack.Size.LengthMm, 0)]
        );
        var bearers = rack
            .Skeleton.Members.Where(member => member.Mark is "R1" or "F4")
            .Select(member => new SitePoint(0, rack.Setting.SlopeMm(member.From)));
        view.DimensionChain(DimensionSide.Left, [new(0, 0), .. bearers, new(0, rack.Size.DepthMm)]);
    }

    private static void Modules(SiteView view, Rack rack)
    {
        foreach (var row in rack.Rows)
        {
            for (var column = 0; column < rack.Grid.Columns; column++)
            {
                var x = rack.Along.FirstMm + (column * rack.Along.PitchMm);
                view.Rectangle(
                    Layer.Module,
                    new(x, row.FromMm),
                    new(x + rack.Lay.AlongMm, row.FromMm + rack.Lay.UpMm),
                    Palette.Water.Tint(0.08)
                );
            }
        }
    }

    private static void Draw(SiteView view, PlaneView plane, Part part)
    {
        if (IsBelow(part.Mark))
        {
            return;
        }

        var (from, to) = (plane.At(part.Shape.Start), plane.At(part.Shape.End));
        var half = part.Section.SideMm / 2;
        var isAcross = Math.Abs(to.XMm - from.XMm) < 1;
        var corner = isAcross ? new SitePoint(from.XMm - half, from.YMm) : new(from.XMm, from.YMm - half);
        var opposite = isAcross ? new SitePoint(to.XMm + half, to.YMm) : new(to.XMm, to.YMm + half);
        if (part.Section.Outline == Outline.EqualAngle)
        {
            view.Line(Layer.Steel, from, to);
        }
        else
        {
            view.Rectangle(Layer.Hidden, corner, opposite);
        }
    }

    private static void Marks(SiteView view, PlaneView plane, Rack rack)
    {
        var placed = new List<PaperPoint>();
        foreach (var mark in rack.Steel.Groups.Where(group => !IsBelow(group.Mark)).Select(group => group.Mark))
        {
            // The stub of the first crossing, the tube of the last one, so that their balloons stay apart; another of
            // the same mark where a balloon has no room.
            var all = rack.Steel.Parts.Where(part => part.Mark == mark);
            var places = (mark == "S1" ? all : all.Reverse())
                .Select(part => BalloonPlace(view, plane, part))
                .OrderBy(place => place.XMm < view.At(new(0, 0)).XMm + BalloonMm ? 1 : 0)
                .ToList();
            if (places.Count > 0)
            {
                var free = places.FindIndex(place => placed.TrueForAll(other => other.DistanceMm(place) >= BalloonMm));
                placed.Add(places[Math.Max(0, free)]);
                view.Builder.Balloon(placed[^1], mark);
            }
        }
    }

    private static void Columns(SiteView view, PlaneView plane, Rack rack)
    {
        foreach (var column in rack.Steel.Parts.Where(part => part.Mark[0] == 'C'))
        {
            view.Circle(Layer.Thin, plane.At(column.Shape.End), rack.Sections.Column.SideMm);
        }
    }

    // Columns, struts and braces stand below the plane.
    private static bool IsBelow(string mark) => mark[0] is 'B' or 'C' or 'D' or 'K';

    private static PaperPoint BalloonPlace(SiteView view, PlaneView plane, Part part)
    {
        var (from, to) = (plane.At(part.Shape.Start), plane.At(part.Shape.End));
        var share = part.Mark switch
        {
            "F1" or "F4" or "R1" => 0.38,
            "T1" => 0.75,
            "S1" => 1.6,
            _ => 0.5,
        };
        return view.At(new(from.XMm + ((to.XMm - from.XMm) * share), from.YMm + ((to.YMm - from.YMm) * share)));
    }

    // Turns points of the model into the plane: x along the row, y up the slope.
    private sealed class PlaneView(RackSetting setting)
    {
        public SitePoint At(Point point) => new(point.XMm, setting.SlopeMm(point));
    }
}
