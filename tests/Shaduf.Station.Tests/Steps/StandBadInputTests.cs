using System.Text.Json.Nodes;
using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>Stands and footings on ground, in wind and quakes that they cannot stand, or of which nobody knows: an error or a finding, never a silent default.</summary>
public sealed class StandBadInputTests
{
    private static Design Of(Action<JsonNode> change) =>
        SmallDesign.Of(brief =>
        {
            brief["tank"]!["card"] = "tank-5";
            brief["tank"]!["stand"] = "3 m";
            brief["lift"]!["tankInlet"] = "412 m";
            brief["site"]!["earthquake"] = new JsonObject
            {
                ["acceleration"] = "8 %",
                ["ground"] = "C",
                ["from"] = "map",
            };
            change(brief);
        });

    private static FindingStatus Status(Design design, string id) =>
        design.Findings.Single(finding => finding.Id == id).Status;

    [Theory]
    [InlineData("bearing", "0 kPa", "20 kPa to 1000 kPa")]
    [InlineData("undrained", "0 kPa", "10 kPa to 500 kPa")]
    [InlineData("frictionAngle", "0 deg", "20 deg to 45 deg")]
    public void Soil_that_bears_nothing_is_refused_with_its_place(string test, string value, string accepted)
    {
        var error = Assert.Throws<BadInputException>(() =>
            SmallDesign.File(brief => brief["site"]!["soilTest"] = new JsonObject { [test] = value })
        );
        var line = Assert.Single(error.Errors);
        Assert.Equal($"site.soilTest.{test}", line.Field);
        Assert.Contains(accepted, line.ToString());
        Assert.Matches(@":\d+:\d+: ", line.ToString());
    }

    [Fact]
    public void Water_at_the_surface_stops_the_rack_and_the_stand()
    {
        var design = Of(brief => brief["site"]!["groundwater"] = "0 m");
        Assert.Equal(FindingStatus.Stop, Status(design, "ground/water"));
        Assert.Equal(FindingStatus.Stop, Status(design, "stand/water"));
    }

    [Theory]
    [InlineData("peat", SoilKind.Peat)]
    [InlineData("loess", SoilKind.Loess)]
    [InlineData("fill", SoilKind.Fill)]
    [InlineData("expansive-clay", SoilKind.ExpansiveClay)]
    public void Ground_that_sinks_or_swells_is_handed_over_and_only_what_leans_on_it_is_unchecked(
        string word,
        SoilKind kind
    )
    {
        var design = Of(brief => brief["site"]!["soil"] = word);
        Assert.Equal(FindingStatus.Stop, Status(design, "ground/soil"));
        var plain = Examples.DesignOf("plain-school");
        var findings = StandFindings
            .Of(plain.Works.Stand, plain.Brief.Site with { Soil = kind })
            .ToDictionary(finding => finding.Id, finding => finding.Status);
        Assert.Equal(FindingStatus.Unchecked, findings["stand/bearing"]);
        Assert.NotEqual(FindingStatus.Unchecked, findings["stand/strength"]);
    }

    [Theory]
    [InlineData(null, "unchecked")]
    [InlineData("unknown", "unchecked")]
    public void An_unknown_earthquake_leaves_all_of_the_stand_unchecked(string? word, string status)
    {
        var design = Of(brief =>
        {
            brief["site"]!.AsObject().Remove("earthquake");
            if (word is not null)
            {
                brief["site"]!["earthquake"] = word;
            }
        });
        foreach (var id in new[] { "stand/earthquake", "stand/strength", "stand/feet", "stand/uplift" })
        {
            Assert.Equal(status, Status(design, id).ToString().ToLowerInvariant());
        }
    }

    [Theory]
    [InlineData("20 m")]
    [InlineData("12.5 m")]
    public void A_stand_higher_than_twelve_metres_is_refused(string height)
    {
        var error = Assert.Throws<BadInputException>(() => SmallDesign.File(brief => brief["tank"]!["stand"] = height));
        Assert.Contains("0 m to 12 m", Assert.Single(error.Errors, each => each.Field == "tank.stand").ToString());
    }

    [Fact]
    public void A_stand_of_twelve_metres_is_judged_whatever_comes_out()
    {
        var design = Of(brief =>
        {
            brief["tank"]!["stand"] = "12 m";
            brief["lift"]!["tankInlet"] = "421 m";
        });
        Assert.Contains(design.Findings, finding => finding.Id == "stand/stops-at-wind");
    }

    [Fact]
    public void Figures_of_the_country_reach_the_stand_its_blocks_and_its_straps()
    {
        static StandDesign Stand(NationalChoices national)
        {
            var design = Examples.DesignOf("plain-school");
            var brief = design.Brief with { Site = design.Brief.Site with { National = national } };
            var site = new StandSite(
                brief with
                {
                    Tank = brief.Tank with
                    {
                        GivenStandM = 6,
                        Stand = StandBrief.Open with { Leg = "SHS80x4", FootingSideMm = 1200, FootingDepthMm = 1500 },
                    },
                },
                design.Survey,
                design.File.Shelf
            );
            return StandDesign.Of(site, design.File.Shelf.Find<TankCard>("tank-5")!, 1)!;
        }

        static double Leg(StandDesign stand) =>
            stand
                .Strength.Members.Where(use => stand.Stand.Skeleton.Members[use.Member].Role == TankStand.LegRole)
                .Max(use => use.Result.UtilisationShare);

        var usual = Stand(NationalChoices.Recommended);
        var hard = Stand(
            new(PermanentFactor: 1.5, VariableFactor: 1.8, LeastWeightFactor: 0.8)
            {
                Steel = new(SectionFactor: 1.1, BucklingFactor: 1.1),
            }
        );
        Assert.True(Leg(hard) > Leg(usual));
        Assert.True(hard.Footings.Strength!.PullKN > usual.Footings.Strength!.PullKN);
        Assert.Equal(0.8 / 0.9, hard.Footings.Strength.HeldKN / usual.Footings.Strength.HeldKN, 1e-9);
        Assert.True(StandHold.Of(hard.Strength).StrapKN > StandHold.Of(usual.Strength).StrapKN);
        Assert.Contains(
            hard.Strength.Combinations.Ground,
            each => each.Name.StartsWith("0.8 G + 1.8 V", StringComparison.Ordinal)
        );
    }

    // By hand: the wall under the most pressed leg, and bars of 3 m instead of 6 m.
    [Fact]
    public void Faces_of_tubes_and_splices_are_checked_by_their_forces()
    {
        var stand = Examples.DesignOf("plain-school").Works.Stand!.Strength;
        Assert.Equal([StandFrame.RingName, StandFrame.HeadName], stand.Faces.Select(use => use.Name).Distinct());
        Assert.All(stand.Faces, use => Assert.InRange(use.UseShare!.Value, 0, 1));
        var head = stand.Faces.Single(use => use.Name == StandFrame.HeadName);
        var pressed = stand
            .Combinations.Strength.Select(each => each.EachFactor(stand.Wind.PeakKNPerM2))
            .SelectMany(factors => Enumerable.Range(0, 4).Select(foot => stand.Cases.Foot(foot, factors).Force.ZN))
            .Max();
        Assert.InRange(head.AxialN, 0, pressed);

        var shortBars = Of(brief => brief["crew"] = new JsonObject { ["truckBed"] = "2 m" }).Works.Stand!;
        Assert.NotEmpty(shortBars.Strength.Splices);
        Assert.All(
            shortBars.Stand.Steel.Parts.SelectMany(part => part.PiecesMm),
            piece => Assert.InRange(piece, 0, 2000.5)
        );
        Assert.All(shortBars.Strength.Splices, use => Assert.InRange(use.UseShare, 0, 1));
        Assert.Contains(
            StandFindings.Of(shortBars, Examples.DesignOf("plain-school").Brief.Site),
            finding => finding.Id == "stand/splices"
        );
    }
}
