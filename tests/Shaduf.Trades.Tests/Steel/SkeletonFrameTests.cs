using CsCheck;
using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

/// <summary>A post with an arm on it: the arm's axis passes above the post's head.</summary>
public sealed class SkeletonFrameTests
{
    private static readonly FrameSection Tube = new(540.8, 194_671, 194_671, 321_347);
    private static readonly Profile Bar = new(
        MakeUp.Single,
        new("SHS 50x3", Outline.SquareTube, 50, 3, 4.25, 190, 6000, 5980)
    );

    private static Skeleton Post(double headMm, double offMm, double armMm, JointKind kind = JointKind.Welded) =>
        new(
            [
                new("C1", "post", Bar, new(0, 0, -500), new(0, 0, headMm), new(1, 0, 0)),
                new("A1", "arm", Bar, new(0, 0, headMm + offMm), new(armMm, 0, headMm + offMm), new(0, 1, 0)),
            ],
            [new("arm on post", kind, 0, new(0, 0, headMm), 1, new(0, 0, headMm + offMm))],
            [new(0, new(0, 0, 0))]
        );

    [Fact]
    public void The_foot_is_held_at_the_depth_asked_and_what_lies_below_is_left_out() =>
        Gen.Select(Gen.Double[1000, 3000], Gen.Double[0, 450], Gen.Double[20, 200], Gen.Double[500, 2000])
            .Sample(
                (head, fixity, off, arm) =>
                {
                    var frame = SkeletonFrame.Of(Post(head, off, arm), _ => Tube, fixity, []);
                    var end = frame.Place(1, arm);
                    var result = FrameAnalysis
                        .Of(frame.Model)
                        .Solve(new("tip", [], [], [new(end.Span, end.AtMm, new(0, 300, -1000))]));
                    var foot = Assert.Single(result.Reactions);
                    Near.Share(1000 * arm, Math.Abs(foot.Moment.YNMm), 1e-6);
                    Near.Share(300 * (head + off + fixity), Math.Abs(foot.Moment.XNMm), 1e-6);
                    Assert.Equal(-fixity, frame.Model.Nodes[foot.Node].ZMm, 5e-7);
                }
            );

    [Fact]
    public void Axes_that_meet_share_a_node_and_others_are_bridged()
    {
        Assert.Equal(-1, Assert.Single(SkeletonFrame.Of(Post(2000, 0, 800), _ => Tube, 300, []).Links));
        var bridged = SkeletonFrame.Of(Post(2000, 60, 800), _ => Tube, 300, []);
        Assert.Equal(bridged.Model.Members.Count - 1, Assert.Single(bridged.Links));
        Assert.Equal("arm on post", bridged.Model.Members[^1].Mark);
    }

    [Fact]
    public void An_arm_on_a_pin_falls() =>
        Assert.Throws<MechanismException>(() =>
            FrameAnalysis.Of(SkeletonFrame.Of(Post(2000, 60, 800, JointKind.Pinned), _ => Tube, 300, []).Model)
        );

    [Fact]
    public void A_cut_makes_two_spans_and_changes_nothing()
    {
        var whole = SkeletonFrame.Of(Post(2000, 60, 800), _ => Tube, 300, []);
        var cut = SkeletonFrame.Of(Post(2000, 60, 800), _ => Tube, 300, [(1, 300)]);
        Assert.Equal(whole.Spans.Count + 1, cut.Spans.Count);
        Assert.Equal([0, 300], cut.SpansOf(1).Select(span => cut.Spans[span].FromMm));
        Assert.Equal(Tip(whole), Tip(cut), 1e-6);

        static double Tip(SkeletonFrame frame)
        {
            var end = frame.Place(1, 800);
            var result = FrameAnalysis
                .Of(frame.Model)
                .Solve(new("tip", [], [], [new(end.Span, end.AtMm, new(0, 0, -1000))]));
            return result.MovementMm(end.Span, 1).ZMm;
        }
    }

    [Fact]
    public void A_joint_off_its_member_names_the_part()
    {
        var post = Post(2000, 60, 800);
        var off = post with { Joints = [post.Joints[0] with { AtSecond = new(0, 5, 2060) }] };
        var error = Assert.Throws<ArgumentException>(() => SkeletonFrame.Of(off, _ => Tube, 300, []));
        Assert.Contains("A1", error.Message);
        var point = post with { Members = [post.Members[0], post.Members[1] with { To = post.Members[1].From }] };
        Assert.Contains(
            "A1 has no length",
            Assert.Throws<ArgumentException>(() => SkeletonFrame.Of(point, _ => Tube, 300, [])).Message
        );
    }
}
