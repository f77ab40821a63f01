using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class SkewBendingTests
{
    [Fact]
    public void A_tube_bends_straight() =>
        Gen.Select(Gen.Double[-2e6, 2e6], Gen.Double[-2e6, 2e6], Gen.Double[-5e4, 5e4])
            .Sample(
                (y, z, n) =>
                {
                    var tube = MemberSection.OfRectangle(80, 40, 3);
                    var sum =
                        (Math.Abs(n) / tube.Frame.AreaMm2)
                        + (Math.Abs(y) / tube.ElasticModulusYMm3)
                        + (Math.Abs(z) / tube.ElasticModulusZMm3);
                    Near.Share(sum, SkewBending.PeakNPerMm2(tube, n, y, z), 1e-9);
                }
            );

    // Bent about its own axis of symmetry an equal angle is a straight beam: M/W_u at both toes.
    [Fact]
    public void An_angle_bent_about_its_axis_of_symmetry_has_the_stress_of_its_strong_axis()
    {
        var angle = MemberSection.OfAngle(50, 5, 7);
        var strong = angle.Frame.InertiaYMm4 - angle.ProductOfInertiaMm4;
        var component = 1e6 / Math.Sqrt(2);
        // u points along +y and +z; the toes lie a - t apart from it on the inside, a/√2 on the outside.
        var peak = SkewBending.PeakNPerMm2(angle, 0, component, component);
        Near.Share(1e6 * 50 / Math.Sqrt(2) / strong, peak, 1e-9);
    }

    [Fact]
    public void Free_angles_are_stressed_a_third_more_than_held_ones()
    {
        var angle = MemberSection.OfAngle(50, 5, 7);
        Assert.InRange(SkewBending.PeakNPerMm2(angle, 0, 1e6, 0) / (1e6 / angle.ElasticModulusYMm3), 1.29, 1.31);
        Assert.Throws<ArgumentOutOfRangeException>(() => SkewBending.PeakNPerMm2(angle, double.NaN, 0, 0));
    }
}
