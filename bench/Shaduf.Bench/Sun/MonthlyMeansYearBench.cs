using BenchmarkDotNet.Attributes;
using Shaduf.Sun;

namespace Shaduf.Bench.Sun;

/// <summary>A year from twelve monthly means.</summary>
[MemoryDiagnoser]
public class MonthlyMeansYearBench
{
    // A made-up climate near the equator.
    private static readonly Place Site = new(LatitudeDeg: -1.3, LongitudeDeg: 36.8, ElevationM: 1600, UtcOffsetH: 3);
    private static readonly MonthlyClimate Climate = new(
        [6.2, 6.5, 6.2, 5.4, 4.9, 4.6, 4.4, 4.8, 5.7, 5.8, 5.4, 5.8],
        [19, 20, 20.5, 20, 19, 17.5, 17, 17.5, 18.5, 19.5, 19, 19]
    );

    [Benchmark]
    public WeatherYear Generate() => MonthlyMeansYear.Generate(Site, Climate, seed: 1);
}
