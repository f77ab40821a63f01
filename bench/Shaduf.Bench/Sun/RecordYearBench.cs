using BenchmarkDotNet.Attributes;
using Shaduf.Sun;

namespace Shaduf.Bench.Sun;

/// <summary>Checks of a year of a record that has nothing wrong, and the clock's part of them.</summary>
[MemoryDiagnoser]
public class RecordYearBench
{
    private static readonly Place Site = new(LatitudeDeg: -1.3, LongitudeDeg: 36.8, ElevationM: 1600, UtcOffsetH: 3);
    private static readonly MonthlyClimate Climate = new(
        [6.2, 6.5, 6.2, 5.4, 4.9, 4.6, 4.4, 4.8, 5.7, 5.8, 5.4, 5.8],
        [19, 20, 20.5, 20, 19, 17.5, 17, 17.5, 18.5, 19.5, 19, 19]
    );

    private readonly RecordHour[] hours = Made();
    private readonly double?[] globalWPerM2 = [.. Made().Select(hour => hour.GlobalWPerM2)];

    [Benchmark]
    public RecordedYear Checked() => RecordYear.Of(Site, hours, isAirAtEnd: false);

    [Benchmark]
    public double? ClockOnly() => ClockShift.MonthsMin(Site, globalWPerM2)[0];

    private static RecordHour[] Made()
    {
        var year = MonthlyMeansYear.Generate(Site, Climate, seed: 1);
        return
        [
            .. Enumerable
                .Range(0, YearCalendar.HourCount)
                .Select(hour => new RecordHour(
                    hour + 2,
                    true,
                    year.GlobalWPerM2[hour],
                    year.DirectNormalWPerM2[hour],
                    year.DiffuseWPerM2[hour],
                    year.AirDegC[hour]
                )),
        ];
    }
}
