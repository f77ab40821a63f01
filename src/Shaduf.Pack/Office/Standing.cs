using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>How a design stands, for the first page of each book and paper: all that stops or is unchecked; and what missed in its tests.</summary>
internal static class Standing
{
    private const int MostNamed = 14;

    /// <summary>The notices.</summary>
    /// <param name="design">The design.</param>
    /// <param name="isForClient">Whether names of findings are left out.</param>
    /// <returns>The notices; none when nothing stops or is unchecked.</returns>
    public static IEnumerable<Block> Notices(Design design, bool isForClient)
    {
        var stops = With(design, FindingStatus.Stop);
        if (stops.Count > 0)
        {
            yield return new Notice(
                FindingStatus.Stop,
                Invariant($"{stops.Count} checks stop this design: nothing may be built from it as it stands.")
                    + (isForClient ? " The engineer's book tells which." : Named(stops))
            );
        }

        var open = With(design, FindingStatus.Unchecked);
        if (open.Count > 0)
        {
            yield return new Notice(
                FindingStatus.Unchecked,
                isForClient
                    ? Invariant(
                        $"{open.Count} points are not checked yet, among them what an engineer must see before anything is cut or dug."
                    )
                    : Invariant($"{open.Count} points are not checked.") + Named(open)
            );
        }
    }

    /// <summary>What the tests of the finished station came to, for the books and the certificate.</summary>
    /// <param name="design">The design.</param>
    /// <returns>A notice when a reading misses its promise; else none.</returns>
    public static IEnumerable<Block> Measured(Design design)
    {
        if (design.Proof is { } proof && proof.Items.Any(item => item.Verdict == ProofVerdict.Misses))
        {
            yield return new Notice(
                FindingStatus.Look,
                Invariant(
                    $"Measured on site: {proof.Items.Count(item => item.Verdict == ProofVerdict.Misses)} of {proof.Items.Count} readings miss the promise. Look first: {proof.Causes.Select(cause => cause.Says).FirstOrDefault("no cause of the table explains it")}."
                )
            )
            {
                Word = "NOT ACCEPTED",
            };
        }
    }

    private static List<Finding> With(Design design, FindingStatus status) =>
        [.. design.Findings.Where(finding => finding.Status == status)];

    private static string Named(List<Finding> findings)
    {
        var more = findings.Count > MostNamed ? Invariant($" and {findings.Count - MostNamed} more") : "";
        return $" {string.Join(", ", findings.Take(MostNamed).Select(finding => finding.Id))}{more}: see the engineer's book.";
    }
}
