using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class PipeworkTests
{
    [Fact]
    public void What_was_dug_is_filled() =>
        Gen.Select(Gen.Double[0.3, 1], Gen.Double[0.3, 2], Gen.Double[0, 0.3], Gen.Double[20, 250])
            .Sample(
                (widthM, coverM, beddingM, outerMm) =>
                {
                    var parts = PipeTrench.Of(new(widthM, coverM, beddingM, coverM / 3), outerMm);
                    var filled = parts.BeddingM2 + parts.SurroundM2 + parts.BackfillM2 + parts.PipeM2;
                    Near.Share(parts.DigM2, filled, 1e-12);
                    Assert.True(parts.SurroundM2 > 0);
                }
            );

    [Fact]
    public void A_straight_pipe_pushes_nowhere_and_a_hairpin_twice_as_an_end()
    {
        Assert.Equal(0, ThrustBlock.BendKN(10, 110, 0), 12);
        Assert.Equal(2 * ThrustBlock.EndKN(10, 110), ThrustBlock.BendKN(10, 110, 180), 12);
    }

    [Fact]
    public void Grounds_are_known_by_name_or_refused()
    {
        Assert.Equal(ThrustBlock.Grounds.Count, ThrustBlock.Grounds.Select(ThrustBlock.GroundKPa).Distinct().Count());
        Assert.Equal(5, Soakaway.Grounds.Select(Soakaway.SoakageMmPerDay).Distinct().Count());
        Assert.Throws<ArgumentException>(() => ThrustBlock.GroundKPa("custard"));
        Assert.Throws<ArgumentException>(() => Soakaway.SoakageMmPerDay("custard"));
    }

    [Fact]
    public void A_pressure_stop_trips_above_running_and_needs_room_to_tell()
    {
        var stop = PressureStop.Between(2.9, 7.8);
        Assert.True(stop.CanTell && stop.StopBar > 2.9 && stop.StopBar < 7.8 && stop.RestartBar < 2.9);
        Assert.False(PressureStop.Between(2.9, 4.3).CanTell);
        Assert.Throws<ArgumentOutOfRangeException>(() => PressureStop.Between(double.NaN, 4));
    }
}
