using Shaduf.Sun;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Names the limit that keeps every arrangement from serving a brief.</summary>
internal static class BindingLimits
{
    /// <summary>The limit, and by how much it binds.</summary>
    /// <param name="ground">All that is settled before the choice.</param>
    /// <param name="chosen">The nearest arrangement.</param>
    /// <param name="all">What the search found for each pump.</param>
    /// <returns>The limit.</returns>
    public static BindingLimit Of(SizingGround ground, PumpSearch chosen, IReadOnlyList<PumpSearch> all)
    {
        if (ground.Source.Exhausted(ground.Demand) is { } exhausted)
        {
            return exhausted;
        }

        var month = ground.Demand.PeakMonth;
        var needM3PerDay = ground.Demand.M3PerDay[month];
        if (TooWide(ground, all) is { } pump)
        {
            chosen = pump;
        }

        switch (chosen.Why)
        {
            case "yield" when PumpingHours(ground, chosen.Best!) is > 0 and var hours:
                return new(
                    "yield",
                    Invariant(
                        $"the source allows {ground.Source.YieldM3PerH:0.##} m3/h; over the {hours:0.0} hours of pumping on the mean day of the worst month {needM3PerDay / hours:0.##} m3/h would be needed"
                    ),
                    needM3PerDay / hours,
                    ground.Source.YieldM3PerH,
                    "m3/h"
                );
            case "head":
                var reach = all.Max(each => each.Pump.Curve.ReachM);
                var needM = chosen.Best!.Hydraulics.Lift.System.StaticHeadM;
                return new(
                    "head",
                    Invariant(
                        $"water must be lifted {needM:0} m before any flows; the highest pump card reaches {reach:0} m"
                    ),
                    needM,
                    reach,
                    "m"
                );
            case "casing":
                return new(
                    "casing",
                    "no pump that could serve passes the casing",
                    chosen.Pump.InWater.DiameterMm + Well.LeastCasingRoomMm,
                    ground.Survey["casing"],
                    "mm"
                );
            default:
                return new(
                    chosen.Why,
                    Invariant(
                        $"the best arrangement of the cards meets {chosen.Share * 100:0} % of the demand {(ground.Span == TargetSpan.Year ? "of the year" : "in the worst month")}; {chosen.WhyNot}"
                    ),
                    ground.Survey["target"],
                    chosen.Share ?? 0,
                    ""
                );
        }
    }

    // The slimmest pump that would serve if it passed the casing.
    private static PumpSearch? TooWide(SizingGround ground, IReadOnlyList<PumpSearch> all) =>
        all.Where(each => each.Why == "casing" && each.Share >= ground.Survey["target"])
            .MinBy(each => each.Pump.InWater.DiameterMm);

    // Hours in which water flows on the mean day of the month that is met worst, as hours at the source's full flow.
    private static double PumpingHours(SizingGround ground, Arrangement arrangement)
    {
        var run = YearRun.Run(arrangement.Inputs(ground));
        var month = run.WorstMonth;
        return run.PumpableM3[month] / YearCalendar.DaysInMonth[month] / ground.Source.YieldM3PerH;
    }
}
