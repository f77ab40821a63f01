using System.Text.Encodings.Web;
using System.Text.Json;

namespace Shaduf.Station;

/// <summary>Writes a published schema from the code that reads a file.</summary>
internal static class SchemaText
{
    private static readonly JsonSerializerOptions Indented = new()
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The schema of a file.</summary>
    /// <param name="title">Name of the file.</param>
    /// <param name="about">What it is.</param>
    /// <param name="read">The code that reads it.</param>
    /// <returns>JSON Schema, draft 2020-12, indented, with a line end.</returns>
    public static string Of(string title, string about, Action<FieldMap> read)
    {
        var schema = new FieldSchema();
        read(FieldMap.Describing(schema));
        var map = schema.AsMap(about);
        map.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        map.Insert(1, "title", title);
        return map.ToJsonString(Indented) + "\n";
    }
}
