using System.Text.RegularExpressions;

namespace Shaduf.House.Tests;

/// <summary>A name taken apart: headKPa is Head, K, Pa.</summary>
internal static class Words
{
    public static IReadOnlyList<string> Of(string name) =>
        [
            .. Regex
                .Matches(name, "[A-Z][a-z0-9]*|(?<![A-Za-z0-9])[a-z][a-z0-9]*")
                .Select(match => char.ToUpperInvariant(match.Value[0]) + match.Value[1..]),
        ];

    public static bool EndsWith(IReadOnlyList<string> words, IReadOnlyList<string> ending) =>
        words.Count >= ending.Count && words.Skip(words.Count - ending.Count).SequenceEqual(ending);
}
