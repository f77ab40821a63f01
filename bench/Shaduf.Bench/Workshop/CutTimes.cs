using System.Globalization;
using Shaduf.Workshop;

namespace Shaduf.Bench.Workshop;

/// <summary>Cut plans of many parts: what comes out, and the time of one plan after a first.</summary>
internal static class CutTimes
{
    private static readonly BarStock[] s_one = [new(6000, 30)];
    private static readonly BarStock[] s_two = [new(6000, 30.5m), new(12_000, 59.9m)];

    /// <summary>Writes the table.</summary>
    public static void Write()
    {
        var eight = Enumerable.Range(0, 8).Select(section => Order(25, 8, section, s_one)).ToList();
        Row("200 parts: 8 sections of 25 parts of 8 lengths", eight);
        Row("200 parts of 20 lengths, one section", [Order(200, 20, 9, s_one)]);
        Row("2,000 parts of 40 lengths", [Order(2000, 40, 11, s_one)]);
        Row("2,000 parts of 97 lengths", [Order(2000, 97, 14, s_one)]);
        Row("2,000 parts of 196 lengths", [Order(2000, 196, 12, s_one)]);
        Row("2,000 parts of 40 lengths, bars of 6 and 12 m at odd prices", [Order(2000, 40, 13, s_two)]);
        Row(
            "the same with offcuts of two lengths",
            [Order(2000, 40, 13, [.. s_two, new(2750, 0, 12), new(3410, 0, 9)])]
        );
        Row("2,000 parts of 1,031 lengths", [Order(2000, 1031, 15, s_one)]);
    }

    private static void Row(string what, IReadOnlyList<CutOrder> orders)
    {
        IReadOnlyList<CutPlan> plans = [];
        var (_, leastMs) = ProcessorTime.Of(() => plans = [.. orders.Select(CutPlan.Cheapest)]);
        var gap = plans.Max(plan => (double)((plan.Cost - plan.BoundCost) / plan.Cost));
        var told = plans.All(plan => plan.IsProven)
            ? "proved"
            : string.Create(CultureInfo.InvariantCulture, $"gap {gap * 100:0.00} %");
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"| {what} | {told}, {plans.Sum(plan => plan.BarCount)} bars (first-fit {orders.Sum(order => CutPlan.FirstFit(order).BarCount)}) | {leastMs:0} ms |"
            )
        );
    }

    // A fixed spread of lengths, all different, from 300 to 3000 mm.
    private static CutOrder Order(int pieces, int lengths, int seed, IReadOnlyList<BarStock> stock) =>
        new(
            [
                .. Enumerable
                    .Range(0, lengths)
                    .Select(i => new CutPart(
                        $"P{i}",
                        300 + ((i * 1361L) + (seed * 97L)) % 2700,
                        (pieces / lengths) + (i < pieces % lengths ? 1 : 0)
                    )),
            ],
            [.. stock],
            KerfMm: 3,
            EndTrimMm: 10
        );
}
