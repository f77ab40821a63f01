using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>Arrows of the house: who may reference whom.</summary>
public sealed class ReferenceTests
{
    [Fact]
    public void Projects_reference_what_the_table_says() =>
        Rule.Holds("references", House.Projects.SelectMany(project => Arrows(project).Concat(Uses(project))));

    /// <summary>The table: what a project may reference; null for a project that is not in the house.</summary>
    internal static IReadOnlyList<string>? Allowed(string project) =>
        project switch
        {
            "Working" or "Shape" => [],
            "Parts" => ["Working", "Shape"],
            "Station" => [.. House.Floor, .. House.Trades],
            "Pack" or "Store" => ["Station"],
            "Cli" => ["Pack"],
            "Desk" => ["Pack", "Store"],
            _ when House.Trades.Contains(project) => House.Floor,
            _ => null,
        };

    internal static IEnumerable<Offence> Arrows(Project project)
    {
        if (Allowed(project.Name) is not { } allowed)
        {
            yield return new(
                project.Name,
                "is not in the house: add it to the table in ReferenceTests.cs and to CONTRIBUTING.md, with a decision."
            );
            yield break;
        }

        foreach (var extra in project.References.Except(allowed))
        {
            yield return new(
                project.Name,
                $"must not reference {extra}: pass a number or a record through Station instead."
            );
        }

        // A floor project may be left out where another reference brings it.
        var brought = project.References.SelectMany(Reach).Intersect(House.Floor);
        var built = House.Projects.Select(other => other.Name);
        foreach (var missing in allowed.Intersect(built).Except(project.References).Except(brought))
        {
            yield return new(project.Name, $"must reference {missing}: add the ProjectReference.");
        }
    }

    private static IEnumerable<string> Reach(string project) =>
        (Allowed(project) ?? []).SelectMany(Reach).Append(project);

    private static IEnumerable<Offence> Uses(Project project) =>
        project
            .Assembly.Modules.SelectMany(module => module.ReferencedAssemblies)
            .Where(used => used.Name.StartsWith("Shaduf.", StringComparison.Ordinal))
            .Select(used => used.Name["Shaduf.".Length..])
            .Except(Reach(project.Name))
            .Select(used => new Offence(project.Name, $"uses {used}, which the table does not allow."));
}
