using System.Globalization;
using static System.FormattableString;

namespace Shaduf.Desk;

/// <summary>Figures as a person reads them.</summary>
internal static class Shown
{
    /// <summary>How the findings are shown.</summary>
    public static string Tone(Digest digest) =>
        digest.StopCount > 0 ? "stop"
        : digest.UncheckedCount > 0 ? "open"
        : "holds";

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
        if (before is null || now is null)
        {
            return null;
        }

        var share = (now.WorstShare - before.WorstShare) * 100;
        var (demand, cost) = (now.DemandM3PerDay - before.DemandM3PerDay, now.Cost - before.Cost);
        if (Math.Abs(share) < 0.05 && Math.Abs(demand) < 0.05 && Math.Abs(cost) < 0.5m)
        {
            return null;
        }

        return string.Create(
            CultureInfo.InvariantCulture,
            $"Last change: water {share:+0.0;-0.0;±0.0} points in the worst month, demand {demand:+0.0;-0.0;±0.0} m³/d, cost {cost:+#,0;-#,0;±0} {now.Currency}."
        );
    }
}
