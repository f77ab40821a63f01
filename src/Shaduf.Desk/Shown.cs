using System.Globalization;
using static System.FormattableString;

namespace Shaduf.Desk;

/// <summary>Figures as a person reads them.</summary>
internal static class Shown
{
    public static string Water(Digest digest) =>
        Invariant($"{digest.WorstShare * 100:0.0} % of {digest.DemandM3PerDay:0.0} m³/d in the worst month");

    public static string Cost(Digest digest) => Invariant($"{digest.Cost:#,0} {digest.Currency}");

    public static string Findings(Digest digest) =>
        (digest.StopCount, digest.UncheckedCount) switch
        {
            (0, 0) => "no stop, nothing unchecked",
            (0, var open) => Invariant($"{open} unchecked"),
            (var stop, 0) => Invariant($"{stop} stop"),
            var (stop, open) => Invariant($"{stop} stop, {open} unchecked"),
        };

    /// <summary>What the last edit did to water and cost; null when it did nothing to either.</summary>
    public static string? Change(Digest? before, Digest? now)
    {
        if (
            before is null
            || now is null
            || (before.WorstShare, before.DemandM3PerDay, before.Cost) == (now.WorstShare, now.DemandM3PerDay, now.Cost)
        )
        {
            return null;
        }

        var share = (now.WorstShare - before.WorstShare) * 100;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Last change: water {share:+0.0;-0.0;±0.0} points in the worst month, demand {now.DemandM3PerDay - before.DemandM3PerDay:+0.0;-0.0;±0.0} m³/d, cost {now.Cost - before.Cost:+#,0;-#,0;±0} {now.Currency}."
        );
    }
}
