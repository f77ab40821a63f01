using CsCheck;
using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class PierInSoilTests
{
    private static readonly Gen<(double ForceKN, double HeightM, double WidthM, double LateralKNPerM3)> s_cases =
        Gen.Select(Gen.Double[0.1, 50], Gen.Double[0, 6], Gen.Double[0.3, 2], Gen.Double[15, 200]);

    /// <summary>The depth put back into equation 18-1 as it is printed.</summary>
    [Fact]
    public void Depth_satisfies_the_printed_equation() =>
        s_cases.Sample(each =>
        {
            var d = PierInSoil.FreeDepthM(each.ForceKN, each.ForceKN * each.HeightM, each.WidthM, each.LateralKNPerM3);
            var a = 2.34 * each.ForceKN / (each.LateralKNPerM3 * Math.Min(d, PierInSoil.DeepestM) / 3 * each.WidthM);
            Assert.Equal(0.5 * a * (1 + Math.Sqrt(1 + (4.36 * each.HeightM / a))), d, 1e-9 * d);
        });

    [Fact]
    public void A_moment_alone_needs_depth_and_nothing_needs_none()
    {
        Assert.True(PierInSoil.FreeDepthM(0, 10, 0.6, 15.7) > 1);
        Assert.Equal(0, PierInSoil.FreeDepthM(0, 0, 0.6, 15.7));
    }

    /// <summary>A rack's middle column, 2.202 kN and 13.611 kN m, block of 0.6 m: 1.88 m in class 4, 2.18 m in class 5; of 0.8 m 1.697 m.</summary>
    [Fact]
    public void Worked_rack_needs_the_depths_of_its_table()
    {
        Assert.Equal(1.881, PierInSoil.FreeDepthM(2.202, 13.611, 0.6 * Math.Sqrt(2), 23.6), 0.003);
        Assert.Equal(2.18, PierInSoil.FreeDepthM(2.202, 13.611, 0.6 * Math.Sqrt(2), 15.7), 0.01);
        Assert.Equal(1.697, PierInSoil.FreeDepthM(2.202, 13.611, 0.8 * Math.Sqrt(2), 23.6), 0.003);
    }
}
