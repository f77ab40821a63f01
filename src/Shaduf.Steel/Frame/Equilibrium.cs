using Shaduf.Shape;

namespace Shaduf.Steel;

/// <summary>Reactions of a frame, and the proof that they carry the loads.</summary>
internal static class Equilibrium
{
    /// <summary>Reactions: what the members' ends need at the held nodes, less the loads that stand there.</summary>
    internal static IReadOnlyList<Reaction> Reactions(FrameAnalysis frame, LoadCase loads, double[] ends)
    {
        var needed = new double[frame.Model.Nodes.Count * 6];
        Span<double> station = stackalloc double[12];
        for (var m = 0; m < frame.Members.Length; m++)
        {
            frame.Members[m].Axes.ToStation(ends.AsSpan(12 * m, 12), station);
            var member = frame.Members[m].Member;
            for (var i = 0; i < 12; i++)
            {
                needed[((i < 6 ? member.Start : member.End) * 6) + (i % 6)] += station[i];
            }
        }

        foreach (var (node, force, moment) in loads.Nodes)
        {
            needed[node * 6] -= force.XN;
            needed[(node * 6) + 1] -= force.YN;
            needed[(node * 6) + 2] -= force.ZN;
            needed[(node * 6) + 3] -= moment.XNMm;
            needed[(node * 6) + 4] -= moment.YNMm;
            needed[(node * 6) + 5] -= moment.ZNMm;
        }

        return [.. frame.Model.Supports.Select(support => ReactionOf(support, needed))];
    }

    /// <summary>
    /// What is left over of forces, and of moments about the origin, as a share of the loads: of the forces times their
    /// distances for the moments, since loads that all pass through the origin have none about it. With second order
    /// the moments' arms move, so that only forces are added up.
    /// </summary>
    internal static double ImbalanceShare(
        FrameModel model,
        LoadCase loads,
        IReadOnlyList<Reaction> reactions,
        bool isSecondOrder
    )
    {
        var acting = Acting(model, loads).ToList();
        var held = reactions.Select(each => new Wrench(each.Force, each.Moment, model.Nodes[each.Node]));
        var left = acting.Concat(held).ToList();
        var force = Largest(left.Select(each => each.Force));
        var moment = isSecondOrder ? 0 : Largest(left.Select(each => each.AboutOrigin));
        return Math.Max(
            Share(force, acting.Sum(each => Size(each.Force))),
            Share(moment, acting.Sum(each => each.TurningNMm))
        );
    }

    private static IEnumerable<Wrench> Acting(FrameModel model, LoadCase loads)
    {
        Point On(int member, double atMm)
        {
            var (from, to) = (model.Nodes[model.Members[member].Start], model.Nodes[model.Members[member].End]);
            return from + ((to - from) * (atMm / model.LengthMm(member)));
        }

        return loads
            .Nodes.Select(load => new Wrench(load.Force, load.Moment, model.Nodes[load.Node]))
            .Concat(
                loads.Spread.Select(load =>
                {
                    var lengthMm = model.LengthMm(load.Member);
                    return new Wrench(load.PerMm * lengthMm, default, On(load.Member, lengthMm / 2));
                })
            )
            .Concat(loads.Points.Select(load => new Wrench(load.Force, default, On(load.Member, load.AtMm))));
    }

    private static double Share(double left, double size) => size > 0 ? left / size : left;

    private static double Largest(IEnumerable<Force> all)
    {
        var sum = all.Aggregate((a, b) => new(a.XN + b.XN, a.YN + b.YN, a.ZN + b.ZN));
        return Math.Max(Math.Abs(sum.XN), Math.Max(Math.Abs(sum.YN), Math.Abs(sum.ZN)));
    }

    private static double Size(Force force) => Math.Abs(force.XN) + Math.Abs(force.YN) + Math.Abs(force.ZN);

    private static Reaction ReactionOf(FrameSupport support, double[] needed)
    {
        double At(int direction) =>
            support.Fix.HasFlag((FrameFix)(1 << direction)) ? needed[(support.Node * 6) + direction] : 0;
        return new(support.Node, new(At(0), At(1), At(2)), new(At(3), At(4), At(5)));
    }

    private readonly record struct Wrench(Force Force, Moment Moment, Point At)
    {
        internal double TurningNMm =>
            Math.Abs(Moment.XNMm) + Math.Abs(Moment.YNMm) + Math.Abs(Moment.ZNMm) + (Size(Force) * At.LengthMm);

        internal Force AboutOrigin =>
            new(
                Moment.XNMm + (At.YMm * Force.ZN) - (At.ZMm * Force.YN),
                Moment.YNMm + (At.ZMm * Force.XN) - (At.XMm * Force.ZN),
                Moment.ZNMm + (At.XMm * Force.YN) - (At.YMm * Force.XN)
            );
    }
}
