using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class WindPressureTests
{
    private static readonly Gen<(double SpeedMPerS, Terrain Terrain, double HeightM, double SlopeFactor)> Wind =
        Gen.Select(
            Gen.Double[0.1, 90],
            Gen.Int[0, Terrain.All.Count - 1].Select(i => Terrain.All[i]),
            Gen.Double[0, 200],
            Gen.Double[1, 2]
        );

    [Fact]
    public void The_way_back_from_a_pressure_is_the_speed() =>
        Wind.Sample(
            (speed, terrain, height, slope) =>
            {
                var peak = WindPressure.PeakNPerM2(speed, terrain, height, slope);
                if (peak <= 50_000)
                {
                    Near.Share(speed, WindPressure.BasicMPerS(peak, terrain, height, slope), 1e-12);
                }
            }
        );

    [Fact]
    public void Higher_up_a_gust_presses_no_less() =>
        Wind.Sample(
            (speed, terrain, height, slope) =>
                WindPressure.PeakNPerM2(speed, terrain, Math.Min(200, height * 1.1), slope)
                >= WindPressure.PeakNPerM2(speed, terrain, height, slope) * (1 - 1e-12)
        );

    [Fact]
    public void Speeds_and_places_that_no_wind_has_are_refused()
    {
        var open = Terrain.Of("II");
        Assert.Throws<ArgumentOutOfRangeException>(() => WindPressure.PeakNPerM2(-1, open, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => WindPressure.PeakNPerM2(double.NaN, open, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => WindPressure.PeakNPerM2(30, open, 201));
        Assert.Throws<ArgumentException>(() => Terrain.Of("V"));
    }
}
