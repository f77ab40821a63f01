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
    [InlineData(20, 4, "0.25 to 0.85")]
    [InlineData(90, 4, "0.25 to 0.85")]
    [InlineData(100, 4, "0.25 to 0.85")]
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
    public void Forces_add_up()
    {
        var joint = Joint(60);
        var result = joint.Utilisation(-joint.AxialN / 4, joint.InPlaneNMm / 4, -joint.OutOfPlaneNMm / 4);
        Assert.Equal(0.75, result.UtilisationShare, 1e-12);
    }
}
