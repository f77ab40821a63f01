using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>Equal angles, alone or lapped to a channel, as sections of members: composed exactly from the angles at their places.</summary>
internal static class AngleShape
{
    // An angle at its place: heel from the origin, and the side to which each leg points.
    private readonly record struct Placed(double HeelYMm, double HeelZMm, int LegY, int LegZ);

    /// <summary>One angle.</summary>
    internal static MemberSection Single(double legMm, double thicknessMm, double rootRadiusMm) =>
        Of(
            Invariant($"angle {legMm:0.#} x {thicknessMm:0.##}"),
            SectionKind.Angle,
            (legMm, thicknessMm, rootRadiusMm),
            [new(0, 0, 1, 1)]
        ) with
        {
            Curve = BucklingCurve.B,
        };

    /// <summary>A slide-in channel, or two of them back to back.</summary>
    internal static MemberSection Composed(SectionKind kind, SlideInChannel channel, double rootRadiusMm)
    {
        var (a, t, depthMm) = (channel.LegMm, channel.ThicknessMm, channel.OuterDepthMm);
        Placed[] one = [new(0, depthMm, 1, -1), new(t, 0, 1, 1)];
        var isDouble = kind == SectionKind.DoubleChannel;
        var name = Invariant($"channel of two angles {a:0.#} x {t:0.##}, {channel.InsideDepthMm:0.#} deep inside");
        return Of(
            isDouble ? "double " + name : name,
            kind,
            (a, t, rootRadiusMm),
            isDouble ? [.. one, .. one.Select(angle => angle with { HeelYMm = -angle.HeelYMm, LegY = -1 })] : one
        ) with
        {
            Channel = channel,
            ShearAreaZMm2 = (isDouble ? 2 : 1) * depthMm * t,
        };
    }

    /// <summary>The same channel made of angles of another thickness.</summary>
    internal static SlideInChannel WithWall(SlideInChannel channel, double thicknessMm) =>
        channel with
        {
            ThicknessMm = thicknessMm,
            LapMm = (2 * channel.LegMm) - (2 * thicknessMm) - channel.InsideDepthMm,
            WebMm = 2 * thicknessMm,
            OuterDepthMm = channel.InsideDepthMm + (2 * thicknessMm),
            LipCoverMm = channel.LegMm - (2 * thicknessMm),
        };

    private static MemberSection Of(
        string name,
        SectionKind kind,
        (double LegMm, double ThicknessMm, double RootRadiusMm) size,
        Placed[] angles
    )
    {
        var (a, t, rootMm) = size;
        var angle = EqualAngle.Of(a, t, rootMm, Math.Min(rootMm / 2, t));
        var (one, c) = (angle.Section, angle.CentroidMm);
        Fibre[] centres = [.. angles.Select(at => new Fibre(at.HeelYMm + (at.LegY * c), at.HeelZMm + (at.LegZ * c)))];
        var centroid = new Fibre(centres.Average(each => each.YMm), centres.Average(each => each.ZMm));
        Fibre[] arms = [.. centres.Select(each => From(centroid, each))];
        var inertiaY = arms.Sum(arm => one.InertiaYMm4 + (one.AreaMm2 * arm.ZMm * arm.ZMm));
        var inertiaZ = arms.Sum(arm => one.InertiaZMm4 + (one.AreaMm2 * arm.YMm * arm.YMm));
        var product = angles
            .Zip(arms)
            .Sum(pair =>
                (pair.First.LegY * pair.First.LegZ * angle.ProductOfInertiaMm4)
                + (one.AreaMm2 * pair.Second.YMm * pair.Second.ZMm)
            );
        Fibre[] fibres = [.. angles.SelectMany(at => Corners(at, a, t)).Select(each => From(centroid, each))];
        var torsion = angles.Length * one.TorsionConstantMm4;
        return new(
            name,
            kind,
            fibres.Max(each => each.ZMm) - fibres.Min(each => each.ZMm),
            fibres.Max(each => each.YMm) - fibres.Min(each => each.YMm),
            t,
            new(angles.Length * one.AreaMm2, inertiaY, inertiaZ, torsion),
            inertiaY / fibres.Max(each => Math.Abs(each.ZMm)),
            inertiaZ / fibres.Max(each => Math.Abs(each.YMm)),
            null,
            null,
            angles.Length * a * t,
            angles.Length * a * t,
            torsion / t,
            angles.Length * one.MassKgPerM,
            BucklingCurve.C,
            product,
            fibres
        )
        {
            RootRadiusMm = rootMm,
        };
    }

    private static IEnumerable<Fibre> Corners(Placed at, double a, double t) =>
        new[] { (0.0, 0.0), (a, 0), (a, t), (t, a), (0, a) }.Select(corner => new Fibre(
            at.HeelYMm + (at.LegY * corner.Item1),
            at.HeelZMm + (at.LegZ * corner.Item2)
        ));

    private static Fibre From(Fibre centroid, Fibre each) => new(each.YMm - centroid.YMm, each.ZMm - centroid.ZMm);
}
