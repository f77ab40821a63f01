using Shaduf.Ground;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>
/// Custom against physics: two rows of seven modules of 2.2 m x 1.1 m at 15 deg on one line of three columns, 26 m/s over
/// open flat country, customary blocks of 0.5 x 0.5 x 1.0 m.
/// </summary>
public sealed class FootingStrengthTests
{
    private const double GravityMPerS2 = 9.81;
    private static readonly RackBrief s_custom = SmallDesign.File().Brief.Rack with
    {
        RowClearanceMm = 0,
        Angle = null,
        FootingSideMm = 500,
        FootingDepthMm = 1000,
    };
    private static readonly RackStrength s_rack = Strength(s_custom);

    /// <summary>The force of the plane is 1.1 q_p b d', its lift that times cos 15 deg; three columns share lift and weight.</summary>
    [Fact]
    public void Wind_lifts_the_customary_blocks_out_as_by_hand()
    {
        Assert.Equal(3, s_rack.Rack.Skeleton.Feet.Count);
        var (size, wind) = (s_rack.Rack.Size, s_rack.Wind);
        var liftKN = 1.1 * wind.PeakKNPerM2 * size.LengthMm * size.DepthMm * 1e-6 * Math.Cos(15 * Math.PI / 180);
        var weightKN = (s_rack.Rack.Steel.MassKg + s_rack.Rack.ModuleMassKg) * GravityMPerS2 / 1000;
        var even = FootLoad
            .Of(s_rack, s_rack.Combinations.Ground, wind.PeakKNPerM2)
            .Where(load => load.Combination == "0.9 G + 1.5 W, wind from the high edge, up");
        Assert.Equal((1.5 * liftKN) - (0.9 * weightKN), -even.Sum(load => load.DownKN), 0.03 * liftKN);
        var blocks = Blocks(s_rack, 500, 1000);
        Assert.True(blocks.PullKN >= ((1.5 * liftKN) - (0.9 * weightKN)) / 3);
        Assert.True(blocks.PullKN > 0.9 * blocks.WeightKN);
    }

    /// <summary>At the worst 13.6 kN m at a middle column ask for 1.88 m of a wider block, by the table of the worked rack.</summary>
    [Fact]
    public void The_customary_blocks_turn_over()
    {
        var blocks = Blocks(s_rack, 500, 1000);
        Assert.True(blocks.Turning.MomentKNm > 12);
        Assert.True(blocks.NeededDepthM > 1.88);
        Assert.True(blocks.TurningShare > 1);
    }

    [Fact]
    public void Findings_stop_them_with_the_wind_that_they_do_hold()
    {
        var found = Found(s_custom, SoilKind.Sand).ToDictionary(finding => finding.Id);
        Assert.Equal(FindingStatus.Stop, found["ground/uplift"].Status);
        Assert.Equal(FindingStatus.Stop, found["ground/overturning"].Status);
        var stops = found["ground/stops-at-wind"];
        Assert.Equal(FindingStatus.Stop, stops.Status);
        Assert.InRange(stops.Value!.Value, 5, 25);
        Assert.True(HoldsAt(stops.Value.Value - 0.1));
        Assert.False(HoldsAt(stops.Value.Value + 0.2));
    }

    [Fact]
    public void What_is_advised_holds_when_applied_and_five_centimetres_less_does_not()
    {
        var calm = Strength(s_custom, 20);
        var least = FootingChoice.Least(calm, SoilClass.Of(4), null, null)!;
        var applied = s_custom with { FootingSideMm = least.LengthMm, FootingDepthMm = least.DepthMm };
        Assert.True(Blocks(Strength(applied, 20), least.LengthMm, least.DepthMm).Holds);
        Assert.All(Found(applied, SoilKind.Sand, 20), finding => Assert.Equal(FindingStatus.Holds, finding.Status));
        Assert.False(Blocks(calm, least.LengthMm - 50, least.DepthMm).Holds);
        Assert.False(Blocks(calm, least.LengthMm, least.DepthMm - 50).Holds);
    }

    [Fact]
    public void Swelling_ground_is_only_a_plan_and_handed_over()
    {
        var found = Found(s_custom, SoilKind.ExpansiveClay).ToDictionary(finding => finding.Id);
        Assert.Equal(FindingStatus.Stop, found["ground/soil"].Status);
        Assert.Equal(FindingStatus.Unchecked, found["ground/uplift"].Status);
    }

    [Fact]
    public void A_moment_grows_with_depth_by_the_side_load()
    {
        var load = new FootLoad("C1", "", 0, 3, -2, 10, 20);
        Assert.Equal((12, 23), load.AtKNm(1));
        Assert.Equal(Math.Sqrt(13), load.SideKN, 1e-12);
    }

    [Fact]
    public void What_the_brief_leaves_open_is_the_least_block_that_holds()
    {
        var design = SmallDesign.Of(brief =>
        {
            brief["site"]!["soil"] = "gravel";
            brief["rack"]!["footingSide"] = "choose";
            brief["rack"]!["footingDepth"] = "choose";
        });
        var block = design.Works.Footings.Block;
        var strength = design.Works.RackChoice.Taken.Strength!;
        var least = FootingChoice.Least(strength, SoilClass.Of(3), null, null);
        Assert.Equal(least is not null, design.Works.Footings.Strength!.Holds);
        if (least is not null)
        {
            Assert.Equal(least, block);
        }

        Assert.Equal(block.DepthMm, design.Works.Footings.Strength.Block.DepthMm);
    }

    private static bool HoldsAt(double windMPerS) => Blocks(Strength(s_custom, windMPerS), 500, 1000).Holds;

    private static FootingStrength Blocks(RackStrength rack, double sideMm, double depthMm) =>
        FootingStrength.Of(
            rack,
            SoilClass.Of(4),
            Footings.BlockOf(sideMm, depthMm, rack.Rack.Sections.Column.SideMm),
            rack.Wind.PeakKNPerM2
        );

    private static List<Finding> Found(RackBrief brief, SoilKind soil, double windMPerS = 26)
    {
        var rack = Strength(brief, windMPerS);
        var footings = Footings.Of(brief, rack.Rack);
        var blocks = FootingStrength.Of(rack, FootingStrength.ClassOf(soil), footings.Block, rack.Wind.PeakKNPerM2);
        return [.. FootingFindings.Of(footings with { Strength = blocks }, rack, soil)];
    }

    private static RackStrength Strength(RackBrief rackBrief, double windMPerS = 26)
    {
        var file = SmallDesign.File();
        var site = file.Brief.Site with { Wind = new(windMPerS, 600, 50, "map") };
        var brief = file.Brief with { Rack = rackBrief, Site = site };
        var module = file.Shelf.Find<ModuleCard>("module-410")!;
        var body = new ModuleBody(2200, 1100, 35, 25, 27.5);
        var rack = Rack.Of(rackBrief, module with { Body = body }, new(2, 7, 1), 15, file.Shelf)!;
        return RackStrength.Of(rack, brief, Survey.Of(brief), file.Shelf)!;
    }
}
