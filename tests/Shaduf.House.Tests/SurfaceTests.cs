using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Shaduf.House.Tests;

/// <summary>What a trade shows is a reviewed text file, so that nothing becomes public unseen.</summary>
public sealed class SurfaceTests
{
    private static readonly SymbolDisplayFormat s_line = new(
        typeQualificationStyle: SymbolDisplayTypeQualificationStyle.NameAndContainingTypes,
        genericsOptions: SymbolDisplayGenericsOptions.IncludeTypeParameters
            | SymbolDisplayGenericsOptions.IncludeTypeConstraints,
        memberOptions: SymbolDisplayMemberOptions.IncludeType
            | SymbolDisplayMemberOptions.IncludeModifiers
            | SymbolDisplayMemberOptions.IncludeParameters
            | SymbolDisplayMemberOptions.IncludeConstantValue,
        parameterOptions: SymbolDisplayParameterOptions.IncludeType
            | SymbolDisplayParameterOptions.IncludeName
            | SymbolDisplayParameterOptions.IncludeDefaultValue
            | SymbolDisplayParameterOptions.IncludeParamsRefOut,
        propertyStyle: SymbolDisplayPropertyStyle.ShowReadWriteDescriptor,
        kindOptions: SymbolDisplayKindOptions.IncludeTypeKeyword,
        miscellaneousOptions: SymbolDisplayMiscellaneousOptions.UseSpecialTypes
            | SymbolDisplayMiscellaneousOptions.IncludeNullableReferenceTypeModifier
    );

    public static TheoryData<string> Trades => [.. House.TradeProjects.Select(project => project.Name)];

    [Theory]
    [MemberData(nameof(Trades))]
    public void Public_surface_is_what_was_accepted(string trade)
    {
        var project = House.TradeProjects.Single(project => project.Name == trade);
        Approved.Same(
            Path.Combine(House.Home, "Surface", project.AssemblyName + ".approved.txt"),
            Surface(project.Assembly)
        );
    }

    /// <summary>Every rule here looks at the built assemblies: they must be those of the source.</summary>
    [Fact]
    public void Built_types_are_those_of_the_source() =>
        Rule.Holds("surface", House.Projects.SelectMany(project => Stale(project.Source, project.Assembly)));

    internal static string Surface(IAssemblySymbol assembly) =>
        $"{assembly.Name}, public surface\n"
        + string.Concat(
            assembly
                .PublicTypes()
                .OrderBy(type => type.ToDisplayString(), StringComparer.Ordinal)
                .Select(type => $"\n{type.ToDisplayString(s_line)}\n{string.Concat(Members(type))}")
        );

    internal static IEnumerable<Offence> Stale(IEnumerable<SyntaxTree> source, IAssemblySymbol built)
    {
        var written = source
            .SelectMany(tree => tree.GetRoot().DescendantNodes())
            .OfType<BaseTypeDeclarationSyntax>()
            .Where(type =>
                type.Parent is BaseNamespaceDeclarationSyntax && type.Modifiers.Any(SyntaxKind.PublicKeyword)
            )
            .Select(type => type.Identifier.Text);
        return written
            .Except(built.PublicTypes().Select(type => type.Name))
            .Select(name => new Offence(
                $"{built.Name} {name}",
                "is in the source but not in the build: build, then test."
            ));
    }

    private static IEnumerable<string> Members(INamedTypeSymbol type) =>
        type.PublicMembers()
            .Where(member => type.TypeKind != TypeKind.Enum || member is IFieldSymbol)
            .Select(member => $"    {member.ToDisplayString(s_line)}\n")
            .Order(StringComparer.Ordinal);
}
