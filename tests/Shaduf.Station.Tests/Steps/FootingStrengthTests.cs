using CsCheck;
using Shaduf.Ground;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>Footings under the rack of the custom, in ground that was tested, presumed, wet or bad.</summary>
public sealed class FootingStrengthTests
{
    private const double GravityMPerS2 = 9.81;
    private static readonly RackStrength s_rack = CustomRack.Strength(CustomRack.Brief);
    private static readonly FootingGround s_sand = FootingGround.Of(CustomRack.Sand);

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

    [Fact]
    public void What_is_advised_holds_when_applied_and_five_centimetres_less_does_not()
    {
        var calm = CustomRack.Strength(CustomRack.Brief, 20);
        var least = FootingChoice.Least(calm, s_sand, null, null)!.Block;
        var applied = CustomRack.Brief with { FootingSideMm = least.LengthMm, FootingDepthMm = least.DepthMm };
        Assert.True(Blocks(CustomRack.Strength(applied, 20), least.LengthMm, least.DepthMm).Holds);
        Assert.All(
            CustomRack.Found(applied, CustomRack.Sand, 20).Values,
            finding => Assert.Equal(FindingStatus.Holds, finding.Status)
        );
        Assert.False(Blocks(calm, least.LengthMm - 50, least.DepthMm).Holds);
        Assert.False(Blocks(calm, least.LengthMm, least.DepthMm - 50).Holds);
    }

    [Theory]
    [InlineData(SoilKind.ExpansiveClay)]
    [InlineData(SoilKind.Fill)]
    [InlineData(SoilKind.Peat)]
    [InlineData(SoilKind.Loess)]
    public void Bad_ground_is_only_a_plan_and_handed_over(SoilKind soil)
    {
        var found = CustomRack.Found(CustomRack.Brief, CustomRack.Sand with { Soil = soil });
        Assert.Equal(FindingStatus.Stop, found["ground/soil"].Status);
        Assert.Equal(FindingStatus.Unchecked, found["ground/uplift"].Status);
        Assert.Equal(FindingStatus.Unchecked, found["ground/sliding"].Status);
    }

    [Fact]
    public void Clay_too_soft_for_footings_is_handed_over()
    {
        var site = CustomRack.Sand with
        {
            Soil = SoilKind.Clay,
            SoilTest = new() { UndrainedKPa = 15 },
        };
        Assert.Equal(FindingStatus.Stop, CustomRack.Found(CustomRack.Brief, site)["ground/soil"].Status);
    }

    [Fact]
    public void Unknown_soil_tells_the_tests_of_the_field()
    {
        var finding = CustomRack.Found(CustomRack.Brief, CustomRack.Sand with { Soil = null })["ground/soil"];
        Assert.Equal(FindingStatus.Look, finding.Status);
        Assert.Contains("picket", finding.Says, StringComparison.Ordinal);
        Assert.Contains("thumb", finding.Says, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.0, FindingStatus.Stop)]
    [InlineData(0.6, FindingStatus.Look)]
    [InlineData(5.0, FindingStatus.Holds)]
    [InlineData(null, FindingStatus.Look)]
    public void Water_in_the_pit_is_said_and_makes_concrete_lighter(double? waterM, FindingStatus status)
    {
        var site = CustomRack.Sand with { GroundwaterM = waterM };
        Assert.Equal(status, CustomRack.Found(CustomRack.Brief, site)["ground/water"].Status);
        var (wet, dry) = (Blocks(s_rack, 500, 1000, FootingGround.Of(site)), Blocks(s_rack, 500, 1000));
        var drownedM = 1 - Math.Min(1, waterM ?? 0);
        Assert.Equal(dry.WeightKN - (10 * 0.25 * drownedM), wet.WeightKN, 1e-9);
    }

    /// <summary>By hand: 500 x 500 mm, 0.9 x 24 kN/m3 of 0.25 m3 and plinth against the pull; Broms for clay of 60 kPa.</summary>
    [Fact]
    public void Tested_clay_is_held_by_broms_and_bears_by_annex_d()
    {
        var clay = FootingGround.Of(
            CustomRack.Sand with
            {
                Soil = SoilKind.Clay,
                SoilTest = new() { UndrainedKPa = 60 },
            }
        );
        var blocks = Blocks(s_rack, 600, 1500, clay);
        var worst = blocks.Turning;
        Assert.Equal(ShortPile.ClayDepthM(2 * worst.SideKN, 2 * worst.MomentKNm, 0.6, 60), blocks.NeededDepthM, 1e-9);
        var use = blocks.Bearing;
        Assert.True(use.IsTested);

        // Straight down: (π + 2) 60 · 1.2 + 18 · 1.5 = 397.2 kPa, divided by 1.4.
        Assert.Equal(397.2 / 1.4, use.BearsKPa, 0.1);
    }

    [Fact]
    public void What_is_only_felt_is_no_better_than_what_is_presumed()
    {
        var site = CustomRack.Sand with { Soil = SoilKind.Clay };
        var presumed = Blocks(s_rack, 600, 1500, FootingGround.Of(site));
        foreach (var thumb in Enum.GetValues<ThumbTest>())
        {
            var felt = Blocks(s_rack, 600, 1500, FootingGround.Of(site with { SoilTest = new() { Thumb = thumb } }));
            Assert.True(felt.NeededDepthM >= presumed.NeededDepthM);
            Assert.True(felt.Bearing.UseShare >= presumed.Bearing.UseShare);
        }

        var loose = FootingGround.Of(CustomRack.Sand with { SoilTest = new() { PicketMm = 300 } });
        Assert.True(loose.IsLoose);
        Assert.True(Blocks(s_rack, 600, 1500, loose).NeededDepthM >= Blocks(s_rack, 600, 1500).NeededDepthM);
    }

    [Fact]
    public void A_report_takes_the_place_of_the_presumed_pressure()
    {
        var report = FootingGround.Of(CustomRack.Sand with { SoilTest = new() { BearingKPa = 150 } });
        Assert.Equal(150, Blocks(s_rack, 600, 1500, report).Bearing.BearsKPa);
        Assert.Equal(96, Blocks(s_rack, 600, 1500).Bearing.BearsKPa);
    }

    [Fact]
    public void A_moment_grows_with_depth_by_the_side_load()
    {
        var load = new FootLoad("C1", "", 0, 3, -2, 10, 20);
        Assert.Equal((12, 23), load.AtKNm(1));
        Assert.Equal(Math.Sqrt(13), load.SideKN, 1e-12);
    }

    /// <summary>Two columns 2 m apart across, 10 kN down on one and 4 kN up on the other: 14 kN m about the line along the row.</summary>
    [Fact]
    public void Loads_of_columns_on_one_footing_add_up_about_its_middle()
    {
        var (low, high) = (new FootLoad("C1", "x", 10, 1, 2, 3, 4), new FootLoad("C2", "x", -4, 1, 2, 3, 4));
        var both = FootLoad.Together([(low, 0.5, -1), (high, 0.5, 1)]);
        Assert.Equal(new("C1+C2", "x", 6, 2, 4, 6 + 10 + 4, 8 + 3), both);
    }

    /// <summary>The moment of a beam about any point must be that of its columns about it.</summary>
    [Fact]
    public void Gathering_keeps_force_and_moment() =>
        Gen.Select(Gen.Double[-9, 9].Array[14], Gen.Double[-3, 3].Array[4])
            .Sample(
                (f, at) =>
                {
                    FootLoad Load(int i) => new("C", "x", f[i], f[i + 1], f[i + 2], f[i + 3], f[i + 4]);
                    var (one, two) = (Load(0), Load(7));
                    var whole = FootLoad.Together([(one, at[0], at[1]), (two, at[2], at[3])]);
                    Assert.Equal(one.DownKN + two.DownKN, whole.DownKN, 1e-9);
                    Assert.Equal(
                        one.AboutAlongKNm - (at[1] * one.DownKN) + two.AboutAlongKNm - (at[3] * two.DownKN),
                        whole.AboutAlongKNm,
                        1e-9
                    );
                }
            );

    [Fact]
    public void What_the_brief_leaves_open_is_the_least_footing_that_holds()
    {
        var design = SmallDesign.Of(brief =>
        {
            brief["site"]!["soil"] = "gravel";
            brief["site"]!["groundwater"] = "12 m";
            brief["site"]!["nearestEdge"] = "20 m";
            brief["rack"]!["footingSide"] = "choose";
            brief["rack"]!["footingDepth"] = "choose";
        });
        var footings = design.Works.Footings;
        var strength = design.Works.RackChoice.Taken.Strength!;
        var least = FootingChoice.Least(strength, footings.Strength!.Soil, null, null);
        Assert.Equal(least is not null, footings.Strength!.Holds);
        if (least is not null)
        {
            Assert.Equal(least.Block, footings.Block);
        }

        Assert.Equal(footings.Block.DepthMm, footings.Strength.Block.DepthMm);
    }

    [Fact]
    public void Strips_and_beams_carry_all_columns_and_count_their_plinths()
    {
        var feet = s_rack.Rack.Skeleton.Feet.Count;
        var strip = Assert.Single(FootGroups.Of(s_rack.Rack.Skeleton, FootingForm.Strip));
        Assert.Equal(feet, strip.Count);
        Assert.Equal(0, strip.Sum(place => place.AlongM), 1e-6);
        Assert.Equal(feet, FootGroups.Of(s_rack.Rack.Skeleton, FootingForm.Beam).Count);
        var block = Footings.BlockOf(800, 500, 100) with { LengthMm = 7000, PlinthCount = 3 };
        Assert.Equal((0.8 * 0.5 * 7) + (3 * 0.25 * 0.25 * Rack.PlinthHeightMm / 1000), block.ConcreteM3, 1e-9);
    }

    [Theory]
    [InlineData("1:1.5:3", null, false, 12)]
    [InlineData("1:1.5:3", null, true, 16)]
    [InlineData("1:3:6", null, true, 8)]
    [InlineData("1:2:4", "C20/25", false, 20)]
    public void Concrete_is_as_strong_as_its_class_or_its_mix_and_control_say(
        string mix,
        string? grade,
        bool isControlled,
        double cylinder
    )
    {
        var brief = CustomRack.Brief with { Mix = mix, ConcreteClass = grade, HasConcreteControl = isControlled };
        Assert.Equal(cylinder, Footings.Of(brief, s_rack.Rack).CylinderNPerMm2, 1e-9);
    }

    private static FootingStrength Blocks(
        RackStrength rack,
        double sideMm,
        double depthMm,
        FootingGround? ground = null
    ) =>
        FootingStrength.Of(
            rack,
            ground ?? s_sand,
            Footings.BlockOf(sideMm, depthMm, rack.Rack.Sections.Column.SideMm),
            rack.Wind.PeakKNPerM2
        );
}
