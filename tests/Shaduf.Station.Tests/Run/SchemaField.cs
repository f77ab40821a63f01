using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Shaduf.Station.Tests;

/// <summary>A field of a file with the ends of what it accepts, as the published schema says.</summary>
/// <param name="Path">Steps from the top: names, and 0 for the first entry of a list.</param>
/// <param name="Values">Values at the ends, and every word; null for left out.</param>
internal sealed record SchemaField(IReadOnlyList<object> Path, IReadOnlyList<JsonNode?> Values)
{
    /// <summary>All fields that a schema describes.</summary>
    public static IReadOnlyList<SchemaField> Of(string schema) =>
        [.. Under([], JsonNode.Parse(schema)!.AsObject(), isRequired: true).Where(field => field.Values.Count > 0)];

    public string Name => string.Join('.', Path);

    /// <summary>Sets this field to one of its values, if what encloses it is there.</summary>
    public void Put(JsonNode file, JsonNode? value)
    {
        JsonNode? at = file;
        foreach (var step in Path.SkipLast(1))
        {
            at = (at, step) switch
            {
                (JsonArray { Count: > 0 } list, int index) => list[index],
                (JsonObject map, string name) => map[name],
                _ => null,
            };
        }

        if (at is JsonObject holder)
        {
            holder.Remove((string)Path[^1]);
            if (value is not null)
            {
                holder[(string)Path[^1]] = value.DeepClone();
            }
        }
    }

    private static IEnumerable<SchemaField> Under(IReadOnlyList<object> path, JsonObject schema, bool isRequired)
    {
        var field = schema;
        if (!isRequired)
        {
            field = schema["anyOf"]![0]!.AsObject();
        }

        var about = (string)(schema["description"] ?? "")!;
        if (field["properties"] is JsonObject properties)
        {
            if (!isRequired)
            {
                yield return new(path, [null]);
            }

            var required = field["required"]!.AsArray().Select(name => (string)name!).ToHashSet();
            foreach (var (name, inner) in properties)
            {
                foreach (var each in Under([.. path, name], inner!.AsObject(), required.Contains(name)))
                {
                    yield return each;
                }
            }
        }
        else if (field["items"] is JsonObject items)
        {
            if (!isRequired)
            {
                yield return new(path, [null]);
            }

            foreach (var each in Under([.. path, 0], items, true))
            {
                yield return each;
            }
        }
        else
        {
            JsonNode?[] leftOut = isRequired ? [] : [null];
            JsonNode[] ends = [.. Ends(field, about)];
            if (leftOut.Length + ends.Length > 0)
            {
                yield return new(path, [.. leftOut, .. ends]);
            }
        }
    }

    private static IEnumerable<JsonNode> Ends(JsonObject field, string about)
    {
        if (field["enum"] is JsonArray words)
        {
            return words.Select(word => word!);
        }

        if (field["minimum"] is { } lowest)
        {
            return [lowest, field["maximum"]!];
        }

        var ends = Regex.Match(about, @"\[.*\], (.*) to (.*)\.$");
        return ends.Success ? [End(ends.Groups[1].Value), End(ends.Groups[2].Value)] : [];
    }

    // A number without a unit is written as such.
    private static JsonNode End(string text) =>
        decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : text;
}
