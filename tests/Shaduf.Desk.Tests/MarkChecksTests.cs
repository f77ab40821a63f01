using Shaduf.Station;
using Shaduf.Working;

namespace Shaduf.Desk.Tests;

public class MarkChecksTests
{
    private static Design DesignOf(Func<BriefText, BriefText> edit) =>
        DesignRun.Run(StationFile.Of(edit(BriefText.Of(Starters.Example("homestead").Text)).Text, Path.GetTempPath()));

    [Fact]
    public void While_the_wind_is_unknown_no_part_is_shown_to_hold()
    {
        var marks = MarkChecks.Of(DesignOf(brief => brief.Without("site.wind")));
        Assert.NotEmpty(marks);
        Assert.DoesNotContain(marks, each => each.Status is FindingStatus.Holds or FindingStatus.Look);
    }

    [Fact]
    public void With_the_wind_known_each_part_shows_its_worst_check()
    {
        var design = DesignOf(brief =>
            brief
                .With("site.wind.speed", "26 m/s")
                .With("site.wind.averaging", "10 min")
                .With("site.wind.returnPeriod", "50 years")
        );
        Assert.NotEqual(
            FindingStatus.Unchecked,
            design.Findings.First(finding => finding.Id == "rack/strength").Status
        );
        Assert.Contains(MarkChecks.Of(design), each => each.Status == FindingStatus.Holds);
    }
}
