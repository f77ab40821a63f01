using Shaduf.Ground;
using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;
using Shaduf.Workshop;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Posts and struts of a fence, of galvanised tube; customary sizes, from memory.</summary>
public static class FenceSteel
{
    /// <summary>A post between those that struts hold.</summary>
    public const string PlainRole = "fence post";

    /// <summary>A post that struts hold.</summary>
    public const string StrainedRole = "fence post, strutted";

    /// <summary>A strut.</summary>
    public const string StrutRole = "fence strut";

    private const double WallMm = 3.2;
    private const double StrainedMm = 60.3;
    private const double PlainMm = 48.3;
    private const double BarMm = 6000;

    /// <summary>The posts and struts, where they stand: millimetres to the east, to the north and up.</summary>
    /// <param name="line">The fence.</param>
    /// <param name="workshop">The saw.</param>
    /// <returns>The steel; parts alike share a mark: N1, N2.</returns>
    public static Assembly Of(FenceLine line, WorkshopBrief workshop)
    {
        var (strained, plain) = (Tube(StrainedMm, workshop), Tube(PlainMm, workshop));
        var pieces = line
            .Posts.Select(post =>
                post.Kind == FencePostKind.Intermediate
                    ? Piece(PlainRole, plain, post, line.Form)
                    : Piece(StrainedRole, strained, post, line.Form)
            )
            .Concat(line.Posts.SelectMany(post => post.StrutsTo.Select(to => Strut(post.Foot, to, line.Form, plain))))
            .ToList();
        var marks = pieces
            .GroupBy(piece => (piece.Role, Mm: Math.Round(piece.LengthMm)))
            .OrderByDescending(alike => alike.First().Section.SideMm)
            .ThenBy(alike => alike.Key.Role, StringComparer.Ordinal)
            .ThenByDescending(alike => alike.Key.Mm)
            .Select((alike, i) => (alike.Key, Mark: Invariant($"N{i + 1}")))
            .ToDictionary(each => each.Key, each => each.Mark);
        return new(
            "fence",
            [.. pieces.Select(piece => piece with { Mark = marks[(piece.Role, Math.Round(piece.LengthMm))] })],
            []
        );
    }

    /// <summary>How far the head of a strut is cut back behind its long point, so that it sits on its post.</summary>
    /// <param name="aroundDeg">Angle round the strut from its short point, where the seam of a template lies [deg], 0 to 360.</param>
    /// <returns>Distance [mm].</returns>
    public static double StrutBehindMm(double aroundDeg) => StrutReachMm((aroundDeg + 180) % 360) - StrutReachMm(0);

    /// <summary>Diameter of a strut [mm].</summary>
    public const double StrutDiameterMm = PlainMm;

    // Left square, the inner edge of the strut touches its post.
    private static double StrutReachMm(double aroundDeg) =>
        Saddle.ReachMm(StrainedMm / 2, (PlainMm / 2) - WallMm, 45, 0, aroundDeg);

    private static Section Tube(double diameterMm, WorkshopBrief workshop)
    {
        var tube = CircularHollow.Of(diameterMm, WallMm);
        return new(
            Invariant($"CHS{diameterMm:0.#}x{WallMm:0.#}"),
            Outline.RoundTube,
            diameterMm,
            WallMm,
            tube.MassKgPerM,
            tube.PerimeterMm,
            BarMm,
            BarMm - workshop.EndTrimMm
        );
    }

    // Lengths in whole millimetres, as they are cut.
    private static Part Piece(string role, Section section, FencePost post, FenceForm form)
    {
        var bottom = At(post.Foot) - new Point(0, 0, form.HoleOf(post.Kind).DepthM * 1000);
        return Part.Straight("", role, section, bottom, bottom + new Point(0, 0, Part.WholeMm(post.LengthM * 1000)));
    }

    // From its post down to the ground beside it, and on into its hole.
    private static Part Strut(FencePoint foot, FencePoint to, FenceForm form, Section section)
    {
        var (reachMm, lengthMm) = (form.StrutReachM * 1000, Part.WholeMm(form.StrutM * 1000));
        var way = At(to) - At(foot);
        var head = At(foot) + new Point(0, 0, reachMm);
        var down = At(foot) + (way * (reachMm / way.LengthMm)) - head;
        return Part.Straight("", StrutRole, section, head, head + (down * (lengthMm / down.LengthMm)));
    }

    private static Point At(FencePoint point) => new(point.EastM * 1000, point.NorthM * 1000, point.LevelM * 1000);
}
