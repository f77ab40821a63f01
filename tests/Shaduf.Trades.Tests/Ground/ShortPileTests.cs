using CsCheck;
using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class ShortPileTests
{
    [Fact]
    public void Depth_in_clay_gives_the_load_back() =>
        Gen.Select(Gen.Double[0.2, 2], Gen.Double[0.1, 5], Gen.Double[0, 5], Gen.Double[20, 150])
            .Sample(
                (width, more, height, cohesion) =>
                {
                    var depth = (1.5 * width) + more;
                    var force = ShortPile.ClayForceKN(width, depth, height, cohesion);
                    Assert.Equal(depth, ShortPile.ClayDepthM(force, force * height, width, cohesion), 1e-9);
                }
            );

    [Fact]
    public void Depth_in_sand_gives_the_load_back() =>
        Gen.Select(Gen.Double[0.2, 2], Gen.Double[0.3, 5], Gen.Double[0, 5], Gen.Double[25, 42])
            .Sample(
                (width, depth, height, friction) =>
                {
                    var force = ShortPile.SandForceKN(width, depth, height, friction, 17);
                    Assert.Equal(depth, ShortPile.SandDepthM(force, force * height, width, friction, 17), 1e-9);
                }
            );

    /// <summary>A rack's middle column, 2.202 kN and 13.611 kN m, safety 2, block of 0.6 m: sand (17 kN/m3) 1.291 m, clay of 40 kPa 1.681 m.</summary>
    [Fact]
    public void Worked_rack_needs_the_depths_of_its_table()
    {
        Assert.Equal(1.291, ShortPile.SandDepthM(4.404, 27.222, 0.6, 30, 17), 0.002);
        Assert.Equal(1.681, ShortPile.ClayDepthM(4.404, 27.222, 0.6, 40), 0.002);
    }
}
