using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class StandWindTests
{
    [Fact]
    public void A_rougher_tank_is_pushed_no_less_and_never_more_than_a_rod() =>
        Gen.Select(Gen.Double[0.5, 5], Gen.Double[100, 4000], Gen.Double[0.01, 1])
            .Sample(
                (diameter, gust, roughness) =>
                {
                    var smooth = CylinderDrag.Coefficient(diameter, gust, roughness);
                    Assert.InRange(smooth, 0.1, 1.2);
                    Assert.True(CylinderDrag.Coefficient(diameter, gust, roughness * 2) >= smooth);
                }
            );

    [Fact]
    public void A_thin_rod_in_a_light_wind_has_the_full_push() =>
        Assert.Equal(1.2, CylinderDrag.Coefficient(0.06, 300, 0.2));

    [Fact]
    public void Figure_7_23_is_met_at_its_points_and_between_its_neighbours() =>
        Gen.Double[0.2, 59].Sample(ratio => Assert.InRange(BlockDrag.LongCoefficient(ratio / 2, 0.5), 0.9, 2.4));

    [Fact]
    public void A_cube_is_pushed_as_a_sectional_tank_is() =>
        Assert.Equal(2.1 * (0.60 + (0.098 * Math.Log10(2))), BlockDrag.Coefficient(2, 2, 2), 1e-12);

    [Fact]
    public void A_denser_tower_has_a_smaller_coefficient_and_a_larger_push() =>
        Gen.Double[0.02, 0.6]
            .Sample(solid =>
            {
                var (less, more) = (TowerDrag.SquareCoefficient(solid), TowerDrag.SquareCoefficient(solid + 0.05));
                Assert.True(more < less);
                Assert.True(more * (solid + 0.05) > less * solid);
                Assert.InRange(TowerDrag.DiagonalFactor(solid), 1, 1.2);
            });
}
