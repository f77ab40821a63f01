using Shaduf.Ground;
using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;
using Shaduf.Workshop;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Posts, struts and rails of a fence, of galvanised tube; customary sizes, from memory.</summary>
public static class FenceSteel
{
    /// <summary>A post between those that struts hold.</summary>
    public const string PlainRole = "fence post";

    /// <summary>A post that struts hold.</summary>
    public const string StrainedRole = "fence post, strained";

    /// <summary>A strut.</summary>
    public const string StrutRole = "fence strut";

    /// <summary>A tube from post to post where a bay has no room for a strut.</summary>
    public const string RailRole = "fence rail";

    // Struts on sloping ground are cut in steps, so that few marks are needed.
    private const double StrutStepMm = 50;

    // A saddle's template holds from here to a right angle.
    private const double LeastSaddleDeg = 20;

    private const double WallMm = 3.2;
    private const double StrainedMm = 60.3;
    private const double PlainMm = 48.3;
    private const double BarMm = 6000;

    /// <summary>The posts, struts and rails, where they stand: millimetres to the east, to the north and up.</summary>
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
            .Concat(line.Rails.Select(rail => Rail(rail, line.Form, plain)))
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

    /// <summary>Each strut with the foot of its post and the next post towards which it leans.</summary>
    /// <param name="line">The fence.</param>
    /// <param name="steel">Its steel.</param>
    public static IEnumerable<(Part Strut, FencePoint Post, FencePoint To)> Struts(FenceLine line, Assembly steel) =>
        line
            .Posts.SelectMany(post => post.StrutsTo.Select(to => (post.Foot, to)))
            .Zip(steel.Parts.Skip(line.Posts.Count), (at, part) => (part, at.Foot, at.to));

    /// <summary>The saddles at the ends of struts and rails, one for each angle and post.</summary>
    /// <param name="fence">The steel of a fence.</param>
    public static IEnumerable<FenceSaddle> Saddles(Assembly fence) =>
        fence
            .Groups.Where(part => part.Role is StrutRole or RailRole)
            .SelectMany(part =>
            {
                var deg = AngleDeg(part.Shape.End - part.Shape.Start);
                return part.Role == StrutRole
                    ? [new FenceSaddle(part.Mark, "on its post", StrainedMm, deg)]
                    : fence
                        .Parts.Where(rail => rail.Mark == part.Mark)
                        .SelectMany(rail => new[] { rail.Shape.Start, rail.Shape.End })
                        .Select(end => PostMm(fence, end))
                        .Distinct()
                        .Select(postMm => new FenceSaddle(
                            part.Mark,
                            Invariant($"on a post of {postMm:0.0}"),
                            postMm,
                            deg
                        ));
            })
            .Where(saddle => saddle.AngleDeg >= LeastSaddleDeg);

    /// <summary>Diameter of a strut or rail [mm].</summary>
    public const double StrutDiameterMm = PlainMm;

    /// <summary>From the axis of its post, along a strut at 45 deg, to its long point [mm].</summary>
    public static double StrutOffMm { get; } = ReachMm(StrainedMm, 45, 0);

    /// <summary>From the axis of a post to the end of a tube's long point, its inner edge touching the post [mm].</summary>
    internal static double ReachMm(double postMm, double angleDeg, double aroundDeg) =>
        Saddle.ReachMm(postMm / 2, (PlainMm / 2) - WallMm, angleDeg, 0, aroundDeg);

    // Between a tube and its plumb post; 90 at the most, whichever way it leans.
    private static double AngleDeg(Point way) =>
        Math.Acos(Math.Min(1, Math.Abs(way.ZMm) / way.LengthMm)) * 180 / Math.PI;

    private static double PostMm(Assembly fence, Point at) =>
        fence
            .Parts.Where(part => part.Role is PlainRole or StrainedRole)
            .MinBy(post => double.Hypot(post.Shape.Start.XMm - at.XMm, post.Shape.Start.YMm - at.YMm))!
            .Section.SideMm;

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

    // From the side of its post down to the ground, and on into its hole: as deep and as far as on level ground at the most.
    private static Part Strut(FencePoint foot, FencePoint to, FenceForm form, Section section)
    {
        var reachMm = form.StrutReachM * 1000;
        var way = At(to) - At(foot);
        var along = way * (1 / way.LengthMm);
        var head = At(foot) + new Point(0, 0, reachMm);
        var down = At(foot) + (along * reachMm) - head;
        var unit = down * (1 / down.LengthMm);
        var (planRatio, groundRatio) = (
            double.Hypot(unit.XMm, unit.YMm),
            along.ZMm / double.Hypot(along.XMm, along.YMm)
        );
        var buriedMm = form.StrutBuriedM * 1000 / Math.Max(planRatio, (groundRatio * planRatio) - unit.ZMm);
        var levelMm = Part.WholeMm(form.StrutM * 1000);
        var lengthMm =
            levelMm + (StrutStepMm * Math.Round((down.LengthMm + buriedMm - (form.StrutM * 1000)) / StrutStepMm));
        var start = head + (unit * ReachMm(StrainedMm, Math.Max(LeastSaddleDeg, AngleDeg(unit)), 0));
        return Part.Straight("", StrutRole, section, start, start + (unit * lengthMm));
    }

    // From post to post at the height of the struts' heads, long point to long point.
    private static Part Rail(FenceRail rail, FenceForm form, Section section)
    {
        var up = new Point(0, 0, form.StrutReachM * 1000);
        var way = At(rail.To.Foot) - At(rail.From.Foot);
        var along = way * (1 / way.LengthMm);
        double OffMm(FencePost post) =>
            ReachMm(
                post.Kind == FencePostKind.Intermediate ? PlainMm : StrainedMm,
                Math.Max(LeastSaddleDeg, AngleDeg(way)),
                90
            );
        var start = At(rail.From.Foot) + up + (along * OffMm(rail.From));
        var lengthMm = Math.Floor(way.LengthMm - OffMm(rail.From) - OffMm(rail.To));
        return Part.Straight("", RailRole, section, start, start + (along * lengthMm));
    }

    private static Point At(FencePoint point) => new(point.EastM * 1000, point.NorthM * 1000, point.LevelM * 1000);
}

/// <summary>The end of a strut or a rail that sits on a post.</summary>
/// <param name="Mark">The tube's mark.</param>
/// <param name="What">On which post.</param>
/// <param name="PostMm">Diameter of the post [mm].</param>
/// <param name="AngleDeg">Angle between tube and post [deg].</param>
public sealed record FenceSaddle(string Mark, string What, double PostMm, double AngleDeg)
{
    /// <summary>How far the end is cut back behind its long point.</summary>
    /// <param name="aroundDeg">Angle round the tube from its short point, where the seam of a template lies [deg], 0 to 360.</param>
    /// <returns>Distance [mm].</returns>
    public double BehindMm(double aroundDeg) => FenceSteel.ReachMm(PostMm, AngleDeg, (aroundDeg + 180) % 360) - LeastMm;

    private double LeastMm => Enumerable.Range(0, 360).Min(deg => FenceSteel.ReachMm(PostMm, AngleDeg, deg));
}
