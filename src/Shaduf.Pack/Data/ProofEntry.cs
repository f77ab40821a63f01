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

/// <summary>A hold of the method with its tick of the site book.</summary>
/// <param name="Point">The step's key.</param>
/// <param name="Hold">What is looked at before going on.</param>
/// <param name="At">When it was ticked; null when it is open or the time is not told.</param>
/// <param name="By">Who ticked it; empty when not told.</param>
/// <param name="IsTicked">Whether it was ticked.</param>
public sealed record HoldEntry(string Point, string Hold, DateTime? At, string By, bool IsTicked);

/// <summary>The proof of the finished station.</summary>
/// <param name="IsAccepted">Whether every kind was read and none misses.</param>
/// <param name="Readings">The readings.</param>
/// <param name="Causes">Likely causes, the likeliest first.</param>
/// <param name="NotTested">Kinds of reading that nobody took.</param>
/// <param name="Holds">Holds with their ticks; none when the site book's file is not read.</param>
public sealed record ProofEntry(
    bool IsAccepted,
    IReadOnlyList<ReadingEntry> Readings,
    IReadOnlyList<CauseEntry> Causes,
    IReadOnlyList<string> NotTested,
    IReadOnlyList<HoldEntry> Holds
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
                [.. proof.NotTested.Select(Proof.KeyOf)],
                [
                    .. proof.Holds.Select(step => new HoldEntry(
                        step.Key,
                        step.Hold!,
                        step.Signed?.At,
                        step.Signed?.By ?? "",
                        step.Signed is not null
                    )),
                ]
            );
}
