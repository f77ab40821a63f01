using System.Text.Json.Nodes;
using Shaduf.Station;

namespace Shaduf.Desk;

/// <summary>What a field of the brief takes.</summary>
public enum FieldKind
{
    Group,
    List,
    Word,
    Entry,
}

/// <summary>A field of the brief as the outline shows it; grown from the published schema, so it can never lag behind.</summary>
/// <param name="Name">Its name in the file.</param>
/// <param name="About">What it means, its unit and range.</param>
/// <param name="Kind">What it takes.</param>
/// <param name="IsRequired">Whether a brief cannot do without it.</param>
/// <param name="Fields">The fields of a group, or of one item of a list.</param>
/// <param name="Words">The words that are accepted, beside or instead of a value.</param>
public sealed record FieldNode(
    string Name,
    string About,
    FieldKind Kind,
    bool IsRequired,
    IReadOnlyList<FieldNode> Fields,
    IReadOnlyList<string> Words
)
{
    // In the order of the conversation; what is not named comes after.
    private static readonly string[] s_order =
    [
        "station",
        "site",
        "uses",
        "source",
        "lift",
        "tank",
        "taps",
        "array",
        "rack",
        "guard",
        "money",
        "crew",
        "workshop",
        "measured",
        "progress",
    ];

    /// <summary>The top fields of a brief, in the order of a first conversation.</summary>
    public static IReadOnlyList<FieldNode> Brief { get; } =
    [
        .. Of(JsonNode.Parse(StationFile.Schema())!)
            .OrderBy(field => (uint)s_order.IndexOf(field.Name))
            .ThenBy(field => field.Name, StringComparer.Ordinal),
    ];

    /// <summary>A top field by its name.</summary>
    /// <exception cref="InvalidOperationException">There is none of that name.</exception>
    public static FieldNode Top(string name) => Brief.First(field => field.Name == name);

    /// <summary>The name as a person reads it: <c>pumpSetting</c> is 'pump setting'.</summary>
    public string Label =>
        string.Concat(Name.Select(letter => char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : $"{letter}"));

    private static IReadOnlyList<FieldNode> Of(JsonNode map)
    {
        var required = map["required"]?.AsArray().Select(name => (string)name!).ToHashSet(StringComparer.Ordinal) ?? [];
        return
        [
            .. map["properties"]!.AsObject().Select(field => Of(field.Key, field.Value!, required.Contains(field.Key))),
        ];
    }

    private static FieldNode Of(string name, JsonNode schema, bool isRequired)
    {
        IReadOnlyList<JsonNode> ways = schema["anyOf"] is JsonArray any ? [.. any.Select(way => way!)] : [schema];
        var about = (string?)schema["description"] ?? "";
        if (ways.FirstOrDefault(way => way["properties"] is not null) is { } map)
        {
            return new(name, about, FieldKind.Group, isRequired, Of(map), []);
        }

        if (ways.FirstOrDefault(way => way["items"]?["properties"] is not null) is { } list)
        {
            return new(name, about, FieldKind.List, isRequired, Of(list["items"]!), []);
        }

        List<string> words =
        [
            .. ways.Where(way => way["enum"] is not null)
                .SelectMany(way => way["enum"]!.AsArray())
                .Where(word => word is not null)
                .Select(word => word!.ToString()),
        ];
        var isWord = ways.All(way => way["enum"] is not null);
        return new(name, about, isWord ? FieldKind.Word : FieldKind.Entry, isRequired, [], words);
    }
}
