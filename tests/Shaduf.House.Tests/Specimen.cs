using System.Reflection;
using System.Text;
using System.Xml.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Shaduf.House.Tests;

/// <summary>A small trade compiled on the spot, with its documentation file, on which a rule is tried.</summary>
internal sealed record Specimen(IAssemblySymbol Symbols, Assembly Loaded)
{
    private static int s_count;

    public static Specimen Compile(string source)
    {
        var name = $"Shaduf.Specimen{Interlocked.Increment(ref s_count)}";
        using var program = new MemoryStream();
        using var docs = new MemoryStream();
        var built = CSharpCompilation
            .Create(
                name,
                [Parse($"using System;\nusing System.Collections.Generic;\nnamespace {name};\n{source}")],
                House.References,
                new(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable)
            )
            .Emit(program, xmlDocumentationStream: docs);
        Assert.True(built.Success, string.Join('\n', built.Diagnostics));
        var written = XDocument.Parse(Encoding.UTF8.GetString(docs.ToArray()), LoadOptions.PreserveWhitespace);
        var reference = MetadataReference.CreateFromImage(
            program.ToArray(),
            documentation: new BuiltDocs(() => written)
        );
        var seen = House.View(House.References.Append(reference));
        return new((IAssemblySymbol)seen.GetAssemblyOrModuleSymbol(reference)!, Assembly.Load(program.ToArray()));
    }

    public static SyntaxTree Parse(string source) =>
        CSharpSyntaxTree.ParseText(source, new(documentationMode: DocumentationMode.Diagnose), "Specimen.cs");
}
