using System.Text.Json.Nodes;
using Shaduf.Ground;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>Footings of a stand: concrete without bars, strips where blocks grow silly, frost and edges.</summary>
public sealed class StandFootingTests
{
    private static readonly Design s_plain = Examples.DesignOf("plain-school");

    private static StandSite Site(double floorM, StandBrief? stand = null, Func<SiteBrief, SiteBrief>? site = null)
    {
        var brief = s_plain.Brief;
        brief = brief with
        {
            Site = site?.Invoke(brief.Site) ?? brief.Site,
            Tank = brief.Tank with { GivenStandM = floorM, Stand = stand ?? StandBrief.Open },
        };
        return new(brief, s_plain.Survey, s_plain.File.Shelf);
    }

    private static StandDesign Designed(StandSite site) =>
        StandDesign.Of(site, site.Shelf.Find<TankCard>("tank-5")!, 1)!;

    private static Finding Found(StandDesign stand, string id, SiteBrief? site = null) =>
        StandFindings.Of(stand, site ?? s_plain.Brief.Site).Single(finding => finding.Id == id);

    // By hand, EN 1992-1-1, equation 12.13: h = a √(3 σ/f_ctd)/0.85.
    [Fact]
    public void Concrete_without_bars_is_as_deep_as_its_reach_asks()
    {
        var stand = Designed(Site(6));
        var (concrete, block) = (stand.Concrete, stand.Footings.Block);
        Assert.Equal((block.WidthMm - block.PlinthSideMm) / 2, concrete.ReachMm, 1e-9);
        var tension = 0.8 * 0.7 * 0.30 * Math.Pow(12, 2.0 / 3) / 1.5;
        Assert.Equal(
            concrete.ReachMm * Math.Sqrt(3 * concrete.PressureKPa / 1000 / tension) / 0.85,
            concrete.NeededDepthMm,
            0.01
        );
        Assert.True(concrete.Holds);
    }

    [Fact]
    public void A_wide_and_shallow_block_is_stopped_and_the_advice_holds()
    {
        var stand = Designed(Site(6, StandBrief.Open with { FootingSideMm = 2400, FootingDepthMm = 350 }));
        var concrete = Found(stand, "stand/concrete");
        Assert.Equal(FindingStatus.Stop, concrete.Status);
        Assert.Contains("What would hold", concrete.Says);
        var advised = stand.WouldHold()!;
        var applied = Designed(
            Site(
                6,
                StandBrief.Open with
                {
                    FootingSideMm = advised.Block.WidthMm,
                    FootingDepthMm = advised.Block.DepthMm,
                }
            )
        );
        Assert.Equal(FootingForm.Block, advised.Form);
        Assert.True(applied.Footings.Strength!.Holds && applied.Concrete.Holds);
    }

    [Fact]
    public void Where_blocks_grow_silly_strips_tie_the_legs_of_a_row_and_need_a_fifth_less_concrete()
    {
        var stand = Designed(Site(8, site: each => each with { Soil = SoilKind.Clay }));
        Assert.Equal(FootingForm.Strip, stand.Footings.Form);
        Assert.Equal(2, stand.Footings.Count);
        Assert.True(stand.Footings.Strength!.Holds && stand.Concrete.Holds);
        Assert.Equal(2, stand.FootingsAtMm.Count);
        var blocks = Enumerable
            .Range(12, 19)
            .Select(step =>
                StandFootings.Least(stand.Strength, stand.Footings.Strength.Soil, null, step * 50)?.Block.ConcreteM3
            )
            .OfType<double>();
        Assert.All(blocks, each => Assert.True(stand.Footings.ConcreteM3 <= 0.8 * 4 * each));

        // Legs of a row press and pull together: the sum of both is what the strip carries.
        var legs = FootLoad.Of(
            stand.Strength.Cases,
            stand.Strength.Combinations.Ground,
            stand.Strength.Wind.PeakKNPerM2,
            -StandPlan.FootMm
        );
        var strips = stand.Footings.Strength.Ground;
        Assert.Equal(legs.Take(4).Sum(leg => leg.DownKN), strips.Take(2).Sum(strip => strip.DownKN), 1e-6);
    }

    [Theory]
    [InlineData(0.9, FindingStatus.Holds)]
    [InlineData(0.0, FindingStatus.Holds)]
    public void Footings_go_below_the_frost(double frostM, FindingStatus status)
    {
        var site = Site(3, site: each => each with { FrostM = frostM, EdgeM = 20 });
        var stand = Designed(site);
        Assert.True(stand.Footings.Block.DepthMm >= frostM * 1000);
        Assert.Equal(status, Found(stand, "stand/frost", site.Brief.Site).Status);
        Assert.Equal(FindingStatus.Holds, Found(stand, "stand/edge", site.Brief.Site).Status);
    }

    [Fact]
    public void Shallow_blocks_in_frost_are_stopped_and_an_unknown_frost_is_never_taken_silently()
    {
        var shallow = Site(
            3,
            StandBrief.Open with
            {
                FootingSideMm = 1200,
                FootingDepthMm = 700,
            },
            each => each with { FrostM = 0.9 }
        );
        Assert.Equal(FindingStatus.Stop, Found(Designed(shallow), "stand/frost", shallow.Brief.Site).Status);

        var stand = Designed(Site(3));
        FindingStatus Status(double? low, double airDegC) =>
            Found(
                stand,
                "stand/frost",
                s_plain.Brief.Site with
                {
                    RecordLowDegC = low,
                    LatitudeDeg = 40,
                    Months = [.. Enumerable.Repeat(new MonthBrief(5, airDegC), 12)],
                }
            ).Status;
        Assert.Equal(FindingStatus.Holds, Status(1, 3));
        Assert.Equal(FindingStatus.Look, Status(-3, 9));
        Assert.Equal(FindingStatus.Unchecked, Status(-12, 1));
        Assert.Equal(FindingStatus.Unchecked, Status(null, 1));
    }

    [Fact]
    public void A_ditch_beside_a_footing_and_a_steep_slope_under_a_rack_are_stopped()
    {
        var design = SmallDesign.Of(brief =>
        {
            brief["site"]!["nearestEdge"] = "0.8 m";
            brief["rack"]!["groundFall"] = new JsonObject { ["along"] = "20 %", ["back"] = "-20 %" };
        });
        Assert.Equal(FindingStatus.Stop, design.Findings.Single(each => each.Id == "ground/edge").Status);
        Assert.Equal(FindingStatus.Stop, design.Findings.Single(each => each.Id == "ground/slope").Status);
    }

    // Five and seven legs: the inner legs of the back row stand in the gaps of the front row, and plan braces hold them.
    [Theory]
    [InlineData(5, 2)]
    [InlineData(7, 4)]
    public void An_odd_number_of_legs_is_braced_in_plan(int legs, int bracesALevel)
    {
        var stand = Designed(Site(5, StandBrief.Open with { LegCount = legs }));
        var plan = stand.Stand.Plan;
        Assert.Equal(bracesALevel * plan.BayCount, stand.Stand.Members(TankStand.PlanRole).Count());
        Assert.True(stand.Strength.Holds, StandDesign.Says(stand.Strength));
        Assert.Equal(legs, stand.Stand.Skeleton.Feet.Count);
        var factors = new double[StandActions.CaseCount];
        factors[StandActions.Water] = 1;
        var feet = Enumerable.Range(0, legs).Select(foot => stand.Strength.Cases.Foot(foot, factors).Force.ZN).ToList();
        var half = plan.Tank.WaterKg * 9.80665 / 2;
        Assert.Equal(half, feet.Take(plan.RowCount).Sum(), 0.01 * half);
    }
}
