using Shaduf.Sun;

namespace Shaduf.Station;

/// <summary>A weather file that takes the place of the monthly figures, checked and repaired.</summary>
/// <param name="File">The file as the brief names it.</param>
/// <param name="Kind">Its form: EPW, TMY or CSV.</param>
/// <param name="Hash">SHA-256 of its bytes, hexadecimal.</param>
/// <param name="Place">Where the record was taken, with the station's offset from UTC.</param>
/// <param name="Years">Its years in file order, all sound.</param>
/// <param name="YearNames">What each year is called.</param>
/// <param name="LeapHourCount">Hours of 29 February that were left out.</param>
/// <param name="LeftOutYearCount">Years cut short at the file's ends that were left out.</param>
/// <param name="MovedH">Hours added to the file's clock to make it the station's.</param>
/// <param name="NotUsed">Columns that were not used.</param>
public sealed record WeatherRecord(
    string File,
    string Kind,
    string Hash,
    Place Place,
    IReadOnlyList<RecordedYear> Years,
    IReadOnlyList<string> YearNames,
    int LeapHourCount,
    int LeftOutYearCount,
    int MovedH,
    IReadOnlyList<string> NotUsed
)
{
    private const double EarthRadiusKm = 6371;

    /// <summary>The year that the station is sized on: the one with the least light.</summary>
    public int DullestIndex { get; } =
        Enumerable.Range(0, Years.Count).MinBy(year => Years[year].Year!.GlobalWPerM2.Sum());

    /// <summary>The year that the station is sized on.</summary>
    public WeatherYear Dullest => Years[DullestIndex].Year!;

    /// <summary>The other years.</summary>
    public IReadOnlyList<WeatherYear> Others =>
        [.. Years.Where((_, year) => year != DullestIndex).Select(year => year.Year!)];

    /// <summary>Coldest hour of all years [°C].</summary>
    public double ColdestDegC { get; } = Years.Min(year => year.Year!.AirDegC.Min());

    /// <summary>Hottest hour of all years [°C].</summary>
    public double HottestDegC { get; } = Years.Max(year => year.Year!.AirDegC.Max());

    /// <summary>Share of the sunlit hours, in the year with the most of them, whose light is not the record's own.</summary>
    public double FilledShare => Years.Max(year => year.FilledShare);

    /// <summary>The largest clock shift of any month [min]; 0 when none can be told.</summary>
    public double ClockShiftMin => Years.SelectMany(year => year.ClockShiftMin).Max(shift => Math.Abs(shift ?? 0));

    /// <summary>What was found in all years together.</summary>
    public IReadOnlyList<RecordCount> Counts =>
        [
            .. Years
                .SelectMany(year => year.Counts)
                .GroupBy(count => count.Matter)
                .OrderBy(group => group.Key)
                .Select(group => new RecordCount(
                    group.Key,
                    group.Sum(count => count.HourCount),
                    group.Min(count => count.FirstLine)
                )),
        ];

    /// <summary>Way along the ground between two places.</summary>
    /// <param name="from">One place.</param>
    /// <param name="to">The other.</param>
    /// <returns>Distance [km].</returns>
    public static double DistanceKm(Place from, Place to)
    {
        var (south, north) = (double.DegreesToRadians(from.LatitudeDeg), double.DegreesToRadians(to.LatitudeDeg));
        var east = double.DegreesToRadians(to.LongitudeDeg - from.LongitudeDeg);
        var half =
            Math.Pow(Math.Sin((north - south) / 2), 2)
            + (Math.Cos(south) * Math.Cos(north) * Math.Pow(Math.Sin(east / 2), 2));
        return 2 * EarthRadiusKm * Math.Asin(Math.Min(1, Math.Sqrt(half)));
    }

    /// <summary>Monthly means of the year that the station is sized on.</summary>
    public IReadOnlyList<MonthBrief> Months =>
        [
            .. Enumerable
                .Range(0, 12)
                .Select(month =>
                {
                    var hours = 24 * YearCalendar.DaysInMonth[month];
                    var first = 24 * YearCalendar.FirstDays[month];
                    return new MonthBrief(
                        Dullest.GlobalWPerM2.Skip(first).Take(hours).Average() * 24 / 1000,
                        Dullest.AirDegC.Skip(first).Take(hours).Average()
                    );
                }),
        ];
}
