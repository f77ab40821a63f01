using Microsoft.CodeAnalysis;
using Shaduf.Working;

namespace Shaduf.House.Tests;

/// <summary>Same stem for source, published rows and method page, so that any formula is found in a minute.</summary>
public sealed class StemTests
{
    private const string PublishedEnding = ".published.csv";

    [Fact]
    public void Every_concept_has_a_file_of_its_name_and_published_files_lie_beside_it() =>
        Rule.Holds(
            "files",
            House.TradeProjects.SelectMany(project =>
                Homeless(project.Assembly, project.Folder)
                    .Concat(Orphans(House.Files(project.Folder, "*" + PublishedEnding)))
            )
        );

    [Fact]
    public void Every_concept_has_published_rows_beside_it() =>
        Rule.Holds(
            "published",
            House.TradeProjects.SelectMany(project => Unpublished(project.Assembly, project.Folder))
        );

    [Fact]
    public void Every_concept_has_a_method_page() =>
        Rule.Holds("pages", House.TradeProjects.SelectMany(project => Pageless(project.Assembly)));

    internal static IEnumerable<Offence> Homeless(IAssemblySymbol trade, string folder) =>
        from concept in Kernels.Concepts(trade)
        where SourceOf(concept, folder) is null
        select new Offence(concept.Subject(), $"put it into one file of its name, {concept.Name}.cs, in its trade.");

    internal static IEnumerable<Offence> Unpublished(IAssemblySymbol trade, string folder) =>
        from concept in Kernels.Concepts(trade)
        where PublishedRows(concept, folder) == 0
        select new Offence(
            concept.Subject(),
            $"has no published row: add {concept.Name}{PublishedEnding} beside its source, or say why none exists."
        );

    internal static IEnumerable<Offence> Orphans(IEnumerable<string> publishedFiles) =>
        from path in publishedFiles
        where !File.Exists(path[..^PublishedEnding.Length] + ".cs")
        select new Offence(House.Relative(path), "lies beside no source of the same name: rename or move it.");

    internal static IEnumerable<Offence> Pageless(IAssemblySymbol trade) =>
        from concept in Kernels.Concepts(trade)
        let page = $"docs/methods/{Kernels.MethodName(concept)}.md"
        where !File.Exists(Path.Combine(House.Root, page))
        select new Offence(concept.Subject(), $"has no method page: write {page}.");

    internal static string? SourceOf(INamedTypeSymbol concept, string folder) =>
        House.Files(folder, concept.Name + ".cs").ToArray() is [var only] ? only : null;

    internal static int PublishedRows(INamedTypeSymbol concept, string folder) =>
        SourceOf(concept, folder) is { } source
        && Path.ChangeExtension(source, PublishedEnding) is var published
        && File.Exists(published)
            ? PublishedCase.Read(Kernels.MethodName(concept), File.ReadAllText(published)).Count
            : 0;
}
