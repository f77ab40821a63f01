using System.Xml.Linq;
using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>What the rules ask of the compiler's view of an assembly.</summary>
internal static class Symbols
{
    private static readonly SymbolDisplayFormat s_fullName = new(
        typeQualificationStyle: SymbolDisplayTypeQualificationStyle.NameAndContainingTypesAndNamespaces,
        memberOptions: SymbolDisplayMemberOptions.IncludeContainingType
    );

    /// <summary>Types that a person wrote, nested ones too.</summary>
    public static IEnumerable<INamedTypeSymbol> Types(this IAssemblySymbol assembly) =>
        Below(assembly.GlobalNamespace)
            .Where(type =>
                type.CanBeReferencedByName && !type.IsMadeByCompiler() && !IsMigration(type) && !IsPage(type)
            );

    // Written by the tool that writes migrations, in a namespace of their own for each database.
    private static bool IsMigration(INamedTypeSymbol type) =>
        type.ContainingNamespace is { ContainingNamespace.Name: "Migrations" };

    // Made from markup: open and with setters, because the framework fills them.
    private static bool IsPage(INamedTypeSymbol type) =>
        type.Name == "_Imports"
        || type.AllInterfaces.Any(each => each.Name == "IComponent")
        || (type.BaseType is { Name: "ComponentBase" or "LayoutComponentBase" });

    /// <summary>Types that other projects can see, nested ones too.</summary>
    public static IEnumerable<INamedTypeSymbol> PublicTypes(this IAssemblySymbol assembly) =>
        assembly.Types().Where(IsVisible);

    /// <summary>Public members that a person wrote: no accessor, nothing that a record makes by itself.</summary>
    public static IEnumerable<ISymbol> PublicMembers(this INamedTypeSymbol type) =>
        type.GetMembers()
            .Where(member =>
                member.DeclaredAccessibility == Accessibility.Public
                && !member.IsMadeByCompiler()
                && member is IPropertySymbol or IFieldSymbol or IEventSymbol or IMethodSymbol { AssociatedSymbol: null }
            );

    /// <summary>Name for messages and lists: Water.VelocityHead.HeadM.</summary>
    public static string Subject(this ISymbol symbol) =>
        symbol is IParameterSymbol parameter ? $"{parameter.ContainingSymbol.Subject()}({parameter.Name})"
        : symbol.ToDisplayString(s_fullName) is var name && name.StartsWith("Shaduf.", StringComparison.Ordinal)
            ? name["Shaduf.".Length..]
        : name;

    /// <summary>The member's XML documentation; empty when it has none.</summary>
    public static XElement Docs(this ISymbol symbol) =>
        symbol.GetDocumentationCommentXml() is { Length: > 0 } text
            ? XElement.Parse(text, LoadOptions.PreserveWhitespace)
            : new("member");

    public static bool IsNumber(this ITypeSymbol type) =>
        type.SpecialType is SpecialType.System_Double or SpecialType.System_Int32;

    public static bool IsDouble(this ITypeSymbol type) => type.SpecialType is SpecialType.System_Double;

    private static bool IsVisible(INamedTypeSymbol type) =>
        type.DeclaredAccessibility == Accessibility.Public
        && (type.ContainingType is null || IsVisible(type.ContainingType));

    private static bool IsMadeByCompiler(this ISymbol symbol) =>
        (symbol.IsImplicitlyDeclared && symbol is not IMethodSymbol { MethodKind: MethodKind.DelegateInvoke })
        || symbol.GetAttributes().Any(attribute => attribute.AttributeClass?.Name is "CompilerGeneratedAttribute");

    private static IEnumerable<INamedTypeSymbol> Below(INamespaceOrTypeSymbol parent) =>
        parent
            .GetMembers()
            .OfType<INamespaceOrTypeSymbol>()
            .SelectMany(child => child is INamedTypeSymbol type ? Below(type).Prepend(type) : Below(child));
}
