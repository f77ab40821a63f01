using Shaduf.Station;
using static Shaduf.Pack.DesignEntries;

namespace Shaduf.Pack;

/// <summary>One reading held against its promise.</summary>
/// <param name="Kind">What it is of.</param>
/// <param name="Where">Which string, or which run.</param>
/// <param name="Measured">The reading.</param>
/// <param name="Promised">What it should be in its conditions.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="OffShare">How much it differs, as a share of the promise.</param>
/// <param name="ToleranceShare">Share by which it may differ.</param>
/// <param name="UncertainShare">How uncertain the comparison is.</param>
/// <param name="Verdict">meets, uncertain or misses.</param>
public sealed record ReadingEntry(
    string Kind,
    string Where,
    double Measured,
    double Promised,
    string Unit,
    double OffShare,
    double ToleranceShare,
    double UncertainShare,
    string Verdict
);

/// <summary>A likely cause of what missed.</summary>
public sealed record CauseEntry(string Id, string Says, string Look, int ExplainedCount, int AgainstCount);

/// <summary>The proof of the finished station.</summary>
/// <param name="IsAccepted">Whether every kind was read and none misses.</param>
/// <param name="Readings">The readings.</param>
/// <param name="Causes">Likely causes, the likeliest first.</param>
/// <param name="NotTested">Kinds of reading that nobody took.</param>
public sealed record ProofEntry(
    bool IsAccepted,
    IReadOnlyList<ReadingEntry> Readings,
    IReadOnlyList<CauseEntry> Causes,
    IReadOnlyList<string> NotTested
)
{
    internal static ProofEntry? Of(Proof? proof) =>
        proof is null
            ? null
            : new(
                proof.IsAccepted,
                [
                    .. proof.Items.Select(item => new ReadingEntry(
                        Proof.KeyOf(item.Kind),
                        item.Where,
                        R(item.Measured),
                        R(item.Promised),
                        item.Unit,
                        R(item.OffShare),
                        R(item.ToleranceShare),
                        R(item.UncertainShare),
                        item.Verdict.ToString().ToLowerInvariant()
                    )),
                ],
                [
                    .. proof.Causes.Select(cause => new CauseEntry(
                        cause.Id,
                        cause.Says,
                        cause.Look,
                        cause.ExplainedCount,
                        cause.AgainstCount
                    )),
                ],
                [.. proof.NotTested.Select(Proof.KeyOf)]
            );
}
