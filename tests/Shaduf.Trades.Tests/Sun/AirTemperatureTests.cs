using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class AirTemperatureTests
{
    [Fact]
    public void Daily_means_restore_the_months() =>
        Gen.Double[-50, 50]
            .Array[12]
            .Sample(monthsDegC =>
            {
                var daysDegC = AirTemperature.DailyMeansDegC(monthsDegC);
                var first = 0;
                for (var month = 0; month < 12; month++)
                {
                    var ofMonth = daysDegC.AsSpan().Slice(first, YearCalendar.DaysInMonth[month]).ToArray();
                    first += ofMonth.Length;
                    if (Math.Abs(ofMonth.Average() - monthsDegC[month]) > 1e-9)
                    {
                        return false;
                    }
                }

                return first == 365;
            });

    [Fact]
    public void Daily_means_run_smoothly_through_a_seasonal_year()
    {
        double[] monthsDegC = [24, 24.5, 23, 20, 16, 13, 12.5, 14, 17, 20, 22, 23.5];
        var daysDegC = AirTemperature.DailyMeansDegC(monthsDegC);
        for (var day = 0; day < 365; day++)
        {
            Assert.InRange(Math.Abs(daysDegC[(day + 1) % 365] - daysDegC[day]), 0, 0.2);
        }
    }

    [Fact]
    public void The_swing_leaves_the_day_its_mean() =>
        Gen.Double[0, 1]
            .Sample(offsetH =>
                Math.Abs(Enumerable.Range(0, 24).Sum(h => AirTemperature.DailyShapeShare(h + offsetH))) < 1e-12
            );

    [Fact]
    public void A_dull_month_has_no_swing()
    {
        Assert.Equal(0, AirTemperature.DailySwingK(0.1));
        Assert.Equal(10.27, AirTemperature.DailySwingK(0.6), 1e-9);
    }

    [Fact]
    public void Refuses_eleven_months() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => AirTemperature.DailyMeansDegC(new double[11]));
}
