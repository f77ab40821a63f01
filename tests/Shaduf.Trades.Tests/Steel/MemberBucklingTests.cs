using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class MemberBucklingTests
{
    private static readonly SteelGrade Mild = CrossSectionCheckTests.Mild;

    private static readonly Gen<(MemberSection Section, MemberForces Forces, double LengthMm)> Member = Gen.Select(
        CrossSectionCheckTests.Any,
        CrossSectionCheckTests.Forces,
        Gen.Double[100, 4000]
    );

    private static CheckResult Check(MemberSection section, MemberForces forces, double lengthMm) =>
        MemberBuckling.Utilisation(section, Mild, forces, new(lengthMm, lengthMm, lengthMm), EquivalentMoments.Sway);

    [Fact]
    public void A_longer_member_is_used_more() =>
        Member.Sample(
            (section, forces, lengthMm) =>
                Check(section, forces, lengthMm * 1.1).UtilisationShare
                >= Check(section, forces, lengthMm).UtilisationShare - 1e-12
        );

    [Fact]
    public void More_force_uses_it_more() =>
        Member.Sample(
            (section, forces, lengthMm) =>
                Check(section, CrossSectionCheckTests.Times(forces, 1.1), lengthMm).UtilisationShare
                >= Check(section, forces, lengthMm).UtilisationShare - 1e-12
        );

    [Fact]
    public void Tension_counts_as_no_compression()
    {
        var pulled = Check(MemberSection.OfSquare(60, 3), new(0, 30e3, 0, 0, 0, 0, 0), 3000);
        Assert.Equal(0, pulled.UtilisationShare);
    }

    [Fact]
    public void Equivalent_moment_lies_between_its_limits() =>
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1])
            .Sample(
                (start, middle, end) =>
                {
                    var factor = MomentShape.HeldFactor(start, middle, end);
                    Assert.InRange(factor, 0.4, 1);
                    Assert.Equal(factor, MomentShape.HeldFactor(end, middle, start), 1e-12);
                    Assert.Equal(factor, MomentShape.HeldFactor(-start, -middle, -end), 1e-12);
                }
            );

    [Fact]
    public void A_straight_diagram_gives_the_linear_rule() =>
        Gen.Double[-1, 1]
            .Sample(psi =>
                Assert.Equal(Math.Max(0.4, 0.6 + (0.4 * psi)), MomentShape.HeldFactor(1, (1 + psi) / 2, psi), 1e-12)
            );

    [Fact]
    public void A_load_above_the_shear_centre_lowers_the_critical_moment()
    {
        var angle = MemberSection.OfAngle(50, 5, 7);
        var at = TwistBuckling.CriticalNMm(angle, 1000);
        Assert.True(TwistBuckling.CriticalNMm(angle, 1000, 40) < at);
        Assert.True(TwistBuckling.CriticalNMm(angle, 1000, -40) > at);
    }

    [Fact]
    public void An_angle_welded_at_both_ends_carries_more_than_one_on_pins_when_it_is_slender()
    {
        var angle = MemberSection.OfAngle(50, 5, 7);
        var pinned = Check(angle, new(0, -1000, 0, 0, 0, 0, 0), 1500);
        var welded = AngleStrut.Utilisation(angle, Mild, 1000, 1500);
        Assert.Equal(33.3, 1 / pinned.UtilisationShare, 0.1);
        Assert.True(welded.UtilisationShare < pinned.UtilisationShare);
    }

    [Fact]
    public void The_working_ends_in_both_conditions()
    {
        var section = MemberSection.OfSquare(80, 4);
        var forces = new MemberForces(0, -15e3, 0, 0, 0, 3e6, 1e6);
        var lengths = new BucklingLengths(6000, 6000, 6000);
        var parts = MemberBuckling.Of(section, Mild, forces, lengths, EquivalentMoments.Sway);
        var lines = MemberBuckling.Lines(section, Mild, forces, lengths, EquivalentMoments.Sway);
        Assert.Equal([parts.AboutYShare, parts.AboutZShare], lines.TakeLast(2).Select(line => line.Value));
    }
}
