using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>Values cannot go wrong behind a caller's back, and names say what a thing is.</summary>
public sealed class TypeTests
{
    private static readonly IReadOnlyList<string> s_refusedEndings =
    [
        "Service",
        "Manager",
        "Helper",
        "Helpers",
        "Utils",
        "Util",
        "Processor",
        "Engine",
    ];

    private static IEnumerable<IAssemblySymbol> Assemblies => House.Projects.Select(project => project.Assembly);

    [Fact]
    public void Types_are_named_after_the_work_and_cannot_change() => Rule.Holds("types", Assemblies.SelectMany(Loose));

    internal static IEnumerable<Offence> Loose(IAssemblySymbol assembly) =>
        [
            .. RefusedNames(assembly),
            .. MutableStatics(assembly),
            .. PublicSetters(assembly),
            .. OpenTypes(assembly),
            .. LonelyInterfaces(assembly),
        ];

    private static IEnumerable<Offence> RefusedNames(IAssemblySymbol assembly) =>
        from type in assembly.Types()
        from ending in s_refusedEndings
        where type.Name.EndsWith(ending, StringComparison.Ordinal)
        select new Offence(type.Subject(), $"ends in {ending}: name it after the work, in the trade's own word.");

    private static IEnumerable<Offence> MutableStatics(IAssemblySymbol assembly) =>
        from type in assembly.Types()
        from field in type.GetMembers().OfType<IFieldSymbol>()
        where field is { IsStatic: true, IsConst: false } && (!field.IsReadOnly || IsMutableCollection(field.Type))
        select new Offence(
            field.Subject(),
            "is static and can change: make it const, or readonly and of a read-only type (IReadOnlyList, FrozenDictionary)."
        );

    private static IEnumerable<Offence> PublicSetters(IAssemblySymbol assembly) =>
        from type in assembly.PublicTypes()
        from property in type.GetMembers().OfType<IPropertySymbol>()
        where property.SetMethod is { IsInitOnly: false, DeclaredAccessibility: Accessibility.Public }
        select new Offence(property.Subject(), "has a public setter: use init, or a record.");

    private static IEnumerable<Offence> OpenTypes(IAssemblySymbol assembly) =>
        assembly
            .PublicTypes()
            .Select(type =>
                type switch
                {
                    { TypeKind: TypeKind.Class, IsSealed: false, IsStatic: false }
                        when !IsException(type) && !IsSetOfCases(type) => new Offence(
                        type.Subject(),
                        "is open to inheritance: make it sealed or static, or an abstract record with sealed cases beside it."
                    ),
                    { TypeKind: TypeKind.Struct, IsReadOnly: false } => new(
                        type.Subject(),
                        "is a struct that can change: make it readonly."
                    ),
                    _ => null,
                }
            )
            .OfType<Offence>();

    private static IEnumerable<Offence> LonelyInterfaces(IAssemblySymbol assembly) =>
        from type in assembly.Types()
        where type.TypeKind == TypeKind.Interface
        let implementations = Assemblies
            .Append(assembly)
            .Distinct(SymbolEqualityComparer.Default)
            .Cast<IAssemblySymbol>()
            .SelectMany(Symbols.Types)
            .Count(other => other.AllInterfaces.Contains(type, SymbolEqualityComparer.Default))
        where implementations < 2
        select new Offence(
            type.Subject(),
            $"is an interface with {implementations} implementation(s): use the type itself, or pass the function."
        );

    private static bool IsException(ITypeSymbol type) =>
        type.BaseType is { } parent && (parent.Name == nameof(Exception) || IsException(parent));

    // A closed set of cases: an abstract record and, in the same assembly, the sealed records that are its cases.
    private static bool IsSetOfCases(INamedTypeSymbol type)
    {
        INamedTypeSymbol[] cases =
        [
            .. type
                .ContainingAssembly.Types()
                .Where(other => SymbolEqualityComparer.Default.Equals(other.BaseType, type)),
        ];
        return type is { IsAbstract: true, IsRecord: true } && cases.Length > 1 && cases.All(one => one.IsSealed);
    }

    private static bool IsMutableCollection(ITypeSymbol type) =>
        type.TypeKind == TypeKind.Class
        && type.ContainingNamespace?.ToDisplayString()
            is "System.Collections.Generic"
                or "System.Collections.Concurrent";
}
