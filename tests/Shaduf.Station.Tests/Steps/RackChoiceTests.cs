using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>Two rows of eight modules at 15 deg, as in the market garden, in a wind that is known.</summary>
public sealed class RackChoiceTests
{
    private static readonly Design s_garden = Examples.DesignOf("market-garden");

    [Fact]
    public void The_customary_channels_on_one_line_do_not_hold_and_what_is_advised_does()
    {
        var (ground, usual) = (Ground(26, Custom), Chosen(26, Custom));
        Assert.False(usual.Taken.Holds);
        Assert.Equal(1, usual.Taken.Rack.Form.Lines);
        var advised = usual.Others[0];
        Assert.True(advised.Holds);
        var (form, sections) = (advised.Rack.Form, advised.Rack.Sections);
        var applied = ground.Brief.Rack with
        {
            Type = form.Type,
            Lines = form.Lines,
            Tubes = form.TubeCount,
            Tube = sections.Tube.Name,
            Column = sections.Column.Name,
            Angle = form.Type == RackType.SlideIn ? sections.Angle.Name : null,
            Rail = form.Type == RackType.SlideIn ? null : sections.Angle.Name,
        };
        Assert.True(Chosen(26, applied, advised.Rack.Setting.TiltDeg).Taken.Holds);
        var finding = Findings(usual).Single(each => each.Id == "rack/strength");
        Assert.Equal(FindingStatus.Stop, finding.Status);
        Assert.Contains(RackChoice.Says(advised), finding.Says);
    }

    [Fact]
    public void Two_lines_are_proposed_where_one_does_not_hold()
    {
        var free = Chosen(26, Custom with { Lines = null, Type = RackType.SlideIn });
        Assert.DoesNotContain(free.Others.Prepend(free.Taken), each => each.Holds && each.Rack.Form.Lines == 1);
        Assert.Contains(free.Others.Prepend(free.Taken), each => each.Rack.Form.Lines == 2);
    }

    [Fact]
    public void One_size_less_of_tube_or_column_does_not_hold()
    {
        var free = Custom with { Type = RackType.ClampedRails, Lines = 2 };
        var taken = Chosen(26, free).Taken;
        Assert.True(taken.Holds);
        foreach (var part in new[] { "tube", "column" })
        {
            var name = part == "tube" ? taken.Rack.Sections.Tube.Name : taken.Rack.Sections.Column.Name;
            if (Lighter(name) is { } less)
            {
                var given = free with
                {
                    Tubes = taken.Rack.Form.TubeCount,
                    Tube = part == "tube" ? less : taken.Rack.Sections.Tube.Name,
                    Column = part == "column" ? less : taken.Rack.Sections.Column.Name,
                    Rail = taken.Rack.Sections.Angle.Name,
                };
                Assert.False(Chosen(26, given).Taken.Holds, part);
            }
        }
    }

    [Fact]
    public void A_rack_that_holds_stops_above_the_wind_it_was_chosen_for()
    {
        var strength = Chosen(26, Custom with { Type = RackType.ClampedRails, Lines = 2 }).Taken.Strength!;
        Assert.InRange(strength.SteelStopsMPerS(), 26, RackWind.MostMPerS);
        Assert.InRange(strength.WeldsStopMPerS(), 26, RackWind.MostMPerS);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    public void No_wind_and_the_strongest_are_judged_too(double windMPerS)
    {
        var choice = Chosen(
            windMPerS,
            Custom with
            {
                Type = RackType.ClampedRails,
                Lines = 2,
                Tube = "SHS60x3",
                Column = "SHS100x4",
            }
        );
        Assert.Equal(windMPerS == 0, choice.Taken.Holds);
        Assert.All(
            Findings(choice),
            finding => Assert.True(finding.Value is null || double.IsFinite(finding.Value.Value))
        );
    }

    [Fact]
    public void Without_a_wind_speed_nothing_is_more_than_a_plan() =>
        Assert.All(
            Findings(Chosen(null, Custom with { Type = RackType.ClampedRails, Lines = 2 })),
            finding => Assert.Equal(FindingStatus.Unchecked, finding.Status)
        );

    [Fact]
    public void A_tilt_beyond_the_table_of_wind_is_handed_over()
    {
        var choice = Chosen(26, Custom, 40);
        Assert.Null(choice.Taken.Strength);
        Assert.All(
            Findings(choice),
            finding => Assert.True(finding.Status == FindingStatus.Unchecked && finding.Says.Contains("engineer"))
        );
    }

    private static RackBrief Custom =>
        s_garden.Brief.Rack with
        {
            Type = RackType.SlideIn,
            Lines = 1,
            Tubes = null,
            Tube = null,
            Column = null,
            Angle = null,
            Rail = null,
        };

    private static SizingGround Ground(double? windMPerS, RackBrief rack)
    {
        var site = s_garden.Brief.Site with { Wind = windMPerS is { } speed ? new(speed, 600, 50, "invented") : null };
        var brief = s_garden.Brief with { Site = site, Rack = rack };
        var (shelf, prices) = (s_garden.File.Shelf, s_garden.File.Prices);
        return new(
            brief,
            Survey.Of(brief),
            s_garden.Sky,
            s_garden.Demand,
            s_garden.Source,
            shelf,
            new(brief, shelf, prices)
        );
    }

    private static RackChoice Chosen(double? windMPerS, RackBrief rack, double tiltDeg = 15) =>
        RackChoice.Of(Ground(windMPerS, rack), s_garden.Choice.Module, s_garden.Choice.Grid, tiltDeg);

    private static List<Finding> Findings(RackChoice choice) =>
        [.. RackFindings.Of(choice, s_garden.Choice.Module, ModuleWay.Portrait)];

    private static string? Lighter(string name)
    {
        var tubes = s_garden
            .File.Shelf.All<SectionCard>()
            .Where(card => card.Shape == SectionShape.SquareHollow)
            .OrderBy(card => RackSections.SectionOf(card).MassKgPerM)
            .ToList();
        var at = tubes.FindIndex(card => card.Name == name);
        return tubes.Take(at).LastOrDefault(card => card.SizeMm <= tubes[at].SizeMm)?.Name;
    }
}
