using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>How the published figures of air, clear skies, splits, glass and monthly planes are computed.</summary>
internal static class LightChecks
{
    internal static IReadOnlyList<PublishedCheck> All { get; } =
    [
        new("sun/air-mass", "kasten-young", row => AirMass.KastenYoungRatio(row["zenithDeg"])),
        new("sun/air-mass", "kasten-1966", row => AirMass.KastenRatio(row["zenithDeg"])),
        new("sun/air-mass", "pressure", row => AirMass.PressurePa(row["elevationM"])),
        new(
            "sun/refraction",
            "refraction",
            row => Refraction.NrelDeg(row["elevationDeg"], row["pressureHPa"], row["airDegC"])
        ),
        new(
            "sun/incidence-modifier",
            "ashrae",
            row => IncidenceModifier.AshraeShare(row["incidenceDeg"], row["slantFactor"])
        ),
        new(
            "sun/incidence-modifier",
            "physical",
            row => IncidenceModifier.PhysicalShare(row["incidenceDeg"], Pane(row))
        ),
        new(
            "sun/incidence-modifier",
            "martin-ruiz",
            row => IncidenceModifier.MartinRuizShare(row["incidenceDeg"], row["angularFactor"])
        ),
        new("sun/incidence-modifier", "sky-slant", row => IncidenceModifier.SkyDeg(row["tiltDeg"])),
        new("sun/incidence-modifier", "ground-slant", row => IncidenceModifier.GroundDeg(row["tiltDeg"])),
        new("sun/clear-sky", "haurwitz", row => ClearSky.HaurwitzWPerM2(row["zenithDeg"])),
        new("sun/clear-sky", "ineichen-global", row => Ineichen(row).GlobalWPerM2),
        new("sun/clear-sky", "ineichen-direct", row => Ineichen(row).DirectNormalWPerM2),
        new("sun/clear-sky", "ineichen-diffuse", row => Ineichen(row).DiffuseWPerM2),
        new("sun/clear-sky", "solis-global", row => Solis(row).GlobalWPerM2),
        new("sun/clear-sky", "solis-direct", row => Solis(row).DirectNormalWPerM2),
        new("sun/clear-sky", "solis-diffuse", row => Solis(row).DiffuseWPerM2),
        new(
            "sun/decomposition",
            "erbs-daily",
            row => Decomposition.ErbsDailyDiffuseShare(row["clearnessRatio"], row["sunsetHourAngleDeg"])
        ),
        new(
            "sun/decomposition",
            "erbs-monthly",
            row => Decomposition.ErbsMonthlyDiffuseShare(row["clearnessRatio"], row["sunsetHourAngleDeg"])
        ),
        new("sun/decomposition", "boland-hourly-split", row => Direct(row, Decomposition.BolandHourlyDiffuseShare)),
        new("sun/decomposition", "erbs-driesse-split", row => Direct(row, Decomposition.ErbsDriesseHourlyDiffuseShare)),
        new(
            "sun/decomposition",
            "disc-direct",
            row =>
                Decomposition.DiscDirectNormalWPerM2(
                    row["globalWPerM2"],
                    row["zenithDeg"],
                    row["extraterrestrialNormalWPerM2"],
                    row["pressurePa"]
                )
        ),
        new("sun/monthly-plane", "month-beam-ratio", MonthBeamRatio),
        new("sun/monthly-plane", "month-on-plane", MonthMJPerM2),
    ];

    private static SkyMoment Ineichen(PublishedCase row) =>
        ClearSky.IneichenPerez(
            row["zenithDeg"],
            row["pressurePa"],
            row["elevationM"],
            row["linkeFactor"],
            row["extraterrestrialNormalWPerM2"]
        );

    private static SkyMoment Solis(PublishedCase row) =>
        ClearSky.SimplifiedSolis(
            row["zenithDeg"],
            row["pressurePa"],
            row["aerosolNumber"],
            row["waterMm"],
            row["extraterrestrialNormalWPerM2"]
        );

    private static double Direct(PublishedCase row, Func<double, double> diffuseShare) =>
        Decomposition
            .Split(row["globalWPerM2"], row["zenithDeg"], row["extraterrestrialNormalWPerM2"], diffuseShare)
            .DirectNormalWPerM2;

    private static double MonthBeamRatio(PublishedCase row) =>
        MonthlyPlane.BeamRatio(row["latitudeDeg"], DeclinationDeg(row), row["tiltDeg"]);

    // The book's way: clearness of the month's average day, diffuse by Erbs, then the plane.
    private static double MonthMJPerM2(PublishedCase row)
    {
        var aboveMJPerM2 = ExtraterrestrialIrradiance.DailyHorizontalMJPerM2(
            ExtraterrestrialIrradiance.NormalCosineWPerM2((int)row["dayOfYear"], row["solarConstantWPerM2"]),
            row["latitudeDeg"],
            DeclinationDeg(row)
        );
        var diffuseShare = Decomposition.ErbsMonthlyDiffuseShare(
            row["horizontalMJPerM2"] / aboveMJPerM2,
            SolarGeometry.SunsetHourAngleDeg(row["latitudeDeg"], DeclinationDeg(row))
        );
        return MonthlyPlane.MJPerM2(
            row["horizontalMJPerM2"],
            diffuseShare,
            MonthBeamRatio(row),
            row["tiltDeg"],
            row["albedoShare"]
        );
    }

    private static double DeclinationDeg(PublishedCase row) =>
        SolarGeometry.DeclinationCooperDeg((int)row["dayOfYear"]);

    private static Glass Pane(PublishedCase row) => new(row["glassIndex"], row["extinctionPerM"], row["thicknessM"]);
}
