using CsCheck;
using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class ProtectionTests
{
    private static readonly Gen<LightningRod> Rod = Gen.Enum<LightningRod>();

    [Fact]
    public void A_bonded_rod_and_nothing_else_asks_for_type_1() =>
        Gen.Select(Gen.Double[10, 1500], Gen.Double[0.3, 12], Gen.Double[1, 50], Rod, Gen.Double[0, 500])
            .Sample(
                (coldV, withstandKV, impulseKA, rod, cableM) =>
                {
                    var need = SurgeProtection.Direct(coldV, coldV, withstandKV, impulseKA, rod, cableM);
                    Assert.Equal(rod == LightningRod.Bonded ? 1 : 2, need.TypeNumber);
                    Assert.Equal(rod == LightningRod.Bonded ? impulseKA : 0, need.LeastImpulseKA);
                    Assert.Equal(cableM > 10, need.IsAtBothEnds);
                    Assert.True(need.LeastContinuousV >= coldV);
                    Assert.True(need.MostLetThroughKV < withstandKV);
                }
            );

    [Fact]
    public void The_motor_side_goes_by_the_motors_voltage() =>
        Assert.Equal(440, SurgeProtection.Motor(400, 4, 12.5, LightningRod.None, 50).LeastContinuousV, 5e-10);

    [Fact]
    public void More_flashes_shorten_the_way_that_may_do_without() =>
        Assert.True(
            SurgeProtection.CriticalLengthM(10, SurgeSite.GroundPlant)
                < SurgeProtection.CriticalLengthM(2, SurgeSite.GroundPlant)
        );

    [Fact]
    public void A_class_that_does_not_exist_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SurgeProtection.ImpulseKA((LightningClass)5));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            SurgeProtection.Direct(500, 500, double.NaN, 5, LightningRod.None, 10)
        );
    }

    [Fact]
    public void Withstand_never_falls_with_voltage_and_is_higher_in_the_fixed_installation() =>
        Gen.Select(Gen.Double[5, 1400], Gen.Double[0, 100])
            .Sample(
                (voltageV, moreV) =>
                    ImpulseWithstand.WithstandKV(voltageV, OvervoltageCategory.CategoryTwo)
                        <= ImpulseWithstand.WithstandKV(voltageV + moreV, OvervoltageCategory.CategoryTwo)
                    && ImpulseWithstand.WithstandKV(voltageV, OvervoltageCategory.CategoryTwo)
                        < ImpulseWithstand.WithstandKV(voltageV, OvervoltageCategory.CategoryThree)
            );

    [Fact]
    public void A_pulse_never_more_than_doubles_and_a_longer_cable_never_needs_less() =>
        Gen.Select(Gen.Double[100, 1000], Gen.Double[1, 300], Gen.Double[0, 300], Gen.Double[20e-9, 5e-6])
            .Sample(
                (busV, cableM, moreM, riseS) =>
                {
                    FilterNeed Need(double lengthM) =>
                        OutputFilter.For(busV, 230, lengthM, riseS, 500, double.PositiveInfinity);
                    var (near, far) = (Need(cableM), Need(cableM + moreM));
                    return near.PeakV >= busV
                        && near.PeakV <= 2 * busV * (1 + 1e-12)
                        && near.Kind <= far.Kind
                        && near.Why.IsEmpty == (near.Kind == FilterKind.None);
                }
            );

    [Fact]
    public void The_makers_own_limits_go_first()
    {
        Assert.Equal(FilterKind.None, OutputFilter.For(300, 230, 40, 3e-6, 50, 60).Kind);
        var bare = OutputFilter.For(300, 230, 55, 3e-6, 50, 60);
        Assert.Equal(FilterKind.Slope, bare.Kind);
        Assert.Contains("55 m of cable, more than the 50 m", Assert.Single(bare.Why), StringComparison.Ordinal);
        Assert.Equal(FilterKind.Sine, OutputFilter.For(300, 230, 65, 3e-6, 50, 60).Kind);
    }

    [Fact]
    public void An_earth_conductor_bears_the_fault_and_never_shrinks() =>
        Gen.Select(Gen.Double[0, 5000], Gen.Double[0.01, 1], Gen.Enum<EarthRun>())
            .Sample(
                (faultA, timeS, run) =>
                {
                    var earth = EquipmentEarth.For(faultA, timeS, 143, run);
                    return earth.SizeMm2 >= earth.AdiabaticMm2
                        && earth.SizeMm2 >= earth.LeastMm2
                        && EquipmentEarth.For(Math.Min(5000, faultA * 2), timeS, 143, run).SizeMm2 >= earth.SizeMm2;
                }
            );
}
