using System.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Shaduf.Station;

/// <summary>
/// Reads a YAML file into nodes that know their place. Plain YAML only: no anchors, aliases or tags, one document,
/// no name twice in one mapping, and limits on size and depth, so that no file can make the program grow.
/// </summary>
internal static class YamlFile
{
    /// <summary>Largest file accepted [bytes]; a brief is a few kilobytes.</summary>
    public const int LargestBytes = 256 * 1024;

    private const int DeepestNesting = 12;

    /// <summary>Reads a file from disk.</summary>
    /// <param name="path">The file's path.</param>
    /// <param name="log">Takes every field that stands twice.</param>
    /// <returns>Its bytes and its top mapping.</returns>
    /// <exception cref="BadInputException">The file is missing, too large, or not plain YAML.</exception>
    public static (byte[] Bytes, YamlMap Top) Read(string path, FieldLog log)
    {
        if (!File.Exists(path))
        {
            throw Bad(
                log.File,
                new(1, 1),
                Directory.Exists(path) ? "this is a folder" : "there is no such file",
                "the path of a YAML file is accepted"
            );
        }

        try
        {
            using var stream = File.OpenRead(path);
            var bytes = new byte[LargestBytes + 1];
            var count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return (bytes[..count], Parse(log, bytes[..count]));
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw Bad(log.File, new(1, 1), "the file cannot be read", "a file that this user may read is accepted");
        }
    }

    /// <summary>Reads YAML from bytes.</summary>
    /// <param name="log">Names the file in errors, and takes every field that stands twice.</param>
    /// <param name="bytes">UTF-8 text.</param>
    /// <returns>The top mapping.</returns>
    /// <exception cref="BadInputException">The text is too long or not plain YAML.</exception>
    public static YamlMap Parse(FieldLog log, byte[] bytes)
    {
        var file = log.File;
        var text = Text(file, bytes);
        try
        {
            var parser = new Parser(new StringReader(text));
            parser.Consume<StreamStart>();
            if (!parser.Accept<DocumentStart>(out _))
            {
                throw Bad(file, new(1, 1), "the file is empty", "fields such as 'station:' are accepted");
            }

            parser.Consume<DocumentStart>();
            var top = Node(parser, log, "", 0);
            parser.Consume<DocumentEnd>();
            if (parser.Accept<DocumentStart>(out var second))
            {
                throw Bad(file, Place(second.Start), "a second document begins", "one document a file is accepted");
            }

            return top as YamlMap
                ?? throw Bad(file, top.Place, "the file holds no fields", "fields such as 'station:' are accepted");
        }
        catch (YamlException trouble)
        {
            var reason = trouble.InnerException?.Message ?? trouble.Message;
            var place = trouble.Start.Line > 0 ? Place(trouble.Start) : new(1, 1);
            throw Bad(file, place, $"not YAML: {FirstLine(reason)}", "indented 'name: value' lines are accepted");
        }
        catch (InvalidOperationException)
        {
            throw Bad(file, new(1, 1), "not YAML: a bracket or quote is not closed", "closed brackets are accepted");
        }
    }

    private static string Text(string file, byte[] bytes)
    {
        if (bytes.Length > LargestBytes)
        {
            throw Bad(
                file,
                new(1, 1),
                "the file is too large",
                $"files of at most {LargestBytes / 1024} kB are accepted"
            );
        }

        string text;
        try
        {
            text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            throw Bad(file, new(1, 1), "this is not UTF-8 text", "a YAML text file in UTF-8 is accepted");
        }

        RefuseTabs(file, text);
        return text;
    }

    private static void RefuseTabs(string file, string text)
    {
        foreach (var (i, line) in text.Split('\n').Index())
        {
            var tab = line.AsSpan().IndexOfAnyExcept(' ');
            if (tab >= 0 && line[tab] == '\t' && line.AsSpan().Trim().Length > 0)
            {
                throw Bad(file, new(i + 1, tab + 1), "a tab", "spaces before a field's name are accepted");
            }
        }
    }

    private static YamlNode Node(Parser parser, FieldLog log, string path, int depth)
    {
        var file = log.File;
        var place = Place(parser.Current!.Start);
        if (depth > DeepestNesting)
        {
            throw Bad(file, place, "nested too deep", $"at most {DeepestNesting} levels are accepted");
        }

        if (parser.Accept<AnchorAlias>(out _))
        {
            throw Bad(file, place, "an alias (*name)", "values written out in full are accepted");
        }

        if (parser.Current is not NodeEvent opening)
        {
            throw Bad(file, place, "not YAML: a value is missing", "indented 'name: value' lines are accepted");
        }

        if (!opening.Anchor.IsEmpty)
        {
            throw Bad(file, place, "an anchor (&name)", "values written out in full are accepted");
        }

        if (!opening.Tag.IsEmpty)
        {
            throw Bad(file, place, "a tag (!name)", "plain values are accepted");
        }

        return opening switch
        {
            Scalar scalar => new YamlScalar(place, parser.Consume<Scalar>().Value.Trim())
            {
                Span = Span(scalar.Start, scalar.End),
            },
            SequenceStart => List(parser, log, path, depth),
            _ => Map(parser, log, path, depth),
        };
    }

    private static YamlList List(Parser parser, FieldLog log, string path, int depth)
    {
        var opening = parser.Consume<SequenceStart>();
        var items = new List<YamlNode>();
        while (!parser.Accept<SequenceEnd>(out _))
        {
            items.Add(Node(parser, log, $"{path}[{items.Count + 1}]", depth + 1));
        }

        return new(Place(opening.Start), items)
        {
            Span = Span(opening.Start, parser.Consume<SequenceEnd>().End),
            IsFlow = opening.Style == SequenceStyle.Flow,
        };
    }

    private static YamlMap Map(Parser parser, FieldLog log, string path, int depth)
    {
        var opening = parser.Consume<MappingStart>();
        var entries = new Dictionary<string, YamlEntry>(StringComparer.Ordinal);
        while (!parser.Accept<MappingEnd>(out _))
        {
            var name = Node(parser, log, path, depth + 1);
            if (name is not YamlScalar scalar)
            {
                throw Bad(log.File, name.Place, "a field's name is not a word", "'name: value' is accepted");
            }

            var field = path.Length == 0 ? scalar.Text : $"{path}.{scalar.Text}";
            var entry = new YamlEntry(scalar.Text, scalar.Place, Node(parser, log, field, depth + 1))
            {
                NameSpan = scalar.Span,
            };
            if (!entries.TryAdd(entry.Name, entry))
            {
                log.Add(
                    scalar.Place,
                    field,
                    $"stands twice (first on line {entries[entry.Name].NamePlace.Line})",
                    "each field once is accepted"
                );
            }
        }

        return new(Place(opening.Start), entries)
        {
            Span = Span(opening.Start, parser.Consume<MappingEnd>().End),
            IsFlow = opening.Style == MappingStyle.Flow,
        };
    }

    private static FilePlace Place(Mark mark) => new((int)mark.Line, (int)mark.Column);

    private static TextSpan Span(Mark start, Mark end) => new((int)start.Index, (int)end.Index);

    private static string FirstLine(string text) => text.Split('\n')[0].Trim().TrimEnd('.');

    private static BadInputException Bad(string file, FilePlace place, string problem, string accepted) =>
        new([new(file, place.Line, place.Column, "file", problem, accepted)]);
}
