using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class CrossSectionCheckTests
{
    internal static readonly SteelGrade Mild = SteelGrade.Of("S235");

    private static readonly SlideInChannel Shape = SlideInChannel.Of(40, 4, 35, 2);

    internal static readonly MemberSection[] Sections =
    [
        MemberSection.OfSquare(60, 3),
        MemberSection.OfSquare(120, 3),
        MemberSection.OfRectangle(80, 40, 3),
        MemberSection.OfRound(76.1, 3),
        MemberSection.OfAngle(50, 5, 7),
        MemberSection.OfChannel(Shape, 6),
        MemberSection.OfDoubleChannel(Shape, 6),
    ];

    internal static readonly Gen<MemberSection> Any = Gen.Int[0, Sections.Length - 1].Select(i => Sections[i]);

    internal static readonly Gen<MemberForces> Forces = Gen.Select(
            Gen.Double[-60e3, 60e3],
            Gen.Double[-20e3, 20e3],
            Gen.Double[-20e3, 20e3],
            Gen.Double[-3e5, 3e5],
            Gen.Double[-2e6, 2e6],
            Gen.Double[-2e6, 2e6]
        )
        .Select((n, y, z, t, my, mz) => new MemberForces(0, n, y, z, t, my, mz));

    internal static MemberForces Times(MemberForces forces, double factor) =>
        new(
            0,
            forces.TensionN * factor,
            forces.ShearYN * factor,
            forces.ShearZN * factor,
            forces.TorsionNMm * factor,
            forces.BendingYNMm * factor,
            forces.BendingZNMm * factor
        );

    [Fact]
    public void What_fails_does_not_hold_under_more() =>
        Gen.Select(Any, Forces, Gen.Double[1, 3])
            .Sample(
                (section, forces, more) =>
                    CrossSectionCheck.Utilisation(section, Mild, forces).Holds
                    || !CrossSectionCheck.Utilisation(section, Mild, Times(forces, more)).Holds
            );

    // Found by a rack whose use fell from 102 to 10 under more wind.
    [Fact]
    public void More_of_the_same_forces_uses_a_section_more() =>
        Gen.Select(Any, Forces, Gen.Double[1, 3])
            .Sample(
                (section, forces, more) =>
                    CrossSectionCheck.Utilisation(section, Mild, Times(forces, more)).UtilisationShare
                    >= CrossSectionCheck.Utilisation(section, Mild, forces).UtilisationShare - 1e-6
            );

    [Fact]
    public void A_failing_tube_just_holds_under_its_forces_divided_by_its_use() =>
        Gen.Select(Gen.Int[0, 3], Forces, Gen.Double[1, 9])
            .Sample(
                (i, forces, more) =>
                {
                    var beyond = CrossSectionCheck.Of(Sections[i], Mild, Times(forces, more));
                    if (beyond.ClassNumber < 3 && !beyond.Result.Holds)
                    {
                        var factor = more / beyond.Result.UtilisationShare;
                        // Near the pole the ratio runs up within a millionth: looked at from both sides.
                        var below = CrossSectionCheck.Utilisation(
                            Sections[i],
                            Mild,
                            Times(forces, factor * (1 - 1e-6))
                        );
                        var above = CrossSectionCheck.Utilisation(
                            Sections[i],
                            Mild,
                            Times(forces, factor * (1 + 1e-6))
                        );
                        Assert.True(below.Holds);
                        Assert.False(above.Holds);
                    }
                }
            );

    [Fact]
    public void Signs_of_the_moments_do_not_matter_to_a_tube() =>
        Gen.Select(Gen.Int[0, 3], Forces)
            .Sample(
                (i, forces) =>
                {
                    var turned = forces with { BendingYNMm = -forces.BendingYNMm, BendingZNMm = -forces.BendingZNMm };
                    Assert.Equal(
                        CrossSectionCheck.Utilisation(Sections[i], Mild, forces).UtilisationShare,
                        CrossSectionCheck.Utilisation(Sections[i], Mild, turned).UtilisationShare,
                        1e-9
                    );
                }
            );

    // A square tube pulled and bent about one axis, by plastic stress blocks of its flanges and webs with square corners.
    [Fact]
    public void Interaction_of_the_code_stays_within_a_tenth_of_plastic_stress_blocks()
    {
        var section = MemberSection.OfSquare(100, 4);
        for (var n = 0.0; n < 0.95; n += 0.05)
        {
            var parts = CrossSectionCheck.Of(section, Mild, new(0, n * section.Frame.AreaMm2 * 235, 0, 0, 0, 0, 0));
            var share = parts.MomentYNMm / (section.PlasticModulusYMm3!.Value * 235);
            Assert.InRange(share / (Blocks(100, 4, n) / Blocks(100, 4, 0)), 0.9, 1.1);
        }
    }

    // A thin ring carries M_pl cos(π n/2).
    [Fact]
    public void A_round_tube_is_on_the_safe_side_of_a_thin_ring()
    {
        var section = MemberSection.OfRound(100, 3);
        for (var n = 0.0; n < 1; n += 0.05)
        {
            var parts = CrossSectionCheck.Of(section, Mild, new(0, n * section.Frame.AreaMm2 * 235, 0, 0, 0, 0, 0));
            Assert.True(parts.MomentYNMm <= section.PlasticModulusYMm3 * 235 * Math.Cos(Math.PI * n / 2) + 1);
        }
    }

    [Fact]
    public void High_shear_lowers_the_bending()
    {
        var section = MemberSection.OfSquare(80, 4);
        var low = CrossSectionCheck.Of(section, Mild, new(0, 0, 0, 39e3, 0, 4e6, 0));
        var high = CrossSectionCheck.Of(section, Mild, new(0, 0, 0, 60e3, 0, 5.5e6, 0));
        Assert.Equal(1, low.YieldShare);
        Assert.InRange(high.YieldShare, 0.5, 0.99);
        Assert.Contains("6.2.10", high.Result.Clause, StringComparison.Ordinal);
    }

    [Fact]
    public void Class_4_never_holds()
    {
        var thin = MemberSection.OfSquare(150, 3);
        var result = CrossSectionCheck.Utilisation(thin, Mild, new(0, -1, 0, 0, 0, 0, 0));
        Assert.False(result.Holds);
        Assert.Contains("class 4", result.Clause, StringComparison.Ordinal);
    }

    [Fact]
    public void The_working_ends_in_the_figure_that_governs()
    {
        var forces = new MemberForces(0, -15e3, 1e3, 2e3, 1e5, 3e6, 1e6);
        foreach (var section in new[] { Sections[0] with { }, MemberSection.OfSquare(80, 4) })
        {
            var parts = CrossSectionCheck.Of(section, Mild, forces);
            var lines = CrossSectionCheck.Lines(section, Mild, forces);
            Assert.Equal(parts.BendingShare, lines[^1].Value);
            Assert.All(lines, line => Assert.NotEmpty(line.Source));
        }

        Assert.Equal("N/mm²", CrossSectionCheck.Lines(Sections[5], Mild, forces)[^2].Unit);
    }

    private static double Blocks(double sideMm, double wallMm, double n)
    {
        // Half of n·A lies in a band about the middle: in the webs first, then in the flanges.
        var area = (sideMm * sideMm) - Math.Pow(sideMm - (2 * wallMm), 2);
        var inner = sideMm - (2 * wallMm);
        double Outside(double half) =>
            half <= inner / 2
                ? (sideMm * wallMm * (sideMm - wallMm)) + (2 * wallMm * (Math.Pow(inner / 2, 2) - (half * half)))
                : sideMm * (Math.Pow(sideMm / 2, 2) - (half * half));
        var band = n * area;
        var webs = 2 * wallMm * inner;
        var at = band <= webs ? band / (4 * wallMm) : (inner / 2) + ((band - webs) / (2 * sideMm));
        return 235 * Outside(at);
    }
}
