using Shaduf.Workshop;

namespace Shaduf.Trades.Tests.Workshop;

public sealed class FilletWeldTests
{
    [Fact]
    public void Twice_the_leg_takes_four_times_the_metal() =>
        Assert.Equal(4 * FilletWeld.DepositKgPerM(4, 0.2), FilletWeld.DepositKgPerM(8, 0.2), 1e-12);

    [Fact]
    public void Two_thirds_of_the_efficiency_take_half_as_many_electrodes_again() =>
        Assert.Equal(1.5 * Electrodes.MassKg(3, 0.6), Electrodes.MassKg(3, 0.4), 1e-12);

    [Fact]
    public void Refuses_nan()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FilletWeld.DepositKgPerM(double.NaN, 0.2));
        Assert.Throws<ArgumentOutOfRangeException>(() => FilletWeld.DepositKgPerM(4, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Electrodes.MassKg(double.NaN, 0.55));
        Assert.Throws<ArgumentOutOfRangeException>(() => Electrodes.MassKg(1, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Electrodes.MassKg(1, 0));
    }
}
