using Shaduf.Programme;

namespace Shaduf.Station.Tests;

public sealed class StationProgrammeTests
{
    private static readonly DateOnly s_issued = new(2026, 3, 2);

    [Fact]
    public void Every_kind_of_labour_has_its_activity() => Assert.Empty(StationProgramme.UncountedLabour);

    [Theory]
    [MemberData(nameof(Names))]
    public void All_labour_of_the_bill_is_planned_once(string name)
    {
        var design = Examples.DesignOf(name);
        var planned = design.Programme.Activities.Sum(each => each.ManDays);
        var billed = design.Takeoff.Lines.Where(line => line.Item == "labour-day").Sum(line => line.Quantity);
        Assert.Equal(billed, planned, 1e-9 * billed);
    }

    public static TheoryData<string> Names => [.. Examples.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Lags_are_kept_and_nobody_works_twice(string name)
    {
        var programme = Examples.DesignOf(name).Programme;
        var network = programme.Path.Network;
        var places = network
            .Activities.Zip(programme.Levelled.Places)
            .ToDictionary(each => each.First.Key, each => each.Second);
        Assert.All(network.Links, link => Assert.True(places[link.To].Start >= places[link.From].Finish + link.Lag));
        Assert.All(programme.Histogram, step => Assert.InRange(step.Count, 0, programme.PeopleCount));
        Assert.True(places["pour"].Start >= places["see-pits"].Finish);
        Assert.True(places["modules"].Start >= places["pour"].Finish.AddDays(7));
        Assert.True(places["prove"].Start >= places["see-earth"].Finish);
        Assert.Equal(programme.Finish, places["hand-over"].Finish);
    }

    [Fact]
    public void Nobody_works_on_a_feast_or_a_day_of_rest_and_rain_stops_the_pits()
    {
        var file = SmallDesign.File();
        var usual = DesignRun.Run(file);
        var crew = new CrewBrief(null, null)
        {
            Start = new(2026, 4, 1),
            RestDays = [DayOfWeek.Friday],
            Feasts = [new(2026, 4, 2), new(2026, 4, 4)],
            RainDays = [.. Enumerable.Repeat(10.0, 12)],
        };
        var brief = file.Brief with { Rack = file.Brief.Rack with { Crew = crew } };
        var programme = StationProgramme.Of((brief, usual.Survey), usual.Works, usual.Takeoff.Lines, s_issued);
        Assert.Equal(new DateTime(2026, 4, 1), programme.Start);
        Assert.False(programme.Site.IsWorked(new(2026, 4, 2)));
        Assert.False(programme.Site.IsWorked(new(2026, 4, 3)));
        Assert.True(programme.Site.IsWorked(new(2026, 4, 5)));
        var pits = programme.Path.Network.Activities.Single(each => each.Key == "pits").Calendar;
        var april = Enumerable.Range(1, 30).Select(day => new DateOnly(2026, 4, day)).ToList();
        Assert.True(april.Count(pits.IsWorked) < april.Count(programme.Site.IsWorked));
    }

    [Fact]
    public void More_people_are_never_later_by_more_than_a_rule_of_thumb_costs()
    {
        var design = DesignRun.Run(SmallDesign.File());
        DateTime With(int people) =>
            StationProgramme
                .Of((design.Brief, Settled(design, people)), design.Works, design.Takeoff.Lines, s_issued)
                .Finish;
        Assert.True(With(1) > With(3));
        Assert.True(With(3) >= With(20));
    }

    private static Survey Settled(Design design, int people) =>
        design.Survey with
        {
            Figures = new Dictionary<string, double>(design.Survey.Figures) { ["crew-people"] = people },
        };

    [Fact]
    public void Heat_slows_work_and_half_of_the_heavy_rain_stops_it()
    {
        var design = DesignRun.Run(SmallDesign.File());
        var crew = design.Brief.Rack.Crew;
        StationProgramme With(CrewBrief other) =>
            StationProgramme.Of(
                (design.Brief with { Rack = design.Brief.Rack with { Crew = other } }, design.Survey),
                design.Works,
                design.Takeoff.Lines,
                s_issued
            );
        double DaysOf(StationProgramme programme) =>
            programme
                .Activities.Where(each => each.ManDays > 0)
                .Sum(each => each.Timing.Activity.Work / programme.Site.DayWork);
        var (cool, hot) = (With(crew with { HasHardship = false }), With(crew with { HasHardship = true }));
        Assert.True(DaysOf(hot) > DaysOf(cool));
        Assert.Contains(hot.Activities, each => each.Basis.Contains("x 1.2 for heat", StringComparison.Ordinal));
        using var scratch = new Scratch();
        var brief = scratch.Read(Specimen.Brief.TrimEnd() + "\n\ncrew: { heavyRainDays: { jan: 8 } }\n").Brief;
        Assert.Equal(4, brief.Rack.Crew.RainDays[0]);
    }

    [Theory]
    [InlineData("rainDays: { jan: 4 }, heavyRainDays: { jan: 8 }", "crew.heavyRainDays")]
    [InlineData("people: 0", "crew.people")]
    [InlineData("hours: 30 h", "crew.hours")]
    [InlineData("start: tomorrow", "crew.start")]
    [InlineData("rest: monday", "crew.rest")]
    [InlineData("feasts: [ { name: Easter } ]", "crew.feasts[1].from")]
    [InlineData("feasts: [ { name: Easter, from: 2026-04-05, until: 2026-04-01 } ]", "crew.feasts[1].until")]
    [InlineData("rainDays: { jan: 40 }", "crew.rainDays.jan")]
    [InlineData("rainDays: { tiger: 4 }", "crew.rainDays.tiger")]
    public void A_crew_that_cannot_be_is_refused_at_its_place(string line, string field)
    {
        using var scratch = new Scratch();
        var text = Specimen.Brief.TrimEnd() + $"\n\ncrew: {{ {line} }}\n";
        Assert.Contains(
            scratch.Errors(() => scratch.Read(text)),
            error => error.Contains($" {field}: ", StringComparison.Ordinal)
        );
    }
}
