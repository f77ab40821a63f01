using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Sun;

/// <summary>What the sun does between one midnight and the next.</summary>
public enum SunDay
{
    /// <summary>It rises and sets.</summary>
    RisesAndSets,

    /// <summary>It is up all day.</summary>
    UpAllDay,

    /// <summary>It is down all day.</summary>
    DownAllDay,

    /// <summary>It rises and does not set: the polar day begins.</summary>
    RisesOnly,

    /// <summary>It sets and did not rise: the polar day ends.</summary>
    SetsOnly,
}

/// <summary>
/// Sunrise, highest stand and sunset of a day, in hours of local standard time since the date's midnight; below 0 or above
/// 24 on the date before or after.
/// </summary>
/// <param name="Day">What the sun does.</param>
/// <param name="TransitH">When it crosses the meridian [h].</param>
/// <param name="TransitElevationDeg">How high its centre stands then, without refraction [deg].</param>
/// <param name="RiseH">When its upper edge comes up [h]; null when it does not.</param>
/// <param name="SetH">When its upper edge goes down [h]; null when it does not.</param>
public sealed record SunTimes(SunDay Day, double TransitH, double TransitElevationDeg, double? RiseH, double? SetH)
{
    // Centre of the sun when its upper edge is seen on a level horizon.
    private const double EdgeDeg = -0.8333;

    /// <summary>The times in words.</summary>
    public string Says =>
        Day switch
        {
            SunDay.RisesAndSets => $"up from {Clock(RiseH!.Value)} to {Clock(SetH!.Value)}",
            SunDay.UpAllDay => "up all day and all night",
            SunDay.DownAllDay => "down all day",
            SunDay.RisesOnly => $"rises at {Clock(RiseH!.Value)} and stays up",
            _ => $"sets at {Clock(SetH!.Value)} and stays down",
        };

    /// <summary>The times of a date.</summary>
    /// <param name="place">The site, latitude up to the poles.</param>
    /// <param name="date">The date in local standard time, 1601 to 2199.</param>
    /// <param name="deltaTS">Terrestrial time less universal time [s], -20 to 500; 69 in the 2020s.</param>
    /// <returns>The times; with no sunrise or no sunset, what there is instead.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <exception cref="ArithmeticException">A crossing of the horizon does not settle.</exception>
    /// <source>
    /// Condition of Reda, Andreas, NREL/TP-560-34302, 2008, appendix A.2 (centre at -0.8333 deg), solved on the sun itself
    /// instead of on three days' interpolation
    /// </source>
    public static SunTimes Of(Place place, DateOnly date, double deltaTS)
    {
        place.Require();
        Within.RequireCount(date.Year, 1601, 2199);
        var midnight = JulianDay.DaysAtUtc(date.Year, date.Month, date.Day, 0) - (place.UtcOffsetH / 24);
        double HeightDeg(double hour)
        {
            var sun = NrelSun.At(midnight + (hour / 24), deltaTS);
            return 90
                - SolarGeometry
                    .Sun(place.LatitudeDeg, sun.DeclinationDeg, sun.HourAngleDeg(place.LongitudeDeg))
                    .ZenithDeg
                - EdgeDeg;
        }

        var transitH = 12.0;
        for (var round = 0; round < 4; round++)
        {
            transitH -= NrelSun.At(midnight + (transitH / 24), deltaTS).HourAngleDeg(place.LongitudeDeg) / 15;
        }

        var (before, noon, after) = (HeightDeg(transitH - 12), HeightDeg(transitH), HeightDeg(transitH + 12));
        double? morningH = Crosses(before, noon) ? Crossing(HeightDeg, transitH - 12, transitH) : null;
        double? eveningH = Crosses(noon, after) ? Crossing(HeightDeg, transitH, transitH + 12) : null;
        var riseH = noon >= 0 ? morningH : eveningH;
        var setH = noon >= 0 ? eveningH : morningH;
        return new(Kind(riseH, setH, noon), transitH, noon + EdgeDeg, riseH, setH);
    }

    private static SunDay Kind(double? riseH, double? setH, double noonDeg) =>
        (riseH, setH) switch
        {
            (not null, not null) => SunDay.RisesAndSets,
            (not null, null) => SunDay.RisesOnly,
            (null, not null) => SunDay.SetsOnly,
            _ => noonDeg >= 0 ? SunDay.UpAllDay : SunDay.DownAllDay,
        };

    private static bool Crosses(double oneDeg, double otherDeg) => oneDeg >= 0 != otherDeg >= 0;

    // Halving that aims: the false position, its lazy end halved (Illinois).
    private static double Crossing(Func<double, double> heightDeg, double startH, double endH)
    {
        var (a, fa, b, fb) = (startH, heightDeg(startH), endH, heightDeg(endH));
        for (var round = 0; round < 100; round++)
        {
            var middle = ((a * fb) - (b * fa)) / (fb - fa);
            var height = heightDeg(middle);
            if (Math.Abs(height) < 1e-7 || Math.Abs(b - a) < 1e-7)
            {
                return middle;
            }

            if (Crosses(height, fb))
            {
                (a, fa) = (b, fb);
            }
            else
            {
                fa /= 2;
            }

            (b, fb) = (middle, height);
        }

        throw new ArithmeticException("The sun's crossing of the horizon does not settle.");
    }

    private static string Clock(double hours)
    {
        var minutes = (int)Math.Round(hours * 60);
        var day = Math.DivRem(((minutes % 1440) + 1440) % 1440, 60, out var minute);
        return Invariant($"{day:00}:{minute:00}");
    }
}
