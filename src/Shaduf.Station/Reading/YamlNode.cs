using System.Globalization;

namespace Shaduf.Station;

/// <summary>A place in a file, both counted from 1.</summary>
/// <param name="Line">Line.</param>
/// <param name="Column">Column.</param>
internal readonly record struct FilePlace(int Line, int Column);

/// <summary>A stretch of a file's text.</summary>
/// <param name="Start">Its first character, counted from 0.</param>
/// <param name="End">The first character after it.</param>
internal readonly record struct TextSpan(int Start, int End);

/// <summary>A piece of a YAML file with its place.</summary>
/// <param name="Place">Where it begins.</param>
internal abstract record YamlNode(FilePlace Place)
{
    /// <summary>Where it stands; what is written line by line ends where its last line does, not here.</summary>
    public TextSpan Span { get; init; }

    /// <summary>Whether it is written in brackets.</summary>
    public bool IsFlow { get; init; }

    /// <summary>The node at a path such as <c>steps[2].drawdown</c>; what encloses it when it is absent.</summary>
    public YamlNode At(string path)
    {
        var at = this;
        foreach (var step in path.Split('.', '['))
        {
            switch (at)
            {
                case YamlMap map when map.Entries.TryGetValue(step, out var entry):
                    at = entry.Value;
                    break;
                case YamlList list when step.EndsWith(']'):
                    at = list.Items[int.Parse(step.AsSpan(0, step.Length - 1), CultureInfo.InvariantCulture) - 1];
                    break;
                default:
                    return at;
            }
        }

        return at;
    }
}

/// <summary>A single value, still text.</summary>
internal sealed record YamlScalar(FilePlace Place, string Text) : YamlNode(Place)
{
    /// <summary>Whether nothing was written.</summary>
    public bool IsEmpty => Text.Length == 0 || Text is "~" or "null";
}

/// <summary>A list.</summary>
internal sealed record YamlList(FilePlace Place, IReadOnlyList<YamlNode> Items) : YamlNode(Place);

/// <summary>A mapping; names are unique.</summary>
internal sealed record YamlMap(FilePlace Place, IReadOnlyDictionary<string, YamlEntry> Entries) : YamlNode(Place);

/// <summary>One field of a mapping.</summary>
/// <param name="Name">The field's name.</param>
/// <param name="NamePlace">Where the name stands.</param>
/// <param name="Value">What follows the colon.</param>
internal sealed record YamlEntry(string Name, FilePlace NamePlace, YamlNode Value)
{
    /// <summary>Where the name stands, its quotes with it.</summary>
    public TextSpan NameSpan { get; init; }
}
