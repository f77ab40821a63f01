using System.Xml.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Shaduf.House.Tests;

/// <summary>One project below src/, as its project file and its folder state it.</summary>
internal sealed record Project(string Name, string Folder, string AssemblyName, IReadOnlyList<string> References)
{
    private readonly Lazy<IAssemblySymbol> _symbols = new(() => Symbols(AssemblyName));

    public IAssemblySymbol Assembly => _symbols.Value;

    /// <summary>Its C# files, parsed.</summary>
    public IEnumerable<SyntaxTree> Source =>
        House
            .Files(Folder, "*.cs")
            .Select(path => CSharpSyntaxTree.ParseText(File.ReadAllText(path), path: House.Relative(path)));

    public static Project Read(string path)
    {
        var file = XDocument.Load(path);
        return new(
            ShortName(path),
            Path.GetDirectoryName(path)!,
            file.Descendants("AssemblyName").SingleOrDefault()?.Value ?? Path.GetFileNameWithoutExtension(path),
            [
                .. file.Descendants("ProjectReference")
                    .Select(reference => ShortName(reference.Attribute("Include")!.Value.Replace('\\', '/'))),
            ]
        );
    }

    private static string ShortName(string path) =>
        Path.GetFileNameWithoutExtension(path) is var name && name.StartsWith("Shaduf.", StringComparison.Ordinal)
            ? name["Shaduf.".Length..]
            : name;

    private static IAssemblySymbol Symbols(string assemblyName) =>
        House.Built.SourceModule.ReferencedAssemblySymbols.SingleOrDefault(assembly => assembly.Name == assemblyName)
        ?? throw new InvalidOperationException(
            $"{assemblyName} is not built beside the house tests: reference its project from Shaduf.House.Tests.csproj."
        );
}
