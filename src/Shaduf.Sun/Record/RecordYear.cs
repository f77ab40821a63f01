using System.Collections.Immutable;
using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>
/// A year of weather from a record: every value is held against what the sun allows; faults are counted, repaired where
/// a stated rule allows, and refused otherwise.
/// </summary>
public static class RecordYear
{
    /// <summary>Clock shift that is accepted without a word [min].</summary>
    public const double UsualShiftMin = 20;

    /// <summary>Clock shift above which a record is refused [min].</summary>
    public const double MostShiftMin = 40;

    /// <summary>Share of a month's hours that may be missing or impossible.</summary>
    public const double MostLostShare = 0.05;

    /// <summary>Share of a month's sunlit hours whose parts may not add up to the global irradiance.</summary>
    public const double MostNotClosedShare = 0.25;

    /// <summary>Checks and repairs a year of a record.</summary>
    /// <param name="place">Where the record was taken; latitude -66 to 66.</param>
    /// <param name="hours">8,760 hours in local standard time, the first from 00:00 to 01:00 of 1 January.</param>
    /// <param name="isAirAtEnd">Whether the air temperature was read at the end of the hour; else it is the hour's mean.</param>
    /// <returns>The year with what was found; without a year when it is refused.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are not 8,760 hours, or the place is outside its range.</exception>
    /// <source>
    /// Limits: Long, Dutton 2002; split: Erbs, Klein, Duffie 1982; rules of repair: judgement, see the method page
    /// </source>
    public static RecordedYear Of(Place place, IReadOnlyList<RecordHour> hours, bool isAirAtEnd)
    {
        Within.RequireCount(hours.Count, YearCalendar.HourCount, YearCalendar.HourCount);
        Within.Require(place.LatitudeDeg, -66, 66, "deg");
        var yearSun = new YearSun(place);
        var suns = Enumerable.Range(0, YearCalendar.HourCount).Select(hour => SunlitHour.Of(yearSun, hour)).ToArray();
        var log = new RecordLog(hours);
        var shiftMin = ClockShift.MonthsMin(place, [.. hours.Select((hour, i) => Raw(hour, suns[i]))]);
        var refusals = RecordRefusals.OfClock(shiftMin, log).ToList();
        if (refusals.Count > 0)
        {
            return Refused();
        }

        // Noted hour by hour before anything is filled: the months are judged by the record's own values.
        var light = hours.Select((hour, i) => RecordLight.Of(hour, suns[i], matter => log.Add(matter, i))).ToArray();
        var air = hours.Select((hour, i) => Air(hour, i, log)).ToArray();
        refusals.AddRange(RecordRefusals.OfMonths(suns, log));
        if (refusals.Count > 0)
        {
            return Refused();
        }

        var globalWPerM2 = FilledGlobal(light, suns, log, refusals);
        Fill(air, _ => true, (RecordMatter.AirBridged, RecordMatter.AirCopied), log, refusals);
        refusals.AddRange(RecordRefusals.OfSky(globalWPerM2, suns, log));
        if (refusals.Count > 0)
        {
            return Refused();
        }

        var airDegC = air.Select(value => value!.Value).ToArray();
        return new(
            Year(light, globalWPerM2, isAirAtEnd ? OverTheHour(airDegC) : airDegC, suns),
            log.Counts,
            shiftMin,
            log.CountOf(RecordMatter.NoLight) / (double)suns.Count(sun => sun.LitShare > 0),
            []
        );

        RecordedYear Refused() => new(null, log.Counts, shiftMin, 0, refusals);
    }

    // For the clock alone: what is plainly no irradiance counts as unknown.
    private static double? Raw(RecordHour hour, SunlitHour sun) =>
        hour.GlobalWPerM2 is >= 0 and <= 2000 ? hour.GlobalWPerM2
        : sun.LitShare == 0 ? 0
        : null;

    private static double? Air(RecordHour hour, int at, RecordLog log)
    {
        if (!hour.HasRow)
        {
            log.Add(RecordMatter.NoRow, at);
        }

        if (hour.AirDegC is > -60 and < 60)
        {
            return hour.AirDegC;
        }

        if (hour.AirDegC is not null)
        {
            log.Add(RecordMatter.AirImpossible, at);
        }

        log.Add(RecordMatter.NoAir, at);
        return null;
    }

    private static double[] FilledGlobal(
        RecordLight[] light,
        SunlitHour[] suns,
        RecordLog log,
        List<RecordRefusal> refusals
    )
    {
        double?[] clearness =
        [
            .. light.Select(
                (each, hour) =>
                    suns[hour].LitShare > 0 && each.GlobalWPerM2 is { } global
                        ? Math.Min(1, global / suns[hour].HorizontalWPerM2)
                        : (double?)null
            ),
        ];
        Fill(
            clearness,
            hour => suns[hour].LitShare > 0,
            (RecordMatter.LightBridged, RecordMatter.LightCopied),
            log,
            refusals
        );
        return [.. light.Select((each, i) => each.GlobalWPerM2 ?? ((clearness[i] ?? 0) * suns[i].HorizontalWPerM2))];
    }

    private static void Fill(
        double?[] values,
        Func<int, bool> matters,
        (RecordMatter Bridged, RecordMatter Copied) cures,
        RecordLog log,
        List<RecordRefusal> refusals
    ) =>
        GapFill.Fill(
            values,
            matters,
            (hour, cure) =>
            {
                if (cure == GapCure.None)
                {
                    refusals.Add(RecordRefusals.OfGap(hour, cures.Bridged, log));
                }
                else
                {
                    log.Add(cure == GapCure.Neighbours ? cures.Bridged : cures.Copied, hour);
                }
            }
        );

    // Read at the ends of the hours: an hour's mean is half of both its ends.
    private static double[] OverTheHour(double[] atEndDegC) =>
        [
            .. atEndDegC.Select(
                (value, hour) => (value + atEndDegC[(hour + atEndDegC.Length - 1) % atEndDegC.Length]) / 2
            ),
        ];

    private static WeatherYear Year(RecordLight[] light, double[] globalWPerM2, double[] airDegC, SunlitHour[] suns)
    {
        var parts = light
            .Select(
                (each, hour) =>
                    each.Parts
                    ?? (
                        globalWPerM2[hour] > 0
                            ? Decomposition.ErbsSplit(
                                globalWPerM2[hour],
                                suns[hour].Sun.ZenithDeg,
                                suns[hour].NormalWPerM2
                            )
                            : default
                    )
            )
            .ToArray();
        return new(
            [.. globalWPerM2],
            [.. parts.Select(part => part.DirectNormalWPerM2)],
            [.. parts.Select(part => part.DiffuseWPerM2)],
            [.. airDegC],
            [.. suns.Select(sun => sun.Sun.ZenithDeg)],
            [.. suns.Select(sun => sun.Sun.AzimuthDeg)],
            [.. suns.Select(sun => sun.NormalWPerM2)]
        );
    }
}
