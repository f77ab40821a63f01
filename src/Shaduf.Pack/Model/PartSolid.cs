using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Station;
using Shaduf.Steel;

namespace Shaduf.Pack;

/// <summary>Parts of the solid model as bodies, cut at their planes.</summary>
internal static class PartSolid
{
    private const int RoundSides = 16;

    /// <summary>A part whose section stands upright or lies level.</summary>
    /// <param name="part">The part.</param>
    public static IEnumerable<IReadOnlyList<Point>> Of(Part part)
    {
        var axis = Axis(part);
        var level = new Point(-axis.YMm, axis.XMm, 0);
        var side = level.LengthMm > 1e-9 ? level * (1 / level.LengthMm) : new Point(1, 0, 0);
        return Of(part, side, Solid.Cross(axis, side));
    }

    /// <summary>The parts of a rack: what lies along the row is turned with the plane.</summary>
    /// <param name="rack">The rack.</param>
    /// <returns>Each part with its faces.</returns>
    public static IEnumerable<(Part Part, IReadOnlyList<IReadOnlyList<Point>> Faces)> Of(Rack rack)
    {
        var seen = new Dictionary<string, int>();
        foreach (var part in rack.Steel.Parts)
        {
            var number = seen.GetValueOrDefault(part.Mark);
            seen[part.Mark] = number + 1;
            var (up, across) = (rack.Setting.OffPlane, rack.Setting.UpSlope);
            yield return (
                part,
                part.Mark[0] switch
                {
                    'F' => [.. Angle(rack, rack.Sections.Channel!, part, number)],
                    'S' when part.Role == RemovableSide.LugRole =>
                    [
                        // Back to back: the flat leg under the frame, the upright one where the lips of F3 end.
                        .. Of(part, new(number % 2 == 0 ? -1 : 1, 0, 0), up * -1),
                    ],
                    'R' or 'S' => [.. Of(part, across, up)],
                    _ => [.. Of(part)],
                }
            );
        }
    }

    private static Point Axis(Part part)
    {
        var along = part.Shape.End - part.Shape.Start;
        return along * (1 / along.LengthMm);
    }

    private static IEnumerable<IReadOnlyList<Point>> Of(Part part, Point side, Point up)
    {
        var (half, wall) = (part.Section.SideMm / 2, part.Section.WallMm);
        if (part.Section.Outline == Outline.EqualAngle)
        {
            var corner = (side * -half) + (up * -half);
            return
            [
                .. Cut(
                    part,
                    [
                        corner,
                        corner + (side * (2 * half)),
                        corner + (side * (2 * half)) + (up * wall),
                        corner + (up * wall),
                    ]
                ),
                .. Cut(
                    part,
                    [
                        corner + (up * wall),
                        corner + (side * wall) + (up * wall),
                        corner + (side * wall) + (up * (2 * half)),
                        corner + (up * (2 * half)),
                    ]
                ),
            ];
        }

        return part.Section.Outline == Outline.SquareTube
            ? Cut(
                part,
                [
                    (side * -half) + (up * -half),
                    (side * half) + (up * -half),
                    (side * half) + (up * half),
                    (side * -half) + (up * half),
                ]
            )
            : Cut(
                part,
                [
                    .. Enumerable
                        .Range(0, RoundSides)
                        .Select(i => Math.SinCos(2 * Math.PI * i / RoundSides))
                        .Select(turn => (side * (turn.Cos * half)) + (up * (turn.Sin * half))),
                ]
            );
    }

    // Edges of the outline, given off the axis, run from plane to plane.
    private static IReadOnlyList<IReadOnlyList<Point>> Cut(Part part, IReadOnlyList<Point> outline)
    {
        var axis = Axis(part);
        Point Met(Point off, CutPlane plane)
        {
            var from = part.Shape.Start + off;
            return from + (axis * (plane.Normal.DotMm2(plane.At - from) / plane.Normal.DotMm2(axis)));
        }

        return Solid.Prism(
            [.. outline.Select(off => Met(off, part.Shape.StartPlane))],
            [.. outline.Select(off => Met(off, part.Shape.EndPlane))]
        );
    }

    // Two angles make a channel: the lower stands outside, the upright leg of the upper lies inside it.
    private static IEnumerable<IReadOnlyList<Point>> Angle(Rack rack, SlideInChannel channel, Part part, int number)
    {
        var setting = rack.Setting;
        var (leg, thick, up) = (channel.LegMm, channel.ThicknessMm, setting.OffPlane);
        var offMm = up.DotMm2(part.Shape.Start - setting.OnSlope(0, 0, 0));
        var isLower = offMm < channel.OuterDepthMm / 2;
        var lips = part.Mark switch
        {
            "F1" => setting.UpSlope * (setting.SlopeMm(part.Shape.Start) < rack.Size.DepthMm / 2 ? 1 : -1),
            "F2" => new Point(1, 0, 0),
            "F3" => new Point(-1, 0, 0),
            _ => setting.UpSlope * (number / 2 % 2 == 0 ? 1 : -1),
        };
        var face = up * -offMm;
        var (corner, rise) = isLower ? (face, up) : (face + (lips * thick) + (up * channel.OuterDepthMm), up * -1);
        return
        [
            .. Cut(
                part,
                [corner, corner + (lips * leg), corner + (lips * leg) + (rise * thick), corner + (rise * thick)]
            ),
            .. Cut(
                part,
                [
                    corner + (rise * thick),
                    corner + (lips * thick) + (rise * thick),
                    corner + (lips * thick) + (rise * leg),
                    corner + (rise * leg),
                ]
            ),
        ];
    }
}
