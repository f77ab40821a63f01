using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class CastInAnchorTests
{
    [Fact]
    public void Four_rods_far_apart_have_four_cones_and_close_ones_less() =>
        Gen.Select(Gen.Double[50, 400], Gen.Double[50, 1000])
            .Sample(
                (depth, spacing) =>
                {
                    var share = CastInAnchor.FourConesMm2(depth, spacing, 10_000) / (9 * depth * depth);
                    Assert.InRange(share, 1, 4 + 1e-9);
                    Assert.Equal(spacing >= 3 * depth, share > 4 - 1e-9);
                }
            );

    [Fact]
    public void An_edge_takes_from_the_cone() =>
        Gen.Select(Gen.Double[50, 400], Gen.Double[20, 600])
            .Sample(
                (depth, edge) =>
                    CastInAnchor.GroupFactor(CastInAnchor.FourConesMm2(depth, 100, edge), depth, edge)
                    <= CastInAnchor.GroupFactor(CastInAnchor.FourConesMm2(depth, 100, edge + 10), depth, edge + 10)
                        + 1e-12
            );

    [Fact]
    public void In_a_narrow_block_a_deeper_rod_counts_no_more()
    {
        Assert.Equal(100, CastInAnchor.CountedDepthMm(500, 150, 200));
        Assert.Equal(120, CastInAnchor.CountedDepthMm(120, 400, 200));
    }

    [Fact]
    public void Tension_and_shear_together_are_worse_than_each()
    {
        Assert.Equal(1, CastInAnchor.Together(0.6, 0.8, 0, 0).UtilisationShare, 1e-12);
        Assert.Equal(0.9, CastInAnchor.Together(0, 0, 0.9, 0).UtilisationShare, 1e-12);
        Assert.False(CastInAnchor.Together(0, 0, 0.8, 0.8).Holds);
    }

    [Fact]
    public void A_tube_as_deep_as_asked_presses_no_harder_than_the_concrete_bears() =>
        Gen.Select(Gen.Double[40, 150], Gen.Double[0, 2e4], Gen.Double[0, 3e7], Gen.Double[4, 20])
            .Sample(
                (width, shear, moment, strength) =>
                {
                    var depth = EmbeddedTube.RequiredDepthMm(width, shear, moment, strength);
                    Assert.True(depth >= EmbeddedTube.LeastDepthMm(width));
                    if (depth <= 3000)
                    {
                        Assert.True(EmbeddedTube.PressureNPerMm2(width, depth, shear, moment) <= strength * (1 + 1e-9));
                    }
                }
            );

    [Fact]
    public void A_cross_bar_bears_the_pull() => Assert.Equal(1000, EmbeddedTube.CrossBarMm2(10_000, 10), 1e-9);

    [Fact]
    public void The_working_shows_steel_and_cone()
    {
        var (size, grade) = (BoltSize.Of("M16"), BoltGrade.Of("4.6"));
        var lines = CastInAnchor.Lines(size, grade, (10e3, 20e3), 20, (200, 0.8));
        Assert.Equal(10e3 / CastInAnchor.SteelTensionN(size, grade), lines[2].Value, 1e-12);
        Assert.Equal(20e3 / (0.8 * CastInAnchor.ConeN(20, 200)), lines[3].Value, 1e-12);
        Assert.Contains("/2.00", lines[0].Numbers, StringComparison.Ordinal);
    }
}
