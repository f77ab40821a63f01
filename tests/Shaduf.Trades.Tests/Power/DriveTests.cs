using CsCheck;
using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class DriveTests
{
    [Fact]
    public void Bus_to_spare_does_not_overspeed()
    {
        Assert.Equal(1, BusVoltage.SpeedRatio(700, 400, 0));
        Assert.Equal(0, BusVoltage.SpeedRatio(0, 400, 0));
    }

    [Fact]
    public void A_drop_lowers_the_speed() =>
        Gen.Select(Gen.Double[1, 560], Gen.Double[0, 0.4], Gen.Double[0.01, 0.1])
            .Sample(
                (dcV, dropShare, more) =>
                    BusVoltage.SpeedRatio(dcV, 400, dropShare + more) < BusVoltage.SpeedRatio(dcV, 400, dropShare)
            );

    [Fact]
    public void A_motor_takes_more_than_it_gives_and_more_for_more() =>
        Gen.Select(Gen.Double[0, 3000], Gen.Double[1, 500], Gen.Double[0.4, 0.95])
            .Sample(
                (shaftW, moreW, efficiency) =>
                {
                    var motor = Samples.Motor with { EfficiencyShare = efficiency };
                    var takenW = MotorInput.ElectricalW(motor, shaftW);
                    return takenW > shaftW && MotorInput.ElectricalW(motor, shaftW + moreW) > takenW + moreW;
                }
            );

    [Fact]
    public void Efficiency_is_the_cards_at_rated_load_near_it_from_half_and_falls_below()
    {
        Assert.Equal(0.77, Efficiency(1), 12);
        Assert.InRange(Efficiency(0.75), 0.75, 0.79);
        Assert.InRange(Efficiency(0.5), 0.74, 0.78);
        Assert.True(Efficiency(0.25) < Efficiency(0.5));
        Assert.True(Efficiency(0.1) < Efficiency(0.25));
    }

    [Fact]
    public void Points_of_the_card_are_met_and_the_rated_one_stays()
    {
        var motor = Samples.Motor with { ByLoad = [new(0.25, 0.6), new(0.5, 0.72)] };
        Assert.Equal(0.25 * 3000 / 0.6, MotorInput.ElectricalW(motor, 0.25 * 3000), 5e-10);
        Assert.Equal(0.5 * 3000 / 0.72, MotorInput.ElectricalW(motor, 0.5 * 3000), 5e-10);
        Assert.Equal(3000 / 0.77, MotorInput.ElectricalW(motor, 3000), 5e-10);
        var drive = Samples.Drive with { ByOutput = [new(400, 0.9), new(2000, 0.97)] };
        Assert.Equal((400 / 0.9) + 30, DriveInput.DcW(drive, 400), 5e-10);
        Assert.Equal((200 / 0.9) + 30, DriveInput.DcW(drive, 200), 5e-10);
        Assert.Equal((2000 / 0.97) + 30, DriveInput.DcW(drive, 2000), 5e-10);
        Assert.Equal((4000 / 0.97) + 30, DriveInput.DcW(drive, 4000), 5e-10);
    }

    [Fact]
    public void A_motor_is_not_loaded_far_beyond_its_rating() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MotorInput.ElectricalW(Samples.Motor, 3700));

    [Fact]
    public void A_drive_awake_takes_its_own_use() => Assert.Equal(30, DriveInput.DcW(Samples.Drive, 0));

    [Fact]
    public void Unknown_drive_figures_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            DriveInput.DcW(Samples.Drive with { EfficiencyShare = double.NaN }, 1000)
        );

    [Fact]
    public void Derating_never_rises_with_height_or_heat() =>
        Gen.Select(Gen.Double[-430, 3900], Gen.Double[-40, 49], Gen.Double[0, 100], Gen.Double[0, 1])
            .Sample(
                (elevationM, airDegC, up, warmer) =>
                {
                    var share = DriveDerating.Share(elevationM, airDegC);
                    var worse = DriveDerating.Share(elevationM + up, airDegC + warmer);
                    return share is >= 0.63 and <= 1 && worse <= share;
                }
            );

    [Fact]
    public void No_drive_is_rated_above_50_degC() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DriveDerating.Share(0, 50.1));

    private static double Efficiency(double load) => load * 3000 / MotorInput.ElectricalW(Samples.Motor, load * 3000);
}
