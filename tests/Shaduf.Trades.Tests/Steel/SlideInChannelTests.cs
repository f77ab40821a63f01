using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class SlideInChannelTests
{
    private static readonly AngleSize[] Sizes =
    [
        new("L 50x50x5", 50, 5, 3.77),
        new("L 40x40x4", 40, 4, 2.42),
        new("L 30x30x3", 30, 3, 1.36),
        new("L 25x25x3", 25, 3, 1.11),
    ];

    [Fact]
    public void Takes_the_lightest_that_fits_and_says_why_not_the_others()
    {
        var choice = SlideInChannel.Choose(Sizes, moduleThicknessMm: 35, clearanceMm: 2);
        Assert.Equal("L 30x30x3", choice.Angle!.Name);
        Assert.Equal(17, choice.Channel!.LapMm);
        Assert.Equal(["L 50x50x5", "L 40x40x4", "L 25x25x3"], choice.Others.Select(other => other.Name));
        Assert.Contains("leg of 50 mm is longer than the 42 mm", choice.Others[0].Why, StringComparison.Ordinal);
        Assert.Contains("2.42 kg/m", choice.Others[1].Why, StringComparison.Ordinal);
        Assert.Contains("lap 7 mm", choice.Others[2].Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_thicker_module_reaches_the_choice_by_itself()
    {
        Assert.Equal("L 30x30x3", SlideInChannel.Choose(Sizes, 30, 2).Angle!.Name);
        Assert.Equal("L 40x40x4", SlideInChannel.Choose(Sizes, 40, 2).Angle!.Name);
        Assert.Equal("L 50x50x5", SlideInChannel.Choose(Sizes, 60, 2).Angle!.Name);
    }

    [Fact]
    public void When_nothing_fits_every_size_has_its_reason()
    {
        var choice = SlideInChannel.Choose(Sizes, moduleThicknessMm: 100, clearanceMm: 2);
        Assert.Null(choice.Angle);
        Assert.Null(choice.Channel);
        Assert.Equal(Sizes.Length, choice.Others.Count);
        Assert.All(choice.Others, other => Assert.NotEmpty(other.Why));
    }

    // L 40x4 over 32 mm: from the back of one flat leg to the face of the other there are only 36 mm, so the inner
    // upright leg would run into the other flat leg although the outer one (40 mm) does not stand proud.
    [Fact]
    public void The_inner_leg_must_end_above_the_other_flat_leg() =>
        Assert.False(SlideInChannel.Of(40, 4, moduleThicknessMm: 30, clearanceMm: 2).Fits);

    [Fact]
    public void The_legs_that_are_told_are_those_that_fit() =>
        Gen.Select(Gen.Double[15, 120], Gen.Double[2, 5], Gen.Double[10, 60], Gen.Double[0, 5])
            .Sample(
                (leg, wall, module, clearance) =>
                {
                    var (shortest, longest) = SlideInChannel.Legs(wall, module, clearance);
                    var channel = SlideInChannel.Of(leg, wall, module, clearance);
                    return Math.Abs(leg - shortest) < 1e-6
                        || Math.Abs(leg - longest) < 1e-6
                        || channel.Fits == (leg > shortest && leg < longest);
                }
            );

    [Fact]
    public void What_fits_can_be_drawn() =>
        Gen.Select(Gen.Double[15, 100], Gen.Double[2, 5], Gen.Double[20, 60], Gen.Double[0, 5])
            .Sample(
                (legMm, thicknessMm, moduleMm, clearanceMm) =>
                {
                    var channel = SlideInChannel.Of(legMm, thicknessMm, moduleMm, clearanceMm);
                    Assert.Equal(channel.Fits, channel.WhyNot.Length == 0);
                    Assert.Equal(channel.OuterDepthMm, 2 * legMm - channel.LapMm, 1e-9);
                    if (channel.Fits)
                    {
                        Assert.InRange(channel.LapMm, SlideInChannel.LeastLapMm, channel.InsideDepthMm + 1e-9);
                        Assert.True(channel.LipCoverMm > 0);
                    }
                }
            );

    [Fact]
    public void Refuses_nan()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SlideInChannel.Of(40, 4, double.NaN, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => SlideInChannel.Choose([new("L", 40, 4, double.NaN)], 35, 2));
    }
}
