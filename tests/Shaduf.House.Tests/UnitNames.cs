using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>A unit that may end a name.</summary>
/// <param name="Ending">Its words at the end of a name.</param>
/// <param name="Spellings">How a doc comment's [unit] may spell it, plain (see <see cref="UnitNames.Plain"/>).</param>
internal sealed record UnitName(IReadOnlyList<string> Ending, IReadOnlyList<string> Spellings);

/// <summary>
/// The names that say a number's unit. A name ends in a unit of units.txt or in one of the words for numbers without a
/// unit (Share; Shares for several). For a method, the words from At, By, For, From or Of onwards are not read (LossMAt, HeadMByHazen), and a
/// type named by one of the words without a unit speaks for its methods (FrictionFactor.Colebrook).
/// </summary>
internal static class UnitNames
{
    private static readonly IReadOnlyList<string> s_unitless =
    [
        "Ratio",
        "Factor",
        "Share",
        "Count",
        "Index",
        "Number",
        "Coefficient",
    ];

    private static readonly IReadOnlyList<string> s_prepositions = ["At", "By", "For", "From", "Of"];

    private static readonly IReadOnlyList<UnitName> s_units =
    [
        .. File.ReadLines(Path.Combine(House.Home, "units.txt"))
            .Where(line => line.Length > 0 && !line.StartsWith('#'))
            .Select(line => line.Split('=', StringSplitOptions.TrimEntries))
            .Select(pair => new UnitName(Words.Of(pair[0]), [.. pair[1].Split('|').Select(Plain)]))
            .OrderByDescending(unit => unit.Ending.Count),
    ];

    public static bool SaysUnit(string name) => IsUnitless(name) || UnitsOf(name).Any();

    public static bool SaysUnit(IMethodSymbol method) =>
        Readings(method).Any(SaysUnit) || IsUnitless(method.ContainingType.Name);

    /// <summary>A method's name as it may be read: whole, and up to a preposition.</summary>
    public static IEnumerable<string> Readings(IMethodSymbol method)
    {
        var words = Words.Of(method.Name);
        var first = words.Skip(1).TakeWhile(word => !s_prepositions.Contains(word));
        return [method.Name, string.Concat(words.Take(1).Concat(first))];
    }

    public static bool IsUnitless(string name) =>
        Words.Of(name) is [.., var last] && s_unitless.Contains(last.TrimEnd('s'));

    /// <summary>The units that a name may be read to end in: headKPa in KPa, and in Pa.</summary>
    public static IEnumerable<UnitName> UnitsOf(string name)
    {
        var words = Words.Of(name);
        return s_units.Where(unit => Words.EndsWith(words, unit.Ending));
    }

    /// <summary>Whether a [unit] spells a unit that one of the readings of a name ends in; true when none ends in any.</summary>
    public static bool Agree(IEnumerable<string> readings, string unit)
    {
        UnitName[] said = [.. readings.SelectMany(name => UnitsOf(name).Take(1))];
        return said.Length == 0 || said.Any(name => name.Spellings.Contains(Plain(unit)));
    }

    /// <summary>A unit without raised digits, dots and blanks, so that 'W/(m²·K)' and 'W/(m2 K)' are one.</summary>
    public static string Plain(string unit) =>
        unit.Replace("⁻", "-", StringComparison.Ordinal)
            .Replace('¹', '1')
            .Replace('²', '2')
            .Replace('³', '3')
            .Replace('⁴', '4')
            .Replace('⁵', '5')
            .Replace('⁶', '6')
            .Replace("°", "deg", StringComparison.Ordinal)
            .Replace("Ω", "ohm", StringComparison.Ordinal)
            .Replace("μ", "µ", StringComparison.Ordinal)
            .Replace("·", "", StringComparison.Ordinal)
            .Replace(" ", "", StringComparison.Ordinal);
}
