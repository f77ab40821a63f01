using CsCheck;
using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class BearingResistanceTests
{
    private static readonly SoilStrength s_sand = new(30, 0, 17);

    // V_d 50 kN on 1 m x 1 m, H 10 kN along a side, 1 m deep: left 0.8, m 1.5, i_q 0.7155, i_γ 0.5724;
    // 17 · 18.401 · 1.5 · 0.7155 + 0.5 · 17 · 1 · 20.093 · 0.7 · 0.5724 = 335.74 + 68.43 = 404.2 kPa.
    [Fact]
    public void A_side_load_takes_its_part_as_worked_by_hand() =>
        Assert.Equal(404.2, BearingResistance.DrainedKPa(new(1, 1, 50, 10, 0), s_sand, 17), 0.2);

    [Fact]
    public void A_side_load_beyond_friction_leaves_nothing()
    {
        Assert.Equal(0, BearingResistance.DrainedKPa(new(1, 1, 10, 10, 0), s_sand, 17));
        Assert.Equal(0, BearingResistance.UndrainedKPa(new(1, 1, 10, 41, 0), 40, 17));
        Assert.Equal(0, BearingResistance.DrainedKPa(new(1, 1, 0, 1, 0), s_sand, 17));
    }

    [Fact]
    public void The_answer_does_not_depend_on_which_side_is_called_width() =>
        Gen.Select(Gen.Double[0.2, 5], Gen.Double[0.2, 5], Gen.Double[1, 500], Gen.Double[0, 0.9], Gen.Double[0, 0.9])
            .Sample(
                (width, length, down, shareW, shareL) =>
                {
                    var (alongWidth, alongLength) = (shareW * down * 0.5, shareL * down * 0.5);
                    var one = BearingResistance.DrainedKPa(
                        new(width, length, down, alongWidth, alongLength),
                        s_sand,
                        10
                    );
                    var other = BearingResistance.DrainedKPa(
                        new(length, width, down, alongLength, alongWidth),
                        s_sand,
                        10
                    );
                    Assert.Equal(one, other, 1e-9 * (1 + one));
                }
            );

    [Fact]
    public void More_side_load_never_bears_more() =>
        Gen.Select(Gen.Double[0.2, 5], Gen.Double[10, 500], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 100])
            .Sample(
                (width, down, a, b, cohesion) =>
                {
                    var (less, more) = (Math.Min(a, b) * down, Math.Max(a, b) * down);
                    var soil = s_sand with { CohesionKPa = cohesion };
                    Assert.True(
                        BearingResistance.DrainedKPa(new(width, 2 * width, down, more, 0), soil, 10)
                            <= BearingResistance.DrainedKPa(new(width, 2 * width, down, less, 0), soil, 10) + 1e-9
                    );
                }
            );

    [Fact]
    public void Loose_sand_bears_less_than_half_of_what_dense_sand_does()
    {
        double Square(SoilStrength soil) =>
            BearingResistance.TerzaghiSquareKPa(BearingFactors.Terzaghi(soil.FrictionDeg), soil, 17, 1);
        Assert.True(Square(s_sand.Local) < Square(s_sand) / 2);
        Assert.True(BearingResistance.TerzaghiStripKPa(BearingFactors.Terzaghi(30), s_sand, 17, 1) > Square(s_sand));
    }

    [Fact]
    public void Soil_without_friction_is_refused_in_the_drained_form() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            BearingResistance.DrainedKPa(new(1, 1, 50, 0, 0), s_sand with { FrictionDeg = 0 }, 17)
        );
}
