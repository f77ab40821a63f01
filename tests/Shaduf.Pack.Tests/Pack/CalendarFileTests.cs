using System.Text;
using Shaduf.Station;

namespace Shaduf.Pack.Tests;

/// <summary>The calendar file, read back by a general reader of calendars.</summary>
public sealed class CalendarFileTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void Every_activity_is_read_back_with_its_days(string name)
    {
        var pack = packs[name];
        var programme = pack.Design.Programme;
        var calendar = Ical.Net.Calendar.Load(Encoding.UTF8.GetString(pack.Files["programme.ics"]))!;
        Assert.Equal(programme.Activities.Count, calendar.Events.Count);
        foreach (var (planned, read) in programme.Activities.Zip(calendar.Events))
        {
            Assert.Equal($"{pack.Design.Brief.Head.Name}: {planned.Timing.Activity.Name}", read.Summary);
            Assert.True(read.IsAllDay);
            Assert.Equal(DateOnly.FromDateTime(planned.Place.Start), read.Start!.Date);
            var last = DateOnly.FromDateTime(planned.Place.Finish);
            Assert.InRange(read.End!.Date.DayNumber - last.DayNumber, 0, 1);
        }

        Assert.Equal(calendar.Events.Count, calendar.Events.Select(each => each.Uid).Distinct().Count());
    }

    [Fact]
    public void No_line_is_longer_than_the_format_allows_and_text_is_escaped()
    {
        var pack = packs["hilltop-village"];
        var head = pack.Design.Brief.Head with { Name = "Kisima; cha, juu\\ya mlima – " + new string('ö', 90) };
        var design = pack.Design with
        {
            File = pack.Design.File with { Brief = pack.Design.Brief with { Head = head } },
        };
        var text = CalendarFile.Text(design, pack.Stamp);
        Assert.All(text.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        var read = Ical.Net.Calendar.Load(text)!.Events.First().Summary!;
        Assert.StartsWith(head.Name, read, StringComparison.Ordinal);
    }

    [Fact]
    public void A_later_revision_replaces_the_events_that_a_calendar_holds()
    {
        var pack = packs["homestead"];
        Ical.Net.CalendarComponents.CalendarEvent[] Of(Stamp stamp) =>
            [.. Ical.Net.Calendar.Load(CalendarFile.Text(pack.Design, stamp))!.Events];
        var (first, second) = (
            Of(pack.Stamp with { Revision = "A" }),
            Of(pack.Stamp with { Revision = "B", BriefHash = "0123456789ab" })
        );
        Assert.Equal(first.Select(each => each.Uid), second.Select(each => each.Uid));
        Assert.All(first, each => Assert.Equal(1, each.Sequence));
        Assert.All(second, each => Assert.Equal(2, each.Sequence));
    }

    [Theory]
    [InlineData("-", 0)]
    [InlineData("A", 1)]
    [InlineData("b", 2)]
    [InlineData("Z", 26)]
    [InlineData("AA", 27)]
    [InlineData("7", 7)]
    [InlineData("rev-2", 0)]
    [InlineData("", 0)]
    public void Revisions_are_numbered(string revision, int sequence) =>
        Assert.Equal(sequence, CalendarFile.SequenceOf(revision));
}
