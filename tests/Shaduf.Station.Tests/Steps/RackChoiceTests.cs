using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>Two rows of eight modules at 15 deg, as in the market garden, in a wind that is known.</summary>
public sealed class RackChoiceTests
{
    private static readonly Design s_garden = Examples.DesignOf("market-garden");

    [Fact]
    public void The_customary_channels_on_one_line_do_not_hold_and_what_is_advised_does()
    {
        var customary = Custom with { Tubes = 4 };
        var (ground, usual) = (Ground(26, customary), Chosen(26, customary));
        Assert.False(usual.Taken.Holds);
        Assert.Equal(1, usual.Taken.Rack.Form.Lines);
        Assert.True(usual.Others[0].Holds);
        var advised = usual.Others.First(each =>
            each.Holds && each.Rack.Grid == usual.Taken.Rack.Grid && each.Rack.Lay == usual.Taken.Rack.Lay
        );
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
        var built = Chosen(26, applied, advised.Rack.Setting.TiltDeg).Taken;
        Assert.True(built.Holds);
        Assert.Equal(advised.Rack.MassKg, built.Rack.MassKg, 1e-9);
        Assert.Equal(advised.Cost, built.Cost, 1e-9);
        var finding = Findings(usual).Single(each => each.Id == "rack/strength");
        Assert.Equal(FindingStatus.Stop, finding.Status);
        Assert.Contains(RackChoice.Says(usual.Others[0]), finding.Says);
    }

    [Fact]
    public void Free_ends_are_shortened_where_a_person_on_the_usual_ones_is_too_much()
    {
        var brief = Custom with { Lines = 2, Tubes = 5 };
        var choice = Chosen(20, brief);
        Assert.True(choice.Taken.Holds);
        var (tubes, length) = (choice.Taken.Rack.TubePlacesMm, choice.Taken.Rack.Size.LengthMm);
        var share = tubes[0] / (tubes[1] - tubes[0]);
        Assert.Equal(choice.Taken.Rack.Form.EndShare, share, 1e-6);
        Assert.Equal(length - tubes[^1], tubes[0], 1e-6);
        Assert.Equal(
            share < RackForm.UsualEndShare,
            choice.Notes.Any(note => note.Why.Contains("holds a person who stands on one"))
        );
        Assert.Contains(choice.Others, each => !each.Holds && each.Rack.Form.EndShare == RackForm.UsualEndShare);
    }

    [Fact]
    public void Rails_where_the_modules_card_allows_no_clamps_are_stopped_and_the_advice_holds()
    {
        var clamped = Custom with { Type = RackType.ClampedRails, Lines = 2, RailsAtMm = 800 };
        var choice = Chosen(22, clamped);
        Assert.False(choice.Taken.Holds);
        var stop = Findings(choice).Single(each => each.Id == "rack/module-holding");
        Assert.Equal(FindingStatus.Stop, stop.Status);
        Assert.Contains("620 mm", stop.Says);
        var would = choice.Others.First(each =>
            each.Instead.StartsWith("rack.railsAt: 620 mm", StringComparison.Ordinal)
        );
        Assert.Equal(620, would.Rack.Clamping!.FromEndMm);
        var applied = Chosen(22, clamped with { RailsAtMm = 620 });
        Assert.True(applied.Taken.Holds);
        Assert.Equal(
            would.Rack.Rows[0].HighAtMm - would.Rack.Rows[0].LowAtMm,
            s_garden.Choice.Module.Body.LengthMm - (2 * 620),
            1e-6
        );
    }

    [Fact]
    public void Several_changes_together_are_looked_at_where_none_alone_is_enough()
    {
        // The card allows 1600 Pa from behind in channels; it says nothing of clamps on modules that lie.
        var brief = Custom with
        {
            Lines = null,
        };
        var choice = Chosen(38, brief);
        Assert.False(choice.Taken.ModulesHold);
        var would = choice.Others.First(each => each.Holds);
        Assert.Contains("rack.type: clamped-rails, rack.orientation: landscape", would.Instead);
        var grid = RackGrid.For(
            choice.Taken.Rack.Grid.ModuleCount,
            brief with
            {
                Way = ModuleWay.Landscape,
            },
            s_garden.Choice.Module.Body
        )!;
        var applied = brief with { Type = RackType.ClampedRails, Way = ModuleWay.Landscape };
        Assert.True(RackChoice.Of(Ground(38, applied), s_garden.Choice.Module, grid, 15).Taken.Holds);
    }

    [Fact]
    public void Where_nothing_holds_what_is_left_open_is_raised_as_far_as_it_helps()
    {
        var choice = Chosen(26, Custom with { Column = "SHS40x3" });
        var taken = choice.Taken;
        Assert.False(taken.Holds);
        Assert.Equal("SHS40x3", taken.Rack.Sections.Column.Name);
        Assert.All(
            choice.Others.Where(each => each.Instead.Length == 0),
            each => Assert.True(each.Lack >= taken.Lack - 0.01)
        );
        var least = Chosen(
            26,
            Custom with
            {
                Column = "SHS40x3",
                Tube = "SHS40x3",
                Angle = taken.Rack.Sections.Angle.Name,
            }
        );
        Assert.True(taken.Lack < least.Taken.Lack);
        Assert.Contains(choice.Notes, note => note.Why.Contains("nearest to holding"));
        Assert.StartsWith("rack.lines: choose", choice.Others[0].Instead);
    }

    [Fact]
    public void What_stops_is_counted_once()
    {
        var found = Findings(Chosen(45, Custom)).ToDictionary(each => each.Id);
        Assert.Equal(FindingStatus.Stop, found["rack/strength"].Status);
        Assert.Equal(FindingStatus.Look, found["rack/stops-at-wind"].Status);
        Assert.True(found["rack/stops-at-wind"].Value < 45);
    }

    [Fact]
    public void Each_check_that_stops_is_told_what_would_hold()
    {
        var choice = Chosen(45, Custom with { Lines = 2, Type = RackType.ClampedRails });
        Assert.False(choice.Taken.ModulesHold);
        Assert.All(choice.Others, each => Assert.Equal(each.Holds, each.RackHolds && each.GroundHolds));
        var stops = Findings(choice).Where(each => each.Status == FindingStatus.Stop).ToList();
        Assert.Contains(stops, each => each.Id == "rack/module-holding");
        Assert.All(
            stops,
            each =>
                Assert.True(each.Says.Contains("What would hold") || each.Says.Contains("Nothing that was looked at"))
        );
    }

    [Fact]
    public void A_leg_that_does_not_fit_is_said_not_clipped()
    {
        var welds = Findings(Chosen(80, Custom)).Single(each => each.Id == "rack/welds");
        Assert.Equal(FindingStatus.Stop, welds.Status);
        Assert.DoesNotContain("20.0", welds.Says);
        Assert.True(welds.Value is null or > RackStrength.MostLegMm);
    }

    [Theory]
    [InlineData(18, 600, 900)]
    [InlineData(22, 500, 700)]
    public void A_footing_that_the_brief_makes_too_small_is_named_as_the_reason_for_two_lines(
        double windMPerS,
        double sideMm,
        double depthMm
    )
    {
        var brief = Custom with { Lines = null, FootingSideMm = sideMm, FootingDepthMm = depthMm };
        var choice = Chosen(windMPerS, brief);
        var oneLine = choice.Others.Where(each => each.Rack.Form.Lines == 1 && each.Instead.Length == 0).ToList();
        Assert.Equal(
            choice.Taken.Rack.Form.Lines == 2
                && oneLine.Exists(each => each.RackHolds)
                && !oneLine.Exists(each => each.Holds),
            choice.Notes.Any(note => note.Why.Contains("no footing of the size that the brief gives"))
        );
    }

    [Fact]
    public void Two_lines_are_proposed_where_one_does_not_hold()
    {
        // Above 26 m/s no single line holds a plane of 4.6 m up the slope.
        var free = Chosen(26.5, Custom with { Lines = null });
        var all = free.Others.Prepend(free.Taken).ToList();
        Assert.DoesNotContain(all, each => each.Holds && each.Rack.Form.Lines == 1);
        Assert.Equal(2, free.Taken.Rack.Form.Lines);
        Assert.True(free.Taken.SteelHolds);
        Assert.Contains(free.Notes, note => note.Why.Contains("the wind turns the plane over its one line"));
        var given = Chosen(26.5, Custom).Taken.Strength!;
        Assert.Contains(RackMoves.Firm(given), move => move.Unit == "m/s" && !move.Holds);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Stiffer_tubes_are_tried_where_channels_have_no_heavier_angles(int lines)
    {
        // With the heaviest of all bars it holds: then with lighter ones too, and one size less of none.
        var taken = Chosen(26, Custom with { Lines = lines }).Taken;
        Assert.True(taken.Holds);
        var (form, sections) = (taken.Rack.Form, taken.Rack.Sections);
        Assert.NotEqual("SHS200x8", sections.Tube.Name);
        Assert.NotEqual("SHS200x8", sections.Column.Name);
        foreach (var (tube, column) in new[] { (true, false), (false, true) })
        {
            var less = Lighter(tube ? sections.Tube.Name : sections.Column.Name);
            var given = Custom with
            {
                Lines = lines,
                Tubes = form.TubeCount,
                Tube = tube ? less : sections.Tube.Name,
                Column = column ? less : sections.Column.Name,
                Angle = sections.Angle.Name,
            };
            Assert.True(less is null || !Chosen(26, given).Taken.Holds, less);
        }
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
            Findings(Chosen(null, Custom with { Type = RackType.ClampedRails, Lines = 2 }))
                .Where(finding => finding.Id != "rack/steel"),
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
