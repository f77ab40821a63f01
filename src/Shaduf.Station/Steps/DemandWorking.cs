using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The demand written out.</summary>
internal static class DemandWorking
{
    private const string Method = "station/demand-year";

    /// <summary>The largest month, use by use, and its peak day.</summary>
    /// <param name="uses">The uses.</param>
    /// <param name="month">The month, 0 to 11.</param>
    /// <param name="survey">Settled figures.</param>
    /// <param name="peakM3">Water produced on the peak day [m³].</param>
    /// <returns>The working.</returns>
    public static WorkingSheet Largest(IReadOnlyList<UseYear> uses, int month, Survey survey, double peakM3)
    {
        var net = uses.Sum(use => use.M3PerDay[month]);
        var steady = uses.Where(use => !use.IsDrinking).Sum(use => use.M3PerDay[month]);
        return new(
            $"Demand in {YearCalendarNames.Months[month]}, the largest month",
            [
                .. uses.Select(use => UseLine(use, month)),
                new("Q_net", "sum of the uses", "", net, "m3/d", Method, ""),
                Produced(net, survey["losses"], "Q_prod"),
                new(
                    "Q_peak",
                    "(k_d Q_drunk + Q_plots) / (1 - L)",
                    Invariant(
                        $"({survey["peak-day"]:0.00} x {net - steady:0.###} + {steady:0.###}) / (1 - {survey["losses"]:0.###})"
                    ),
                    peakM3,
                    "m3",
                    "water/peak-day",
                    "peak day"
                ),
            ]
        );
    }

    /// <summary>Each month's demand.</summary>
    /// <param name="uses">The uses.</param>
    /// <param name="lossShare">Share of the production that is lost.</param>
    /// <returns>The working.</returns>
    public static WorkingSheet Months(IReadOnlyList<UseYear> uses, double lossShare) =>
        new(
            "Demand month by month, losses included",
            [
                .. Enumerable
                    .Range(0, 12)
                    .Select(month =>
                        Produced(uses.Sum(use => use.M3PerDay[month]), lossShare, YearCalendarNames.Months[month][..3])
                    ),
            ]
        );

    private static Line Produced(double net, double lossShare, string symbol) =>
        new(
            symbol,
            "Q_net / (1 - L)",
            Invariant($"{net:0.###} / (1 - {lossShare:0.###})"),
            Losses.ProductionM3(net, lossShare),
            "m3/d",
            "water/losses",
            "losses as a share of production"
        );

    private static Line UseLine(UseYear use, int month) =>
        new(
            "Q",
            use.IsDrinking ? "number x litres / 1000" : "water to the field x area",
            $"{use.Name}: {use.Says}",
            use.M3PerDay[month],
            "m3/d",
            Method,
            use.Name
        );
}
