using Shaduf.Shape;
using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>What carries the rack of the custom over its open pits.</summary>
public sealed class ProppingTests
{
    private static readonly RackStrength s_rack = CustomRack.Strength(CustomRack.Brief);
    private static readonly Erection s_works = Works(72);
    private static readonly Propping s_props = s_works.Props;

    /// <summary>
    /// By hand: supports at 0 and 2 m; 6 kN at 0.5 m and 2 kN at 2.5 m: the far one bears (6 · 0.5 + 2 · 2.5)/2 = 4, the near
    /// one 4; moment at 0.5 m 4 · 0.5 = 2.0, over the far support −2 · 0.5 = −1.0 kNm.
    /// </summary>
    [Fact]
    public void A_tube_on_its_props_is_a_beam_on_two_supports()
    {
        var pair = new PropPair(
            new(new(0, 0, 1000), new(0, -500, 0)),
            new(new(0, 2000, 1000), new(0, 2000, 0)),
            [1000],
            (-200, 2600)
        );
        var (low, high, moment) = pair.Carry([(500, 6), (2500, 2)]);
        Assert.Equal(4, low, 1e-12);
        Assert.Equal(4, high, 1e-12);
        Assert.Equal(2.0, moment, 1e-12);
        Assert.Equal(1.0, pair.Carry([(2500, 2)]).MomentKNm, 1e-12);
        Assert.Equal(26.565, pair.Low.LeanDeg, 0.001);
        Assert.Equal(1118.03, pair.Low.LengthMm, 0.01);

        // Spread about 1 m: as far as the nearer end, 1.2 m away, allows.
        var spread = pair.Spread(1000, 5).ToList();
        Assert.Equal([40.0, 520, 1000, 1480, 1960], spread.Select(load => Math.Round(load.AtMm, 9)));
        Assert.All(spread, load => Assert.Equal(1, load.KN));
    }

    /// <summary>
    /// By hand, 48.3 x 2.88 mm: A = π/4 (48.3² − 42.54²) = 410.9 mm2, i = √(48.3² + 42.54²)/4 = 16.09 mm; 2 m at 210 N/mm2:
    /// λ = 2000/16.09/(π √(210,000/210)) = 1.251, curve c: Φ = 1.540, χ = 0.410; 0.410 · 410.9 · 0.210 = 35.4 kN.
    /// </summary>
    [Fact]
    public void A_scaffold_tube_buckles_by_curve_c()
    {
        var prop = new Prop(new(0, 0, 2000), new(0, 0, 0));
        Assert.Equal(1.251, Propping.SlendernessRatio(prop), 0.002);
        Assert.Equal(35.4, Propping.ResistanceKN(prop), 0.2);
    }

    [Fact]
    public void Props_stand_clear_of_the_pits_under_the_tubes_and_lean_as_little_as_they_need()
    {
        var half = s_works.Footings.Block.WidthMm / 2;
        Assert.Equal(s_works.Rack.TubePlacesMm.Count, s_props.Pairs.Count);
        Assert.All(
            s_props.Pairs,
            pair =>
            {
                Assert.True(pair.HeadsMm[0] - pair.Low.Foot.YMm >= half + 600 + (s_props.BoardMm / 2));
                Assert.True(pair.High.Foot.YMm - pair.HeadsMm[^1] >= half + 600 + (s_props.BoardMm / 2));
                Assert.InRange(pair.Low.Head.YMm, pair.EndsMm.LowMm, pair.HeadsMm[0]);
                Assert.InRange(pair.High.Head.YMm, pair.HeadsMm[^1], pair.EndsMm.HighMm);
                Assert.All(pair.Both, prop => Assert.InRange(prop.LeanDeg, 0, PropPlaces.UsualLeanDeg + 1e-6));
            }
        );
    }

    /// <summary>The pair that bears most holds its share of the weight and the ropes of one end; all numbers by hand from the works' own.</summary>
    [Fact]
    public void Props_carry_weight_ropes_and_the_wind_from_above()
    {
        // Three tubes: the middle one takes half the row, and a quarter more as the middle of two spans.
        var tubes = s_works.Rack.TubePlacesMm;
        var share = 1.25 * ((tubes[2] - tubes[0]) / 2) / s_works.Rack.Size.LengthMm;
        Assert.Equal(share, s_props.PairShare, 1e-9);
        var down = Math.Sin(Math.PI / 4);
        var tight = 4 * s_works.RopesASide * Propping.TightKN * down;
        var all =
            (share * ((1.35 * (s_props.WeightKN + tight)) + (1.5 * s_works.PressKN)))
            + (s_works.RopesASide * s_works.RopeKN * down);

        // One line of columns: the ropes pull between both props, each of which takes from a third to two thirds.
        Assert.InRange(s_props.Worst.UprightKN / all, 1 / 3.0, 2 / 3.0);
        Assert.Equal(
            s_props.Worst.UprightKN / Math.Cos(s_props.Worst.Prop.LeanDeg * Math.PI / 180) / s_props.ASide,
            s_props.MostAlongKN,
            1e-9
        );
        Assert.Equal(s_props.MostAlongKN / Propping.ResistanceKN(s_props.Worst.Prop), s_props.UseShare, 1e-9);
        Assert.Equal(FindingStatus.Holds, PropFindings.Of(s_props).Status);
    }

    [Fact]
    public void Softer_ground_asks_for_wider_boards_then_for_more_props_and_at_last_stops()
    {
        Assert.True(Works(20).Props.BoardMm > s_props.BoardMm);
        Assert.True(Works(8).Props.ASide > s_props.ASide);
        var mud = Works(1).Props;
        Assert.Equal(Propping.MostASide, mud.ASide);
        Assert.False(mud.Holds);
        Assert.Equal(FindingStatus.Stop, PropFindings.Of(mud).Status);
    }

    [Fact]
    public void A_gale_presses_and_lifts_more_and_an_unknown_wind_is_only_a_plan()
    {
        var gale = s_works with { Wind = s_rack.Wind with { BasicMPerS = 60 } };
        Assert.True(gale.Props.TubeUseShare > s_props.TubeUseShare);
        Assert.True(gale.LiftKN > s_works.LiftKN);
        var plan = s_works with { Wind = s_rack.Wind with { IsKnown = false } };
        Assert.Equal(FindingStatus.Unchecked, PropFindings.Of(plan.Props).Status);
    }

    private static Erection Works(double groundKPa) =>
        new(s_rack.Rack, Footings.Of(CustomRack.Brief, s_rack.Rack), s_rack.Wind, [.. Enumerable.Repeat(20.0, 12)])
        {
            Strength = s_rack,
            GroundKPa = groundKPa,
        };
}
