using BenchmarkDotNet.Attributes;

namespace Shaduf.Bench.Steel;

/// <summary>Racks of 80 to 5,000 members under twelve combinations: framed, analysed, members and welds checked.</summary>
[MemoryDiagnoser]
public class BayRackBench
{
    private BayRack rack = new(16);

    [Params(16, 100, 1000)]
    public int BayCount { get; set; }

    [GlobalSetup]
    public void Prepare() => rack = new(BayCount);

    [Benchmark]
    public double AnalysedAndChecked() => rack.WorstUse();
}
