using System.Globalization;
using System.Text.Json.Nodes;
using YamlDotNet.Core;
using Yaml = YamlDotNet.RepresentationModel;

namespace Shaduf.Station.Tests;

/// <summary>YAML as JSON: what a schema judges, and a tree that a test can change.</summary>
internal static class YamlJson
{
    public static JsonNode Of(string yaml)
    {
        var stream = new Yaml.YamlStream();
        stream.Load(new StringReader(yaml));
        return Of(stream.Documents[0].RootNode)!;
    }

    private static JsonNode? Of(Yaml.YamlNode node) =>
        node switch
        {
            Yaml.YamlMappingNode map => new JsonObject(
                map.Children.Select(pair => KeyValuePair.Create(((Yaml.YamlScalarNode)pair.Key).Value!, Of(pair.Value)))
            ),
            Yaml.YamlSequenceNode list => new JsonArray([.. list.Children.Select(Of)]),
            Yaml.YamlScalarNode { Style: ScalarStyle.Plain, Value: "" or "~" or "null" } => null,
            Yaml.YamlScalarNode { Style: ScalarStyle.Plain, Value: { } text }
                when decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) => number,
            _ => ((Yaml.YamlScalarNode)node).Value,
        };
}
