using System.Xml.Linq;
using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>
/// The kernels of a trade: public methods of its public static classes. A method that only writes a calculation down
/// (returns a WorkingSheet or Lines) is no kernel.
/// </summary>
internal static class Kernels
{
    public static IEnumerable<IMethodSymbol> Of(IAssemblySymbol trade) => Concepts(trade).SelectMany(Of);

    /// <summary>The public static classes that hold kernels: one concept, one file each.</summary>
    public static IEnumerable<INamedTypeSymbol> Concepts(IAssemblySymbol trade) =>
        trade
            .PublicTypes()
            .Where(type => type.IsStatic && Of(type).Any())
            .OrderBy(type => type.Name, StringComparer.Ordinal);

    public static IEnumerable<IMethodSymbol> Of(INamedTypeSymbol concept) =>
        concept
            .PublicMembers()
            .OfType<IMethodSymbol>()
            .Where(method => method.MethodKind == MethodKind.Ordinary && !WritesDown(method.ReturnType));

    /// <summary>Method name, as in docs/methods: water/velocity-head.</summary>
    public static string MethodName(INamedTypeSymbol concept)
    {
        var words = concept.Name.Select(
            (c, i) => char.IsUpper(c) && i > 0 ? $"-{char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"
        );
        return $"{concept.ContainingAssembly.Name.Split('.')[^1].ToLowerInvariant()}/{string.Concat(words)}";
    }

    /// <summary>What its documentation says of a parameter; empty when it says nothing.</summary>
    public static string Says(this IParameterSymbol parameter) =>
        parameter
            .ContainingSymbol.Docs()
            .Elements("param")
            .SingleOrDefault(param => param.Attribute("name")?.Value == parameter.Name)
            .OneLine();

    /// <summary>An element's text in one line; a reference in it by its last name.</summary>
    public static string OneLine(this XElement? element)
    {
        var text = string.Concat((element?.Nodes() ?? []).Select(Text));
        return string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    private static string Text(XNode node) =>
        node switch
        {
            XText text => text.Value,
            XElement { IsEmpty: true, FirstAttribute.Value: var reference } => reference.Split('(')[0].Split('.', ':')[
                ^1
            ],
            XElement inner => string.Concat(inner.Nodes().Select(Text)),
            _ => "",
        };

    private static bool WritesDown(ITypeSymbol type) =>
        type.Name is "WorkingSheet" or "Line"
        || type is INamedTypeSymbol { TypeArguments: [{ Name: "WorkingSheet" or "Line" }] };
}
