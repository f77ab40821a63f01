using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class MemberSectionTests
{
    [Fact]
    public void Without_roundings_a_channel_is_the_sum_of_four_rectangles()
    {
        var (a, t, d) = (40.0, 4.0, 37.0);
        var section = MemberSection.OfChannel(SlideInChannel.Of(a, t, 35, 2), rootRadiusMm: 0);
        var h = d + (2 * t);
        (double Y, double Z, double B, double H)[] pieces =
        [
            (t / 2, h - (a / 2), t, a),
            ((a + t) / 2, h - (t / 2), a - t, t),
            (1.5 * t, a / 2, t, a),
            (t + ((a + t) / 2), t / 2, a - t, t),
        ];
        var area = pieces.Sum(p => p.B * p.H);
        var (y, z) = (pieces.Sum(p => p.B * p.H * p.Y) / area, pieces.Sum(p => p.B * p.H * p.Z) / area);
        Near.Share(area, section.Frame.AreaMm2, 1e-9);
        Near.Share(
            pieces.Sum(p => (p.B * Math.Pow(p.H, 3) / 12) + (p.B * p.H * Math.Pow(p.Z - z, 2))),
            section.Frame.InertiaYMm4,
            1e-9
        );
        Near.Share(
            pieces.Sum(p => (p.H * Math.Pow(p.B, 3) / 12) + (p.B * p.H * Math.Pow(p.Y - y, 2))),
            section.Frame.InertiaZMm4,
            1e-9
        );
        Near.Share(pieces.Sum(p => p.B * p.H * (p.Y - y) * (p.Z - z)), section.ProductOfInertiaMm4, 1e-9);
        Assert.Equal(45, section.HeightMm, 1e-9);
        Assert.Equal(44, section.WidthMm, 1e-9);
    }

    [Fact]
    public void Two_channels_back_to_back_have_no_skew_and_twice_the_height_inertia() =>
        Gen.Select(Gen.Double[30, 60], Gen.Double[3, 6], Gen.Double[20, 45])
            .Sample(
                (legMm, thicknessMm, moduleMm) =>
                {
                    var channel = SlideInChannel.Of(legMm, thicknessMm, moduleMm, 2);
                    var (one, two) = (MemberSection.OfChannel(channel, 5), MemberSection.OfDoubleChannel(channel, 5));
                    Assert.Equal(0, two.ProductOfInertiaMm4 / two.Frame.InertiaYMm4, 1e-9);
                    Near.Share(2 * one.Frame.InertiaYMm4, two.Frame.InertiaYMm4, 1e-9);
                    Assert.True(two.Frame.InertiaZMm4 > 2 * one.Frame.InertiaZMm4);
                }
            );

    [Fact]
    public void A_thinner_wall_has_less_of_everything_and_the_same_outside()
    {
        var channel = SlideInChannel.Of(40, 4, 35, 2);
        MemberSection[] sections =
        [
            MemberSection.OfSquare(60, 3),
            MemberSection.OfRectangle(80, 40, 3, isHotFinished: true),
            MemberSection.OfRound(60.3, 3),
            MemberSection.OfAngle(50, 5, 7),
            MemberSection.OfChannel(channel, 6),
            MemberSection.OfDoubleChannel(channel, 6),
        ];
        foreach (var section in sections)
        {
            var thin = section.Thinned();
            Assert.Equal((section.Name, section.Kind, section.Curve), (thin.Name, thin.Kind, thin.Curve));
            Assert.Equal(section.WallMm * 0.9, thin.WallMm, 1e-12);
            Near.Share(0.9 * section.MassKgPerM, thin.MassKgPerM, 0.02);
            Assert.True(thin.Frame.InertiaYMm4 < section.Frame.InertiaYMm4);
            Assert.True(thin.Frame.InertiaZMm4 < section.Frame.InertiaZMm4);
            Assert.True(thin.TorsionModulusMm3 < section.TorsionModulusMm3);
        }

        Assert.Equal(80, sections[1].Thinned().HeightMm);
        Assert.Equal(37, sections[4].Thinned().Channel!.InsideDepthMm);
    }

    [Fact]
    public void A_grade_is_known_by_name_or_refused()
    {
        Assert.Equal((235, 360), (SteelGrade.Of("S235").YieldNPerMm2, SteelGrade.Of("S235").UltimateNPerMm2));
        Assert.False(SteelGrade.Unmarked.IsKnown);
        Assert.Contains(
            "S275",
            Assert.Throws<ArgumentException>(() => SteelGrade.Of("S999")).Message,
            StringComparison.Ordinal
        );
    }
}
