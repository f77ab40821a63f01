using Shaduf.Shape;

namespace Shaduf.Steel;

/// <summary>What a frame and its loads must be before they are computed.</summary>
internal static class FrameChecks
{
    internal static void Require(FrameModel model)
    {
        Need(model.Members.Count > 0, "a frame without members");
        Need(model.Nodes.All(IsNumber), "a node whose place is not a number");
        Need(IsAbove(model.ElasticModulusNPerMm2, model.ShearModulusNPerMm2), "a modulus that is not above 0");
        foreach (var member in model.Members)
        {
            var (a, b) = (member.Start, member.End);
            Need(IsIn(a, model.Nodes) && IsIn(b, model.Nodes), "a node that is not there", member);
            var s = member.Section;
            Need(
                IsAbove(s.AreaMm2, s.InertiaYMm4, s.InertiaZMm4, s.TorsionConstantMm4),
                "a section figure that is not above 0",
                member
            );
        }

        Need(model.Supports.All(support => IsIn(support.Node, model.Nodes)), "a support at a node that is not there");
    }

    internal static void Require(LoadCase loads, FrameModel model)
    {
        Need(
            loads.Nodes.All(load => IsIn(load.Node, model.Nodes) && IsNumber(load.Force) && IsNumber(load.Moment)),
            $"load case {loads.Name}: a load at a node that is not there, or that is not a number"
        );
        Need(
            loads.Spread.All(load => IsIn(load.Member, model.Members) && IsNumber(load.PerMm)),
            $"load case {loads.Name}: a load on a member that is not there, or that is not a number"
        );
        Need(
            loads.Points.All(load =>
                IsIn(load.Member, model.Members)
                && IsNumber(load.Force)
                && load.AtMm >= 0
                && load.AtMm <= model.LengthMm(load.Member) * (1 + 1e-12)
            ),
            $"load case {loads.Name}: a load beside its member, or that is not a number"
        );
    }

    private static void Need(bool isTrue, string otherwise, FrameMember? member = null)
    {
        if (!isTrue)
        {
            throw new ArgumentException(member is null ? otherwise : $"member {member.Mark}: {otherwise}");
        }
    }

    private static bool IsIn<T>(int index, IReadOnlyList<T> list) => index >= 0 && index < list.Count;

    private static bool IsAbove(params ReadOnlySpan<double> figures)
    {
        foreach (var figure in figures)
        {
            if (!(figure > 0) || double.IsInfinity(figure))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsNumber(Point point) => double.IsFinite(point.XMm + point.YMm + point.ZMm);

    private static bool IsNumber(Force force) => double.IsFinite(force.XN + force.YN + force.ZN);

    private static bool IsNumber(Moment moment) => double.IsFinite(moment.XNMm + moment.YNMm + moment.ZNMm);
}
