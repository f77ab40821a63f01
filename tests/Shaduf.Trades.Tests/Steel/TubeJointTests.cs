using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class TubeJointTests
{
    private static readonly SteelGrade Mild = SteelGrade.Of("S235");

    private static TubeJointStrength Joint(double branchMm, double compression = 0, double chordWallMm = 4) =>
        TubeJoint.Of(
            MemberSection.OfSquare(100, chordWallMm),
            MemberSection.OfSquare(branchMm, 3),
            Mild,
            90,
            compression
        );

    /// <summary>A bar of 40 mm across SHS60x3 at 210 N/mm2: side walls and moments of tables 7.11 and 7.14 by hand.</summary>
    [Fact]
    public void A_bar_across_a_tube_presses_its_side_walls()
    {
        var strength = TubeJoint.Across(MemberSection.OfSquare(60, 3), 40, SteelGrade.Unmarked, 0);
        var slender = 3.46 * ((60.0 / 3) - 2) / (Math.PI * Math.Sqrt(210_000.0 / 210));
        var phi = 0.5 * (1 + (0.49 * (slender - 0.2)) + (slender * slender));
        var left = 1 / (phi + Math.Sqrt((phi * phi) - (slender * slender)));
        Assert.Equal(left * 210 * 3 * ((2 * 40) + 30), strength.AxialN, 1);
        Assert.Equal(0.5 * 210 * 3 * 55 * 55, strength.InPlaneNMm, 1);
        Assert.Equal(
            Math.Min(210.0 * 3 * 57 * 55, 2 * 210 * 3 * ((40 * 3) + Math.Sqrt(60 * 60 * 3 * 120))),
            strength.OutOfPlaneNMm,
            1
        );
        Assert.Contains(
            "walls wide",
            TubeJoint.Across(MemberSection.OfSquare(120, 3), 40, SteelGrade.Unmarked, 0).WhyNot
        );
    }

    /// <summary>The lap of a small angle is narrower than a thick tube's corners are round: only its breadth counts.</summary>
    [Fact]
    public void A_narrow_bar_across_a_thick_tube_is_judged_by_its_breadth_alone()
    {
        var strength = TubeJoint.Across(MemberSection.OfSquare(180, 8), 35, Mild, 0);
        Assert.Empty(strength.WhyNot);
        Assert.Equal(0.5 * 235 * 8 * (35 + 40) * (35 + 40), strength.InPlaneNMm, 1);
    }

    /// <summary>A branch as wide as the chord carries no more than the chord's side walls do.</summary>
    [Fact]
    public void What_lies_across_carries_at_least_what_ends_there() =>
        CsCheck
            .Gen.Select(CsCheck.Gen.Double[40, 120], CsCheck.Gen.Double[0.06, 0.1], CsCheck.Gen.Double[0, 1])
            .Sample(
                (sideMm, wallShare, pressedShare) =>
                {
                    var tube = MemberSection.OfSquare(sideMm, Math.Max(2.5, wallShare * sideMm));
                    var ends = TubeJoint.Of(tube, tube, SteelGrade.Unmarked, 90, pressedShare);
                    var lies = TubeJoint.Across(tube, sideMm, SteelGrade.Unmarked, pressedShare);
                    return ends.WhyNot.Length > 0
                        || (
                            lies.AxialN >= ends.AxialN - 1
                            && lies.InPlaneNMm >= ends.InPlaneNMm - 1
                            && lies.OutOfPlaneNMm >= ends.OutOfPlaneNMm - 1
                        );
                }
            );

    [Fact]
    public void A_wider_branch_is_stronger() =>
        Gen.Double[30, 80]
            .Sample(branch =>
            {
                var (less, more) = (Joint(branch), Joint(branch * 1.05));
                Assert.True(more.AxialN > less.AxialN && more.InPlaneNMm > less.InPlaneNMm);
                Assert.True(more.OutOfPlaneNMm > less.OutOfPlaneNMm);
            });

    [Fact]
    public void Compression_in_the_chord_takes_from_its_face()
    {
        Assert.Equal(1, Joint(60, 0.2).ChordFactor);
        Near.Share(1.3 - (0.4 * 0.8 / 0.6), Joint(60, 0.8).ChordFactor, 1e-12);
    }

    [Fact]
    public void Square_tubes_are_as_strong_out_of_plane_as_the_formula_says() =>
        Near.Share(235 * 16 * ((60 * 1.6 / 0.8) + Math.Sqrt(2 * 100 * 60 * 1.6 / 0.4)), Joint(60).OutOfPlaneNMm, 1e-12);

    [Theory]
    [InlineData(20, 4, "0.25 to 1.00")]
    [InlineData(110, 4, "0.25 to 1.00")]
    [InlineData(60, 2, "a wall of 2 mm")]
    [InlineData(60, 2.7, "walls wide")]
    public void What_the_formulas_do_not_cover_never_holds(double branchMm, double chordWallMm, string why)
    {
        var joint = Joint(branchMm, 0, chordWallMm);
        var result = joint.Utilisation(0, 0, 0);
        Assert.False(result.Holds);
        Assert.Contains(why, result.Clause, StringComparison.Ordinal);
    }

    [Fact]
    public void A_branch_as_wide_as_the_chord_stands_on_its_side_walls()
    {
        var (narrow, at, wide) = (Joint(84), Joint(85), Joint(100));
        Near.Share(narrow.AxialN, at.AxialN, 0.1);
        Assert.True(wide.AxialN > at.AxialN);
        Assert.True(wide.InPlaneNMm > at.InPlaneNMm);
        Assert.True(Joint(92).AxialN <= wide.AxialN);
    }

    // Never more than the branch itself.
    [Fact]
    public void A_joint_is_no_stronger_than_its_branch() =>
        Gen.Double[86, 100]
            .Sample(branch =>
            {
                var (joint, tube) = (Joint(branch), MemberSection.OfSquare(branch, 3));
                Assert.InRange(joint.AxialN, 1, tube.Frame.AreaMm2 * 235 * 1.05);
                Assert.InRange(joint.InPlaneNMm, 1, tube.PlasticModulusYMm3!.Value * 235);
                Assert.InRange(joint.OutOfPlaneNMm, 1, tube.PlasticModulusZMm3!.Value * 235);
            });

    [Fact]
    public void A_chord_pressed_to_its_yield_leaves_a_narrow_branch_nothing()
    {
        var joint = Joint(30, 1);
        Assert.Contains("leaves its face nothing", joint.WhyNot, StringComparison.Ordinal);
        Assert.False(joint.Utilisation(0, 0, 0).Holds);
    }

    [Fact]
    public void Forces_add_up()
    {
        var joint = Joint(60);
        var result = joint.Utilisation(-joint.AxialN / 4, joint.InPlaneNMm / 4, -joint.OutOfPlaneNMm / 4);
        Assert.Equal(0.75, result.UtilisationShare, 1e-12);
    }
}
