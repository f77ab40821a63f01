using Shaduf.Shape;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What acts on a rack.</summary>
public enum RackActionKind
{
    /// <summary>Steel and modules.</summary>
    Weight,

    /// <summary>What a column out of plumb makes of the weight; may act either way.</summary>
    Lean,

    /// <summary>One person on a bearer.</summary>
    Person,

    /// <summary>Snow.</summary>
    Snow,

    /// <summary>Wind that presses on the glass.</summary>
    WindDown,

    /// <summary>Wind that lifts.</summary>
    WindUp,

    /// <summary>Wind along the row.</summary>
    WindAlong,

    /// <summary>Wind on the edges of the plane, for bearers alone.</summary>
    WindOnEdges,
}

/// <summary>One action on a rack; wind is kept for a gust of 1 kN/m2.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">Its name on the sheets.</param>
/// <param name="Load">Its loads.</param>
/// <param name="Sense">+1 where it blows away from the low edge or to the right, −1 the other way, 0 where it has no direction.</param>
public sealed record RackAction(RackActionKind Kind, string Name, LoadCase Load, int Sense = 0)
{
    /// <summary>Whether the gust lies off the middle of the row.</summary>
    public bool IsUneven { get; init; }

    /// <summary>Whether it grows with the gust.</summary>
    public bool IsWind =>
        Kind
            is RackActionKind.WindDown
                or RackActionKind.WindUp
                or RackActionKind.WindAlong
                or RackActionKind.WindOnEdges;
}

/// <summary>The actions on a rack that stands alone in the wind.</summary>
internal sealed class RackActions
{
    /// <summary>Gust for which wind is kept [N/mm2]: 1 kN/m2.</summary>
    public const double UnitNPerMm2 = 1e-3;

    /// <summary>Share of the row by which a gust may lie off its middle.</summary>
    /// <source>judgement, no source</source>
    public const double UnevenShare = 0.10;

    private const double GravityNPerKg = 9.81;

    // EN 1991-1-4:2005, table 7.10, rough surface; 7.7, sharp-edged sections. From memory.
    private const double FrictionCoefficient = 0.02;
    private const double EdgeCoefficient = 2.0;
    private const double PersonN = 1000;
    private readonly Rack rack;
    private readonly SkeletonFrame frame;
    private readonly MonopitchCanopy canopy;
    private readonly PlaneLoad plane;
    private readonly Point down = new(0, 0, -1);
    private readonly Point ontoGlass;

    private RackActions(Rack rack, SkeletonFrame frame, MonopitchCanopy canopy)
    {
        (this.rack, this.frame, this.canopy) = (rack, frame, canopy);
        plane = new(rack, frame);
        var tilt = rack.Setting.TiltDeg * Math.PI / 180;
        ontoGlass = new(0, Math.Sin(tilt), -Math.Cos(tilt));
    }

    private double AreaMm2 => rack.Size.LengthMm * rack.Size.DepthMm;

    /// <summary>The actions on a rack.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="frame">Its frame, bearers cut at <see cref="Cuts"/>.</param>
    /// <param name="canopy">Coefficients of the plane.</param>
    /// <param name="snowKNPerM2">Snow on the ground [kN/m2], 0 for none.</param>
    /// <returns>The actions.</returns>
    public static IReadOnlyList<RackAction> Of(
        Rack rack,
        SkeletonFrame frame,
        MonopitchCanopy canopy,
        double snowKNPerM2
    ) => [.. new RackActions(rack, frame, canopy).All(snowKNPerM2)];

    /// <summary>Where bearers are cut so that the strips along the side edges are spans of their own.</summary>
    /// <param name="rack">The rack.</param>
    /// <returns>Member and distance from its start [mm].</returns>
    public static IEnumerable<(int Member, double AtMm)> Cuts(Rack rack) =>
        rack
            .Rows.SelectMany(row => new[] { row.Low, row.High })
            .Distinct()
            .SelectMany(bearer =>
                new[] { 0.1, 0.5, 0.9 }.Select(share => (bearer, share * rack.Skeleton.Members[bearer].LengthMm))
            );

    private IEnumerable<RackAction> All(double snowKNPerM2)
    {
        yield return new(RackActionKind.Weight, "steel and modules", Weight(down));
        foreach (
            var (name, way) in new[] { ("across the row", new Point(0, 1, 0)), ("along the row", new Point(1, 0, 0)) }
        )
        {
            yield return new(
                RackActionKind.Lean,
                $"columns out of plumb {name}",
                Weight(way * SwayImperfection.LeanRad(rack.Size.TopEdgeMm / 1000, rack.Skeleton.Feet.Count))
            );
        }

        foreach (var person in Persons())
        {
            yield return person;
        }

        if (snowKNPerM2 > 0)
        {
            var onPlane =
                RoofSnow.OnPlanKNPerM2(snowKNPerM2, rack.Setting.TiltDeg)
                * Math.Cos(rack.Setting.TiltDeg * Math.PI / 180);
            yield return new(RackActionKind.Snow, "snow", Case("snow", plane.Even(onPlane * 1e-3, down)));
        }

        foreach (var wind in Winds())
        {
            yield return wind;
        }
    }

    private LoadCase Weight(Point way)
    {
        var modules = plane.Even(rack.ModuleMassKg * GravityNPerKg / AreaMm2, way);
        var steel = frame.Spans.Select(
            (span, i) =>
            {
                var profile = rack.Skeleton.Members[span.Member].Profile;
                var perMm = RackProfiles.BarCount(profile) * profile.Bar.MassKgPerM * GravityNPerKg / 1000;
                return new SpreadLoad(i, new(way.XMm * perMm, way.YMm * perMm, way.ZMm * perMm));
            }
        );
        return Case("weight", [.. modules, .. steel]);
    }

    // At the free end and in the middle of the longest span of each bearer.
    private IEnumerable<RackAction> Persons()
    {
        foreach (var bearer in rack.Rows.SelectMany(row => new[] { row.Low, row.High }).Distinct())
        {
            var member = rack.Skeleton.Members[bearer];
            foreach (var atMm in new[] { 0, MiddleOfLongest(bearer) })
            {
                var (span, from) = frame.Place(bearer, atMm);
                yield return new(
                    RackActionKind.Person,
                    Invariant($"a person on {member.Mark} at {atMm / 1000:0.00} m"),
                    new("person", [], [], [new(span, from, new(0, 0, -PersonN))])
                );
            }
        }
    }

    private double MiddleOfLongest(int bearer)
    {
        var member = rack.Skeleton.Members[bearer];
        double[] held =
        [
            .. rack
                .Skeleton.Joints.Where(joint => joint.Second == bearer)
                .Select(joint => (joint.AtSecond - member.From).LengthMm)
                .Order(),
        ];
        return held.Length < 2 ? member.LengthMm / 2
            : held.Zip(held.Skip(1)).MaxBy(pair => pair.Second - pair.First) is var (a, b) ? (a + b) / 2
            : 0;
    }

    private IEnumerable<RackAction> Winds()
    {
        foreach (var (from, isLow) in new[] { ("the low edge", true), ("the high edge", false) })
        {
            foreach (
                var (uneven, where) in new[] { (0, ""), (1, ", stronger at the right"), (-1, ", stronger at the left") }
            )
            {
                yield return Across(RackActionKind.WindDown, $"wind from {from}, down{where}", isLow, uneven);
                yield return Across(RackActionKind.WindUp, $"wind from {from}, up{where}", isLow, uneven);
            }
        }

        yield return Along("wind along the row, to the right", 1);
        yield return Along("wind along the row, to the left", -1);
        yield return Edges("wind on the edges, down", true);
        yield return Edges("wind on the edges, up", false);
    }

    private RackAction Across(RackActionKind kind, string name, bool isFromLow, int uneven)
    {
        var depth = rack.Size.DepthMm;
        var force = kind == RackActionKind.WindDown ? canopy.Force.DownCoefficient : canopy.Force.UpCoefficient;

        // A straight line whose resultant lies at a quarter of the slope from the windward edge.
        var (windward, leeward) = (2.5 * force * UnitNPerMm2, -0.5 * force * UnitNPerMm2);
        IEnumerable<PressureStrip> Strips(double alongShare)
        {
            var more = 1 + (6 * UnevenShare * uneven * ((2 * alongShare) - 1));
            yield return isFromLow
                ? new(0, depth, windward * more, leeward * more)
                : new(0, depth, leeward * more, windward * more);
        }

        var way = new Point(0, isFromLow ? 1 : -1, 0);
        return new(kind, name, Case(name, [.. plane.Of(Strips, ontoGlass), .. Drag(way)]), isFromLow ? 1 : -1)
        {
            IsUneven = uneven != 0,
        };
    }

    private RackAction Along(string name, int sense)
    {
        var way = new Point(sense, 0, 0);
        var friction = plane.Even(2 * FrictionCoefficient * UnitNPerMm2, way);
        return new(RackActionKind.WindAlong, name, Case(name, [.. friction, .. Drag(way)]), sense);
    }

    private RackAction Edges(string name, bool isDown)
    {
        double Of(CanopyPair pair) => (isDown ? pair.DownCoefficient : pair.UpCoefficient) * UnitNPerMm2;
        double Worse(double a, double b) => isDown ? Math.Max(a, b) : Math.Min(a, b);
        var depth = rack.Size.DepthMm;
        IEnumerable<PressureStrip> Strips(double alongShare)
        {
            var isSide = alongShare is < 0.1 or > 0.9;
            var middle = isSide ? Of(canopy.Sides) : Of(canopy.Middle);
            var edge = isSide ? Worse(Of(canopy.Sides), Of(canopy.Edges)) : Of(canopy.Edges);
            yield return new(0, depth / 10, edge, edge);
            yield return new(depth / 10, depth * 9 / 10, middle, middle);
            yield return new(depth * 9 / 10, depth, edge, edge);
        }

        return new(RackActionKind.WindOnEdges, name, Case(name, plane.Of(Strips, ontoGlass)));
    }

    // Wind on tubes and on the edges of the plane that look into it; none is taken as sheltered by another.
    private IEnumerable<SpreadLoad> Drag(Point way)
    {
        for (var span = 0; span < frame.Spans.Count; span++)
        {
            var member = rack.Skeleton.Members[frame.Spans[span].Member];
            var axis = (member.To - member.From) * (1 / member.LengthMm);
            var across = Math.Sqrt(Math.Max(0, 1 - Math.Pow(axis.DotMm2(way), 2)));
            var perMm =
                across
                * UnitNPerMm2
                * (
                    RackProfiles.IsChannel(member.Profile)
                        ? EdgeCoefficient * RackProfiles.HeightMm(member.Profile) * (LooksInto(member, way) ? 1 : 0)
                        : MemberDrag.SquareTubeCoefficient(member.Profile.Bar.SideMm, member.Profile.Bar.WallMm)
                            * member.Profile.Bar.SideMm
                );
            if (perMm > 0)
            {
                yield return new(span, new(way.XMm * perMm, way.YMm * perMm, way.ZMm * perMm));
            }
        }
    }

    // An edge of the plane whose lips point down the wind is the windward one.
    private static bool LooksInto(Member member, Point way) =>
        member.Profile.MakeUp == MakeUp.Channel && member.Width.DotMm2(way) > 0.1 * member.Width.LengthMm;

    private static LoadCase Case(string name, IEnumerable<SpreadLoad> spread) =>
        new(name, [], [.. spread.Where(load => load.PerMm != default)], []);
}
