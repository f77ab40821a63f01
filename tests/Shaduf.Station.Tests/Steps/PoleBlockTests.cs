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

    /// <summary>By hand: round tube 1.2 · 0.0761 m a metre of height, plate 1.8 on the head, gust at the lamp.</summary>
    [Fact]
    public void Wind_on_pole_and_head_as_by_hand()
    {
        var (q, h) = (s_block.Wind.PeakKNPerM2, s_block.HeightM);
        var (pole, head) = (1.2 * 0.0761 * h * q, 1.8 * s_block.HeadM2 * q);
        Assert.Equal(pole + head, s_block.SideKN, 1e-9);
        Assert.Equal((pole * h / 2) + (head * h), s_block.MomentKNm, 1e-9);
        Assert.True(s_block.HeadM2 > 0.15);
    }

    [Fact]
    public void It_is_the_least_that_holds_and_wide_enough_for_the_plate()
    {
        Assert.True(s_block.Strength.Holds);
        Assert.True(s_block.Block.LengthMm >= s_design.Works.Guard.Column!.Foot.SideMm + 200);
        var less = s_block.Block with { DepthMm = s_block.Block.DepthMm - 50 };
        Assert.False(less.DepthMm >= 600 && (s_block.Strength with { Block = less }).Holds);
        Assert.Contains(s_design.Findings, finding => finding.Id == "guard/pole-block");
    }
}
