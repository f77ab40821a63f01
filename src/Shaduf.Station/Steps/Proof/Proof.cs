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
    private const int MostNamed = 12;

    /// <summary>Numbers of strings that were read and that the station does not have.</summary>
    public IReadOnlyList<int> StrayStrings { get; init; } = [];

    /// <summary>
    /// The method's holds with the ticks that the site book brought; empty when it brought none and they are signed on paper.
    /// </summary>
    public IReadOnlyList<MethodStep> Holds { get; init; } = [];

    /// <summary>Ticks of points that this station's lists do not have.</summary>
    public IReadOnlyList<Tick> StrayTicks { get; init; } = [];

    /// <summary>Holds that nobody ticked; the last is the certificate itself and does not count.</summary>
    public IReadOnlyList<MethodStep> OpenHolds => [.. Holds.SkipLast(1).Where(step => step.Signed is null)];

    /// <summary>Whether no reading misses, every kind was read and no hold is open.</summary>
    public bool IsAccepted =>
        NotTested.Count == 0 && OpenHolds.Count == 0 && Items.All(item => item.Verdict != ProofVerdict.Misses);

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
        return new Proof(
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
        }.WithTicks(design);
    }

    private Proof WithTicks(Design design)
    {
        if (Measured.Ticked.Count == 0)
        {
            return this;
        }

        var method = MethodStatement.Of(design);
        var known = CheckList
            .Of(design, method)
            .SelectMany(list => list.Points)
            .Select(point => point.Name)
            .ToHashSet();
        return this with
        {
            Holds = [.. method.Steps.Where(step => step.Hold is not null)],
            StrayTicks = [.. Measured.Ticked.Where(tick => !known.Contains(tick.Point))],
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

        (string Id, string Says, IReadOnlyList<string> Which, string Unit)[] open =
        [
            (
                "proof/strings",
                "read, but the station has no such strings, so not judged",
                [.. StrayStrings.Select(number => Invariant($"{number}"))],
                "strings"
            ),
            ("proof/not-tested", "not measured yet", [.. NotTested.Select(NameOf)], "readings"),
            (
                "proof/holds",
                "holds that nobody ticked in the site book",
                [.. OpenHolds.Select(step => step.Title)],
                "holds"
            ),
            (
                "proof/ticks",
                "ticked, but no point of this station's lists: is the file of another station or issue?",
                [.. StrayTicks.Select(tick => tick.Point).Take(MostNamed)],
                "ticks"
            ),
        ];
        foreach (var (id, says, which, unit) in open.Where(each => each.Which.Count > 0))
        {
            yield return new(id, FindingStatus.Look, $"{says}: {string.Join(", ", which)}", which.Count, 0, unit, "");
        }
    }
}
