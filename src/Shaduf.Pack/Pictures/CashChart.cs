using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The builder's money over the time of the works.</summary>
public static class CashChart
{
    /// <summary>Composes the chart.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture; null where no money moves.</returns>
    public static Scene? Of(Design design, PaperSize size)
    {
        var days = design.Office.Cash.Days;
        if (days.Count == 0)
        {
            return null;
        }

        var start = DateOnly.FromDateTime(design.Programme.Start);
        var (paid, received) = (0m, 0m);
        var curves = days.Select(day =>
            {
                paid += day.Paid;
                received += day.Received;
                return (
                    Week: (day.Day.DayNumber - start.DayNumber) / 7.0,
                    Paid: (double)paid / 1000,
                    Received: (double)received / 1000,
                    Balance: (double)day.Balance / 1000
                );
            })
            .ToList();
        LineSeries Stepped(string name, Func<(double Week, double Paid, double Received, double Balance), double> of) =>
            new(
                name,
                [
                    .. curves.SelectMany(
                        (point, i) =>
                            i == 0
                                ? [new ChartPoint(point.Week, of(point))]
                                : new[]
                                {
                                    new ChartPoint(point.Week, of(curves[i - 1])),
                                    new ChartPoint(point.Week, of(point)),
                                }
                    ),
                ]
            );
        return new LineChart(
            new(Invariant($"weeks from {start:d MMMM yyyy}")) { From = Math.Min(0, curves[0].Week) },
            new($"thousand {design.Offer.Currency}"),
            [
                Stepped("paid out", point => point.Paid),
                Stepped("received, tax taken off", point => point.Received),
                Stepped("balance", point => point.Balance),
            ]
        ).ToScene(size, "cash over the time of the works");
    }
}
