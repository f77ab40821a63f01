using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>Writes <c>design.json</c> and its published schema.</summary>
public static class DesignJson
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        TypeInfoResolver = new DefaultJsonTypeInfoResolver(),
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        RespectNullableAnnotations = true,
        NumberHandling = System.Text.Json.Serialization.JsonNumberHandling.Strict,
    };

    /// <summary>The published schema.</summary>
    /// <returns>JSON Schema, indented, with a line end.</returns>
    public static string Schema()
    {
        var schema = Options
            .GetJsonSchemaAsNode(typeof(DesignFile), new() { TreatNullObliviousAsNonNullable = true })
            .AsObject();
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(1, "title", "design.json");
        return schema.ToJsonString(Options) + "\n";
    }

    /// <summary>The file of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">Status, revision, hash.</param>
    /// <returns>JSON, indented, with a line end.</returns>
    public static string Of(Design design, Stamp stamp) =>
        JsonSerializer.Serialize(DesignEntries.Of(design, stamp), Options) + "\n";
}
