using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Shaduf.Power;
using Shaduf.Sun;

namespace Shaduf.Bench.Power;

/// <summary>A module's fit, its table, and the power of a year: read from the table, and solved in every hour.</summary>
[MemoryDiagnoser]
public class ModuleTableBench
{
    // A made-up module and a made-up climate near the equator.
    private static readonly ModuleSheet Sheet = new(
        550,
        49.9,
        13.95,
        41.7,
        13.19,
        new(-0.0035, -0.0027, 0.00048),
        45,
        1500,
        25
    );
    private static readonly Place Site = new(LatitudeDeg: -1.3, LongitudeDeg: 36.8, ElevationM: 1600, UtcOffsetH: 3);
    private static readonly MonthlyClimate Climate = new(
        [6.2, 6.5, 6.2, 5.4, 4.9, 4.6, 4.4, 4.8, 5.7, 5.8, 5.4, 5.8],
        [19, 20, 20.5, 20, 19, 17.5, 17, 17.5, 18.5, 19.5, 19, 19]
    );

    private readonly DeSotoModule module = DeSotoFit.Of(Sheet).Module;
    private readonly ModuleTable table = ModuleTable.Build(DeSotoFit.Of(Sheet).Module);
    private readonly WeatherYear weather = MonthlyMeansYear.Generate(Site, Climate, seed: 1);
    private ImmutableArray<double> light;
    private ImmutableArray<double> cellDegC;

    [GlobalSetup]
    public void Prepare()
    {
        light = PlaneYear
            .Of(SkyYear.Of(weather, PerezSet.AllSites1990), new(new(10, 0), 0.2, Glass.Usual, PlaneShade.None))
            .EffectiveWPerM2;
        cellDegC = CellTemperature.YearDegC(weather, light, Sheet.NoctDegC);
    }

    [Benchmark]
    public ModuleFit Fit() => DeSotoFit.Of(Sheet);

    [Benchmark]
    public ModuleTable Build() => ModuleTable.Build(module);

    [Benchmark]
    public double YearOfCells() => CellTemperature.YearDegC(weather, light, Sheet.NoctDegC)[12];

    [Benchmark]
    public double YearRead() => table.YearW(light, cellDegC)[12];

    [Benchmark]
    public double YearSolved()
    {
        var sumW = 0.0;
        for (var hour = 0; hour < light.Length; hour++)
        {
            sumW += DeSoto.MaximumPowerW(module, light[hour], cellDegC[hour]);
        }

        return sumW;
    }

    /// <summary>The floor of the reading: one logarithm for each hour of light.</summary>
    [Benchmark(Baseline = true)]
    public double LogarithmsOnly()
    {
        var sum = 0.0;
        for (var hour = 0; hour < light.Length; hour++)
        {
            sum += light[hour] < DeSoto.LeastWPerM2 ? 0 : Math.Log(light[hour]) * cellDegC[hour];
        }

        return sum;
    }
}
