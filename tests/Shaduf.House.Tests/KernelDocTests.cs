using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>The checker's way from a number to its clause: what a kernel's doc comment must say.</summary>
public sealed class KernelDocTests
{
    [Fact]
    public void Kernels_state_units_ranges_errors_and_source() =>
        Rule.Holds("docs", House.TradeProjects.SelectMany(project => Undocumented(project.Assembly)));

    [Theory]
    [InlineData("Velocity [m/s], 0 to 10.", 0, 10)]
    [InlineData("Temperature [degC], -60 to 85", -60, 85)]
    [InlineData("Temperature [°C], −60 to +85.5.", -60, 85.5)]
    [InlineData("Head [m], at least 0.", 0, double.PositiveInfinity)]
    [InlineData("Head [m], above 0, at most 1e-3", 0, 1e-3)]
    [InlineData("Head [m], above 0 to 500", 0, 500)]
    [InlineData("Hours [h], 0 to 20 000", 0, 20000)]
    [InlineData("Day of the year, 1 to 366.", 1, 366)]
    [InlineData("Slope, from 3 to 1 downwards [deg], 0 to 90", 0, 90)]
    [InlineData("Head [m], 0 to infinity", 0, double.PositiveInfinity)]
    [InlineData("Seed, any.", double.NegativeInfinity, double.PositiveInfinity)]
    public void A_range_is_read_as_it_is_written(string text, double lowest, double highest)
    {
        var range = DocumentedRange.Read(text);
        Assert.Equal((lowest, highest), (range?.Lowest, range?.Highest));
    }

    [Fact]
    public void A_doc_without_a_range_has_none()
    {
        Assert.False(DocumentedRange.IsStated("Head [m] of the pump"));
        Assert.True(DocumentedRange.IsStated("Backfill [m3], 0 to the volume dug"));
        Assert.Null(DocumentedRange.Read("Backfill [m3], 0 to the volume dug"));
    }

    internal static IEnumerable<Offence> Undocumented(IAssemblySymbol trade) =>
        Kernels.Of(trade).SelectMany(Undocumented);

    private static IEnumerable<Offence> Undocumented(IMethodSymbol kernel)
    {
        var docs = kernel.Docs();
        if (docs.Element("source").OneLine().Length == 0)
        {
            yield return new(kernel.Subject(), "add <source>: document, year, equation or table.");
        }

        if (kernel.Parameters.Any(HoldsNumbers) && docs.Element("exception") is null)
        {
            yield return new(kernel.Subject(), "add <exception cref=...>: what it refuses.");
        }

        if (kernel.ReturnType.IsDouble())
        {
            // A type that speaks for its methods (FrictionFactor) says that there is no unit.
            string[] readings = [.. UnitNames.Readings(kernel), kernel.ContainingType.Name];
            foreach (var problem in UnitProblems(readings, docs.Element("returns").OneLine()))
            {
                yield return new(kernel.Subject(), $"<returns> {problem}");
            }
        }

        foreach (var offence in kernel.Parameters.Where(HoldsNumbers).SelectMany(Undocumented))
        {
            yield return offence;
        }
    }

    private static IEnumerable<Offence> Undocumented(IParameterSymbol parameter)
    {
        var says = parameter.Says();
        if (parameter.Type.SpecialType is not SpecialType.System_Int32)
        {
            foreach (var problem in UnitProblems([parameter.Name], says))
            {
                yield return new(parameter.Subject(), problem);
            }
        }

        if (parameter.Type.IsNumber() && !DocumentedRange.IsStated(says))
        {
            yield return new(
                parameter.Subject(),
                "state its valid range after the unit: '[m], 0 to 10', 'at least 0', 'above 0 to 5' or 'any'."
            );
        }
    }

    private static IEnumerable<string> UnitProblems(string[] names, string says)
    {
        var unit = Regex.Match(says, @"\[([^\]]+)\]");
        if (!unit.Success && !names.Any(UnitNames.IsUnitless))
        {
            yield return "state the unit in brackets: [m3/s].";
        }
        else if (unit.Success && !UnitNames.Agree(names, unit.Groups[1].Value))
        {
            yield return $"says {unit.Value}, but '{names[0]}' ends in another unit: correct the one that is wrong, "
                + "or add the spelling to units.txt.";
        }
    }

    private static bool HoldsNumbers(IParameterSymbol parameter) =>
        parameter.Type.IsNumber()
        || parameter.Type is IArrayTypeSymbol { ElementType.SpecialType: SpecialType.System_Double }
        || parameter.Type is INamedTypeSymbol { TypeArguments: [{ SpecialType: SpecialType.System_Double }] };
}
