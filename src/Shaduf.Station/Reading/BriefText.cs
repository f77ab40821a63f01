using System.Globalization;
using System.Text;

namespace Shaduf.Station;

/// <summary>
/// The text of a brief, changed field by field: only the stretch that holds the field is written again, so that the
/// person's own remarks, order and spacing stay as they are. A field is named by its path, such as
/// <c>tank.stand</c> or <c>uses.livestock[2].count</c> (the first item is 1). Each change is read back before it is
/// given out: the named field holds what was asked, every other field what it held before.
/// </summary>
public sealed class BriefText
{
    private readonly string file;
    private readonly YamlMap top;

    private BriefText(string text, string file)
    {
        (Text, this.file) = (text.TrimStart('\uFEFF'), file);
        top = YamlFile.Parse(new(file), Encoding.UTF8.GetBytes(Text));
    }

    /// <summary>The whole text.</summary>
    public string Text { get; }

    /// <summary>Every field that holds a value, in the order of the text.</summary>
    public IReadOnlyList<string> Paths => [.. Leaves.Select(leaf => leaf.Path)];

    private string NewLine => Text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";

    /// <summary>Reads a brief's text; its fields may be wrong, but it is YAML.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">Its name in errors.</param>
    /// <returns>The text, ready for changes.</returns>
    /// <exception cref="BadInputException">The text is not plain YAML.</exception>
    public static BriefText Of(string text, string file = "station.yaml") => new(text, file);

    /// <summary>What a field holds.</summary>
    /// <param name="path">The field.</param>
    /// <returns>Its text; null when it is absent, empty, or holds fields of its own.</returns>
    public string? Value(string path) => Find(path) is YamlScalar { IsEmpty: false } scalar ? scalar.Text : null;

    /// <summary>How many items a list holds.</summary>
    /// <param name="path">The list.</param>
    /// <returns>The number, 0 when there is no list of that name.</returns>
    public int ItemCount(string path) => Find(path) is YamlList list ? list.Items.Count : 0;

    /// <summary>The text with one field changed, or added after the last field of what encloses it.</summary>
    /// <param name="path">The field.</param>
    /// <param name="value">What it shall hold, one line, not empty.</param>
    /// <returns>The new text.</returns>
    /// <exception cref="ArgumentException">
    /// The value is empty, the field holds fields of its own, or the path leads through a value or past the end of a list.
    /// </exception>
    public BriefText With(string path, string value)
    {
        value = Told(path, value);

        return Find(path) switch
        {
            YamlScalar { IsEmpty: true } empty => Changed(Put(AfterColon(empty), " " + Written(value)), path, value),
            YamlScalar scalar => Changed(Put(scalar.Span, Written(value)), path, value),
            null => Changed(Added(path, Written(value)), path, value),
            _ => throw new ArgumentException($"{path}: holds fields of its own", nameof(path)),
        };
    }

    /// <summary>The text without a field or an item of a list; what it leaves empty goes too.</summary>
    /// <param name="path">The field or item.</param>
    /// <returns>The new text; the same when there was no such field.</returns>
    /// <exception cref="ArgumentException">It is the last field of the brief.</exception>
    public BriefText Without(string path)
    {
        if (Find(path) is null)
        {
            return this;
        }

        var (above, last) = Parent(path);
        var parent = above.Length == 0 ? top : Find(above)!;
        var siblings = parent is YamlMap map ? map.Entries.Count : ((YamlList)parent).Items.Count;
        if (siblings == 1)
        {
            return above.Length > 0
                ? Without(above)
                : throw new ArgumentException("a brief without any field is none", nameof(path));
        }

        return Checked(
            Put(BriefSpans.Whole(Text, parent, last), ""),
            Leaves.Where(leaf => !IsWithin(leaf.Path, path)).Select(leaf => (Forward(leaf.Path, path), leaf.Value))
        );
    }

    /// <summary>The text with one more item at the end of a list, or with a list of one item.</summary>
    /// <param name="path">The list.</param>
    /// <param name="fields">The item's fields, in the order in which they are written; at least one.</param>
    /// <returns>The new text.</returns>
    /// <exception cref="ArgumentException">The path names something else than a list, or there is no field.</exception>
    public BriefText WithItem(string path, IReadOnlyList<(string Name, string Value)> fields)
    {
        if (fields.Count == 0)
        {
            throw new ArgumentException($"{path}: an item without fields", nameof(fields));
        }

        fields = [.. fields.Select(field => (field.Name, Told($"{path}.{field.Name}", field.Value)))];
        var item = $"{{ {string.Join(", ", fields.Select(field => $"{field.Name}: {Written(field.Value)}"))} }}";
        var changed = Find(path) switch
        {
            YamlList { Items.Count: 0 } list => Put(BriefSpans.Brackets(Text, list), $"[{item}]"),
            YamlList { IsFlow: true } list => Put(BriefSpans.At(BriefSpans.End(Text, list.Items[^1])), $", {item}"),
            YamlList list => Lines(list, [(BriefSpans.DashColumn(Text, list), $"- {item}")]),
            null => Added(path, $"[{item}]"),
            YamlScalar open when IsOpen(open) => Filled(open, $"[{item}]"),
            _ => throw new ArgumentException($"{path}: is not a list", nameof(path)),
        };
        return Checked(
            changed,
            [
                .. Leaves.Where(leaf => leaf.Path != path),
                .. fields.Select(field => ($"{path}[{ItemCount(path) + 1}].{field.Name}", field.Value)),
            ]
        );
    }

    // What YAML reads as nothing is not written.
    private static string Told(string path, string value) =>
        value.Trim() is not ("" or "~" or "null") and { } told
            ? told
            : throw new ArgumentException($"{path}: '{value.Trim()}' says nothing; leave the field out instead");

    private IEnumerable<(string Path, string Value)> Leaves => BriefSpans.Leaves(top, "");

    private static (string Above, string Last) Parent(string path)
    {
        var at = path.LastIndexOfAny(['.', '[']);
        return at < 0 ? ("", path) : (path[..at], path[(at + 1)..].TrimEnd(']'));
    }

    private YamlNode? Find(string path)
    {
        YamlNode at = top;
        foreach (var step in path.Split('.', '['))
        {
            YamlNode? next = at switch
            {
                YamlMap map => map.Entries.GetValueOrDefault(step)?.Value,
                YamlList list
                    when step.EndsWith(']')
                        && int.TryParse(step[..^1], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                        && number >= 1
                        && number <= list.Items.Count => list.Items[number - 1],
                _ => null,
            };
            if (next is null)
            {
                return null;
            }

            at = next;
        }

        return at;
    }

    // A plain word where it reads back as itself within brackets or without, else in double quotes.
    /// <summary>A value as it is written into a file: in quotes where it would read back as something else.</summary>
    /// <param name="value">The value, one line.</param>
    /// <returns>The text.</returns>
    public static string Written(string value) => BriefSpans.IsPlain(value) ? value : BriefSpans.Quoted(value);

    private string Put(TextSpan span, string text) =>
        string.Concat(Text.AsSpan(0, span.Start), text, Text.AsSpan(span.End));

    private TextSpan AfterColon(YamlScalar empty) =>
        empty.Span.End > empty.Span.Start ? empty.Span : BriefSpans.At(BriefSpans.ColonEnd(Text, EntryOf(top, empty)!));

    private static YamlEntry? EntryOf(YamlNode at, YamlNode value) =>
        at switch
        {
            YamlMap map => map.Entries.Values.FirstOrDefault(entry => ReferenceEquals(entry.Value, value))
                ?? map.Entries.Values.Select(entry => EntryOf(entry.Value, value))
                    .FirstOrDefault(found => found is not null),
            YamlList list => list.Items.Select(item => EntryOf(item, value)).FirstOrDefault(found => found is not null),
            _ => null,
        };

    // What stood for the whole of a group gives way to its fields.
    private BriefText Changed(string text, string path, string value) =>
        Checked(text, [.. Leaves.Where(leaf => !IsWithin(path, leaf.Path)), (path, value)]);

    // It says no more than that it is not known: fields can take its place.
    private static bool IsOpen(YamlScalar value) => value.IsEmpty || value.Text is "unknown" or "choose";

    private string Filled(YamlScalar open, string text) =>
        open.IsEmpty ? Put(AfterColon(open), " " + text) : Put(open.Span, text);

    private string Added(string path, string value)
    {
        var names = new List<string>();
        var at = path;
        YamlNode? parent = null;
        while (at.Length > 0 && (parent is null || (parent is YamlScalar word && IsOpen(word))))
        {
            (at, var last) = Parent(at);
            names.Insert(0, last);
            parent = at.Length == 0 ? top : Find(at);
        }

        return parent is YamlMap map
            ? Into(map, names, value)
            : throw new ArgumentException($"{path}: there is no place for it", nameof(path));
    }

    // The names nest: the last one takes the value.
    private string Into(YamlMap map, List<string> names, string value)
    {
        if (map.Entries.TryGetValue(names[0], out var open))
        {
            // It stands there with nothing after its colon, or with a word that says it is not known.
            var nested = names.Skip(1).Reverse().Aggregate(value, (inner, name) => $"{{ {name}: {inner} }}");
            return Filled((YamlScalar)open.Value, nested);
        }

        if (map.IsFlow)
        {
            var nested = names.AsEnumerable().Reverse().Aggregate(value, (inner, name) => $"{{ {name}: {inner} }}");
            var entry = nested[2..^2];
            return map.Entries.Count == 0
                ? Put(BriefSpans.Brackets(Text, map), $"{{ {entry} }}")
                : Put(BriefSpans.At(BriefSpans.EntryEnd(Text, map.Entries.Values.Last())), $", {entry}");
        }

        var indent = map.Entries.Values.First().NamePlace.Column - 1;
        return Lines(
            map,
            [.. names.Select((name, i) => (indent + (2 * i), i == names.Count - 1 ? $"{name}: {value}" : $"{name}:"))]
        );
    }

    // New lines after the last line of a node.
    private string Lines(YamlNode after, IReadOnlyList<(int Indent, string Text)> lines)
    {
        var place = BriefSpans.LineEnd(Text, BriefSpans.End(Text, after));
        return Put(
            BriefSpans.At(place),
            string.Concat(lines.Select(line => NewLine + new string(' ', line.Indent) + line.Text))
        );
    }

    private static bool IsWithin(string leaf, string path) =>
        leaf.StartsWith(path, StringComparison.Ordinal)
        && (leaf.Length == path.Length || leaf[path.Length] is '.' or '[');

    // Without an item the later items of its list come one forward.
    private static string Forward(string leaf, string path)
    {
        var (list, last) = Parent(path);
        if (!path.EndsWith(']') || !IsWithin(leaf, list))
        {
            return leaf;
        }

        var close = leaf.IndexOf(']', list.Length);
        var number = int.Parse(leaf.AsSpan(list.Length + 1, close - list.Length - 1), CultureInfo.InvariantCulture);
        return number > int.Parse(last, CultureInfo.InvariantCulture) ? $"{list}[{number - 1}{leaf[close..]}" : leaf;
    }

    // Nothing is given out that does not read back as it should.
    private BriefText Checked(string text, IEnumerable<(string Path, string Value)> expected)
    {
        var written = new BriefText(text, file);
        return written.Leaves.Order().SequenceEqual(expected.Order())
            ? written
            : throw new InvalidOperationException("The change does not read back as it was asked.");
    }
}
