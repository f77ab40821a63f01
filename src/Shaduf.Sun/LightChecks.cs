using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>How the published figures of air, refraction and glass are computed.</summary>
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
    ];

    private static Glass Pane(PublishedCase row) => new(row["glassIndex"], row["extinctionPerM"], row["thicknessM"]);
}
