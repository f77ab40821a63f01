using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>All findings of a design, none with a status better than its worst assumption allows.</summary>
internal static class FindingsBook
{
    /// <summary>Names the assumptions that each finding leans on, and lowers its status to what they allow.</summary>
    /// <param name="found">The findings as the steps made them.</param>
    /// <param name="assumptions">What was assumed.</param>
    /// <returns>The findings, worst first, then by name.</returns>
    public static IReadOnlyList<Finding> Settle(IEnumerable<Finding> found, IReadOnlyList<Assumption> assumptions) =>
        [
            .. found
                .Select(finding => Lowered(finding, [.. assumptions.Where(each => each.IsLeanedOnBy(finding.Id))]))
                .OrderByDescending(finding => finding.Status)
                .ThenBy(finding => finding.Id, StringComparer.Ordinal),
        ];

    private static Finding Lowered(Finding finding, IReadOnlyList<Assumption> leans)
    {
        var worst = leans.Select(each => each.Best).Append(finding.Status).Max();
        return finding with { Status = worst, LeansOn = [.. leans.Select(each => each.Id)] };
    }
}
