using Shaduf.Parts;
using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>Racks that cannot be, or go beyond what is judged: each is told by its part's mark or handed over in plain words.</summary>
public sealed class RackBadInputTests
{
    [Theory]
    [InlineData("rack", "tubes", "1", "rack.tubes", "2 to 12")]
    [InlineData("rack", "blockage", "140 %", "rack.blockage", "0 % to 100 %")]
    [InlineData("site", "hillSlope", "-5 %", "site.hillSlope", "0 %")]
    [InlineData("array", "tilt", "75 deg", "array.tilt", "60 deg")]
    public void A_field_beyond_its_range_is_one_clear_line(
        string group,
        string field,
        string value,
        string named,
        string accepted
    )
    {
        var error = Assert.Throws<BadInputException>(() => SmallDesign.File(brief => brief[group]![field] = value));
        Assert.Contains(error.Errors, each => each.Field == named && each.ToString().Contains(accepted));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(30)]
    public void Flat_and_steep_racks_are_checked_up_to_the_end_of_the_table(double tiltDeg)
    {
        var design = SmallDesign.Of(brief => brief["array"]!["tilt"] = $"{tiltDeg} deg");
        Assert.NotNull(design.Works.RackChoice.Taken.Strength);
        Assert.All(
            design.Findings,
            finding => Assert.True(finding.Value is null || double.IsFinite(finding.Value.Value))
        );
    }

    [Fact]
    public void Beyond_the_table_of_wind_each_check_hands_over()
    {
        var design = SmallDesign.Of(brief => brief["array"]!["tilt"] = "60 deg");
        foreach (
            var id in new[]
            {
                "rack/strength",
                "rack/welds",
                "rack/splices",
                "rack/tube-faces",
                "ground/uplift",
                "ground/column-hold",
                "ground/column-pull",
            }
        )
        {
            var finding = design.Findings.Single(each => each.Id == id);
            Assert.Equal(FindingStatus.Unchecked, finding.Status);
            Assert.Contains("engineer", finding.Says);
        }
    }

    [Fact]
    public void Height_span_and_swelling_clay_beyond_the_limits_are_handed_over()
    {
        var design = SmallDesign.Of(brief =>
        {
            brief["rack"]!["lowEdge"] = "3 m";
            brief["rack"]!["tubes"] = 2;
            brief["array"]!["tilt"] = "30 deg";
            brief["site"]!["soil"] = "expansive-clay";
        });
        foreach (var id in new[] { "rack/top-edge", "rack/span" })
        {
            var finding = design.Findings.Single(each => each.Id == id);
            Assert.Equal(FindingStatus.Unchecked, finding.Status);
            Assert.True(finding.IsHandedOver);
            Assert.Contains("engineer", finding.Says);
        }

        Assert.Contains("C1", design.Findings.Single(each => each.Id == "rack/span").Says);
        var soil = design.Findings.Single(each => each.Id == "ground/soil");
        Assert.Equal(FindingStatus.Stop, soil.Status);
        Assert.Contains("geotechnical", soil.Says);
    }

    [Fact]
    public void A_part_without_length_and_a_frame_that_moves_are_named_by_their_mark()
    {
        var bar = new Profile(MakeUp.Single, new("SHS60x3", Outline.SquareTube, 60, 3, 5.2, 230, 6000, 5980));
        var nothing = new Skeleton([new("B7", "strut", bar, new(0, 0, 0), new(0, 0, 0), new(1, 0, 0))], [], []);
        var loose = new Skeleton([new("B8", "strut", bar, new(0, 0, 0), new(0, 0, 900), new(1, 0, 0))], [], []);
        var section = MemberSection.OfSquare(60, 3).Frame;
        var noLength = Assert.ThrowsAny<Exception>(() =>
            FrameAnalysis.Of(SkeletonFrame.Of(nothing, _ => section, 0, []).Model)
        );
        Assert.Contains("B7", noLength.Message);
        var moves = Assert.ThrowsAny<Exception>(() =>
            FrameAnalysis.Of(SkeletonFrame.Of(loose, _ => section, 0, []).Model)
        );
        Assert.Contains("B8", moves.Message);
    }
}
