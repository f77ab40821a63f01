using CsCheck;
using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

/// <summary>A post with an arm on its head, pushed by three load cases.</summary>
public sealed class FrameCasesTests
{
    private static readonly MemberSection Tube = MemberSection.OfSquare(60, 3);
    private static readonly FrameCases Cases = Solved();

    private static readonly Gen<double[]> Factors = Gen.Double[-2, 2].Array[3];

    [Fact]
    public void A_combination_is_the_sum_of_its_cases() =>
        Factors.Sample(factors =>
        {
            var whole = Cases.Analysis.Solve(
                LoadCase.Combined("all", Cases.Cases.Select((each, i) => (each, factors[i])))
            );
            for (var span = 0; span < Cases.Frame.Spans.Count; span++)
            {
                var kept = Cases.At(span, 2, factors);
                var solved = whole.At(span, Cases.Frame.Model.LengthMm(span) / 2);
                Assert.Equal(solved.TensionN, kept.TensionN, 1e-3);
                Assert.Equal(solved.BendingYNMm, kept.BendingYNMm, 1.0);
                Assert.Equal(solved.BendingZNMm, kept.BendingZNMm, 1.0);
            }

            var foot = Cases.Foot(0, factors);
            Assert.Equal(whole.Reactions[0].Moment.YNMm, foot.Moment.YNMm, 1.0);
            var (tip, share) = (Cases.Frame.SpansOf(1)[^1], 1.0);
            Assert.Equal(0, (whole.MovementMm(tip, share) - Cases.MovementMm(tip, share, factors)).LengthMm, 1e-4);
        });

    /// <summary>All that hangs on the arm passes through its joint: 1 kN at a lever of 800 mm.</summary>
    [Fact]
    public void A_joint_passes_on_what_hangs_beyond_it()
    {
        var at = Cases.AtJoint(0, 30, [1, 0, 0]);
        Assert.Equal(new Point(0, 0, 2030), at.At);
        Assert.Equal(1000, at.Force.ZN, 1e-3);
        Assert.Equal(0, at.Force.XN, 1e-3);
        Assert.Equal(-1000 * 800, at.Moment.YNMm, 1.0);
    }

    [Fact]
    public void A_member_is_used_by_its_worst_place()
    {
        var rules = new MemberRules(_ => Tube, SteelGrade.Of("S235"), _ => new(4200, 4200, 4200));
        var uses = rules.Uses(Cases, [new("tip", [1, 0, 0], [0, 0, 0])], 0);

        // The arm by hand: 0.8 kNm over W_pl f_y, 13.95 cm3 and 235 N/mm2.
        Near.Share(0.8e6 / (13.95e3 * 235), uses[1].Result.UtilisationShare, 0.01);
        Assert.Equal(0, uses[1].AtMm, 1e-6);
        Assert.True(uses[0].Result.UtilisationShare > uses[1].Result.UtilisationShare);
    }

    private static FrameCases Solved()
    {
        var bar = new Profile(MakeUp.Single, new("SHS 60x3", Outline.SquareTube, 60, 3, 5.19, 230, 6000, 5980));
        var skeleton = new Skeleton(
            [
                new("C1", "post", bar, new(0, 0, -500), new(0, 0, 2000), new(1, 0, 0)),
                new("A1", "arm", bar, new(0, 0, 2060), new(800, 0, 2060), new(0, 1, 0)),
            ],
            [
                new("arm on post", JointKind.Welded, 0, new(0, 0, 2000), 1, new(0, 0, 2060))
                {
                    Weld = new(WeldPattern.AllRound, 4.5, 60, 60, new(1, 0, 0)),
                },
            ],
            [new(0, new(0, 0, 0))]
        );
        var frame = SkeletonFrame.Of(skeleton, _ => Tube.Frame, 300, []);
        var (tip, atMm) = frame.Place(1, 800);
        return FrameCases.Of(
            frame,
            [
                new("hangs", [], [], [new(tip, atMm, new(0, 0, -1000))]),
                new("side", [], [], [new(tip, atMm, new(0, 700, 0))]),
                new("own", [], [.. frame.Spans.Select((_, i) => new SpreadLoad(i, new(0, 0, -0.05)))], []),
            ]
        );
    }
}
