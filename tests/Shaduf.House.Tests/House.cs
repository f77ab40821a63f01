using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Shaduf.House.Tests;

/// <summary>The repository as the rules see it: its projects, their source and their built public types.</summary>
internal static class House
{
    public static IReadOnlyList<string> Floor { get; } = ["Working", "Shape", "Parts"];

    /// <summary>All trades of the design; a trade joins the house when its project does.</summary>
    public static IReadOnlyList<string> Trades { get; } =
    ["Sun", "Water", "Power", "Steel", "Ground", "Workshop", "Money", "Programme"];

    public static string Root { get; } = FindRoot();

    public static string Home { get; } = Path.Combine(Root, "tests", "Shaduf.House.Tests");

    public static IReadOnlyList<Project> Projects { get; } =
    [
        .. Directory
            .EnumerateFiles(Path.Combine(Root, "src"), "*.csproj", SearchOption.AllDirectories)
            .Order(StringComparer.Ordinal)
            .Select(Project.Read),
    ];

    public static IEnumerable<Project> FloorProjects => Projects.Where(project => Floor.Contains(project.Name));

    public static IEnumerable<Project> TradeProjects => Projects.Where(project => Trades.Contains(project.Name));

    /// <summary>What the projects and the rules' own specimens are compiled against.</summary>
    public static IReadOnlyList<MetadataReference> References { get; } =
    [
        .. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!)
            .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .Select(path => MetadataReference.CreateFromFile(path, documentation: BuiltDocs.Beside(path))),
    ];

    public static CSharpCompilation Built { get; } = View(References);

    /// <summary>The compiler's view of built assemblies, what is private in them too.</summary>
    public static CSharpCompilation View(IEnumerable<MetadataReference> references) =>
        CSharpCompilation.Create(
            "view",
            references: references,
            options: new(OutputKind.DynamicallyLinkedLibrary, metadataImportOptions: MetadataImportOptions.All)
        );

    /// <summary>A path from the root, with forward slashes, as the rules' messages and lists write it.</summary>
    public static string Relative(string path) => Path.GetRelativePath(Root, path).Replace('\\', '/');

    /// <summary>Files below a folder that a person wrote: no build output, no packages, no written migrations, nothing hidden but .ci.</summary>
    public static IEnumerable<string> Files(string folder, string pattern)
    {
        var below = Directory
            .EnumerateDirectories(folder)
            .Where(child =>
                Path.GetFileName(child) is var name
                && name
                    is not ("bin" or "obj" or "out" or "artifacts" or "node_modules" or "TestResults" or "Migrations")
                && !name.StartsWith("BenchmarkDotNet", StringComparison.Ordinal)
                && (!name.StartsWith('.') || name is ".ci" or ".github")
            )
            .SelectMany(child => Files(child, pattern));
        return Directory
            .EnumerateFiles(folder, pattern)
            .Where(path => Path.GetFileName(path) is var name && name != ".git" && !name.Contains(".received."))
            .Concat(below)
            .Order(StringComparer.Ordinal);
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Shaduf.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName
            ?? throw new DirectoryNotFoundException("Run the house tests from a build inside the repository.");
    }
}
