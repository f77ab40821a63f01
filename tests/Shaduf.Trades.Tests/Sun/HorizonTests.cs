using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class HorizonTests
{
    [Fact]
    public void Runs_straight_between_its_points_and_on_past_north()
    {
        var horizon = new Horizon([new(350, 10), new(30, 20), new(90, 0)]);
        Assert.Equal(15, horizon.ElevationDeg(10), 1e-9);
        Assert.Equal(10, horizon.ElevationDeg(60), 1e-9);
        Assert.Equal(5, horizon.ElevationDeg(220), 1e-9);
        Assert.Equal(horizon.ElevationDeg(0), horizon.ElevationDeg(360), 1e-9);
    }

    [Fact]
    public void A_level_plane_under_an_even_skyline_keeps_the_square_of_its_cosine() =>
        Gen.Select(Gen.Double[0, 80], Gen.Double[0, 360])
            .Sample(
                (skylineDeg, azimuthDeg) =>
                {
                    var kept = new Horizon([new(0, skylineDeg)]).SkyKeptShare(new(0, azimuthDeg));
                    return Math.Abs(kept - Math.Pow(Math.Cos(skylineDeg * Math.PI / 180), 2)) < 1e-9;
                }
            );

    [Fact]
    public void Keeps_a_share_and_a_higher_skyline_keeps_less() =>
        Gen.Select(Gen.Double[0, 80].Array[8], Gen.OneOf(Gen.Double[0, 90], Gen.Const(90.0)), Gen.Double[0, 360])
            .Sample(
                (heightsDeg, tiltDeg, azimuthDeg) =>
                {
                    Horizon Skyline(double factor) =>
                        new([.. heightsDeg.Select((h, i) => new HorizonPoint(i * 45, h * factor))]);
                    var (high, low) = (
                        Skyline(1).SkyKeptShare(new(tiltDeg, azimuthDeg)),
                        Skyline(0.5).SkyKeptShare(new(tiltDeg, azimuthDeg))
                    );
                    return high is >= 0 and <= 1 && low is >= 0 and <= 1 && low >= high;
                },
                iter: 200
            );

    [Fact]
    public void What_lies_behind_the_plane_takes_nothing() =>
        Assert.Equal(
            1,
            new Horizon([new(0, 0), new(135, 0), new(180, 40), new(225, 0)]).SkyKeptShare(new(90, 0)),
            1e-9
        );

    [Fact]
    public void Refuses_a_direction_given_twice() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Horizon([new(0, 5), new(360, 6)]));
}
