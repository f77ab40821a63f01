using CsCheck;
using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class GuardTests
{
    [Theory]
    [InlineData(2.5, 2.5)]
    [InlineData(16, 16)]
    [InlineData(35, 16)]
    [InlineData(50, 25)]
    public void Section_by_the_line(double lineMm2, double sectionMm2) =>
        Assert.Equal(sectionMm2, ProtectiveConductor.ByLineMm2(lineMm2));

    [Fact]
    public void Four_times_as_long_needs_twice_the_section() =>
        Assert.Equal(
            2 * ProtectiveConductor.AdiabaticMm2(1000, 0.5, 143),
            ProtectiveConductor.AdiabaticMm2(1000, 2, 143),
            5e-10
        );

    [Fact]
    public void Beyond_five_seconds_heat_escapes_and_the_formula_ends() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ProtectiveConductor.AdiabaticMm2(1000, 5.1, 143));

    [Fact]
    public void A_longer_rod_resists_less_and_resistance_follows_the_soil() =>
        Gen.Select(Gen.Double[1, 10_000], Gen.Double[0.3, 50], Gen.Double[0.005, 0.1], Gen.Double[0.01, 10])
            .Sample(
                (soilOhmM, lengthM, diameterM, moreM) =>
                {
                    var ohm = EarthRod.ResistanceOhm(soilOhmM, lengthM, diameterM);
                    return ohm > 0
                        && EarthRod.ResistanceOhm(soilOhmM, lengthM + moreM, diameterM) < ohm
                        && Math.Abs(EarthRod.ResistanceOhm(2 * soilOhmM, lengthM, diameterM) - 2 * ohm) < 1e-9 * ohm;
                }
            );
}
