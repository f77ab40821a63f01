using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>How the steps of the NREL algorithm's published example are computed.</summary>
internal static class NrelChecks
{
    internal static IReadOnlyList<PublishedCheck> All { get; } =
    [
        Of("earth-longitude", row => Centre(row).EarthLongitudeDeg),
        Of("earth-latitude", row => Centre(row).EarthLatitudeDeg),
        Of("distance", row => Centre(row).DistanceRatio),
        Of("nutation-longitude", row => Centre(row).NutationLongitudeDeg),
        Of("nutation-obliquity", row => Centre(row).NutationObliquityDeg),
        Of("obliquity", row => Centre(row).ObliquityDeg),
        Of("apparent-longitude", row => Centre(row).ApparentLongitudeDeg),
        Of("ascension", row => Centre(row).AscensionDeg),
        Of("declination", row => Centre(row).DeclinationDeg),
        Of("hour-angle", row => Centre(row).HourAngleDeg(row["longitudeDeg"])),
        Of("site-declination", row => Seen(row).DeclinationDeg),
        Of("site-hour-angle", row => Seen(row).HourAngleDeg),
        Of("elevation", row => 90 - Seen(row).True.ZenithDeg),
        Of("refraction", row => Seen(row).RefractionDeg),
        Of("zenith", row => Seen(row).ApparentZenithDeg),
        Of("azimuth", row => Seen(row).True.AzimuthDeg),
        Of("incidence", IncidenceDeg),
        Of("equation-of-time", row => Centre(row).EquationOfTimeMin),
        new("sun/sun-times", "rise", row => Times(row).RiseH!.Value),
        new("sun/sun-times", "transit", row => Times(row).TransitH),
        new("sun/sun-times", "set", row => Times(row).SetH!.Value),
    ];

    private static PublishedCheck Of(string quantity, Func<PublishedCase, double> obtain) =>
        new("sun/solar-position", $"nrel-{quantity}", obtain);

    private static double JulianDays(PublishedCase row) =>
        JulianDay.DaysAtUtc((int)row["year"], (int)row["month"], (int)row["day"], row["utcH"]);

    private static NrelSun Centre(PublishedCase row) => NrelSun.At(JulianDays(row), row["deltaTS"]);

    private static SunSighting Seen(PublishedCase row) =>
        SolarPosition.Nrel(
            JulianDays(row),
            row["deltaTS"],
            new(row["latitudeDeg"], row["longitudeDeg"], row["elevationM"], UtcOffsetH: 0),
            new(row["pressureHPa"], row["airDegC"])
        );

    private static double IncidenceDeg(PublishedCase row)
    {
        var seen = Seen(row);
        return Transposition.IncidenceDeg(
            new(seen.ApparentZenithDeg, seen.True.AzimuthDeg),
            new(row["tiltDeg"], row["azimuthDeg"])
        );
    }

    private static SunTimes Times(PublishedCase row) =>
        SunTimes.Of(
            new(row["latitudeDeg"], row["longitudeDeg"], ElevationM: 0, row["utcOffsetH"]),
            new((int)row["year"], (int)row["month"], (int)row["day"]),
            row["deltaTS"]
        );
}
