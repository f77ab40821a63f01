namespace Shaduf.Station;

/// <summary>The share of the demand that is met, over the worst month or the year, as the brief asks.</summary>
internal static class Reliability
{
    // Nearer to the whole demand than this is the whole demand: the sums of a year are no more exact.
    private const double Whole = 1 - 1e-9;

    /// <summary>Share of the demand met by what was delivered.</summary>
    /// <param name="span">Worst month or year.</param>
    /// <param name="demandM3">Water asked for by month [m³].</param>
    /// <param name="deliveredM3">Water delivered by month [m³].</param>
    /// <returns>Share, 0 to 1.</returns>
    public static double Share(TargetSpan span, ReadOnlySpan<double> demandM3, ReadOnlySpan<double> deliveredM3) =>
        Bound(span, demandM3, deliveredM3, 0);

    /// <summary>Share of the demand met by a year run.</summary>
    public static double Share(TargetSpan span, YearRun run) =>
        Share(span, run.DemandM3.AsSpan(), run.DeliveredM3.AsSpan());

    /// <summary>
    /// Largest share that any run can reach: a month receives no more than what is pumped in it and one full tank from
    /// the month before, and no more than it asks for.
    /// </summary>
    /// <param name="span">Worst month or year.</param>
    /// <param name="demandM3">Water asked for by month [m³].</param>
    /// <param name="pumpableM3">Water that can be pumped by month [m³].</param>
    /// <param name="usefulM3">Useful volume of the tank [m³].</param>
    /// <returns>Share, 0 to 1.</returns>
    public static double Bound(
        TargetSpan span,
        ReadOnlySpan<double> demandM3,
        ReadOnlySpan<double> pumpableM3,
        double usefulM3
    )
    {
        var (asked, met, worst) = (0.0, 0.0, 1.0);
        for (var month = 0; month < 12; month++)
        {
            var most = Math.Min(demandM3[month], pumpableM3[month] + usefulM3);
            asked += demandM3[month];
            met += most;
            worst = demandM3[month] > 0 ? Math.Min(worst, most / demandM3[month]) : worst;
        }

        var share =
            span == TargetSpan.WorstMonth ? worst
            : asked > 0 ? met / asked
            : 1;
        return share >= Whole ? 1 : share;
    }
}
