using BenchmarkDotNet.Attributes;
using Shaduf.Workshop;

namespace Shaduf.Bench.Workshop;

/// <summary>Cut plans: 200 parts of eight sections, and 2,000 parts of one.</summary>
[MemoryDiagnoser]
public class CutPlanBench
{
    private readonly CutOrder[] eight = [.. Enumerable.Range(0, 8).Select(section => Order(25, 8, section))];
    private readonly CutOrder many = Order(2000, 40, 11);
    private readonly CutOrder manyKinds = Order(2000, 200, 12);
    private readonly CutOrder twoBars = Order(2000, 40, 13) with { Stock = [new(6000, 30.5m), new(12_000, 59.9m)] };

    /// <summary>Eight sections of 25 parts each.</summary>
    [Benchmark]
    public int EightSections() => eight.Sum(order => CutPlan.Cheapest(order).BarCount);

    /// <summary>2,000 parts of 40 lengths.</summary>
    [Benchmark]
    public int TwoThousand() => CutPlan.Cheapest(many).BarCount;

    /// <summary>2,000 parts of 200 lengths.</summary>
    [Benchmark]
    public int TwoHundredLengths() => CutPlan.Cheapest(manyKinds).BarCount;

    /// <summary>2,000 parts of 40 lengths from two lengths of bar at odd prices.</summary>
    [Benchmark]
    public int TwoBars() => CutPlan.Cheapest(twoBars).BarCount;

    // A fixed spread of lengths from 300 to 3000 mm.
    private static CutOrder Order(int pieces, int lengths, int seed)
    {
        var step = 1 + (2 * seed);
        return new(
            [
                .. Enumerable
                    .Range(0, lengths)
                    .Select(i => new CutPart(
                        $"P{i}",
                        300 + ((i * 613 * step) + (i * i * 97)) % 2700,
                        (pieces / lengths) + (i < pieces % lengths ? 1 : 0)
                    )),
            ],
            [new(6000, 30)],
            KerfMm: 3,
            EndTrimMm: 10
        );
    }
}
