using System.Text.Json.Nodes;
using CsCheck;
using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>The stand under a tank: its model, what acts on it, what is chosen, and what is refused.</summary>
public sealed class StandTests
{
    private static readonly CardShelf s_shelf = Examples.DesignOf("plain-school").File.Shelf;
    private static readonly Design s_design = Examples.DesignOf("plain-school");
    private static readonly StandDesign s_stand = s_design.Works.Stand!;

    private static StandSite Site(double floorM = 6, StandBrief? stand = null, Func<SiteBrief, SiteBrief>? site = null)
    {
        var brief = s_design.Brief;
        brief = brief with
        {
            Site = site?.Invoke(brief.Site) ?? brief.Site,
            Tank = brief.Tank with { GivenStandM = floorM, Stand = stand ?? StandBrief.Open },
        };
        return new(brief, Survey.Of(brief), s_shelf);
    }

    private static StandDesign Designed(StandSite site, string tank = "tank-5") =>
        StandDesign.Of(site, site.Shelf.Find<TankCard>(tank)!, 1)!;

    private static Finding Found(StandDesign stand, string id, SiteBrief? site = null) =>
        StandFindings.Of(stand, site ?? s_design.Brief.Site).Single(finding => finding.Id == id);

    [Fact]
    public void The_stand_of_the_example_holds_and_its_drawing_may_go_out()
    {
        Assert.True(s_stand.Strength.Holds);
        Assert.True(s_stand.Footings.Strength!.Holds);
        Assert.All(
            s_design.Findings.Where(finding => finding.Id.StartsWith(StandFindings.Prefix, StringComparison.Ordinal)),
            finding => Assert.True(finding.Status is FindingStatus.Holds or FindingStatus.Look, finding.Id)
        );
    }

    // What the frame does under wind, weight and water is what statics say of the whole.
    [Fact]
    public void Loads_of_the_whole_agree_with_statics()
    {
        var (strength, plan) = (s_stand.Strength, s_stand.Stand.Plan);
        var totals = strength.Totals().ToDictionary(total => total.Name);
        Assert.Equal(plan.Tank.WaterKg * 9.80665e-3, totals["water, full to the overflow"].DownKN, 0.01);
        var gust = strength.Wind.PeakKNPerM2;
        var tank = strength.Drag.TankCoefficient * gust * plan.Tank.WidthMm * plan.Tank.HeightMm * 1e-6;
        var tower = strength.Drag.Faces.AlongY.PushM2 * strength.Drag.TowerShare * gust;
        var rest = (2.0 + (0.30 * plan.FloorMm / 1000)) * strength.Drag.TowerShare * gust;
        var across = totals["wind across the rows"];
        Assert.Equal(tank + tower + rest, across.SideKN, 0.005 * across.SideKN);

        // The tank at its middle, the tower at half its height, ladder and platform in between and on top.
        var foot = StandPlan.FootMm / 1000;
        var turning =
            (tank * ((plan.FloorMm + (plan.Tank.HeightMm / 2)) / 1000 - foot))
            + (tower * ((plan.TopMm / 1000) - foot) / 2)
            + (2.0 * strength.Drag.TowerShare * gust * ((plan.JoistZMm / 1000) - foot));
        Assert.InRange(across.TurningKNm, turning, turning * 1.12);
        Assert.InRange(strength.Cases.ImbalanceShare, 0, 1e-6);
    }

    // Of the worked stand of the references: legs, braces and height alike, wind of 26 m/s.
    [Fact]
    public void The_hardest_pulled_leg_is_what_statics_give_on_the_diagonal()
    {
        var strength = s_stand.Strength;
        var diagonal = strength.Totals().Single(total => total.Name == "wind on the diagonal");
        var byHand = StandLegs.LegKN(diagonal.TurningKNm, 4, s_stand.Stand.Plan.SideMm / 1000 / Math.Sqrt(2));
        var factors = new double[StandActions.CaseCount];
        factors[StandActions.Wind + 1] = strength.Wind.PeakKNPerM2;
        var inFrame = Enumerable.Range(0, 4).Max(foot => strength.Cases.Foot(foot, factors).Force.ZN) / 1000;
        Assert.InRange(inFrame / byHand, 0.93, 1.02);
    }

    [Fact]
    public void A_stand_without_wind_stands_on_all_legs_alike_and_the_deck_lies_level()
    {
        var strength = s_stand.Strength;
        var factors = new double[StandActions.CaseCount];
        factors[StandActions.Water] = 1;
        var feet = Enumerable.Range(0, 4).Select(foot => strength.Cases.Foot(foot, factors).Force.ZN).ToList();
        Assert.InRange(feet.Max() / feet.Min(), 1, 1.001);
    }

    [Fact]
    public void A_stand_shaken_harder_or_blown_harder_is_used_more() =>
        Gen.Select(Gen.Double[20, 40], Gen.Double[0.06, 0.2])
            .Sample(
                (wind, rock) =>
                {
                    StandStrength Of(double speed, double share) =>
                        StandStrength.Of(
                            s_stand.Stand,
                            Site(site: site =>
                                site with
                                {
                                    Wind = new(speed, 600, 50, "test"),
                                    Earthquake = new(share, "C", 1, 1.2, "test"),
                                }
                            ).Brief,
                            s_design.Survey,
                            s_shelf
                        );
                    var less = Of(wind, rock);
                    double Leg(StandStrength strength) =>
                        strength
                            .Members.Where(use => strength.Stand.Skeleton.Members[use.Member].Role == TankStand.LegRole)
                            .Max(use => use.Result.UtilisationShare);
                    Assert.True(Leg(Of(wind * 1.1, rock)) >= Leg(less));
                    Assert.True(Leg(Of(wind, rock * 1.1)) >= Leg(less));
                },
                iter: 8
            );

    [Theory]
    [InlineData(1.0, "tank-2")]
    [InlineData(3.0, "tank-5")]
    [InlineData(9.0, "tank-2")]
    [InlineData(4.0, "tank-10")]
    [InlineData(3.0, "tank-20")]
    public void Stands_of_many_heights_and_tanks_are_found(double floorM, string tank)
    {
        var stand = Designed(Site(floorM), tank);
        Assert.True(stand.Strength.Holds, StandDesign.Says(stand.Strength));
        Assert.Equal(floorM * 1000, stand.Stand.Plan.FloorMm, 1e-9);
        var plan = stand.Stand.Plan;
        Assert.InRange(plan.PitchMm, 100, StandPlan.MostPitchMm);
        Assert.All(stand.Strength.Moves, move => Assert.True(move.Holds, move.What));
        Assert.All(stand.Stand.Steel.Groups, group => Assert.True(group.MassKg > 0));
    }

    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Any_number_of_legs_from_four_to_eight_is_built(int legs)
    {
        var stand = Designed(Site(5, StandBrief.Open with { LegCount = legs }));
        Assert.Equal(legs, stand.Stand.Skeleton.Feet.Count);
        Assert.Equal(legs, stand.Footings.Count);
        Assert.True(stand.Strength.Holds);

        // One size less of the legs does not hold, or there is none.
        var lighter = StandBrief.Open with
        {
            LegCount = legs,
            Leg = "SHS40x3",
        };
        Assert.True(stand.Stand.Plan.Sections.Leg.Name == "SHS40x3" || !Designed(Site(5, lighter)).Strength.Holds);
    }

    // Square panels, 57 t of water.
    [Fact]
    public void A_tank_of_sixty_cubic_metres_stands_on_heavy_tubes()
    {
        var stand = Designed(Site(2), "tank-58");
        Assert.True(stand.Strength.Holds, StandDesign.Says(stand.Strength));
        var plan = stand.Stand.Plan;

        // A joist under each joint line of the panels.
        foreach (var line in Enumerable.Range(0, 5))
        {
            var x = plan.MiddleMm - (plan.BedMm / 2) + (line * 1220);
            Assert.Contains(plan.JoistXMm, joist => Math.Abs(joist - x) < 1);
        }
    }

    [Fact]
    public void A_tank_larger_than_its_platform_is_stopped_and_the_advice_holds()
    {
        var stand = Designed(Site(3, StandBrief.Open with { PlatformM = 1.5 }));
        var fit = Found(stand, "stand/fit");
        Assert.Equal(FindingStatus.Stop, fit.Status);
        Assert.Contains("1.90 m", fit.Says);
        Assert.Equal(
            FindingStatus.Holds,
            Found(Designed(Site(3, StandBrief.Open with { PlatformM = 1.9 })), "stand/fit").Status
        );
    }

    [Fact]
    public void A_stand_on_a_slope_is_stopped()
    {
        var stand = Designed(Site(3, StandBrief.Open with { FallShare = 0.08 }));
        var slope = Found(stand, "stand/slope");
        Assert.Equal(FindingStatus.Stop, slope.Status);
        Assert.Contains("cut a level place", slope.Says);
    }

    [Fact]
    public void Without_an_earthquake_or_a_wind_nothing_of_it_is_checked()
    {
        foreach (
            var site in new[]
            {
                Site(site: each => each with { Earthquake = null }),
                Site(site: each => each with { Wind = null }),
            }
        )
        {
            var stand = Designed(site);
            var isQuake = site.Brief.Site.Earthquake is null;
            Assert.Equal(FindingStatus.Unchecked, Found(stand, "stand/strength").Status);
            Assert.Equal(
                isQuake ? FindingStatus.Unchecked : FindingStatus.Holds,
                Found(stand, "stand/earthquake").Status
            );
        }
    }

    [Fact]
    public void Ground_that_never_shakes_needs_no_check_and_ground_that_shakes_hard_an_engineer()
    {
        StandDesign Shaken(double share) =>
            Designed(Site(2, site: each => each with { Earthquake = new(share, "A", 1, 1.0, "test") }), "tank-2");
        Assert.Contains("so quiet", Found(Shaken(0), "stand/earthquake").Says);
        Assert.Equal(FindingStatus.Stop, Found(Shaken(0.4), "stand/earthquake").Status);
    }

    [Fact]
    public void A_tank_of_unknown_mass_is_not_checked()
    {
        var card = s_shelf.Find<TankCard>("tank-5")! with { MassKg = null };
        var stand = StandDesign.Of(Site(), card, 1)!;
        var finding = Found(stand, "stand/strength");
        Assert.Equal(FindingStatus.Unchecked, finding.Status);
        Assert.Contains("does not say what it weighs", finding.Says);
    }

    [Fact]
    public void Swelling_clay_and_fill_are_no_ground_for_a_stand() =>
        Assert.All(
            new[] { SoilKind.ExpansiveClay, SoilKind.Fill },
            soil =>
            {
                var site = Site(site: each => each with { Soil = soil });
                Assert.Equal(FindingStatus.Unchecked, Found(Designed(site), "stand/bearing", site.Brief.Site).Status);
            }
        );

    [Fact]
    public void Sections_that_do_not_hold_are_told_with_what_would()
    {
        var asked = StandBrief.Open with { LegCount = 4, Leg = "SHS40x3" };
        var stand = Designed(Site(6, asked), "tank-10");
        Assert.False(stand.Strength.Holds);
        var would = Assert.Single(stand.Others);
        Assert.True(would.Holds);
        Assert.Contains("What would hold", Found(stand, "stand/strength").Says);
    }

    [Theory]
    [InlineData("0.6 m", false)]
    [InlineData("3 m", true)]
    public void Only_a_floor_of_a_metre_and_more_gets_legs(string stand, bool isBuilt)
    {
        var file = SmallDesign.File(brief => brief["tank"]!["stand"] = stand);
        Assert.Equal(isBuilt, StandDesign.IsAsked(file.Brief.Tank));
    }

    [Fact]
    public void What_stands_already_or_on_a_mound_is_not_designed()
    {
        var tank = s_design.Brief.Tank;
        Assert.False(StandDesign.IsAsked(tank with { Stand = StandBrief.Open with { Kind = StandKind.Mound } }));
        Assert.False(StandDesign.IsAsked(tank with { IsExisting = true }));
    }

    [Theory]
    [InlineData("stand", "20 m", "tank.stand: 20 m is out of range")]
    [InlineData("legs", "3", "tank.standing.legs: '3' is not a whole number in range")]
    [InlineData("legs", "12", "tank.standing.legs: '12' is not a whole number in range")]
    [InlineData("platform", "40 m", "tank.standing.platform: 40 m is out of range")]
    [InlineData("leg", "SHS999", "there is no card of a square tube named 'SHS999'")]
    [InlineData("kind", "ice", "'ice' is not one of the words")]
    public void Bad_stands_are_refused(string field, string value, string says)
    {
        var error = Assert.Throws<BadInputException>(() =>
            SmallDesign.File(brief =>
            {
                var tank = brief["tank"]!;
                if (field == "stand")
                {
                    tank["stand"] = value;
                }
                else
                {
                    tank["standing"] = new JsonObject { [field] = value };
                }
            })
        );
        Assert.Contains(says, error.Message);
    }

    [Theory]
    [InlineData("acceleration", "95 %", "out of range")]
    [InlineData("ground", "F", "'F' is not one of the words")]
    [InlineData("spectrum", "3", "'3' is not a whole number in range")]
    public void Bad_earthquakes_are_refused(string field, string value, string says)
    {
        var error = Assert.Throws<BadInputException>(() =>
            SmallDesign.File(brief =>
                brief["site"]!["earthquake"] = new JsonObject { ["acceleration"] = "10 %", [field] = value }
            )
        );
        Assert.Contains(says, error.Message);
    }

    [Fact]
    public void Its_steel_is_sawn_priced_and_painted_with_the_racks()
    {
        var lines = s_design.Takeoff.Lines;
        Assert.Contains(s_design.Takeoff.BarPlans, plan => plan.Marks.Contains(" X1", StringComparison.Ordinal));
        foreach (var item in new[] { "steel-plate", "ladder-rung", "ladder-cage", "platform-gate", "tank-strap" })
        {
            Assert.Contains(lines, line => line.Item == item && line.Quantity > 0);
        }

        var sawn = s_design.Takeoff.BarPlans.Sum(plan => plan.Plan.Bars.Sum(bar => bar.Pieces.Count));
        var pieces = s_design.Works.SawnLots.Sum(lot => lot.Count * lot.Steel.Parts.Sum(part => part.PiecesMm.Count));
        Assert.Equal(pieces, sawn);
    }
}
