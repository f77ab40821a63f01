using BenchmarkDotNet.Attributes;
using Shaduf.Water;

namespace Shaduf.Bench.Water;

/// <summary>A pump's table: made once for each pump and system, read for every hour of a year.</summary>
[MemoryDiagnoser]
public class PumpTableBench
{
    private const double WaterDensityKgPerM3 = 998;

    private static readonly LiftSystem Lift = new(
        StaticHeadM: 50,
        StepDrawdown.FromSingle(flowM3PerS: 0.001, drawdownM: 4),
        [new(0.0514, 1e-5, 850, 10)],
        OutletHeadM: 2,
        KinematicViscosityM2PerS: 1e-6
    )
    {
        DensityKgPerM3 = WaterDensityKgPerM3,
    };

    // A made-up pump.
    private static readonly PumpCurve Curve = PumpCurve.Fit([
        new(0, 110, 0),
        new(0.0005, 105, 0.42),
        new(0.001, 92, 0.57),
        new(0.0014, 75, 0.6),
        new(0.0018, 50, 0.52),
        new(0.0021, 26, 0.35),
    ]);

    private readonly PumpTable table = Made();

    // Power over a year of 12 h days: half of the hours dark, some too dim to lift, some beyond full power.
    private readonly double[] powersW =
    [
        .. Enumerable.Range(0, 8760).Select(hour => 2500 * Math.Sin(Math.PI / 12 * (hour % 24 - 6))),
    ];

    [Benchmark]
    public PumpTable Build() => Made();

    [Benchmark]
    public double Year()
    {
        var sumM3 = 0.0;
        foreach (var powerW in powersW)
        {
            sumM3 += table.FlowM3PerH(powerW);
        }

        return sumM3;
    }

    private static PumpTable Made() =>
        PumpTable.Build(Curve, Lift, new(0.5, 1.05, 0.003), shaftW => 20 + (1.3 * shaftW));
}
