using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Shaduf.House.Tests;

/// <summary>The size budget of src/: small files, short bodies, few parameters.</summary>
public sealed class SizeTests(ITestOutputHelper output)
{
    private const int Parameters = 6;

    private static readonly Budget s_files = new("lines in a file", Median: 120, P90: 300, Listed: 300, Most: 500);
    private static readonly Budget s_bodies = new(
        "lines in a body",
        Median: 25,
        P90: 25,
        Listed: 60,
        Most: int.MaxValue
    );

    private static IEnumerable<SyntaxTree> Source => House.Projects.SelectMany(project => project.Source);

    [Fact]
    public void Files_and_bodies_stay_small()
    {
        Size[] files = [.. Source.Select(FileSize)];
        Size[] bodies = [.. Source.SelectMany(BodySizes)];
        output.WriteLine(s_files.Worst(files));
        output.WriteLine(s_bodies.Worst(bodies));
        Rule.Holds(
            "size",
            s_files.Broken(files).Concat(s_bodies.Broken(bodies)).Concat(Source.SelectMany(LongParameterLists))
        );
        Assert.True(s_files.Middle(files) is "", s_files.Middle(files));
        Assert.True(s_bodies.Middle(bodies) is "", s_bodies.Middle(bodies));
    }

    internal static Size FileSize(SyntaxTree tree) =>
        new(tree.FilePath, tree.GetText().Lines.Count(line => line.Span.End < tree.Length || line.Span.Length > 0));

    internal static IEnumerable<Size> BodySizes(SyntaxTree tree) =>
        from node in tree.GetRoot().DescendantNodes()
        let lines = node switch
        {
            BaseMethodDeclarationSyntax method => Lines(method.Body, method.ExpressionBody),
            AccessorDeclarationSyntax accessor => Lines(accessor.Body, accessor.ExpressionBody),
            PropertyDeclarationSyntax property => Lines(null, property.ExpressionBody),
            CompilationUnitSyntax unit => unit.Members.OfType<GlobalStatementSyntax>().Sum(Height),
            _ => 0,
        }
        where lines > 0
        select new Size(Name(node), lines);

    internal static IEnumerable<Offence> LongParameterLists(SyntaxTree tree) =>
        from list in tree.GetRoot().DescendantNodes().OfType<ParameterListSyntax>()
        where list.Parent is not RecordDeclarationSyntax && list.Parameters.Count > Parameters
        select new Offence(
            Name(list.Parent!),
            $"has {list.Parameters.Count} parameters, at most {Parameters} are accepted: a record is missing."
        );

    // The lines between the braces, or those of the expression.
    private static int Lines(BlockSyntax? block, ArrowExpressionClauseSyntax? expression) =>
        block is not null ? Math.Max(Height(block) - 2, 1)
        : expression is not null ? Height(expression)
        : 0;

    private static int Height(SyntaxNode node)
    {
        var span = node.GetLocation().GetLineSpan();
        return span.EndLinePosition.Line - span.StartLinePosition.Line + 1;
    }

    private static string Name(SyntaxNode node)
    {
        var name = node.AncestorsAndSelf()
            .Select(above =>
                above switch
                {
                    MethodDeclarationSyntax method => method.Identifier.Text,
                    PropertyDeclarationSyntax property => property.Identifier.Text,
                    OperatorDeclarationSyntax operation => "operator" + operation.OperatorToken.Text,
                    LocalFunctionStatementSyntax function => function.Identifier.Text,
                    BaseTypeDeclarationSyntax type => type.Identifier.Text,
                    _ => null,
                }
            )
            .FirstOrDefault(found => found is not null);
        return $"{node.SyntaxTree.FilePath} {name}".TrimEnd();
    }

    internal sealed record Size(string Subject, int Lines);

    /// <summary>How big the median, the nine tenths, an unlisted one and any one may be.</summary>
    internal sealed record Budget(string Of, int Median, int P90, int Listed, int Most)
    {
        public IEnumerable<Offence> Broken(IEnumerable<Size> sizes) =>
            sizes
                .Where(size => size.Lines > Listed)
                .Select(size => new Offence(
                    size.Lines > Most ? $"{size.Subject} (no exception)" : size.Subject,
                    $"has {size.Lines} {Of}, accepted: {Listed}, or more with a reason. Split it by concept."
                ));

        public string Middle(IReadOnlyList<Size> sizes) =>
            At(sizes, 0.5) > Median || At(sizes, 0.9) > P90
                ? $"{Of}: median {At(sizes, 0.5)} (accepted {Median}), nine tenths {At(sizes, 0.9)} (accepted {P90}). "
                    + $"Split the worst: {Worst(sizes)}"
                : "";

        public string Worst(IEnumerable<Size> sizes) =>
            $"The ten with most {Of}:\n"
            + string.Join(
                '\n',
                sizes.OrderByDescending(size => size.Lines).Take(10).Select(size => $"{size.Lines, 5} {size.Subject}")
            );

        private static int At(IReadOnlyList<Size> sizes, double share) =>
            sizes.Select(size => size.Lines).Order().ElementAt((int)Math.Ceiling(share * sizes.Count) - 1);
    }
}
