using System.Text.Json.Nodes;

namespace Shaduf.Station;

/// <summary>Grows the JSON Schema (draft 2020-12) of one mapping while its fields are described.</summary>
internal sealed class FieldSchema
{
    private readonly JsonObject properties = [];
    private readonly JsonArray required = [];

    /// <summary>Adds a field.</summary>
    public void Add(string name, JsonObject field, bool isRequired)
    {
        properties.Add(name, field);
        if (isRequired)
        {
            required.Add(name);
        }
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

    /// <summary>A number with its unit, or a word in its place.</summary>
    public static JsonObject Quantity(
        Measure measure,
        (double Lowest, double Highest) range,
        string about,
        string? word
    )
    {
        var text = $"{about} [{measure.OwnUnit}], {measure.Format(range.Lowest)} to {measure.Format(range.Highest)}.";
        var forms = new JsonArray
        {
            new JsonObject { ["type"] = "string", ["pattern"] = measure.Pattern },
        };
        if (measure.TakesBareNumbers)
        {
            forms.Add(new JsonObject { ["type"] = "number" });
        }

        return WithWord(forms, text, word);
    }

    /// <summary>A whole number, or a word in its place.</summary>
    public static JsonObject Count((int Lowest, int Highest) range, string about, string? word) =>
        WithWord(
            [
                new JsonObject
                {
                    ["type"] = "integer",
                    ["minimum"] = range.Lowest,
                    ["maximum"] = range.Highest,
                },
            ],
            about,
            word
        );

    /// <summary>One of a few words.</summary>
    public static JsonObject OneOf(IEnumerable<string> words, string about) =>
        new() { ["description"] = about, ["enum"] = new JsonArray([.. words.Select(word => (JsonNode)word)]) };

    private static JsonObject WithWord(JsonArray forms, string about, string? word)
    {
        if (word is not null)
        {
            forms.Add(new JsonObject { ["const"] = word });
            forms.Add(new JsonObject { ["type"] = "null" });
        }

        return new() { ["description"] = about, ["anyOf"] = forms };
    }
}
