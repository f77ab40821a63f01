using Shaduf.Ground;
using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>
/// Custom against physics by hand: 2 x 7 modules of 2.2 m x 1.1 m at 15 deg on three columns of one line, open flat
/// country, 26 m/s (mean of ten minutes, once in 50 years), three blocks of 0.5 x 0.5 x 1.0 m in sand.
/// </summary>
public sealed class CustomCaseTests
{
    // By hand: top edge 2.50 m, c_e 1.5410, q_p = 0.5 · 1.25 · 26² · 1.5410 = 651.1 N/m2; plane 4.40 m x 7.70 m = 33.88 m2;
    // F = 1.1 · 0.6511 · 33.88 = 24.27 kN, lift F cos 15 = 23.44, side load F sin 15 = 6.280 kN; moment at the ground
    // F (4.40/4 + 1.931 sin 15) = 38.82 kN m. Middle column 2.70/7.70 of it: lift 8.219, side 2.202 kN, 13.611 kN m;
    // modules and frame 0.30 kN/m2: 3.564 kN of weight.
    private const double LiftKN = 8.219;
    private const double SideKN = 2.202;
    private const double MomentKNm = 13.611;
    private const double WeightKN = 3.564;

    [Fact]
    public void By_hand_the_gust_and_its_force_are_those_of_the_code()
    {
        Assert.Equal(0.6511, WindPressure.PeakNPerM2(26, Terrain.Of("II"), 2.5) / 1000, 1e-4);
        var forceKN = 1.1 * 0.6511 * 4.40 * 7.70;
        Assert.Equal(24.265, forceKN, 0.01);
        Assert.Equal(LiftKN, forceKN * Math.Cos(15 * Math.PI / 180) * 2.70 / 7.70, 0.01);
        Assert.Equal(MomentKNm, forceKN * (1.1 + (1.931 * Math.Sin(15 * Math.PI / 180))) * 2.70 / 7.70, 0.02);
    }

    // 1.5 · 8.219 − 0.9 · 3.564 = 9.12 kN of pull; 0.9 · 0.25 m3 · 24 kN/m3 = 5.40 kN of block.
    [Fact]
    public void By_hand_the_wind_lifts_a_block_out()
    {
        var pullKN = Uplift.PullKN(LiftKN, WeightKN);
        Assert.Equal(9.12, pullKN, 0.01);
        Assert.Equal(5.40, Uplift.HoldingFactor * Uplift.WeightKN(0.5 * 0.5 * 1.0, 0), 1e-9);
        Assert.Equal(0.422, Uplift.ConcreteM3(pullKN, 0), 0.001);
    }

    // Class 4, S = 23.6 kN/m3, b = 0.707 m: k = 7.02 P/(S b) = 0.926, d³ = 0.926 d + 6.242, d = 2.007 m against 1.0 m.
    // At d = 1 it would be 1 = s (0.926 + 6.242) with the force in share s: wind 26 √(1/7.168) = 9.7 m/s.
    [Fact]
    public void By_hand_a_block_turns_over_and_holds_a_gentle_wind_only()
    {
        var neededM = PierInSoil.FreeDepthM(SideKN, MomentKNm, 0.5 * Math.Sqrt(2), 23.6);
        Assert.Equal(2.007, neededM, 0.005);
        Assert.Equal(1, PierInSoil.FreeDepthM(SideKN / 7.168, MomentKNm / 7.168, 0.5 * Math.Sqrt(2), 23.6), 0.001);
        Assert.Equal(9.71, 26 / Math.Sqrt(7.168), 0.01);
    }

    [Fact]
    public void The_program_stops_uplift_and_overturning_and_names_the_wind_that_the_blocks_hold()
    {
        var found = CustomRack.Found(CustomRack.Brief, CustomRack.Sand);
        Assert.Equal(FindingStatus.Stop, found["ground/uplift"].Status);
        Assert.Equal(FindingStatus.Stop, found["ground/overturning"].Status);
        var stops = found["ground/stops-at-wind"];
        Assert.Equal(FindingStatus.Look, stops.Status);

        // The plinth adds a little weight, the outer columns and an uneven gust a little moment: within a metre a second.
        Assert.InRange(stops.Value!.Value, 8.7, 10.7);
        Assert.True(HoldsAt(stops.Value.Value - 0.1));
        Assert.False(HoldsAt(stops.Value.Value + 0.2));
    }

    [Fact]
    public void What_is_advised_holds_when_it_is_applied()
    {
        var rack = CustomRack.Strength(CustomRack.Brief);
        var soil = FootingGround.Of(CustomRack.Sand);
        var advised = FootingChoice.Least(rack, soil, null, null)!;
        Assert.Contains(
            Footings.Says(advised.Form, advised.Block),
            CustomRack.Found(CustomRack.Brief, CustomRack.Sand)["ground/uplift"].Says,
            StringComparison.Ordinal
        );
        var applied = CustomRack.Brief with { FootingDepthMm = advised.Block.DepthMm };
        var built = CustomRack.Strength(applied);
        var footings = Footings.Of(applied, built.Rack, advised) with
        {
            Strength = FootingStrength.Of(built, soil, advised.Block, built.Wind.PeakKNPerM2, advised.Form),
        };
        Assert.True(footings.Strength!.Holds);
        Assert.All(
            FootingFindings.Of(footings, built, CustomRack.Sand),
            finding => Assert.True(finding.Status < FindingStatus.Stop, $"{finding.Id}: {finding.Says}")
        );
        var less = advised.Block with { WidthMm = advised.Block.WidthMm - 100 };
        Assert.False((footings.Strength with { Block = less }).Holds);
    }

    private static bool HoldsAt(double windMPerS)
    {
        var rack = CustomRack.Strength(CustomRack.Brief, windMPerS);
        return FootingStrength
            .Of(
                rack,
                FootingGround.Of(CustomRack.Sand),
                Footings.BlockOf(500, 1000, rack.Rack.Sections.Column.SideMm),
                rack.Wind.PeakKNPerM2
            )
            .Holds;
    }
}
