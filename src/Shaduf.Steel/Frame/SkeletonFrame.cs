using Shaduf.Parts;
using Shaduf.Shape;

namespace Shaduf.Steel;

/// <summary>A piece of a skeleton's member between two of its nodes; one member of the frame.</summary>
/// <param name="Member">Index of the member in the skeleton.</param>
/// <param name="FromMm">Where it begins, from the member's start [mm].</param>
/// <param name="ToMm">Where it ends, from the member's start [mm].</param>
public readonly record struct FrameSpan(int Member, double FromMm, double ToMm);

/// <summary>
/// The frame of a skeleton: each member cut where something joins it, each joint whose axes do not meet bridged by a
/// stiff link, each foot clamped a little below the ground.
/// </summary>
/// <param name="Skeleton">The skeleton.</param>
/// <param name="Model">The frame; its first members are the spans, its last the links.</param>
/// <param name="Spans">The spans, in the order of the frame's members.</param>
/// <param name="Links">The frame's member that bridges each joint of the skeleton; −1 where the axes meet.</param>
public sealed record SkeletonFrame(
    Skeleton Skeleton,
    FrameModel Model,
    IReadOnlyList<FrameSpan> Spans,
    IReadOnlyList<int> Links
)
{
    // A place may lie this far off its axis or its end.
    private const double SameMm = 1;

    /// <summary>Places of a member nearer than this are one [mm]: a shorter span is so stiff that figures are lost beside it.</summary>
    public const double NearestMm = 5;

    private readonly int[][] spansOf = [.. ByMember(Skeleton.Members.Count, Spans)];

    // Axes nearer than this are taken to meet: a stiff link as short as that would cost figures.
    private const double MeetMm = 15;

    // A block of steel of 150 mm by 150 mm where it is 100 mm long, slimmer the shorter it is: some hundred times
    // stiffer than the tubes it joins, and no stiffer, or figures are lost beside it.
    private static FrameSection Stiff(double lengthMm)
    {
        var share = lengthMm / 100;
        return new(22_500 * share, 4.2e7 * share, 4.2e7 * share, 7e7 * share);
    }

    /// <summary>Makes the frame of a skeleton.</summary>
    /// <param name="skeleton">The skeleton.</param>
    /// <param name="section">Section of a member as the frame sees it.</param>
    /// <param name="fixityMm">Depth below the ground at which a foot is held [mm], 0 to 3,000.</param>
    /// <param name="cuts">Further places where members are cut, as loads need it: member and distance from its start [mm].</param>
    /// <returns>The frame.</returns>
    /// <exception cref="ArgumentException">A joint names a member that is not there, or a place off the member's axis; the message names the part.</exception>
    public static SkeletonFrame Of(
        Skeleton skeleton,
        Func<Member, FrameSection> section,
        double fixityMm,
        IEnumerable<(int Member, double AtMm)> cuts
    )
    {
        if (skeleton.Members.FirstOrDefault(member => !(member.LengthMm > SameMm)) is { } nothing)
        {
            throw new ArgumentException($"member {nothing.Mark} has no length");
        }

        var stations = skeleton.Members.Select(member => new SortedSet<double> { 0, member.LengthMm }).ToArray();
        foreach (var joint in skeleton.Joints)
        {
            Mark(stations, joint.First, StationMm(skeleton, joint.First, joint.AtFirst, joint.Name));
            Mark(stations, joint.Second, StationMm(skeleton, joint.Second, joint.AtSecond, joint.Name));
        }

        foreach (var (member, atMm) in cuts)
        {
            Mark(stations, member, atMm);
        }

        var held = skeleton.Feet.ToDictionary(
            foot => foot.Member,
            foot => StationMm(skeleton, foot.Member, foot.Ground - new Point(0, 0, fixityMm), "foot")
        );
        foreach (var (member, atMm) in held)
        {
            Mark(stations, member, atMm);
            stations[member].RemoveWhere(each => each < atMm - NearestMm);
        }

        return new Builder(skeleton, section, stations).Build(held);
    }

    /// <summary>The spans of a member, from its start on.</summary>
    /// <param name="member">Index of the member in the skeleton.</param>
    /// <returns>Indices of the frame's members.</returns>
    public IReadOnlyList<int> SpansOf(int member) => spansOf[member];

    /// <summary>The frame's member and the place on it that a place of a skeleton's member is.</summary>
    /// <param name="member">Index of the member in the skeleton.</param>
    /// <param name="atMm">Distance from its start [mm].</param>
    /// <returns>Index of the span and distance from its start [mm].</returns>
    public (int Span, double AtMm) Place(int member, double atMm)
    {
        var span = spansOf[member].LastOrDefault(each => Spans[each].FromMm <= atMm + SameMm, spansOf[member][0]);
        return (span, Math.Clamp(atMm - Spans[span].FromMm, 0, Model.LengthMm(span)));
    }

    /// <summary>The node at which a joint holds its second member.</summary>
    /// <param name="joint">Index of the joint.</param>
    /// <returns>Index of the node.</returns>
    public int NodeOf(int joint)
    {
        var at = Skeleton.Joints[joint];
        var atMm = StationMm(Skeleton, at.Second, at.AtSecond, at.Name);
        var span = SpansOf(at.Second)
            .MinBy(each => Math.Min(Math.Abs(Spans[each].FromMm - atMm), Math.Abs(Spans[each].ToMm - atMm)));
        var isStart = Math.Abs(Spans[span].FromMm - atMm) < Math.Abs(Spans[span].ToMm - atMm);
        return isStart ? Model.Members[span].Start : Model.Members[span].End;
    }

    private static IEnumerable<int[]> ByMember(int memberCount, IReadOnlyList<FrameSpan> spans)
    {
        var alike = Enumerable.Range(0, spans.Count).ToLookup(span => spans[span].Member);
        return Enumerable.Range(0, memberCount).Select(member => alike[member].ToArray());
    }

    private static void Mark(SortedSet<double>[] stations, int member, double atMm)
    {
        if (stations[member].GetViewBetween(atMm - NearestMm, atMm + NearestMm).Count == 0)
        {
            stations[member].Add(atMm);
        }
    }

    private static double StationMm(Skeleton skeleton, int index, Point at, string name)
    {
        var member =
            index >= 0 && index < skeleton.Members.Count
                ? skeleton.Members[index]
                : throw new ArgumentException($"joint '{name}' names member {index}, which is not there");
        var along = member.To - member.From;
        if (!(along.LengthMm > SameMm))
        {
            throw new ArgumentException($"member {member.Mark} has no length");
        }

        var atMm = along.DotMm2(at - member.From) / along.LengthMm;
        var offMm = (member.From + (along * (atMm / along.LengthMm)) - at).LengthMm;
        return offMm <= SameMm && atMm >= -SameMm && atMm <= along.LengthMm + SameMm
            ? Math.Clamp(atMm, 0, along.LengthMm)
            : throw new ArgumentException(
                FormattableString.Invariant(
                    $"joint '{name}' lies {Math.Max(offMm, Math.Max(-atMm, atMm - along.LengthMm)):0} mm off member {member.Mark}"
                )
            );
    }

    private sealed class Builder(Skeleton skeleton, Func<Member, FrameSection> section, SortedSet<double>[] stations)
    {
        private readonly List<Point> nodes = [];
        private readonly List<(double AtMm, int Node)[]> places = [];

        internal SkeletonFrame Build(Dictionary<int, double> held)
        {
            for (var i = 0; i < skeleton.Members.Count; i++)
            {
                places.Add([.. stations[i].Select(atMm => (atMm, Add(i, atMm)))]);
            }

            Merge();
            var spans = new List<FrameSpan>();
            var members = new List<FrameMember>();
            for (var i = 0; i < skeleton.Members.Count; i++)
            {
                var member = skeleton.Members[i];
                foreach (var (from, to) in places[i].Zip(places[i].Skip(1)))
                {
                    spans.Add(new(i, from.AtMm, to.AtMm));
                    members.Add(new(member.Mark, from.Node, to.Node, section(member), member.Width));
                }
            }

            var links = skeleton.Joints.Select(joint => Link(joint, members)).ToList();
            ReleasePins(spans, members);
            return new(
                skeleton,
                new(
                    nodes,
                    members,
                    [.. held.Select(each => new FrameSupport(NodeAt(each.Key, each.Value), FrameFix.Clamped))]
                ),
                spans,
                links
            );
        }

        private int Add(int member, double atMm)
        {
            var (from, to) = (skeleton.Members[member].From, skeleton.Members[member].To);
            nodes.Add(from + ((to - from) * (atMm / (to - from).LengthMm)));
            return nodes.Count - 1;
        }

        // Joints whose axes meet share a node: that of the first.
        private void Merge()
        {
            var goesInto = Enumerable.Range(0, nodes.Count).ToArray();
            int Last(int node) => goesInto[node] == node ? node : goesInto[node] = Last(goesInto[node]);
            foreach (var joint in skeleton.Joints.Where(joint => (joint.AtFirst - joint.AtSecond).LengthMm <= MeetMm))
            {
                goesInto[Last(NodeOf(joint.Second, joint.AtSecond))] = Last(NodeOf(joint.First, joint.AtFirst));
            }

            var used = Enumerable.Range(0, nodes.Count).Where(node => goesInto[node] == node).ToList();
            var number = used.Index().ToDictionary(each => each.Item, each => each.Index);
            foreach (var row in places)
            {
                for (var i = 0; i < row.Length; i++)
                {
                    row[i] = (row[i].AtMm, number[Last(row[i].Node)]);
                }
            }

            var kept = used.Select(node => nodes[node]).ToList();
            nodes.Clear();
            nodes.AddRange(kept);
        }

        private int Link(Joint joint, List<FrameMember> members)
        {
            var (first, second) = (NodeOf(joint.First, joint.AtFirst), NodeOf(joint.Second, joint.AtSecond));
            if (first == second)
            {
                return -1;
            }

            var along = nodes[second] - nodes[first];
            var stiff = Stiff(along.LengthMm);
            if (joint.Kind == JointKind.Seated)
            {
                // Local y is the axis of the member under it, about which the seat lets go.
                var under = skeleton.Members[joint.First];
                members.Add(
                    new(joint.Name, first, second, stiff, under.To - under.From, EndRelease: EndRelease.BendingY)
                );
                return members.Count - 1;
            }

            var across = Math.Abs(along.XMm) < 0.9 * along.LengthMm ? new Point(1, 0, 0) : new Point(0, 1, 0);
            members.Add(new(joint.Name, first, second, stiff, across));
            return members.Count - 1;
        }

        private void ReleasePins(List<FrameSpan> spans, List<FrameMember> members)
        {
            const EndRelease pin = EndRelease.BendingY | EndRelease.BendingZ;
            foreach (var joint in skeleton.Joints.Where(joint => joint.Kind == JointKind.Pinned))
            {
                var node = NodeOf(joint.Second, joint.AtSecond);
                for (var i = 0; i < spans.Count; i++)
                {
                    if (spans[i].Member == joint.Second && members[i].Start == node)
                    {
                        members[i] = members[i] with { StartRelease = pin };
                    }
                    else if (spans[i].Member == joint.Second && members[i].End == node)
                    {
                        members[i] = members[i] with { EndRelease = pin };
                    }
                }
            }
        }

        private int NodeOf(int member, Point at) => NodeAt(member, StationMm(skeleton, member, at, ""));

        private int NodeAt(int member, double atMm) => places[member].MinBy(place => Math.Abs(place.AtMm - atMm)).Node;
    }
}
