namespace Shaduf.Station;

/// <summary>A place in a file, both counted from 1.</summary>
/// <param name="Line">Line.</param>
/// <param name="Column">Column.</param>
internal readonly record struct FilePlace(int Line, int Column);

/// <summary>A piece of a YAML file with its place.</summary>
/// <param name="Place">Where it begins.</param>
internal abstract record YamlNode(FilePlace Place);

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
internal sealed record YamlEntry(string Name, FilePlace NamePlace, YamlNode Value);
