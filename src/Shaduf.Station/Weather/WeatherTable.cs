using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Puts the rows of a weather file into the hours of its years.</summary>
/// <param name="isTypical">Whether months of several years may follow one another as one year.</param>
/// <param name="log">Takes rows that stand twice or out of order.</param>
internal sealed class WeatherTable(bool isTypical, FieldLog log)
{
    /// <summary>Most years accepted.</summary>
    public const int MostYears = 60;

    // A first or last year with fewer rows is left out when there are others.
    private const int FewestRows = YearCalendar.HourCount - (10 * 24);
    private const int MonthH = 31 * 24;

    private readonly List<WeatherYearRows> years = [];
    private int lastHour = -1;

    /// <summary>Hours of 29 February, which the year of the run does not have.</summary>
    public int LeapHourCount { get; private set; }

    /// <summary>Puts a row where it belongs.</summary>
    public void Add(WeatherRow row)
    {
        if (row.Start is { Month: 2, Day: 29 })
        {
            LeapHourCount++;
            return;
        }

        var day = YearCalendar.FirstDays[row.Start.Month - 1] + row.Start.Day - 1;
        var hour = (24 * day) + row.Start.Hour;
        var year = YearOf(row, hour);
        if (year == years.Count || (years.Count > 0 && year == years.Count - 1 && hour > lastHour))
        {
            Put(row, year, hour);
            return;
        }

        log.Add(
            new(row.Line, 1),
            "time",
            Invariant($"{row.Start:d MMMM, H} h stands twice or comes after a later hour"),
            "hours in order, each once, are accepted"
        );
    }

    /// <summary>The years, moved by whole hours to another clock; those cut short at the file's ends are left out.</summary>
    /// <param name="laterH">Hours to add to the file's clock.</param>
    /// <param name="leftOut">How many years are left out.</param>
    public IReadOnlyList<WeatherYearRows> Years(int laterH, out int leftOut)
    {
        var whole = years.Where((year, i) => year.RowCount >= FewestRows || (i > 0 && i < years.Count - 1)).ToList();
        var kept = whole.Count > 0 ? whole : years;
        leftOut = years.Count - kept.Count;
        return [.. kept.Select(year => year.Moved(laterH))];
    }

    // Its place among the years; one past the last begins a new one.
    private int YearOf(WeatherRow row, int hour)
    {
        if (years.Count == 0)
        {
            return 0;
        }

        var beginsAnew = isTypical
            ? lastHour >= YearCalendar.HourCount - MonthH && hour < MonthH
            : row.Start.Year > years[^1].Year;
        return beginsAnew ? years.Count
            : isTypical || row.Start.Year == years[^1].Year ? years.Count - 1
            : -1;
    }

    private void Put(WeatherRow row, int year, int hour)
    {
        if (year == years.Count)
        {
            if (years.Count == MostYears)
            {
                log.Add(new(row.Line, 1), "time", "one year more", $"at most {MostYears} years are accepted");
                log.ThrowIfAny();
            }

            years.Add(new(row.Start.Year, row.Line));
        }

        years[^1].Put(hour, row);
        lastHour = hour;
    }
}

/// <summary>The rows of one year of a weather file.</summary>
/// <param name="year">The year; any for a typical year.</param>
/// <param name="firstLine">Line of its first row.</param>
internal sealed class WeatherYearRows(int year, int firstLine)
{
    private readonly RecordHour[] hours = new RecordHour[YearCalendar.HourCount];

    /// <summary>The year; any for a typical year.</summary>
    public int Year => year;

    /// <summary>How many hours have a row.</summary>
    public int RowCount => hours.Count(hour => hour.HasRow);

    /// <summary>The hours; one without a row bears the line of the row before it.</summary>
    public IReadOnlyList<RecordHour> Hours
    {
        get
        {
            var line = firstLine;
            var whole = hours.ToArray();
            for (var hour = 0; hour < whole.Length; hour++)
            {
                line = whole[hour].HasRow ? whole[hour].Line : line;
                whole[hour] = whole[hour] with { Line = line };
            }

            return whole;
        }
    }

    /// <summary>Puts a row into its hour.</summary>
    public void Put(int hour, WeatherRow row) =>
        hours[hour] = new(row.Line, true, row.GlobalWPerM2, row.DirectNormalWPerM2, row.DiffuseWPerM2, row.AirDegC);

    /// <summary>The same rows by a clock that is later.</summary>
    public WeatherYearRows Moved(int laterH)
    {
        var moved = new WeatherYearRows(year, firstLine);
        for (var hour = 0; hour < hours.Length; hour++)
        {
            moved.hours[(hour + laterH + hours.Length) % hours.Length] = hours[hour];
        }

        return moved;
    }
}
