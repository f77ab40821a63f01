using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Shaduf.Programme;
using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>The programme as a calendar that phones and desks read: <c>programme.ics</c>.</summary>
/// <source>RFC 5545: all-day events, the end not counted in; lines of 75 bytes folded; text with \\, \; \, and \n escaped</source>
public static class CalendarFile
{
    private const int LongestBytes = 75;

    /// <summary>Writes the calendar.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">What every document bears: the revision numbers the events.</param>
    /// <returns>The file's text, lines ended by CR LF.</returns>
    public static string Text(Design design, Stamp stamp)
    {
        var text = new StringBuilder();
        void Line(string line) => text.Append(Folded(line)).Append("\r\n");
        Line("BEGIN:VCALENDAR");
        Line("VERSION:2.0");
        Line("CALSCALE:GREGORIAN");
        Line($"PRODID:-//Shaduf//{Escaped(stamp.ProgramVersion)}//EN");
        var station = NameOf(design.Brief.Head.Name);
        foreach (var each in (design.Office.Forecast ?? design.Programme).Activities)
        {
            var name = each.Timing.Activity.Name;
            Line("BEGIN:VEVENT");
            Line($"UID:{each.Timing.Activity.Key}-{station}@shaduf.invalid");
            Line(string.Create(CultureInfo.InvariantCulture, $"SEQUENCE:{SequenceOf(stamp.Revision)}"));
            Line($"DTSTAMP:{Day(stamp.Dated)}T000000Z");
            Line($"DTSTART;VALUE=DATE:{Day(DateOnly.FromDateTime(each.Place.Start))}");
            Line($"DTEND;VALUE=DATE:{Day(DayAfter(each.Place))}");
            Line($"SUMMARY:{Escaped($"{design.Brief.Head.Name}: {name}")}");
            if (each.Basis.Length > 0)
            {
                Line($"DESCRIPTION:{Escaped(each.Basis)}");
            }

            Line("END:VEVENT");
        }

        Line("END:VCALENDAR");
        return text.ToString();
    }

    // The same in every issue, so that a calendar knows the event again.
    private static string NameOf(string station) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(station)))[..12];

    /// <summary>Number of a revision, so that a later one replaces what a calendar holds: 'A' 1, 'B' 2, 'AA' 27; figures as they stand.</summary>
    /// <param name="revision">Revision of the brief.</param>
    /// <returns>The number; 0 for what is neither.</returns>
    internal static int SequenceOf(string revision) =>
        int.TryParse(revision, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number
        : revision.Length is > 0 and < 5 && revision.All(char.IsAsciiLetter)
            ? revision.ToUpperInvariant().Aggregate(0, (so, letter) => (so * 26) + letter - 'A' + 1)
        : 0;

    // Nothing is done any more on a day that has just begun when a thing ends; an event has its day.
    private static DateOnly DayAfter(Placed place)
    {
        var end = DateOnly.FromDateTime(place.Finish.AddTicks(-1)).AddDays(1);
        return end > DateOnly.FromDateTime(place.Start) ? end : DateOnly.FromDateTime(place.Start).AddDays(1);
    }

    private static string Day(DateOnly day) => day.ToString("yyyyMMdd", CultureInfo.InvariantCulture);

    private static string Escaped(string text) =>
        text.Replace("\\", "\\\\", StringComparison.Ordinal)
            .Replace(";", "\\;", StringComparison.Ordinal)
            .Replace(",", "\\,", StringComparison.Ordinal)
            .ReplaceLineEndings("\\n");

    // A line goes on after a line end and a blank; no character is cut in two.
    private static string Folded(string line)
    {
        var (folded, bytes) = (new StringBuilder(), 0);
        foreach (var rune in line.EnumerateRunes())
        {
            if (bytes + rune.Utf8SequenceLength > LongestBytes)
            {
                folded.Append("\r\n ");
                bytes = 1;
            }

            folded.Append(rune.ToString());
            bytes += rune.Utf8SequenceLength;
        }

        return folded.ToString();
    }
}
