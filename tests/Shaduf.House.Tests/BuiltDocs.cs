using System.Globalization;
using System.Xml.Linq;
using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>Hands the compiler the XML documentation that was built with an assembly.</summary>
internal sealed class BuiltDocs(Func<XDocument> load) : DocumentationProvider
{
    private readonly Lazy<Dictionary<string, string>> _members = new(() =>
        load()
            .Descendants("member")
            .ToDictionary(member => member.Attribute("name")!.Value, member => member.ToString())
    );

    /// <summary>The documentation file beside an assembly; a package's own assembly needs none.</summary>
    public static DocumentationProvider Beside(string assemblyPath) =>
        Path.GetFileName(assemblyPath).StartsWith("shaduf", StringComparison.OrdinalIgnoreCase)
            ? new BuiltDocs(() =>
                XDocument.Load(Path.ChangeExtension(assemblyPath, ".xml"), LoadOptions.PreserveWhitespace)
            )
            : Default;

    protected override string? GetDocumentationForSymbol(
        string documentationMemberID,
        CultureInfo preferredCulture,
        CancellationToken cancellationToken = default
    ) => _members.Value.GetValueOrDefault(documentationMemberID);

    public override bool Equals(object? obj) => ReferenceEquals(this, obj);

    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}
