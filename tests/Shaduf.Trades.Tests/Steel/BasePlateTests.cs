using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class BasePlateTests
{
    private static readonly SteelGrade Mild = SteelGrade.Of("S235");

    [Fact]
    public void Bolts_balance_force_and_moment() =>
        Gen.Select(Gen.Double[100, 300], Gen.Double[-2e4, 2e4], Gen.Double[0, 1e7])
            .Sample(
                (spacing, compression, moment) =>
                {
                    // Moment about one side: two bolts pull, two press.
                    var pulled = BasePlate.BoltTensionN(spacing, compression, moment, 0);
                    var pressed = BasePlate.BoltCompressionN(spacing, compression, moment, 0);
                    Assert.Equal(compression, (2 * pressed) - (2 * pulled), 1e-6);
                    Assert.Equal(moment, (pressed + pulled) * spacing, 1e-3);
                }
            );

    [Fact]
    public void A_plate_as_thick_as_asked_reaches_its_plastic_moment()
    {
        var thickness = BasePlate.ThicknessMm(Mild, 10_000, 40, 100);
        Near.Share(10_000 * 40, 100 * thickness * thickness / 4 * 235, 1e-12);
    }

    [Fact]
    public void The_pressed_area_ends_at_the_plate_and_is_counted_once()
    {
        Assert.Equal(120 * 120, BasePlate.PressedMm2(100, 4, 120, 60));
        Assert.Equal((140 * 140) - (52 * 52), BasePlate.PressedMm2(100, 4, 300, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => BasePlate.PressedMm2(100, 4, 90, 20));
    }

    [Fact]
    public void Bolts_are_known_by_name_or_refused()
    {
        Assert.Equal(157, BoltSize.Of("M16").StressAreaMm2);
        Assert.Equal(0.5, BoltGrade.Of("10.9").ShearFactor);
        Assert.Throws<ArgumentException>(() => BoltSize.Of("M99"));
        Assert.Throws<ArgumentException>(() => BoltGrade.Of("7.7"));
    }

    [Fact]
    public void Tension_and_shear_of_a_bolt_add_up()
    {
        var (size, grade) = (BoltSize.Of("M16"), BoltGrade.Of("8.8"));
        var (tension, shear) = (Bolt.TensionN(size, grade), Bolt.ShearN(size, grade));
        Assert.Equal(1, Bolt.Utilisation(size, grade, tension, 0).UtilisationShare, 1e-12);
        Assert.Equal(0.5 + (0.5 / 1.4), Bolt.Utilisation(size, grade, tension / 2, shear / 2).UtilisationShare, 1e-12);
        Assert.Equal(0, Bolt.BearingN(size, grade, Mild, 10, 20));
    }
}
