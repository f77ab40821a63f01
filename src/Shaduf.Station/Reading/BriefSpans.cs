using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Shaduf.Station;

/// <summary>Where the parts of a YAML text begin and end, and how a value is written into it.</summary>
internal static class BriefSpans
{
    // Letters, digits and the marks of quantities, dates and names; nothing that means something to YAML anywhere.
    private static readonly Regex s_plain = new(
        @"^[\p{L}\p{N}.+][\p{L}\p{N} .+/%()·²³°_-]*$|^-[\p{N}.][\p{L}\p{N} .+/%()·²³°_-]*$",
        RegexOptions.CultureInvariant
    );

    /// <summary>An empty stretch.</summary>
    public static TextSpan At(int place) => new(place, place);

    /// <summary>Whether a value reads back as itself without quotes, in brackets too.</summary>
    public static bool IsPlain(string value) => s_plain.IsMatch(value);

    /// <summary>A value in double quotes.</summary>
    public static string Quoted(string value)
    {
        var text = new StringBuilder("\"");
        foreach (var letter in value)
        {
            text.Append(
                letter switch
                {
                    '"' or '\\' => $"\\{letter}",
                    '\n' => "\\n",
                    '\r' => "\\r",
                    '\t' => "\\t",
                    _ when char.IsControl(letter) || letter is '\u2028' or '\u2029' or '\uFEFF' => string.Create(
                        CultureInfo.InvariantCulture,
                        $"\\u{(int)letter:x4}"
                    ),
                    _ => letter.ToString(),
                }
            );
        }

        return text.Append('"').ToString();
    }

    /// <summary>The place after an entry's colon.</summary>
    public static int ColonEnd(string text, YamlEntry entry) => text.IndexOf(':', entry.NameSpan.End) + 1;

    /// <summary>The place after an entry's value, or after its colon when nothing follows.</summary>
    public static int EntryEnd(string text, YamlEntry entry) =>
        entry.Value is YamlScalar { IsEmpty: true } empty && empty.Span.Start == empty.Span.End
            ? ColonEnd(text, entry)
            : End(text, entry.Value);

    /// <summary>The place after the last character of a node.</summary>
    public static int End(string text, YamlNode node) =>
        node switch
        {
            YamlMap { IsFlow: false } map => EntryEnd(text, map.Entries.Values.Last()),
            YamlList { IsFlow: false } list => End(text, list.Items[^1]),
            _ => node.Span.End,
        };

    /// <summary>The brackets of a mapping or list that holds nothing.</summary>
    public static TextSpan Brackets(string text, YamlNode empty) =>
        new(empty.Span.Start, text.IndexOf(empty is YamlMap ? '}' : ']', empty.Span.Start) + 1);

    /// <summary>The end of the line on which a place lies, before its line break.</summary>
    public static int LineEnd(string text, int place)
    {
        // A text in several lines ends where the next line begins.
        var from = place > 0 && text[place - 1] == '\n' ? place - 1 : place;
        var end = text.IndexOf('\n', from);
        return end < 0 ? text.Length
            : end > 0 && text[end - 1] == '\r' ? end - 1
            : end;
    }

    /// <summary>The column of a list's dashes, counted from 0.</summary>
    public static int DashColumn(string text, YamlList list)
    {
        var dash = Dash(text, list.Items[0]);
        return dash - LineStart(text, dash);
    }

    /// <summary>All that goes with an entry or an item: its lines, or its stretch within brackets with one comma.</summary>
    /// <param name="text">The text.</param>
    /// <param name="parent">The mapping or list; it holds at least one other.</param>
    /// <param name="name">The entry's name or the item's number from 1.</param>
    public static TextSpan Whole(string text, YamlNode parent, string name)
    {
        var (starts, ends, at) = parent switch
        {
            YamlMap map => (
                map.Entries.Values.Select(entry => entry.NameSpan.Start).ToArray(),
                map.Entries.Values.Select(entry => EntryEnd(text, entry)).ToArray(),
                map.Entries.Keys.ToList().IndexOf(name)
            ),
            YamlList list => (
                list.Items.Select(item => list.IsFlow ? item.Span.Start : Dash(text, item)).ToArray(),
                list.Items.Select(item => End(text, item)).ToArray(),
                int.Parse(name, CultureInfo.InvariantCulture) - 1
            ),
            _ => throw new ArgumentException("a value holds nothing that could be left out", nameof(parent)),
        };
        var start = LineStart(text, starts[at]);
        var isAlone = text.AsSpan(start, starts[at] - start).IsWhiteSpace();
        if (!parent.IsFlow && isAlone)
        {
            return Lines(text, start, LineEnd(text, ends[at]));
        }

        return at + 1 < starts.Length ? new(starts[at], starts[at + 1]) : new(ends[at - 1], ends[at]);
    }

    /// <summary>Every value with its path, in the order of the text.</summary>
    public static IEnumerable<(string Path, string Value)> Leaves(YamlNode node, string path) =>
        node switch
        {
            YamlMap map => map.Entries.Values.SelectMany(entry =>
                Leaves(entry.Value, path.Length == 0 ? entry.Name : $"{path}.{entry.Name}")
            ),
            YamlList list => list.Items.SelectMany((item, i) => Leaves(item, $"{path}[{i + 1}]")),
            YamlScalar { IsEmpty: false } scalar => [(path, scalar.Text)],
            _ => [],
        };

    private static int LineStart(string text, int place) => place == 0 ? 0 : text.LastIndexOf('\n', place - 1) + 1;

    private static int Dash(string text, YamlNode item) => text.LastIndexOf('-', item.Span.Start - 1);

    // Whole lines with one line break: their own, or the one before the last line of a text.
    private static TextSpan Lines(string text, int start, int end)
    {
        var next = text.IndexOf('\n', end);
        if (next >= 0)
        {
            return new(start, next + 1);
        }

        return new(LineEnd(text, start), end);
    }
}
