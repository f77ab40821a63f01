using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>A rack seen along its row: what stands under one cross tube, on the ground there.</summary>
/// <param name="rack">The rack.</param>
/// <param name="xMm">Place of the cross tube [mm].</param>
internal sealed class RackEnd(Rack rack, double xMm)
{
    public IReadOnlyList<Part> Parts =>
        [
            .. rack.Steel.Parts.Where(part =>
                part.Mark[0] is 'T' or 'B' or 'C' or 'D' && Math.Abs(part.Shape.Start.XMm - xMm) < 1
            ),
        ];

    public IReadOnlyList<double> ColumnsMm =>
        [.. Parts.Where(part => part.Mark[0] == 'C').Select(part => part.Shape.Start.YMm).Order()];

    // Pieces across the feet of the columns, seen on end.
    public IEnumerable<SitePoint> FeetMm =>
        rack
            .Steel.Parts.Where(part => part.Mark == Rack.FootMark)
            .Select(part => (part.Shape.Start + part.Shape.End) * 0.5)
            .Where(middle => Math.Abs(middle.XMm - xMm) < 1)
            .Select(At);

    public double PlanMm => rack.Setting.OnSlope(0, rack.Size.DepthMm, 0).YMm;

    public double TopMm => rack.Setting.OnSlope(0, rack.Size.DepthMm, rack.Size.DeckMm).ZMm;

    public double GroundMm(double yMm) => rack.Setting.Ground.ZMm(xMm, yMm);

    public static SitePoint At(Point point) => new(point.YMm, point.ZMm);

    // A part as it is cut, seen from the end.
    public static void Tube(SiteView view, Part part) => view.Polygon(Layer.Steel, Outline(part), Palette.White);

    /// <summary>The mark of a part beside it, with a line to it.</summary>
    /// <param name="view">The picture.</param>
    /// <param name="part">The part.</param>
    /// <param name="share">Where along it the line ends.</param>
    /// <param name="isFirst">Whether it stands on the left half.</param>
    public static void Balloon(SiteView view, Part part, double share, bool isFirst)
    {
        var tip = view.At(At(part.Shape.Start + ((part.Shape.End - part.Shape.Start) * share)));
        var (right, down) = part.Mark[0] switch
        {
            'C' => (isFirst ? -6.5 : 6.5, 0.0),
            'T' => (0, 7),
            'D' => (2, 8),
            _ => (part.Shape.End.YMm < part.Shape.Start.YMm ? -6 : 6, 7),
        };
        var at = tip.Moved(right, down);
        view.Builder.Line(Layer.Thin, tip, at).Balloon(at, part.Mark);
    }

    /// <summary>The four corners of a tube that lies in the plane seen, where its edges meet the planes of its cuts.</summary>
    public static IReadOnlyList<SitePoint> Outline(Part part)
    {
        var (shape, half) = (part.Shape, part.Section.SideMm / 2);
        var axis = (shape.End - shape.Start) * (1 / (shape.End - shape.Start).LengthMm);
        var across = new Point(0, -axis.ZMm, axis.YMm);
        SitePoint Corner(CutPlane plane, double side)
        {
            var from = plane.At + (across * (side * half));
            return At(from + (axis * (plane.Normal.DotMm2(plane.At - from) / plane.Normal.DotMm2(axis))));
        }

        return
        [
            Corner(shape.StartPlane, 1),
            Corner(shape.EndPlane, 1),
            Corner(shape.EndPlane, -1),
            Corner(shape.StartPlane, -1),
        ];
    }
}
