using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>The lines along which a slide-in frame on one line of columns carries, and its joints.</summary>
/// <param name="frame">The frame's geometry.</param>
/// <param name="sections">Sections.</param>
internal sealed class RackSkeleton(RackFrame frame, RackSections sections)
{
    private readonly List<Member> members = [];
    private readonly List<Joint> joints = [];
    private readonly List<Foot> feet = [];
    private readonly Point upSlope = frame.OnSlope(0, 1, 0) - frame.OnSlope(0, 0, 0);

    private Point OffPlane => frame.OnSlope(0, 0, 1) - frame.OnSlope(0, 0, 0);

    private double AxisMm => sections.Channel.OuterDepthMm / 2;

    /// <summary>The skeleton of a frame.</summary>
    /// <param name="parts">The parts of the frame.</param>
    /// <returns>The skeleton: first the channels along the row, from the low edge up, then all else.</returns>
    public Skeleton Of(IReadOnlyList<Part> parts)
    {
        var bearers = Bearers();
        Sides(bearers);
        foreach (var tube in parts.Where(part => part.Mark == "T1"))
        {
            Tube(tube, bearers);
        }

        return new(members, joints, feet);

        void Tube(Part tube, IReadOnlyList<int> carried)
        {
            var x = tube.Shape.Start.XMm;
            var index = Add(tube, new(1, 0, 0));
            foreach (var bearer in carried)
            {
                var slope = SlopeOf(members[bearer].From);
                Join(
                    "cross tube to channel",
                    (index, frame.OnSlope(x, slope, frame.TubeAxisMm)),
                    (bearer, frame.OnSlope(x, slope, AxisMm)),
                    new(
                        WeldPattern.TwoRuns,
                        RackFrame.WeldLegMm,
                        sections.Tube.SideMm,
                        members[bearer].Profile.MakeUp == MakeUp.Channel
                            ? sections.Angle.SideMm
                            : 2 * sections.Angle.SideMm,
                        new(1, 0, 0)
                    )
                );
            }

            var own = parts.Where(part => part.Mark is "C1" or "B1" or "B2" && Math.Abs(part.Shape.End.XMm - x) < 1);
            Support(index, [.. own]);
        }
    }

    // The channels along the row: low edge, holders, high edge.
    private List<int> Bearers()
    {
        var web = sections.Channel.WebMm;
        var bearers = new List<int> { Channel("F1", "long side of the frame", 0, 1) };
        bearers.AddRange(
            frame.HolderSlopesMm.Select(slope =>
                Add(
                    new(
                        "F4",
                        "middle holder",
                        new(MakeUp.DoubleChannel, sections.Angle, sections.Channel.InsideDepthMm),
                        frame.OnSlope(web, slope, AxisMm),
                        frame.OnSlope(frame.LengthMm - web, slope, AxisMm),
                        upSlope
                    )
                )
            )
        );
        bearers.Add(Channel("F1", "long side of the frame", frame.DepthMm, -1));
        return bearers;
    }

    private int Channel(string mark, string role, double slope, int lipsUp) =>
        Add(
            new(
                mark,
                role,
                new(MakeUp.Channel, sections.Angle, sections.Channel.InsideDepthMm),
                frame.OnSlope(0, slope, AxisMm),
                frame.OnSlope(frame.LengthMm, slope, AxisMm),
                upSlope * lipsUp
            )
        );

    // The short sides: one welded, the other bolted so that the modules slide in.
    private void Sides(IReadOnlyList<int> bearers)
    {
        foreach (
            var (mark, role, x, lips, kind) in new[]
            {
                ("F2", "closed short side", 0.0, 1, JointKind.Welded),
                ("F3", "removable short side", frame.LengthMm, -1, JointKind.Pinned),
            }
        )
        {
            var web = sections.Channel.WebMm;
            var index = Add(
                new(
                    mark,
                    role,
                    new(MakeUp.Channel, sections.Angle, sections.Channel.InsideDepthMm),
                    frame.OnSlope(x, web, AxisMm),
                    frame.OnSlope(x, frame.DepthMm - web, AxisMm),
                    new(lips, 0, 0)
                )
            );
            var side = members[index];
            End(bearers[0], index, frame.OnSlope(x, 0, AxisMm), side.From, kind);
            End(bearers[^1], index, frame.OnSlope(x, frame.DepthMm, AxisMm), side.To, kind);
            foreach (var holder in bearers.Skip(1).SkipLast(1))
            {
                var end = lips > 0 ? members[holder].From : members[holder].To;
                End(index, holder, frame.OnSlope(x, SlopeOf(end), AxisMm), end, kind);
            }
        }
    }

    private void End(int goesOn, int ends, Point atGoing, Point atEnd, JointKind kind)
    {
        var isBolted = kind == JointKind.Pinned;
        var weld = new JointWeld(
            WeldPattern.TwoRuns,
            RackFrame.WeldLegMm,
            sections.Channel.OuterDepthMm,
            sections.Channel.WebMm,
            OffPlane
        );
        joints.Add(
            new(isBolted ? "removable side" : "corner of the frame", kind, goesOn, atGoing, ends, atEnd)
            {
                Weld = isBolted ? null : weld,
            }
        );
    }

    private void Support(int tube, IReadOnlyList<Part> parts)
    {
        var column = parts.Single(part => part.Mark == "C1");
        var columnIndex = Add(column, new(1, 0, 0));
        feet.Add(new(columnIndex, column.Shape.Start with { ZMm = 0 }));
        var round = new JointWeld(
            WeldPattern.AllRound,
            RackFrame.WeldLegMm,
            sections.Column.SideMm,
            sections.Column.SideMm,
            new(1, 0, 0)
        );
        Join("column to cross tube", (tube, OnTube(column.Shape.End)), (columnIndex, column.Shape.End), round);
        foreach (var strut in parts.Where(part => part.Mark is "B1" or "B2"))
        {
            var index = Add(strut, new(1, 0, 0));
            var all = round with { WidthMm = sections.Tube.SideMm, HeightMm = sections.Tube.SideMm * 1.25 };
            var onColumn = column.Shape.Start with { ZMm = strut.Shape.Start.ZMm };
            Join("strut to column", (columnIndex, onColumn), (index, strut.Shape.Start), all);
            Join("strut to cross tube", (tube, OnTube(strut.Shape.End)), (index, strut.Shape.End), all);
        }
    }

    private Point OnTube(Point at) => frame.OnSlope(at.XMm, SlopeOf(at), frame.TubeAxisMm);

    private double SlopeOf(Point at) => upSlope.DotMm2(at - frame.OnSlope(0, 0, 0));

    private int Add(Part part, Point width) =>
        Add(new(part.Mark, part.Role, new(MakeUp.Single, part.Section), part.Shape.Start, part.Shape.End, width));

    private int Add(Member member)
    {
        members.Add(member);
        return members.Count - 1;
    }

    private void Join(string name, (int Member, Point At) goesOn, (int Member, Point At) sits, JointWeld weld) =>
        joints.Add(new(name, JointKind.Welded, goesOn.Member, goesOn.At, sits.Member, sits.At) { Weld = weld });
}
