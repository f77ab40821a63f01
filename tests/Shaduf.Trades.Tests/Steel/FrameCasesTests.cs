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

    /// <summary>The arm hangs 1 kN at 800 mm on the post, which it presses and bends, and no other way round when it pushes up.</summary>
    [Fact]
    public void An_envelope_holds_the_largest_of_each_force()
    {
        var all = ForceEnvelope.All(
            Cases,
            [new("down", [1, 0, 0], [0, 0, 0]), new("up", [-0.5, 0, 0], [0, 0, 0])],
            0,
            1.2,
            member => member.Mark
        );
        Assert.Equal(2, all.Count);
        var (post, arm) = (all[0], all[1]);
        Assert.Equal(1000, post.CompressionN, 1e-3);
        Assert.Equal(500, post.TensionN, 1e-3);
        Assert.Equal(1.2 * 0.8e6, double.Hypot(post.BendingYNMm, post.BendingZNMm), 1.0);
        Assert.Equal(1000, arm.ShearN, 1e-3);
        Assert.Equal(0, arm.CompressionN, 1e-3);
        Assert.Equal(1.2 * 0.8e6, double.Hypot(arm.BendingYNMm, arm.BendingZNMm), 1.0);
        Assert.Equal(post, post.Or(post with { TensionN = 0, ShearN = 0 }));
    }

    /// <summary>Half-way along the arm 1 kN has a lever of 400 mm: half of the arm's highest moment.</summary>
    [Fact]
    public void A_splice_is_sized_by_the_forces_at_its_place()
    {
        var rules = new MemberRules(_ => Tube, SteelGrade.Of("S235"), _ => new(4200, 4200, 4200));
        var splice = SpliceUse.All(Cases, [new("tip", [1, 0, 0], [0, 0, 0])], 0, rules, [new(1, 400)]).Single();
        Assert.Equal(0.5, splice.MomentShare, 1e-6);
        Assert.Equal(0.4e6, Math.Abs(splice.Forces.BendingYNMm) + Math.Abs(splice.Forces.BendingZNMm), 1.0);

        // By hand: t M/W beside t V/A on each millimetre, and 360/(1.732 0.8 1.25) = 207.8 N/mm2.
        var bending = 3 * 0.4e6 / Tube.ElasticModulusYMm3;
        var shear = 3 * 1000 / Tube.Frame.AreaMm2;
        Near.Share(double.Hypot(bending, shear) / 207.85, splice.ThroatMm, 1e-3);
        Near.Share(splice.ThroatMm / 3, splice.UseShare, 1e-9);
        Assert.Equal(splice.UseShare, splice.Lines(Tube, rules.Grade)[^1].Value, 1e-9);
    }

    /// <summary>The arm ends on the post's head: no force along it, and 0.8 kNm in the plane of both.</summary>
    [Fact]
    public void The_face_under_a_tube_is_used_by_what_the_tube_brings()
    {
        var rules = new MemberRules(_ => Tube, SteelGrade.Of("S235"), _ => new(4200, 4200, 4200));
        var use = TubeFaceUse.All(Cases, [new("tip", [1, 0, 0], [0, 0, 0])], 0, rules).Single();
        Assert.Equal(0, use.AxialN, 1e-3);
        Assert.Equal(0.8e6, use.InPlaneNMm, 1.0);
        Assert.Equal(0, use.OutOfPlaneNMm, 1.0);
        var pressed = ((0.8e6 / Tube.ElasticModulusYMm3) + (1000 / Tube.Frame.AreaMm2)) / 235;
        var strength = TubeJoint.Of(Tube, Tube, rules.Grade, 90, pressed);
        Near.Share(0.8e6 / strength.InPlaneNMm, use.UseShare!.Value, 1e-4);

        // Pushed sideways it turns the post, and bends the arm across the plane.
        var side = TubeFaceUse.All(Cases, [new("side", [0, 1, 0], [0, 0, 0])], 0, rules).Single();
        Assert.Equal(700 * 800, side.OutOfPlaneNMm, 700.0 * 40);
    }

    [Fact]
    public void Tubes_that_the_formulas_do_not_reach_say_why()
    {
        var wide = MemberSection.OfSquare(100, 4);
        var rules = new MemberRules(
            member => member.Mark == "A1" ? wide : Tube,
            SteelGrade.Of("S235"),
            _ => new(4200, 4200, 4200)
        );
        var use = TubeFaceUse.All(Cases, [new("tip", [1, 0, 0], [0, 0, 0])], 0, rules).Single();
        Assert.Null(use.UseShare);
        Assert.Contains("of the chord's width", use.WhyNot);
        Assert.Empty(use.Lines);
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
