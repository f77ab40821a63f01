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

    // Each working ends in the figure that its check gives.
    [Fact]
    public void Workings_end_in_the_figure_of_their_check()
    {
        var (size, grade) = (BoltSize.Of("M16"), BoltGrade.Of("8.8"));
        var bolt = Bolt.Utilisation(size, grade, 20e3, 15e3).UtilisationShare;
        Assert.Equal(bolt, Bolt.Lines(size, grade, 20e3, 15e3).TakeLast(2).Max(line => line.Value), 1e-12);
        Assert.Equal(1.4167 / 10, EmbeddedTube.Lines(80, 600, 2000, 6e6, 10)[^1].Value, 1e-4);
        var foot = BasePlate.Lines(Mild, 200, new(0, -4e3, 0, 0, 0, 3e6, 0), 40, 110);
        Assert.Equal(BasePlate.BoltTensionN(200, 4e3, 3e6, 0) / 1e3, foot[0].Value, 1e-12);
        Assert.Equal(0, BasePlate.Lines(Mild, 200, new(0, -4e3, 0, 0, 0, 0, 0), 40, 110)[^1].Value);
        var angle = MemberSection.OfAngle(50, 5, 7);
        Assert.Equal(
            AngleStrut.Utilisation(angle, Mild, 20e3, 1500).UtilisationShare,
            AngleStrut.Lines(angle, Mild, 20e3, 1500)[^1].Value,
            1e-12
        );
        Assert.Equal(
            ModuleHolding.Module(900, 2400).UtilisationShare,
            ModuleHolding.ModuleLines(900, 2400, ModuleHolding.TestFactor)[^1].Value
        );
        Assert.Equal(
            ModuleHolding.Lip(Mild, 2, 36, 4).UtilisationShare,
            ModuleHolding.LipLines(Mild, 2, 36, 4)[^1].Value
        );
        Assert.Equal(OneLine.HighSideNm(24e3, 4.4, 1.93, 15) / 1e3, OneLine.Lines(24e3, 4.4, 1.93, 15)[^1].Value);
    }

    [Fact]
    public void A_joint_of_tubes_shows_its_working()
    {
        var joint = TubeJoint.Of(MemberSection.OfSquare(100, 4), MemberSection.OfSquare(60, 3), Mild, 90, 0);
        Assert.Equal(joint.Utilisation(5e3, 2e5, 1e5).UtilisationShare, joint.Lines(5e3, 2e5, 1e5)[^1].Value);
        Assert.Empty((joint with { WhyNot = "too wide" }).Lines(1, 1, 1));
    }
}
