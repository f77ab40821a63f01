using CsCheck;
using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class NightLightTests
{
    [Fact]
    public void Twice_the_light_is_twice_the_illuminance() =>
        Gen.Select(Gen.Double[50, 30_000], Gen.Double[0.5, 15], Gen.Double[0, 60])
            .Sample(
                (fluxLm, heightM, asideM) =>
                {
                    var once = new Luminaire(fluxLm, []).Lux(heightM, asideM, 0.7);
                    var twice = new Luminaire(2 * fluxLm, []).Lux(heightM, asideM, 0.7);
                    return once > 0 && Math.Abs(twice - (2 * once)) <= 1e-12 * twice;
                }
            );

    /// <summary>All that a flat lamp gives lands on the ground below it: rings of the plane add up to its light.</summary>
    [Fact]
    public void The_light_on_the_ground_adds_up_to_the_lamp()
    {
        const double stepM = 0.01;
        var lamp = new Luminaire(2400, []);
        var sumLm = Enumerable
            .Range(0, 100_000)
            .Select(i => (i + 0.5) * stepM)
            .Sum(asideM => lamp.Lux(5, asideM, 1) * 2 * Math.PI * asideM * stepM);
        Assert.Equal(2400, sumLm, 0.1);
    }

    [Fact]
    public void A_table_of_the_flat_lamp_is_the_flat_lamp()
    {
        var table = new Luminaire(
            2400,
            [.. Enumerable.Range(0, 91).Select(deg => new Beam(deg, PointLight.LambertianCd(2400, deg)))]
        );
        Assert.Equal(2400, table.BeamsLm, 0.5);
        Assert.Equal(new Luminaire(2400, []).Lux(5, 3.3, 0.7), table.Lux(5, 3.3, 0.7), 0.01);
        Assert.Equal(table.Beams[0].IntensityCd, table.IntensityCd(0));
        Assert.Equal(0, (table with { Beams = [.. table.Beams.Take(61)] }).IntensityCd(70));
    }

    [Fact]
    public void A_battery_grows_with_the_nights_and_lead_with_the_cold() =>
        Gen.Select(Gen.Double[1, 5000], Gen.Double[0.5, 15], Gen.Double[-30, 25])
            .Sample(
                (nightlyWh, nights, degC) =>
                {
                    double Wh(double days, BatteryKind kind) =>
                        LampBattery.CapacityWh(
                            nightlyWh,
                            days,
                            LampBattery.DepthShare(kind),
                            0.9,
                            LampBattery.ColdShare(kind, degC)
                        );
                    return Math.Abs(Wh(2 * nights, BatteryKind.LeadAcid) - (2 * Wh(nights, BatteryKind.LeadAcid)))
                            < 1e-9 * Wh(2 * nights, BatteryKind.LeadAcid)
                        && Wh(nights, BatteryKind.LeadAcid) > Wh(nights, BatteryKind.LithiumIronPhosphate)
                        && LampBattery.ColdShare(BatteryKind.LeadAcid, degC) <= 1;
                }
            );

    /// <summary>With the margin of ten days, the surplus of ten mean days fills what the nights have drawn.</summary>
    [Fact]
    public void The_margin_refills_the_battery_in_time() =>
        Gen.Select(Gen.Double[0.5, 30], Gen.Double[1, 60])
            .Sample(
                (nights, days) =>
                {
                    var margin = ChargingModule.MarginRatio(nights, days);
                    return margin >= ChargingModule.LeastMarginRatio && (margin - 1) * days >= nights * (1 - 1e-12);
                }
            );

    [Fact]
    public void A_controller_without_a_converter_keeps_less_never_more()
    {
        Assert.Equal(12.8 / 18, ChargingModule.DirectShare(12.8, 18), 12);
        Assert.Equal(1, ChargingModule.DirectShare(24, 18));
    }
}
