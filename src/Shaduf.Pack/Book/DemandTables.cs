using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The tables of the demand.</summary>
internal static class DemandTables
{
    /// <summary>Each use with the way it was counted.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The table.</returns>
    public static Table Uses(Design design) =>
        new(
            [new("use"), new("how it was counted", 2.2), new("most in a month, m3/d", 0.9, HorizontalAnchor.Right)],
            [
                .. design.Demand.Uses.Select(use =>
                    TableRow.Of(use.Name, use.Says, Invariant($"{use.M3PerDay.Max():0.00}"))
                ),
            ]
        )
        {
            Caption = "Uses, at the place of use",
        };

    /// <summary>Each use in each month, what is lost, and what must be pumped.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The table.</returns>
    public static Table Months(Design design)
    {
        var demand = design.Demand;
        var net = Enumerable.Range(0, 12).Select(month => demand.Uses.Sum(use => use.M3PerDay[month])).ToList();
        return new(
            [
                new("m3/d", 2.6),
                .. YearCalendarNames.Months.Select(name => new TableColumn(name[..3], 1, HorizontalAnchor.Right)),
            ],
            [
                .. demand.Uses.Select(use => Row(use.Name, use.M3PerDay)),
                Row("lost on the way", [.. demand.M3PerDay.Zip(net, (produced, used) => produced - used)]),
                TableRow.Total(["to be pumped", .. demand.M3PerDay.Select(Shown)]),
            ]
        )
        {
            SizeMm = 2.6,
            Caption = Invariant(
                $"Demand of the mean day of each month. Peak day, in {YearCalendarNames.Months[demand.PeakMonth]}: {demand.PeakDayM3:0.0} m3"
            ),
        };
    }

    private static TableRow Row(string name, IReadOnlyList<double> m3PerDay) =>
        TableRow.Of([name, .. m3PerDay.Select(Shown)]);

    private static string Shown(double m3PerDay) =>
        m3PerDay >= 100 ? Invariant($"{m3PerDay:0}") : Invariant($"{m3PerDay:0.0}");
}
