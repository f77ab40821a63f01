using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class YearSunTests
{
    [Fact]
    public void Is_a_direction_everywhere_and_always() =>
        Gen.Select(
                Gen.Double[0, 8760],
                Gen.OneOf(Gen.Double[-90, 90], Gen.Const(90.0), Gen.Const(-90.0)),
                Gen.Double[-180, 180]
            )
            .Sample(
                (yearH, latitudeDeg, longitudeDeg) =>
                {
                    var sun = new YearSun(new(latitudeDeg, longitudeDeg, 0, 0)).DirectionAt(yearH);
                    var length =
                        (sun.EastShare * sun.EastShare)
                        + (sun.NorthShare * sun.NorthShare)
                        + (sun.UpShare * sun.UpShare);
                    return Math.Abs(length - 1) < 1e-6
                        && sun.Angles is { ZenithDeg: >= 0 and <= 180, AzimuthDeg: >= 0 and <= 360 };
                }
            );

    [Theory]
    [InlineData(90, 12, 14)]
    [InlineData(-90, -12, 0)]
    [InlineData(70, 3, 14)]
    public void Hours_of_polar_day_and_night_are_lit_or_dark_and_never_undefined(
        double latitudeDeg,
        double utcOffsetH,
        double longitudeDeg
    )
    {
        var sun = new YearSun(new(latitudeDeg, longitudeDeg, 0, utcOffsetH));
        var lit = Enumerable.Range(0, YearCalendar.HourCount).Select(hour => SunlitHour.Of(sun, hour)).ToList();
        Assert.All(
            lit,
            hour =>
                Assert.True(
                    double.IsFinite(hour.HorizontalWPerM2 + hour.NormalWPerM2 + hour.Sun.ZenithDeg)
                        && hour.LitShare is >= 0 and <= 1
                        && hour.HorizontalWPerM2 >= -1e-9
                )
        );
        Assert.Contains(lit, hour => hour.LitShare == 1);
        Assert.Contains(lit, hour => hour.LitShare == 0);
    }
}
