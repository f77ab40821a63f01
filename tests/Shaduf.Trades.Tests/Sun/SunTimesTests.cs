using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class SunTimesTests
{
    [Fact]
    public void Every_day_from_pole_to_pole_is_told_in_words_and_never_undefined() =>
        Gen.Select(
                Gen.OneOf(Gen.Double[-90, 90], Gen.Const(90.0), Gen.Const(-90.0), Gen.Double[65, 68]),
                Gen.Double[-180, 180],
                Gen.Int[0, 364]
            )
            .Sample(
                (latitudeDeg, longitudeDeg, day) =>
                {
                    var place = new Place(latitudeDeg, longitudeDeg, 0, Math.Round(longitudeDeg / 15));
                    var times = SunTimes.Of(place, new DateOnly(2023, 1, 1).AddDays(day), 69);
                    return times.Says.Length > 8
                        && times.TransitH is > 10 and < 14
                        && times.RiseH is null or (>= -1 and < 25)
                        && times.SetH is null or (> -1 and <= 25);
                },
                iter: 300
            );

    [Theory]
    [InlineData(90, 6, 21, SunDay.UpAllDay)]
    [InlineData(90, 12, 21, SunDay.DownAllDay)]
    [InlineData(-90, 6, 21, SunDay.DownAllDay)]
    [InlineData(70, 6, 21, SunDay.UpAllDay)]
    [InlineData(70, 12, 21, SunDay.DownAllDay)]
    [InlineData(70, 3, 21, SunDay.RisesAndSets)]
    public void Polar_day_and_night_are_named(double latitudeDeg, int month, int day, SunDay expected)
    {
        var times = SunTimes.Of(new(latitudeDeg, 0, 0, 0), new(2023, month, day), 69);
        Assert.Equal(expected, times.Day);
        Assert.Equal(expected == SunDay.RisesAndSets, times.RiseH is not null);
    }

    [Fact]
    public void At_the_pole_the_sun_rises_once_a_year_and_sets_once()
    {
        var days = Enumerable
            .Range(0, 365)
            .Select(day => SunTimes.Of(new(90, 0, 0, 0), new DateOnly(2023, 1, 1).AddDays(day), 69).Day)
            .ToList();
        Assert.Equal(1, days.Count(day => day == SunDay.RisesOnly));
        Assert.Equal(1, days.Count(day => day == SunDay.SetsOnly));
        Assert.DoesNotContain(SunDay.RisesAndSets, days);
        Assert.Equal(
            "rises at",
            SunTimes.Of(new(90, 0, 0, 0), new DateOnly(2023, 1, 1).AddDays(days.IndexOf(SunDay.RisesOnly)), 69).Says[
                ..8
            ]
        );
    }
}
