using BenchmarkDotNet.Attributes;
using Shaduf.Sun;

namespace Shaduf.Bench.Sun;

/// <summary>A year from twelve monthly means, and what a fixed plane gets of it.</summary>
[MemoryDiagnoser]
public class MonthlyMeansYearBench
{
    // A made-up climate near the equator.
    private static readonly Place Site = new(LatitudeDeg: -1.3, LongitudeDeg: 36.8, ElevationM: 1600, UtcOffsetH: 3);
    private static readonly MonthlyClimate Climate = new(
        [6.2, 6.5, 6.2, 5.4, 4.9, 4.6, 4.4, 4.8, 5.7, 5.8, 5.4, 5.8],
        [19, 20, 20.5, 20, 19, 17.5, 17, 17.5, 18.5, 19.5, 19, 19]
    );
    private static readonly PlaneFacing Plane = new(10, 0);

    private readonly WeatherYear weather = Made();

    [Benchmark]
    public WeatherYear Generate() => Made();

    [Benchmark]
    public double OnPlane() => PlaneYear.HayDaviesWPerM2(weather, Plane, 0.2)[12];

    private static WeatherYear Made() => MonthlyMeansYear.Generate(Site, Climate, seed: 1);
}
