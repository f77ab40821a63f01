using System.Text.Json.Nodes;

namespace Shaduf.Station;

/// <summary>Grows the JSON Schema (draft 2020-12) of one mapping while its fields are described.</summary>
internal sealed class FieldSchema
{
    private readonly JsonObject properties = [];
    private readonly JsonArray required = [];

    /// <summary>Adds a field; one that may be left out may also be empty, or the given word.</summary>
    public void Add(string name, JsonObject field, bool isRequired, string? word = null)
    {
        if (isRequired)
        {
            properties.Add(name, field);
            required.Add(name);
            return;
        }

        var about = (string)field["description"]!;
        field.Remove("description");
        var instead = word is null ? new JsonArray([null]) : new JsonArray(word, null);
        properties.Add(
            name,
            new JsonObject
            {
                ["description"] = about,
                ["anyOf"] = new JsonArray(field, new JsonObject { ["enum"] = instead }),
            }
        );
    }

    /// <summary>The schema of the mapping.</summary>
    public JsonObject AsMap(string about) =>
        new()
        {
            ["type"] = "object",
            ["description"] = about,
            ["properties"] = properties,
            ["required"] = required,
            ["additionalProperties"] = false,
        };

    /// <summary>The schema of a list of such mappings.</summary>
    public JsonObject AsList(string about, int fewest, int most) =>
        new()
        {
            ["type"] = "array",
            ["description"] = about,
            ["minItems"] = fewest,
            ["maxItems"] = most,
            ["items"] = AsMap("One entry."),
        };

    /// <summary>A text.</summary>
    public static JsonObject PlainText(string about, int longest) =>
        new()
        {
            ["type"] = new JsonArray("string", "number", "boolean"),
            ["description"] = about,
            ["maxLength"] = longest,
        };

    /// <summary>A text of a given form.</summary>
    public static JsonObject TextPattern(string pattern, string about) =>
        new()
        {
            ["type"] = "string",
            ["description"] = about,
            ["pattern"] = pattern,
        };

    /// <summary>A number with its unit.</summary>
    public static JsonObject Quantity(Measure measure, (double Lowest, double Highest) range, string about)
    {
        var text = $"{about} [{measure.OwnUnit}], {measure.Format(range.Lowest)} to {measure.Format(range.Highest)}.";
        var withUnit = new JsonObject { ["type"] = "string", ["pattern"] = measure.Pattern };
        if (!measure.TakesBareNumbers)
        {
            withUnit.Insert(0, "description", text);
            return withUnit;
        }

        return new()
        {
            ["description"] = text,
            ["anyOf"] = new JsonArray(withUnit, new JsonObject { ["type"] = "number" }),
        };
    }

    /// <summary>A whole number.</summary>
    public static JsonObject Count((int Lowest, int Highest) range, string about) =>
        new()
        {
            ["type"] = "integer",
            ["description"] = about,
            ["minimum"] = range.Lowest,
            ["maximum"] = range.Highest,
        };

    /// <summary>One of a few words.</summary>
    public static JsonObject OneOf(IEnumerable<string> words, string about) =>
        new() { ["description"] = about, ["enum"] = new JsonArray([.. words.Select(word => (JsonNode)word)]) };
}
