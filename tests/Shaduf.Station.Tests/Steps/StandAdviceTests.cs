using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>What a finding of a stand advises holds when it is applied.</summary>
public sealed class StandAdviceTests
{
    private static readonly Design s_plain = Examples.DesignOf("plain-school");

    private static StandSite Site(double floorM, double windMPerS, SoilKind? soil, StandBrief stand)
    {
        var brief = s_plain.Brief;
        brief = brief with
        {
            Site = brief.Site with { Soil = soil, Wind = new(windMPerS, 600, 50, "test") },
            Tank = brief.Tank with { GivenStandM = floorM, Stand = stand },
        };
        return new(brief, s_plain.Survey, s_plain.File.Shelf);
    }

    private static StandDesign Designed(StandSite site, string tank) =>
        StandDesign.Of(site, site.Shelf.Find<TankCard>(tank)!, 1)!;

    private static List<string> Stops(StandDesign stand, StandSite site) =>
        [
            .. StandFindings
                .Of(stand, site.Brief.Site)
                .Where(finding => finding.Status == FindingStatus.Stop)
                .Select(finding => $"{finding.Id}: {finding.Says}"),
        ];

    [Theory]
    [InlineData(3, 24, SoilKind.Sand, "tank-10", 4)]
    [InlineData(9, 30, SoilKind.Clay, "tank-5", 4)]
    [InlineData(6, 34, null, "tank-5", 6)]
    [InlineData(2, 26, SoilKind.Gravel, "tank-20", 8)]
    [InlineData(5, 22, SoilKind.Sand, "tank-2", 5)]
    public void Sections_and_blocks_that_are_advised_hold(
        double floorM,
        double windMPerS,
        SoilKind? soil,
        string tank,
        int legs
    )
    {
        var weak = StandBrief.Open with
        {
            LegCount = legs,
            Leg = "SHS40x3",
            Diagonal = "L40x4",
            Horizontal = "SHS40x3",
            Beam = "SHS40x3",
            Joist = "SHS40x3",
            FootingSideMm = 450,
            FootingDepthMm = 600,
        };
        var site = Site(floorM, windMPerS, soil, weak);
        var stand = Designed(site, tank);
        Assert.NotEmpty(Stops(stand, site));

        // The sections that are advised, the footings left to choose.
        var would = Assert.Single(stand.Others).Stand.Plan;
        var advised = StandBrief.Open with
        {
            LegCount = would.LegCount,
            BayCount = would.BayCount,
            Leg = would.Sections.Leg.Name,
            Diagonal = would.Sections.Diagonal.Name,
            Horizontal = would.Sections.Horizontal.Name,
            Beam = would.Sections.Beam.Name,
            Joist = would.Sections.Joist.Name,
        };
        var applied = Site(floorM, windMPerS, soil, advised);
        Assert.Empty(Stops(Designed(applied, tank), applied));

        // Sections that hold on blocks that do not: the footing that is advised for them.
        var small = Site(floorM, windMPerS, soil, advised with { FootingSideMm = 450, FootingDepthMm = 600 });
        var undersized = Designed(small, tank);
        Assert.NotEmpty(Stops(undersized, small));
        if (undersized.WouldHold() is { Form: FootingForm.Block } footing)
        {
            var mended = Site(
                floorM,
                windMPerS,
                soil,
                advised with
                {
                    FootingSideMm = footing.Block.WidthMm,
                    FootingDepthMm = footing.Block.DepthMm,
                }
            );
            Assert.Empty(Stops(Designed(mended, tank), mended));
        }
    }

    [Fact]
    public void A_block_too_small_for_the_bolts_of_a_leg_is_stopped()
    {
        var site = Site(2, 20, SoilKind.Sand, StandBrief.Open with { FootingSideMm = 400, FootingDepthMm = 900 });
        var feet = StandFindings.Of(Designed(site, "tank-2"), site.Brief.Site).Single(each => each.Id == "stand/feet");
        Assert.Equal(FindingStatus.Stop, feet.Status);
        Assert.Contains("What would hold", feet.Says);
    }

    [Fact]
    public void An_unknown_earthquake_does_not_touch_what_does_not_shake()
    {
        var design = SmallDesign.Of(brief =>
        {
            brief["tank"]!["card"] = "tank-5";
            brief["tank"]!["stand"] = "3 m";
            brief["lift"]!["tankInlet"] = "412 m";
        });
        var found = design.Findings.ToDictionary(finding => finding.Id, finding => finding.Status);
        Assert.Equal(FindingStatus.Unchecked, found["stand/earthquake"]);
        foreach (var id in new[] { "stand/fit", "stand/slope", "stand/access", "stand/frost", "stand/limits" })
        {
            Assert.NotEqual(FindingStatus.Unchecked, found[id]);
        }
    }
}
