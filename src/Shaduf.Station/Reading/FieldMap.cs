using System.Globalization;
using System.Text.Json.Nodes;

namespace Shaduf.Station;

/// <summary>
/// One mapping of a file, read field by field. The same reading code run over no file at all describes the fields
/// instead: that is the published schema, so the two cannot drift apart. A field that is wrong is noted and reading
/// goes on with a stand-in value; the caller must ask the log before using what was read.
/// </summary>
internal sealed class FieldMap
{
    /// <summary>Written where the user does not know.</summary>
    public const string UnknownWord = "unknown";

    /// <summary>Written where the design shall choose.</summary>
    public const string ChooseWord = "choose";

    /// <summary>Characters of the longest value that is accepted anywhere.</summary>
    public const int LongestValue = 250;

    private readonly YamlMap? node;
    private readonly FilePlace place;
    private readonly string path;
    private readonly FieldLog log;
    private readonly FieldSchema? schema;
    private readonly HashSet<string> names = new(StringComparer.Ordinal);

    private FieldMap(YamlMap? node, FilePlace place, string path, FieldLog log, FieldSchema? schema) =>
        (this.node, this.place, this.path, this.log, this.schema) = (node, place, path, log, schema);

    /// <summary>The top mapping of a file.</summary>
    public static FieldMap Reading(YamlMap top, FieldLog log) => new(top, top.Place, "", log, null);

    /// <summary>A mapping that only describes its fields.</summary>
    public static FieldMap Describing(FieldSchema schema) => new(null, default, "", new(""), schema);

    /// <summary>Whether fields are described and nothing is read.</summary>
    public bool IsDescribing => schema is not null;

    /// <summary>A text that must be there.</summary>
    public string Text(string name, string about, int longest = 80) => OptionalText(name, about, longest, true) ?? "";

    /// <summary>A text that may be left out.</summary>
    public string? OptionalText(string name, string about, int longest = 80) =>
        OptionalText(name, about, longest, false);

    /// <summary>A quantity that must be there [the measure's own unit].</summary>
    public double Quantity(string name, Measure measure, double lowest, double highest, string about) =>
        Quantity(name, measure, (lowest, highest), about, null) ?? lowest;

    /// <summary>A quantity that may be left out or 'unknown'; null then.</summary>
    public double? Known(string name, Measure measure, double lowest, double highest, string about) =>
        Quantity(name, measure, (lowest, highest), about, UnknownWord);

    /// <summary>A quantity that may be left out or 'choose'; null then.</summary>
    public double? Chosen(string name, Measure measure, double lowest, double highest, string about) =>
        Quantity(name, measure, (lowest, highest), about, ChooseWord);

    /// <summary>A whole number that must be there.</summary>
    public int Count(string name, int lowest, int highest, string about) =>
        Count(name, (lowest, highest), about, null) ?? lowest;

    /// <summary>A whole number that may be left out or be the given word; null then.</summary>
    public int? OptionalCount(string name, int lowest, int highest, string about, string word) =>
        Count(name, (lowest, highest), about, word);

    /// <summary>A plain number that may be left out (money in the price book's currency); null then.</summary>
    public double? OptionalNumber(string name, double lowest, double highest, string about) =>
        Quantity(name, Measure.Plain, (lowest, highest), about, UnknownWord);

    /// <summary>A plain number that must be there (money in the price book's currency).</summary>
    public double Number(string name, double lowest, double highest, string about) =>
        Quantity(name, Measure.Plain, (lowest, highest), about, null) ?? lowest;

    /// <summary>One of a few words that must be there.</summary>
    public T OneOf<T>(string name, IReadOnlyList<(string Word, T Value)> options, string about)
        where T : struct => OneOf(name, options, about, true) ?? options[0].Value;

    /// <summary>One of a few words, or left out; null then.</summary>
    public T? OptionalOneOf<T>(string name, IReadOnlyList<(string Word, T Value)> options, string about)
        where T : struct => OneOf(name, options, about, false);

    /// <summary>A calendar date written 2026-03-01; may be left out.</summary>
    public DateOnly? OptionalDate(string name, string about)
    {
        schema?.Add(name, FieldSchema.TextPattern(@"^\d{4}-\d{2}-\d{2}$", about), false);
        if (Scalar(name, false) is not { } scalar)
        {
            return null;
        }

        if (
            DateOnly.TryParseExact(
                scalar.Text,
                "yyyy-MM-dd",
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out var date
            )
        )
        {
            return date;
        }

        log.Add(scalar.Place, Path(name), $"'{scalar.Text}' is not a date", "a date as 2026-03-01 is accepted");
        return null;
    }

    /// <summary>A mapping that must be there.</summary>
    public FieldMap Map(string name, string about) => OptionalMap(name, about, true) ?? Missing(name);

    /// <summary>A mapping that may be left out; null then.</summary>
    public FieldMap? OptionalMap(string name, string about) => OptionalMap(name, about, false);

    /// <summary>A list of mappings; empty when left out and <paramref name="fewest"/> is 0.</summary>
    public IReadOnlyList<T> Items<T>(string name, int fewest, int most, string about, Func<FieldMap, T> read)
    {
        if (schema is not null)
        {
            var item = new FieldSchema();
            var described = read(new(null, default, $"{Path(name)}[1]", log, item));
            schema.Add(name, item.AsList(about, fewest, most), fewest > 0, UnknownWord);
            return [described];
        }

        if (
            Entry(name, fewest > 0) is not { } entry
            || (fewest == 0 && entry.Value is YamlScalar { Text: UnknownWord })
        )
        {
            return [];
        }

        if (entry.Value is not YamlList list || list.Items.Count < fewest || list.Items.Count > most)
        {
            var found = entry.Value is YamlList given ? $"{given.Items.Count} entries" : "not a list";
            log.Add(entry.NamePlace, Path(name), found, $"a list of {fewest} to {most} entries is accepted");
            return [];
        }

        return [.. list.Items.Select((item, i) => Item(item, $"{Path(name)}[{i + 1}]", read)).OfType<T>()];
    }

    /// <summary>
    /// Whether these fields, or all so far when none is named, were read without an error, so that they can be held
    /// against one another.
    /// </summary>
    public bool AreSound(params IReadOnlyCollection<string> paths) =>
        !IsDescribing && !(paths.Count > 0 ? paths : names).Any(inner => log.HasErrorsIn(Path(inner)));

    /// <summary>Names of the fields read so far that the file gives.</summary>
    public IReadOnlyList<string> Given => [.. names.Where(Has)];

    /// <summary>Whether a field stands in the file with more than a word for nothing.</summary>
    public bool Has(string name) =>
        node is not null
        && node.Entries.TryGetValue(name, out var entry)
        && entry.Value is not YamlScalar { Text: "" or UnknownWord };

    /// <summary>Notes an error about a field or a field inside it, at its place (or at that of what encloses it when it is absent).</summary>
    public void Complain(string inner, string problem, string accepted) =>
        log.Add(node?.At(inner).Place ?? place, Path(inner), problem, accepted);

    /// <summary>Notes every field that nobody asked for, with the nearest name that is known.</summary>
    public void Done()
    {
        foreach (var entry in node?.Entries.Values ?? [])
        {
            if (!names.Contains(entry.Name))
            {
                log.Add(
                    entry.NamePlace,
                    Path(entry.Name),
                    "no such field",
                    entry.Name.Length > 0 && char.IsAsciiDigit(entry.Name[0])
                        ? "inside braces a comma ends a value: write the decimal mark as a point"
                        : Nearest.Or(entry.Name, [.. names.Order(StringComparer.Ordinal)])
                );
            }
        }
    }

    private string? OptionalText(string name, string about, int longest, bool required)
    {
        schema?.Add(name, FieldSchema.PlainText(about, longest), required);
        if (Scalar(name, required) is not { } scalar)
        {
            return null;
        }

        if (scalar.Text.Length <= longest && !scalar.Text.Any(char.IsControl))
        {
            return scalar.Text;
        }

        log.Add(
            scalar.Place,
            Path(name),
            "too long, or holds control characters",
            $"at most {longest} characters are accepted"
        );
        return null;
    }

    private double? Quantity(
        string name,
        Measure measure,
        (double Lowest, double Highest) range,
        string about,
        string? word
    )
    {
        schema?.Add(name, FieldSchema.Quantity(measure, range, about), word is null, word);
        if (Scalar(name, word is null) is not { } scalar || scalar.Text == word)
        {
            return null;
        }

        var accepted = AcceptedRange(measure, range, word);
        if (!measure.TryRead(scalar.Text, out var value, out var problem))
        {
            log.Add(
                scalar.Place,
                Path(name),
                problem,
                measure.Accepted.Length == 0 ? accepted : $"{accepted}, in {measure.Accepted}"
            );
            return null;
        }

        if (value >= range.Lowest && value <= range.Highest)
        {
            return value;
        }

        log.Add(scalar.Place, Path(name), $"{scalar.Text} is out of range", accepted);
        return null;
    }

    private static string AcceptedRange(Measure measure, (double Lowest, double Highest) range, string? word)
    {
        var orWord = word is null ? "" : $", or '{word}'";
        return $"{measure.Format(range.Lowest)} to {measure.Format(range.Highest)}{orWord} is accepted";
    }

    private int? Count(string name, (int Lowest, int Highest) range, string about, string? word)
    {
        schema?.Add(name, FieldSchema.Count(range, about), word is null, word);
        if (Scalar(name, word is null) is not { } scalar || scalar.Text == word)
        {
            return null;
        }

        if (
            int.TryParse(scalar.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var count)
            && count >= range.Lowest
            && count <= range.Highest
        )
        {
            return count;
        }

        log.Add(
            scalar.Place,
            Path(name),
            $"'{scalar.Text}' is not a whole number in range",
            $"{range.Lowest} to {range.Highest}{(word is null ? "" : $", or '{word}'")} is accepted"
        );
        return null;
    }

    private T? OneOf<T>(string name, IReadOnlyList<(string Word, T Value)> options, string about, bool required)
        where T : struct
    {
        var words = options.Select(option => option.Word).Concat(required ? [] : [UnknownWord]);
        schema?.Add(name, FieldSchema.OneOf(options.Select(option => option.Word), about), required, UnknownWord);
        if (Scalar(name, required) is not { } scalar || (!required && scalar.Text == UnknownWord))
        {
            return null;
        }

        foreach (var (word, value) in options)
        {
            if (word == scalar.Text)
            {
                return value;
            }
        }

        log.Add(
            scalar.Place,
            Path(name),
            $"'{scalar.Text}' is not one of the words",
            $"{string.Join(", ", words)} is accepted"
        );
        return null;
    }

    private FieldMap? OptionalMap(string name, string about, bool required)
    {
        if (schema is not null)
        {
            names.Add(name);
            var inner = new FieldSchema();
            schema.Add(name, inner.AsMap(about), required, UnknownWord);
            return new(null, default, Path(name), log, inner);
        }

        if (Entry(name, required) is not { } entry || (!required && entry.Value is YamlScalar { Text: UnknownWord }))
        {
            return null;
        }

        if (entry.Value is YamlMap map)
        {
            return new(map, map.Place, Path(name), log, null);
        }

        log.Add(entry.Value.Place, Path(name), "not a group of fields", "indented 'name: value' lines are accepted");
        return null;
    }

    private FieldMap Missing(string name) => new(null, place, Path(name), new(log.File), null);

    private T? Item<T>(YamlNode item, string itemPath, Func<FieldMap, T> read)
    {
        if (item is not YamlMap map)
        {
            log.Add(item.Place, itemPath, "not a group of fields", "'{ name: value, name: value }' is accepted");
            return default;
        }

        return read(new(map, map.Place, itemPath, log, null));
    }

    private YamlScalar? Scalar(string name, bool required)
    {
        if (Entry(name, required) is not { } entry)
        {
            return null;
        }

        if (entry.Value is YamlScalar { Text.Length: <= LongestValue } scalar)
        {
            return scalar;
        }

        log.Add(
            entry.Value.Place,
            Path(name),
            entry.Value is YamlScalar ? "too long" : "a group or a list",
            $"a single value of at most {LongestValue} characters is accepted"
        );
        return null;
    }

    // An empty value is the same as a missing field: required fields complain, others take their default.
    private YamlEntry? Entry(string name, bool required)
    {
        names.Add(name);
        if (node is null)
        {
            return null;
        }

        if (node.Entries.TryGetValue(name, out var entry) && entry.Value is not YamlScalar { IsEmpty: true })
        {
            return entry;
        }

        if (required)
        {
            log.Add(
                entry?.NamePlace ?? place,
                Path(name),
                entry is null ? "missing" : "empty",
                $"'{name}: ...' is needed"
            );
        }

        return null;
    }

    private string Path(string name) => path.Length == 0 ? name : $"{path}.{name}";
}
