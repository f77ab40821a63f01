using System.Globalization;
using System.Text;
using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>docs/methods/index.md says of every kernel what it is, where it comes from, and how often it was checked.</summary>
public sealed class MethodIndexTests
{
    [Fact]
    public void Method_index_is_what_the_code_says() =>
        Approved.Same(Path.Combine(House.Root, "docs", "methods", "index.md"), Index());

    private static string Index()
    {
        var index = new StringBuilder(
            "# Methods\n\nWritten from the doc comments and the published files by tests/Shaduf.House.Tests; "
                + "not edited by hand.\nRows: published figures that the tests and `shaduf verify` hold the method against.\n"
        );
        foreach (var trade in House.TradeProjects.Where(trade => Kernels.Concepts(trade.Assembly).Any()))
        {
            index.Append(
                CultureInfo.InvariantCulture,
                $"\n## {trade.Name}\n\n| method | kernel | what it gives | source | file | rows |\n| --- | --- | --- | --- | --- | --- |\n"
            );
            foreach (var row in Kernels.Concepts(trade.Assembly).SelectMany(concept => Rows(concept, trade.Folder)))
            {
                index.Append(row);
            }
        }

        return index.ToString();
    }

    internal static IEnumerable<string> Rows(INamedTypeSymbol concept, string folder)
    {
        var method = Kernels.MethodName(concept);
        var source = StemTests.SourceOf(concept, folder);
        var file = source is null ? "" : $"[{concept.Name}.cs](../../{House.Relative(source)})";
        var rows = StemTests.PublishedRows(concept, folder);
        return Kernels
            .Of(concept)
            .Select(kernel =>
                $"| [{method}]({method}.md) | `{kernel.Name}` | {Cell(FirstSentence(kernel.Docs().Element("summary").OneLine()))} "
                + $"| {Cell(kernel.Docs().Element("source").OneLine())} | {file} | {rows} |\n"
            )
            .Order(StringComparer.Ordinal)
            .Distinct();
    }

    private static string FirstSentence(string text) =>
        text.IndexOf(". ", StringComparison.Ordinal) is > 0 and var end ? text[..(end + 1)] : text;

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
