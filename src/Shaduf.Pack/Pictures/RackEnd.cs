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

    // A part as its four edges seen from the end: the axis with half a side to each hand.
    public static void Tube(SiteView view, Part part)
    {
        var (from, to) = (At(part.Shape.Start), At(part.Shape.End));
        var lengthMm = Math.Sqrt(Math.Pow(to.XMm - from.XMm, 2) + Math.Pow(to.YMm - from.YMm, 2));
        var half = part.Section.SideMm / 2;
        var (acrossX, acrossY) = (-(to.YMm - from.YMm) / lengthMm * half, (to.XMm - from.XMm) / lengthMm * half);
        view.Polygon(
            Layer.Steel,
            [
                new(from.XMm + acrossX, from.YMm + acrossY),
                new(to.XMm + acrossX, to.YMm + acrossY),
                new(to.XMm - acrossX, to.YMm - acrossY),
                new(from.XMm - acrossX, from.YMm - acrossY),
            ],
            Palette.White
        );
    }
}
