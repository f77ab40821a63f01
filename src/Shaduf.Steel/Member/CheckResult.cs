using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>What a check of a member, weld or plate came to.</summary>
/// <param name="UtilisationShare">Effect over resistance; holds up to 1. Infinite where the method refuses the section (class 4).</param>
/// <param name="Clause">Standard and clause of the governing condition.</param>
public readonly record struct CheckResult(double UtilisationShare, string Clause)
{
    /// <summary>Whether the check holds.</summary>
    public bool Holds => UtilisationShare <= 1;

    /// <summary>The utilisation; null where the method refuses the section.</summary>
    public double? FiniteShare => double.IsFinite(UtilisationShare) ? UtilisationShare : null;

    /// <summary>The utilisation as a table says it: two decimals, or 'refused', which the clause explains.</summary>
    public string ShareText => FiniteShare is { } share ? Invariant($"{share:0.00}") : "refused";

    /// <summary>The worse of two checks.</summary>
    /// <param name="other">The other check.</param>
    /// <returns>The check with the larger utilisation; this one when both are equal.</returns>
    public CheckResult OrWorse(CheckResult other) => other.UtilisationShare > UtilisationShare ? other : this;

    internal const string Class4Clause =
        "EN 1993-1-1:2005, 5.5.2: class 4, the wall is too thin for these checks; choose a thicker one";

    internal static CheckResult Class4 => new(double.PositiveInfinity, Class4Clause);
}
