using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>How each published figure of this trade is computed.</summary>
public static class PublishedChecks
{
    private const double WPerMJPerH = 1e6 / 3600;

    /// <summary>One check for every quantity named in the trade's published files.</summary>
    public static IReadOnlyList<PublishedCheck> All { get; } =
    [
        .. Of("sun/julian-day", ("julian-day", JulianDayOf)),
        .. Of("sun/year-calendar", ("month", row => Month(row) + 1), ("day-of-month", DayOfMonth)),
        .. Of(
            "sun/solar-position",
            ("psa-plus-zenith", row => PsaPlus(row).ZenithDeg),
            ("psa-plus-azimuth", row => PsaPlus(row).AzimuthDeg)
        ),
        .. Of(
            "sun/solar-geometry",
            ("equation-of-time", row => SolarGeometry.EquationOfTimeMin(Day(row))),
            ("solar-time", SolarTimeH),
            ("incidence-cosine", row => Angle.Cos(IncidenceDeg(row))),
            ("incidence", IncidenceDeg),
            ("zenith", row => SunOf(row).ZenithDeg),
            ("azimuth", row => SunOf(row).AzimuthDeg),
            ("sunset-hour-angle", row => SolarGeometry.SunsetHourAngleDeg(row["latitudeDeg"], row["declinationDeg"])),
            ("sunset-hour-angle-cooper", SunsetCooperDeg),
            (
                "beam-ratio",
                row =>
                    SolarGeometry.BeamRatio(row["latitudeDeg"], row["declinationDeg"], row["hourAngleDeg"], Plane(row))
            ),
            ("declination-cooper", row => SolarGeometry.DeclinationCooperDeg(Day(row)))
        ),
        .. Of(
            "sun/extraterrestrial-irradiance",
            ("normal-cosine", NormalWPerM2),
            (
                "normal-spencer",
                row => ExtraterrestrialIrradiance.NormalSpencerWPerM2(Day(row), row["solarConstantWPerM2"])
            ),
            (
                "daily-horizontal",
                row =>
                    ExtraterrestrialIrradiance.DailyHorizontalMJPerM2(
                        NormalWPerM2(row),
                        row["latitudeDeg"],
                        SolarGeometry.DeclinationCooperDeg(Day(row))
                    )
            ),
            (
                "hour-horizontal",
                row =>
                    ExtraterrestrialIrradiance.HourHorizontalMJPerM2(
                        NormalWPerM2(row),
                        row["latitudeDeg"],
                        SolarGeometry.DeclinationCooperDeg(Day(row)),
                        row["startHourAngleDeg"],
                        row["endHourAngleDeg"]
                    )
            ),
            (
                "daily-horizontal-given-sun",
                row =>
                    ExtraterrestrialIrradiance.DailyHorizontalMJPerM2(
                        row["normalWPerM2"],
                        row["latitudeDeg"],
                        row["declinationDeg"]
                    )
            )
        ),
        .. Of(
            "sun/decomposition",
            ("erbs-hourly", row => Decomposition.ErbsHourlyDiffuseShare(row["clearnessRatio"])),
            ("orgill-hollands-hourly", row => Decomposition.OrgillHollandsHourlyDiffuseShare(row["clearnessRatio"]))
        ),
        .. Of(
            "sun/daily-profile",
            ("published-share", ProfileShare),
            ("published-hour", row => row["dayMJPerM2"] * ProfileShare(row)),
            ("published-sum", row => DailyProfile.CollaresPereiraRablSumShare(row["sunsetHourAngleDeg"]))
        ),
        .. Of(
            "sun/transposition",
            ("slope-hour-clearness", row => SlopeHour(row).ClearnessRatio),
            ("slope-hour-diffuse-share", row => SlopeHour(row).DiffuseShare),
            ("slope-hour-isotropic", row => SlopeHourMJPerM2(row, Transposition.Isotropic)),
            ("slope-hour-hay-davies", row => SlopeHourMJPerM2(row, Transposition.HayDavies)),
            ("incidence", row => Transposition.IncidenceDeg(GivenSun(row), Plane(row))),
            ("beam", row => OnPlane(row, Transposition.HayDavies).BeamWPerM2),
            ("ground", row => OnPlane(row, Transposition.HayDavies).GroundWPerM2),
            ("isotropic-sky", row => OnPlane(row, Transposition.Isotropic).SkyWPerM2),
            ("hay-davies-sky", row => OnPlane(row, Transposition.HayDavies).SkyWPerM2),
            ("slope-hour-reindl", row => SlopeHourMJPerM2(row, Transposition.Reindl)),
            ("reindl-sky", row => OnPlane(row, Transposition.Reindl).SkyWPerM2),
            ("perez-sky", row => OnPlane(row, Perez).SkyWPerM2)
        ),
        .. LightChecks.All,
        .. NrelChecks.All,
        .. Of(
            "sun/cell-temperature",
            ("noct", row => CellTemperature.DegCByNoct(row["planeWPerM2"], row["airDegC"], row["noctDegC"])),
            (
                "faiman",
                row =>
                    CellTemperature.DegCByFaiman(
                        row["planeWPerM2"],
                        row["airDegC"],
                        row["windMPerS"],
                        row["lossWPerM2K"],
                        row["windLossWSPerM3K"]
                    )
            ),
            (
                "sandia",
                row =>
                    CellTemperature.DegCBySandia(
                        row["planeWPerM2"],
                        row["airDegC"],
                        row["windMPerS"],
                        (SandiaMount)row["mount"]
                    )
            )
        ),
        .. Of(
            "sun/daily-clearness",
            ("stationary-mean", row => DailyClearness.StationaryMeanRatio((int)row["classNumber"]))
        ),
        .. Of("sun/air-temperature", ("daily-shape", row => AirTemperature.DailyShapeShare(row["solarTimeH"]))),
        .. YearChecks.All,
    ];

    internal static IEnumerable<PublishedCheck> Of(
        string method,
        params (string Quantity, Func<PublishedCase, double> Obtain)[] checks
    ) => checks.Select(check => new PublishedCheck(method, check.Quantity, check.Obtain));

    private static int Day(PublishedCase row) => (int)row["dayOfYear"];

    private static int NoonOf(PublishedCase row) => ((Day(row) - 1) * 24) + 12;

    private static int Month(PublishedCase row) => YearCalendar.MonthOf(NoonOf(row));

    private static double DayOfMonth(PublishedCase row) =>
        YearCalendar.DayOf(NoonOf(row)) - YearCalendar.FirstDays[Month(row)] + 1;

    private static PlaneFacing Plane(PublishedCase row) => new(row["tiltDeg"], row["azimuthDeg"]);

    private static double JulianDayOf(PublishedCase row) =>
        JulianDay.DaysAtUtc((int)row["year"], (int)row["month"], (int)row["day"], row["utcH"]);

    private static SunAngles PsaPlus(PublishedCase row) =>
        SolarPosition.PsaPlus(JulianDayOf(row), row["latitudeDeg"], row["longitudeDeg"]);

    private static double SolarTimeH(PublishedCase row) =>
        SolarGeometry.SolarTimeH(
            row["clockH"],
            new(row["latitudeDeg"], row["longitudeDeg"], ElevationM: 0, row["utcOffsetH"]),
            SolarGeometry.EquationOfTimeMin(Day(row))
        );

    private static SunAngles SunOf(PublishedCase row) =>
        SolarGeometry.Sun(row["latitudeDeg"], row["declinationDeg"], row["hourAngleDeg"]);

    private static double IncidenceDeg(PublishedCase row) =>
        SolarGeometry.IncidenceDeg(row["latitudeDeg"], row["declinationDeg"], row["hourAngleDeg"], Plane(row));

    private static double SunsetCooperDeg(PublishedCase row) =>
        SolarGeometry.SunsetHourAngleDeg(row["latitudeDeg"], SolarGeometry.DeclinationCooperDeg(Day(row)));

    private static double NormalWPerM2(PublishedCase row) =>
        ExtraterrestrialIrradiance.NormalCosineWPerM2(Day(row), row["solarConstantWPerM2"]);

    private static double ProfileShare(PublishedCase row) =>
        DailyProfile.CollaresPereiraRablShare(row["hourAngleDeg"], SunsetCooperDeg(row));

    private static SunAngles GivenSun(PublishedCase row) => new(row["zenithDeg"], row["sunAzimuthDeg"]);

    private static PlaneIrradiance OnPlane(
        PublishedCase row,
        Func<SkyMoment, SunAngles, PlaneFacing, double, PlaneIrradiance> sky
    ) =>
        sky(
            new(
                row["globalWPerM2"],
                row["directNormalWPerM2"],
                row["diffuseWPerM2"],
                row["extraterrestrialNormalWPerM2"]
            ),
            GivenSun(row),
            Plane(row),
            row["albedoShare"]
        );

    private static PlaneIrradiance Perez(SkyMoment sky, SunAngles sun, PlaneFacing plane, double albedoShare) =>
        Transposition.Perez(sky, sun, plane, albedoShare, PerezSet.AllSites1990);

    // The book's hour: clearness from the hour's irradiation, diffuse by Erbs, sun in the middle of the hour.
    private static (double ClearnessRatio, double DiffuseShare, double NormalWPerM2) SlopeHour(PublishedCase row)
    {
        const double bookSolarConstantWPerM2 = 1367;
        var normalWPerM2 = ExtraterrestrialIrradiance.NormalCosineWPerM2(Day(row), bookSolarConstantWPerM2);
        var aboveMJPerM2 = ExtraterrestrialIrradiance.HourHorizontalMJPerM2(
            normalWPerM2,
            row["latitudeDeg"],
            SolarGeometry.DeclinationCooperDeg(Day(row)),
            row["hourAngleDeg"] - 7.5,
            row["hourAngleDeg"] + 7.5
        );
        var clearnessRatio = row["hourMJPerM2"] / aboveMJPerM2;
        return (clearnessRatio, Decomposition.ErbsHourlyDiffuseShare(clearnessRatio), normalWPerM2);
    }

    private static double SlopeHourMJPerM2(
        PublishedCase row,
        Func<SkyMoment, SunAngles, PlaneFacing, double, PlaneIrradiance> sky
    )
    {
        var hour = SlopeHour(row);
        var sun = SolarGeometry.Sun(
            row["latitudeDeg"],
            SolarGeometry.DeclinationCooperDeg(Day(row)),
            row["hourAngleDeg"]
        );
        var globalWPerM2 = row["hourMJPerM2"] * WPerMJPerH;
        var diffuseWPerM2 = globalWPerM2 * hour.DiffuseShare;
        var directNormalWPerM2 = (globalWPerM2 - diffuseWPerM2) / Angle.Cos(sun.ZenithDeg);
        var moment = new SkyMoment(globalWPerM2, directNormalWPerM2, diffuseWPerM2, hour.NormalWPerM2);
        return sky(moment, sun, Plane(row), row["albedoShare"]).TotalWPerM2 / WPerMJPerH;
    }
}
