using System.Globalization;

namespace Shaduf.Pack;

/// <summary>What a reader takes for one character: a letter with its marks.</summary>
internal static class Graphemes
{
    internal static List<string> Of(string text)
    {
        var parts = new List<string>();
        for (var i = 0; i < text.Length; )
        {
            var length = StringInfo.GetNextTextElementLength(text, i);
            parts.Add(text.Substring(i, length));
            i += length;
        }

        return parts;
    }
}
