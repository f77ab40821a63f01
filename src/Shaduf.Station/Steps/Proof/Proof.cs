using Shaduf.Power;
using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What was measured, held against what was promised for the conditions of the day.</summary>
/// <param name="Measured">The readings.</param>
/// <param name="Items">Each reading with its promise.</param>
/// <param name="Causes">Likely causes of what missed, the likeliest first.</param>
/// <param name="NotTested">Kinds of reading that nobody took.</param>
public sealed record Proof(
    MeasuredBrief Measured,
    IReadOnlyList<ProofItem> Items,
    IReadOnlyList<ProofCause> Causes,
    IReadOnlyList<ProofKind> NotTested
)
{
    /// <summary>Numbers of strings that were read and that the station does not have.</summary>
    public IReadOnlyList<int> StrayStrings { get; init; } = [];

    /// <summary>Whether no reading misses and every kind was read.</summary>
    public bool IsAccepted => NotTested.Count == 0 && Items.All(item => item.Verdict != ProofVerdict.Misses);

    /// <summary>Holds the readings of a brief against its design.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The proof; null when nothing was measured.</returns>
    public static Proof? Of(Design design)
    {
        if (design.Brief.Measured is not { } measured)
        {
            return null;
        }

        var promise = new Promise(design, measured);
        ProofItem[] items =
        [
            .. measured.Strings.Where(each => each.Number <= design.Choice.StringCount).SelectMany(promise.OfString),
            .. promise.OfEarth(),
            .. measured.Runs.SelectMany(promise.OfRun),
            .. promise.OfTank(),
        ];
        var kinds = Enum.GetValues<ProofKind>()
            .Where(kind => kind != ProofKind.Drawdown || design.Source.Drawdown is not null)
            .Where(kind => kind != ProofKind.ArrayPower || promise.IsArrayTheLimit);
        return new(
            measured,
            items,
            ProofCause.Of(items),
            [.. kinds.Where(kind => items.All(item => item.Kind != kind))]
        )
        {
            StrayStrings =
            [
                .. measured.Strings.Select(each => each.Number).Where(number => number > design.Choice.StringCount),
            ],
        };
    }

    /// <summary>Name of a kind in the data: 'open-voltage'.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>Its name.</returns>
    public static string KeyOf(ProofKind kind) =>
        string.Concat(
            kind.ToString()
                .Select(
                    (each, i) => char.IsUpper(each) ? $"{(i > 0 ? "-" : "")}{char.ToLowerInvariant(each)}" : $"{each}"
                )
        );

    /// <summary>Names of the kinds in plain words.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>Its name.</returns>
    public static string NameOf(ProofKind kind) =>
        kind switch
        {
            ProofKind.OpenVoltage => "open voltage",
            ProofKind.ShortCurrent => "short-circuit current",
            ProofKind.Insulation => "insulation of the string",
            ProofKind.Earth => "earth resistance",
            ProofKind.MotorInsulation => "insulation of motor and cable",
            ProofKind.ArrayPower => "power of the array",
            ProofKind.Flow => "flow at the measured power",
            ProofKind.Drawdown => "fall of the level at the measured flow",
            ProofKind.Gauge => "gauge at the start of the main",
            _ => "time to fill the tank by that volume",
        };

    /// <summary>The findings.</summary>
    /// <returns>One for each kind that was read, and one for what was not.</returns>
    public IEnumerable<Finding> Findings()
    {
        foreach (var kind in Items.GroupBy(item => item.Kind))
        {
            var worst = kind.MaxBy(item => (item.Verdict, Math.Abs(item.OffShare)))!;
            var why = worst.Verdict == ProofVerdict.Misses && Causes.Count > 0 ? $"; look first: {Causes[0].Says}" : "";
            yield return new(
                $"proof/{KeyOf(kind.Key)}",
                worst.Status,
                Invariant(
                    $"{NameOf(kind.Key)}, {worst.Where}: measured against promised, {worst.OffShare * 100:+0.0;-0.0;0.0} % off; {worst.ToleranceShare * 100:0} % are accepted, {worst.UncertainShare * 100:0.0} % uncertain{why}"
                ),
                worst.Measured,
                worst.Promised,
                worst.Unit,
                "test on the finished station; a test in the field proves 'consistent with', no more"
            );
        }

        if (StrayStrings.Count > 0)
        {
            yield return new(
                "proof/strings",
                FindingStatus.Look,
                $"read, but the station has no such strings, so not judged: {string.Join(", ", StrayStrings)}",
                StrayStrings.Count,
                0,
                "strings",
                ""
            );
        }

        if (NotTested.Count > 0)
        {
            yield return new(
                "proof/not-tested",
                FindingStatus.Look,
                $"not measured yet: {string.Join(", ", NotTested.Select(NameOf))}",
                NotTested.Count,
                0,
                "readings",
                ""
            );
        }
    }
}
