namespace Shaduf.Station;

/// <summary>A value of a brief that is not plain ASCII.</summary>
/// <param name="Field">Its field: <c>station.name</c>.</param>
/// <param name="Line">Line of the file.</param>
/// <param name="Text">The value.</param>
public sealed record BriefWord(string Field, int Line, string Text)
{
    /// <summary>All such values of a file, in its order.</summary>
    internal static IReadOnlyList<BriefWord> Of(YamlMap top) => [.. In(top, "").OrderBy(word => word.Line)];

    private static IEnumerable<BriefWord> In(YamlNode node, string path) =>
        node switch
        {
            YamlScalar scalar when !System.Text.Ascii.IsValid(scalar.Text) =>
            [
                new(path, scalar.Place.Line, scalar.Text),
            ],
            YamlList list => list.Items.SelectMany(
                (item, i) => In(item, FormattableString.Invariant($"{path}[{i + 1}]"))
            ),
            YamlMap map => map.Entries.Values.SelectMany(entry =>
                In(entry.Value, path.Length == 0 ? entry.Name : $"{path}.{entry.Name}")
            ),
            _ => [],
        };
}
