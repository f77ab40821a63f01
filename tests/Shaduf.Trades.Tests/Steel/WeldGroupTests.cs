using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class WeldGroupTests
{
    private static readonly SteelGrade Mild = SteelGrade.Of("S235");

    // The lines of a rectangle cut into small pieces.
    [Fact]
    public void A_weld_round_a_tube_has_the_second_moment_of_its_lines()
    {
        var group = TubeWeld.Group(MemberSection.OfRectangle(80, 40, 3));
        const int pieces = 10_000;
        var about = 0.0;
        for (var i = 0; i < pieces; i++)
        {
            var z = ((i + 0.5) / pieces * 80) - 40;
            about += 2 * z * z * 80 / pieces;
        }

        Near.Share(about + (2 * 40 * 40 * 40), group.InertiaYMm3, 1e-6);
        Assert.Equal(240, group.LengthMm);
    }

    [Fact]
    public void A_cut_end_has_a_longer_weld_that_carries_more()
    {
        var tube = MemberSection.OfSquare(80, 4);
        var forces = new MemberForces(0, 5e3, 0, 2e3, 0, 3e6, 0);
        Assert.True(TubeWeld.Group(tube, 20).LengthMm > TubeWeld.Group(tube).LengthMm);
        Assert.True(TubeWeld.Group(tube, 20).ForceNPerMm(forces) < TubeWeld.Group(tube).ForceNPerMm(forces));
        Assert.Throws<ArgumentException>(() => TubeWeld.Group(MemberSection.OfAngle(50, 5, 7)));
    }

    [Fact]
    public void The_throat_asked_for_carries_the_joint() =>
        Gen.Select(CrossSectionCheckTests.Forces, Gen.Double[40, 150])
            .Sample(
                (forces, side) =>
                {
                    var group = TubeWeld.Group(MemberSection.OfSquare(side, 3));
                    var throat = group.RequiredThroatMm(forces, Mild);
                    if (throat <= 20)
                    {
                        Assert.True(group.Utilisation(forces, Mild, throat).UtilisationShare <= 1 + 1e-9);
                        Assert.Equal(
                            group.Utilisation(forces, Mild, throat).UtilisationShare,
                            group.Lines(forces, Mild, throat)[^1].Value,
                            1e-12
                        );
                    }
                }
            );

    [Fact]
    public void Two_runs_carry_a_moment_across_by_a_couple()
    {
        var force = LineWeld.Pair(100, 50).ForceNPerMm(new(0, 0, 0, 0, 0, 1e6, 0));
        Near.Share(1e6 / 50 / 100, force, 1e-12);
    }

    [Fact]
    public void A_round_tube_is_taken_at_the_corner_of_its_square()
    {
        var group = TubeWeld.Group(MemberSection.OfRound(88.9, 4));
        Near.Share(4 * 1e6 / (Math.PI * 88.9 * 88.9), group.ForceNPerMm(new(0, 0, 0, 0, 0, 1e6, 0)), 1e-9);
    }
}
