using CsCheck;
using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class CableTests
{
    private static readonly double[] Sizes = [1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120];

    [Fact]
    public void Drop_is_linear_in_length() =>
        Gen.Select(Gen.Double[0.1, 100], Gen.Double[1, 500], Gen.Double[1e-4, 0.02], Gen.Double[0.3, 1])
            .Sample(
                (currentA, lengthM, ohmPerM, powerFactor) =>
                {
                    var impedance = new LineImpedance(ohmPerM, 1e-4);
                    var directV = VoltageDrop.DirectV(currentA, lengthM, ohmPerM);
                    var phasesV = VoltageDrop.ThreePhaseV(currentA, lengthM, impedance, powerFactor);
                    return Near(3 * directV, VoltageDrop.DirectV(currentA, 3 * lengthM, ohmPerM))
                        && Near(3 * phasesV, VoltageDrop.ThreePhaseV(currentA, 3 * lengthM, impedance, powerFactor));
                }
            );

    [Fact]
    public void Annex_G_of_direct_current_is_twice_one_way() =>
        Assert.Equal(
            2 * 50 * 10 * 0.0225 / 4,
            VoltageDrop.AnnexGV(CableSupply.Dc, 10, 50, Conductor.CopperClass5, 4),
            12
        );

    [Theory]
    [InlineData(Conductor.CopperClass2)]
    [InlineData(Conductor.CopperClass2Tinned)]
    [InlineData(Conductor.CopperClass5)]
    [InlineData(Conductor.CopperClass5Tinned)]
    [InlineData(Conductor.AluminiumClass2)]
    public void Resistance_falls_with_size_and_follows_the_metal(Conductor conductor)
    {
        var aluminium = conductor == Conductor.AluminiumClass2;
        var sizes = Sizes.Where(size => !aluminium || size >= 10).ToArray();
        var ohms = sizes.Select(size => ConductorResistance.OhmPerKm(conductor, size)).ToArray();
        Assert.Equal(ohms.OrderDescending(), ohms);
        // A typing error shows: the resistivity that each cell implies stays within the standard's allowances.
        Assert.All(
            sizes.Zip(ohms, (size, ohm) => size * ohm),
            implied => Assert.InRange(implied, aluminium ? 28.0 : 17.1, aluminium ? 32.1 : 20.7)
        );
    }

    [Fact]
    public void A_size_that_is_not_made_is_refused_with_those_that_are()
    {
        var trouble = Assert.Throws<ArgumentOutOfRangeException>(() =>
            ConductorResistance.OhmPerKm(Conductor.AluminiumClass2, 4)
        );
        Assert.Contains("sizes: 10, 16, 25", trouble.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => ConductorResistance.OhmPerKm(Conductor.CopperClass2, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            ConductorResistance.OhmPerKm(Conductor.CopperClass2, double.NaN)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => ConductorResistance.StandardMm2(Conductor.CopperClass2, 121));
    }

    [Fact]
    public void A_conductor_is_as_warm_as_its_load()
    {
        var warmth = new CableWarmth(30, 70);
        Assert.Equal(30, ConductorResistance.WorkingDegC(warmth, 0));
        Assert.Equal(40, ConductorResistance.WorkingDegC(warmth, 0.5));
        Assert.Equal(70, ConductorResistance.WorkingDegC(warmth, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ConductorResistance.WorkingDegC(new(80, 70), 0.5));
    }

    [Fact]
    public void Reactance_beyond_the_table_is_the_standards()
    {
        Assert.Equal(CableReactance.SubmersibleOhmPerKm(35, 50), CableReactance.OhmPerKm(35, 50));
        Assert.Equal(0.08, CableReactance.OhmPerKm(50, 50));
        Assert.Equal(0.096, CableReactance.OhmPerKm(50, 60), 12);
        Assert.Equal(0, CableReactance.OhmPerKm(4, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => CableReactance.SubmersibleOhmPerKm(50, 50));
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(6, 0.57)]
    [InlineData(7, 0.5)]
    [InlineData(9, 0.5)]
    public void Grouping_takes_the_lower_row(int circuits, double factor) =>
        Assert.Equal(factor, Ampacity.GroupingFactor(circuits));

    [Theory]
    [InlineData(-40, 55)]
    [InlineData(60, 55)]
    [InlineData(65, 52.8)]
    [InlineData(90, 41.25)]
    public void Photovoltaic_cable_follows_its_own_table(double airDegC, double currentA) =>
        Assert.Equal(currentA, Ampacity.PvCableA(4, PvLaying.FreeInAir, airDegC), 5e-10);

    [Fact]
    public void Each_laying_has_its_column()
    {
        Assert.Equal(52, Ampacity.PvCableA(4, PvLaying.OnSurface, 60));
        Assert.Equal(44, Ampacity.PvCableA(4, PvLaying.TwoTouchingOnSurface, 60));
    }

    [Fact]
    public void Temperature_factors_meet_at_the_reference_and_vanish_at_the_limit()
    {
        Assert.Equal(1, Ampacity.AirTemperatureFactor(Insulation.Pvc70, 30));
        Assert.Equal(1, Ampacity.GroundTemperatureFactor(Insulation.Xlpe90, 20));
        Assert.Equal(0, Ampacity.AirTemperatureFactor(Insulation.Xlpe90, 90));
        Assert.Throws<ArgumentOutOfRangeException>(() => Ampacity.AirTemperatureFactor(Insulation.Pvc70, 71));
    }

    private static bool Near(double expected, double actual) => Math.Abs(expected - actual) <= 1e-12 * expected;
}
