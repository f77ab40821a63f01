using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class MonthlyMeansYearTests
{
    private static readonly double[] AirDegC = [24, 24.5, 23, 20, 16, 13, 12.5, 14, 17, 20, 22, 23.5];

    [Fact]
    public void The_year_is_whole_wherever_the_site_lies() =>
        // The ratio drawn is of the daily formula; the year's own, by hours, is up to a few per cent higher at high latitudes.
        Gen.Select(Gen.Double[-65, 65], Gen.Double[-180, 180], Gen.Double[0.06, 0.76].Array[12], Gen.Int)
            .Sample(
                (latitudeDeg, longitudeDeg, monthRatios, seed) =>
                {
                    var place = PlaceAt(latitudeDeg, longitudeDeg);
                    var climate = Climate(latitudeDeg, monthRatios);
                    AssertWhole(place, climate, MonthlyMeansYear.Generate(place, climate, seed));
                },
                iter: 60
            );

    [Fact]
    public void The_same_seed_gives_the_same_year_and_another_seed_another()
    {
        var (place, climate) = Example();
        var first = MonthlyMeansYear.Generate(place, climate, 7);
        var again = MonthlyMeansYear.Generate(place, climate, 7);
        var other = MonthlyMeansYear.Generate(place, climate, 8);
        Assert.Equal(first.GlobalWPerM2.AsEnumerable(), again.GlobalWPerM2.AsEnumerable());
        Assert.Equal(first.AirDegC.AsEnumerable(), again.AirDegC.AsEnumerable());
        Assert.NotEqual(first.GlobalWPerM2.AsEnumerable(), other.GlobalWPerM2.AsEnumerable());
    }

    [Fact]
    public void Days_differ_as_the_library_says()
    {
        // A dry month of class 9: the library's long sequences have a standard deviation of 0.119.
        var (place, climate) = Example();
        var ratios = Enumerable
            .Range(0, 40)
            .SelectMany(seed => DayRatios(place, MonthlyMeansYear.Generate(place, climate, seed)).Take(31))
            .ToArray();
        var mean = ratios.Average();
        Assert.InRange(Math.Sqrt(ratios.Average(ratio => (ratio - mean) * (ratio - mean))), 0.08, 0.14);
    }

    [Fact]
    public void Afternoons_together_mirror_the_mornings_and_are_warmer()
    {
        var year = MonthlyMeansYear.Generate(new(0, 0, 0, 0), Climate(0, [.. Enumerable.Repeat(0.55, 12)]), 1);
        for (var h = 0; h < 6; h++)
        {
            var (before, after) = (Hours(11 - h), Hours(12 + h));
            Assert.Equal(
                1,
                before.Average(hour => year.GlobalWPerM2[hour]) / after.Average(hour => year.GlobalWPerM2[hour]),
                0.05
            );
            Assert.True(after.Average(hour => year.AirDegC[hour]) > before.Average(hour => year.AirDegC[hour]));
        }

        // The sundial agrees with the clock over the year, and nearly so in each half of a month of these.
        static IEnumerable<int> Hours(int hourOfDay) => Enumerable.Range(0, 365).Select(day => (24 * day) + hourOfDay);
    }

    // Erbs's relation of days (Duffie and Beckman, equation 2.11.1, from memory): hours that scatter get its diffuse
    // share when each is split by the relation of hours; days that are smooth inside get too much.
    [Fact]
    public void The_days_diffuse_share_is_that_of_the_daily_relation()
    {
        var (place, climate) = Example();
        var year = MonthlyMeansYear.Generate(place, climate, 1);
        var expected = DayRatios(place, year)
            .Select((ratio, day) => DailyDiffuseShare(ratio) * DaySum(year, day))
            .Sum();
        Assert.Equal(expected / year.GlobalWPerM2.Sum(), year.DiffuseWPerM2.Sum() / year.GlobalWPerM2.Sum(), 0.015);

        static double DailyDiffuseShare(double k) =>
            k < 0.722 ? 1 + (0.2832 * k) - (2.5557 * k * k) + (0.8448 * k * k * k) : 0.175;
    }

    [Fact]
    public void The_swing_of_the_air_is_the_one_given()
    {
        var (place, climate) = Example();
        var year = MonthlyMeansYear.Generate(
            place,
            climate with
            {
                SwingK = [.. Enumerable.Repeat((double?)14, 12)],
            },
            1
        );
        var day = year.AirDegC.Skip(24 * 40).Take(24).ToList();
        Assert.Equal(14 * 0.976, day.Max() - day.Min(), 0.4);
    }

    [Fact]
    public void Too_much_sun_is_refused_by_the_months_name()
    {
        var (place, climate) = Example();
        double[] tooBright = [.. climate.GlobalKWhPerM2Day.Select((value, month) => month == 2 ? 11 : value)];
        var trouble = Assert.Throws<ArgumentOutOfRangeException>(() =>
            MonthlyMeansYear.Generate(place, climate with { GlobalKWhPerM2Day = tooBright }, 1)
        );
        Assert.Contains("March, 11 kWh/m2 a day", trouble.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void No_sun_is_refused_by_the_months_name(double julyKWhPerM2Day)
    {
        var (place, climate) = Example();
        double[] dark = [.. climate.GlobalKWhPerM2Day.Select((value, month) => month == 6 ? julyKWhPerM2Day : value)];
        var trouble = Assert.Throws<ArgumentOutOfRangeException>(() =>
            MonthlyMeansYear.Generate(place, climate with { GlobalKWhPerM2Day = dark }, 1)
        );
        Assert.Contains("July", trouble.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(67, 0, 0)]
    [InlineData(double.NaN, 0, 0)]
    [InlineData(-1.3, 37.6, -3)]
    public void A_place_of_polar_night_or_with_the_clock_turned_round_is_refused(
        double latitudeDeg,
        double longitudeDeg,
        double utcOffsetH
    ) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            MonthlyMeansYear.Generate(new(latitudeDeg, longitudeDeg, 0, utcOffsetH), Example().Climate, 1)
        );

    [Fact]
    public void Eleven_months_are_refused()
    {
        var (place, climate) = Example();
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            MonthlyMeansYear.Generate(place, climate with { GlobalKWhPerM2Day = new double[11] }, 1)
        );
    }

    [Fact]
    public void The_calendar_has_no_leap_day()
    {
        Assert.Equal(365, YearCalendar.DaysInMonth.Sum());
        Assert.Equal((0, 0), (YearCalendar.MonthOf(0), YearCalendar.DayOf(23)));
        Assert.Equal((1, 31), (YearCalendar.MonthOf(31 * 24), YearCalendar.DayOf(31 * 24)));
        Assert.Equal((11, 364), (YearCalendar.MonthOf(8759), YearCalendar.DayOf(8759)));
        Assert.Throws<ArgumentOutOfRangeException>(() => YearCalendar.MonthOf(8760));
    }

    internal static (Place Place, MonthlyClimate Climate) Example() =>
        (
            new(-1.3, 37.6, 1500, 3),
            Climate(-1.3, [0.66, 0.67, 0.60, 0.54, 0.52, 0.50, 0.47, 0.50, 0.56, 0.57, 0.54, 0.60])
        );

    private static Place PlaceAt(double latitudeDeg, double longitudeDeg) =>
        new(latitudeDeg, longitudeDeg, 300, Math.Round(longitudeDeg / 15));

    // Monthly means of about the wanted clearness, from the text-book day in the middle of the month.
    private static MonthlyClimate Climate(double latitudeDeg, double[] monthRatios) =>
        new([.. monthRatios.Select((ratio, month) => ratio * MonthAboveKWhPerM2Day(latitudeDeg, month))], AirDegC);

    private static double MonthAboveKWhPerM2Day(double latitudeDeg, int month)
    {
        var first = YearCalendar.DaysInMonth.Take(month).Sum();
        return Enumerable
            .Range(first, YearCalendar.DaysInMonth[month])
            .Average(day => DayAboveWhPerM2(latitudeDeg, day) / 1000);
    }

    private static double DayAboveWhPerM2(double latitudeDeg, int day) =>
        ExtraterrestrialIrradiance.DailyHorizontalMJPerM2(
            ExtraterrestrialIrradiance.NormalSpencerWPerM2(day + 1, ExtraterrestrialIrradiance.SolarConstantWPerM2),
            latitudeDeg,
            SolarGeometry.DeclinationSpencerDeg(day + 1)
        ) * (1e6 / 3600);

    private static double[] DayRatios(Place place, WeatherYear year) =>
        [.. Enumerable.Range(0, 365).Select(day => DaySum(year, day) / DayAboveWhPerM2(place.LatitudeDeg, day))];

    private static double DaySum(WeatherYear year, int day) =>
        year.GlobalWPerM2.AsSpan().Slice(day * 24, 24).ToArray().Sum();

    private static void AssertWhole(Place place, MonthlyClimate climate, WeatherYear year)
    {
        var monthWhPerM2 = new double[12];
        var monthAirDegC = new double[12];
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            var month = YearCalendar.MonthOf(hour);
            monthWhPerM2[month] += year.GlobalWPerM2[hour];
            monthAirDegC[month] += year.AirDegC[hour] / (24 * YearCalendar.DaysInMonth[month]);
            var cosine = Math.Cos(year.SunZenithDeg[hour] * Math.PI / 180);
            Assert.InRange(year.SunAzimuthDeg[hour], 0, 360);
            Assert.InRange(year.DirectNormalWPerM2[hour], 0, year.ExtraterrestrialNormalWPerM2[hour]);
            Assert.InRange(year.DiffuseWPerM2[hour], 0, year.GlobalWPerM2[hour]);
            Assert.Equal(
                year.GlobalWPerM2[hour],
                (year.DirectNormalWPerM2[hour] * cosine) + year.DiffuseWPerM2[hour],
                1e-9
            );
            Assert.Equal(year.ExtraterrestrialNormalWPerM2[hour] > 0, year.GlobalWPerM2[hour] > 0);
            Assert.True(
                year.GlobalWPerM2[hour] <= (year.ExtraterrestrialNormalWPerM2[hour] * Math.Max(cosine, 0)) + 0.5
            );
            Assert.True(year.GlobalWPerM2[hour] == 0 || year.SunZenithDeg[hour] < 90.01);
        }

        for (var month = 0; month < 12; month++)
        {
            var meanKWhPerM2Day = monthWhPerM2[month] / 1000 / YearCalendar.DaysInMonth[month];
            Assert.Equal(1, meanKWhPerM2Day / climate.GlobalKWhPerM2Day[month], 1e-9);
            Assert.Equal(climate.AirDegC[month], monthAirDegC[month], 1e-9);
        }

        Assert.All(DayRatios(place, year), ratio => Assert.InRange(ratio, 0.005, 1));
    }
}
