using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Shaduf.Power;
using Shaduf.Sun;

namespace Shaduf.Bench.Sun;

/// <summary>
/// A prepared sky year, stage by stage and as a whole: 8,760 positions, the split of the global light, the sky of Perez, a
/// plane with glass, cell temperature, most power of the array. The table of the module is solved before; what is
/// allocated are the results.
/// </summary>
[MemoryDiagnoser]
[MinColumn]
public class SkyYearBench
{
    private const int Hours = YearCalendar.HourCount;

    // A made-up climate near the equator.
    private static readonly Place Site = new(LatitudeDeg: -1.3, LongitudeDeg: 36.8, ElevationM: 1600, UtcOffsetH: 3);
    private static readonly MonthlyClimate Climate = new(
        [6.2, 6.5, 6.2, 5.4, 4.9, 4.6, 4.4, 4.8, 5.7, 5.8, 5.4, 5.8],
        [19, 20, 20.5, 20, 19, 17.5, 17, 17.5, 18.5, 19.5, 19, 19]
    );
    private static readonly PlaneFacing Facing = new(10, 0);
    private static readonly PlaneSetting Setting = new(Facing, 0.2, Glass.Usual, PlaneShade.None);
    private const double NoctDegC = 44;

    private readonly YearSun sun = new(Site);
    private readonly ModuleTable module = ModuleTable.Build(
        DeSotoFit.Of(new(410, 37.2, 13.9, 31.2, 13.14, new(-0.0034, -0.0026, 0.0005), NoctDegC, 1500, 25)).Module
    );
    private WeatherYear weather = null!;
    private SkyYear ready = null!;
    private PlaneYear light = null!;
    private ImmutableArray<double> cellDegC;
    private NearShade near = null!;

    [GlobalSetup]
    public void Prepare()
    {
        weather = MonthlyMeansYear.Generate(Site, Climate, seed: 1);
        ready = SkyYear.Of(weather, PerezSet.AllSites1990);
        light = PlaneYear.Of(ready, Setting);
        cellDegC = CellTemperature.YearDegC(weather, light.PlaneWPerM2, NoctDegC);
        near = new(
            Facing,
            [
                .. Enumerable
                    .Range(0, 72)
                    .Select(i => new Spot[] { new(i * 0.2, 0.5, 1), new(i * 0.2, 1, 1.1), new(i * 0.2, 1.5, 1.2) }),
            ],
            [.. Enumerable.Range(0, 6).Select(i => Screen.Facing(new(i, 5, 0), default, 1, 0, 3))]
        );
    }

    [Benchmark]
    public double Positions()
    {
        var sum = 0.0;
        for (var hour = 0; hour < Hours; hour++)
        {
            sum += sun.DirectionAt(hour + 0.5).Angles.ZenithDeg;
        }

        return sum;
    }

    [Benchmark]
    public double Decomposed()
    {
        var sum = 0.0;
        for (var hour = 0; hour < Hours; hour++)
        {
            if (weather.ExtraterrestrialNormalWPerM2[hour] > 0)
            {
                sum += Decomposition
                    .ErbsSplit(
                        weather.GlobalWPerM2[hour],
                        weather.SunZenithDeg[hour],
                        weather.ExtraterrestrialNormalWPerM2[hour]
                    )
                    .DiffuseWPerM2;
            }
        }

        return sum;
    }

    [Benchmark]
    public SkyYear Perez() => SkyYear.Of(weather, PerezSet.AllSites1990);

    [Benchmark]
    public PlaneYear OnPlane() => PlaneYear.Of(ready, Setting);

    [Benchmark]
    public ImmutableArray<double> Cells() => CellTemperature.YearDegC(weather, light.PlaneWPerM2, NoctDegC);

    [Benchmark]
    public ImmutableArray<double> MostPower() => module.YearW(light.EffectiveWPerM2, cellDegC);

    /// <summary>All stages one after the other, each on the results of the one before.</summary>
    [Benchmark]
    public double Whole()
    {
        Positions();
        Decomposed();
        var plane = PlaneYear.Of(SkyYear.Of(weather, PerezSet.AllSites1990), Setting);
        return module.YearW(plane.EffectiveWPerM2, CellTemperature.YearDegC(weather, plane.PlaneWPerM2, NoctDegC))[12];
    }

    /// <summary>The sun followed behind skyline and near things, five instants an hour; once for a plane that is kept.</summary>
    [Benchmark]
    public PlaneShade Shaded() => PlaneShade.Of(sun, Facing, new([new(0, 5)]), near);

    /// <summary>
    /// The floor: the functions that the mathematics of an hour with light asks for. One sine and cosine and one arc cosine
    /// and one arc tangent for the sun's angles, two sines and cosines to turn them back into a direction, one power for
    /// the air mass, three roots and one exponential for the glass, one logarithm for the power.
    /// </summary>
    [Benchmark(Baseline = true)]
    public double FunctionsOnly()
    {
        var sum = 0.0;
        for (var hour = 0; hour < Hours; hour++)
        {
            var x = 0.1 + (hour * 1e-4);
            var (sine, cosine) = Math.SinCos(x);
            sum += Math.Acos(sine * 0.9) + Math.Atan2(sine, cosine);
            if (weather.GlobalWPerM2[hour] > 0)
            {
                var (sine2, cosine2) = Math.SinCos(x + 0.3);
                var (sine3, cosine3) = Math.SinCos(x + 0.7);
                sum += sine2 + cosine2 + sine3 + cosine3 + Math.Pow(1 + x, -1.6364);
                sum += Math.Sqrt(x) + Math.Sqrt(x + 1) + Math.Sqrt(x + 2) + Math.Exp(-x) + Math.Log(x);
            }
        }

        return sum;
    }
}
