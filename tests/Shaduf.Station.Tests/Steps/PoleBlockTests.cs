namespace Shaduf.Station.Tests;

/// <summary>The block under the light column of the small station.</summary>
public sealed class PoleBlockTests
{
    private static readonly Design s_design = SmallDesign.Of(brief =>
    {
        brief["site"]!["groundwater"] = "12 m";
        brief["guard"]!["lightning"] = "none";
    });
    private static readonly PoleBlock s_block = s_design.Works.PoleBlock!;

    /// <summary>By hand: round tube 1.2 D a metre of height, plate 1.8 on the head, gust at the lamp, head 0.3 m off the pole (1.35/1.5 of its weight).</summary>
    [Fact]
    public void Wind_on_pole_and_head_as_by_hand()
    {
        var (q, h) = (s_block.Wind.PeakKNPerM2, s_block.HeightM);
        var strength = s_design.Works.Guard.ColumnStrength!;
        var diameterM = strength.Column.Size.DiameterMm / 1000;
        var (pole, head) = (1.2 * diameterM * h * q, 1.8 * s_block.HeadM2 * q);
        Assert.Equal(pole + head, s_block.SideKN, 1e-9);
        var offKNm = 1.35 / 1.5 * strength.Sail.MassKg * 9.81e-3 * 0.3;
        Assert.Equal((pole * h / 2) + (head * h) + offKNm, s_block.MomentKNm, 1e-6);
        Assert.Equal(strength.Sail.AreaM2, s_block.HeadM2);
    }

    [Fact]
    public void It_is_the_least_that_holds_and_wide_enough_for_the_plate()
    {
        Assert.True(s_block.Strength.Holds);
        Assert.True(s_block.Block.LengthMm >= s_design.Works.Guard.Column!.Size.BlockMm);
        var less = s_block.Block with { DepthMm = s_block.Block.DepthMm - 50 };
        Assert.False(less.DepthMm >= 600 && (s_block.Strength with { Block = less }).Holds);
        Assert.Contains(s_design.Findings, finding => finding.Id == "guard/pole-block");
    }
}
