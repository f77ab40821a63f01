using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>How the published figures of light and earth are computed by the shipped kernels.</summary>
internal static class GuardChecks
{
    public static IEnumerable<PublishedCheck> All() =>
        [.. OfEarth(), .. OfGroups(), .. LightningChecks.All(), .. OfLight()];

    private static IEnumerable<PublishedCheck> OfEarth() =>
        [
            new("power/protective-conductor", "adiabatic section", AdiabaticMm2),
            new(
                "power/protective-conductor",
                "adiabatic standard section",
                row => ConductorResistance.StandardMm2(Conductor.CopperClass2, AdiabaticMm2(row))
            ),
            new(
                "power/protective-conductor",
                "section by the line conductor",
                row => ProtectiveConductor.ByLineMm2(row["lineMm2"])
            ),
            new(
                "power/earth-rod",
                "resistance of one rod",
                row => EarthRod.ResistanceOhm(row["resistivityOhmM"], row["lengthM"], row["diameterM"])
            ),
        ];

    private static IEnumerable<PublishedCheck> OfGroups() =>
        [
            new(
                "power/rod-group",
                "resistance of rods in a line",
                row =>
                    RodGroup.InLineOhm(
                        row["resistivityOhmM"],
                        row["lengthM"],
                        row["diameterM"],
                        (int)row["count"],
                        row["spacingM"]
                    )
            ),
            new(
                "power/rod-group",
                "factor of rods in a line",
                row => RodGroup.LineFactor((int)row["count"], row["sharedRatio"])
            ),
            new(
                "power/rod-group",
                "factor of rods in a hollow square",
                row => RodGroup.HollowSquareFactor((int)row["perSide"], row["sharedRatio"])
            ),
            new(
                "power/buried-wire",
                "resistance of a straight wire",
                row => BuriedWire.StraightOhm(row["resistivityOhmM"], row["lengthM"], row["diameterM"], row["depthM"])
            ),
            new(
                "power/buried-wire",
                "resistance of a ring",
                row => BuriedWire.RingOhm(row["resistivityOhmM"], row["ringM"], row["diameterM"], row["depthM"])
            ),
            new(
                "power/soil-test",
                "resistivity from four pins",
                row => SoilTest.FourPinsOhmM(row["spacingM"], row["readingOhm"])
            ),
            new(
                "power/soil-test",
                "resistivity from a driven rod",
                row => SoilTest.DrivenRodOhmM(row["lengthM"], row["diameterM"], row["readingOhm"])
            ),
            .. new[] { LightningClass.I, LightningClass.II, LightningClass.III }.Select(each => new PublishedCheck(
                "power/electrode-length",
                $"class {each}",
                row => ElectrodeLength.LeastM(each, row["resistivityOhmM"])
            )),
        ];

    private static IEnumerable<PublishedCheck> OfLight() =>
        [
            new(
                "power/point-light",
                "illuminance from an intensity",
                row => PointLight.Lux(row["intensityCd"], row["heightM"], row["asideM"])
            ),
            new(
                "power/point-light",
                "illuminance from a flat lamp",
                row => new Luminaire(row["fluxLm"], []).Lux(row["heightM"], row["asideM"], row["keptShare"])
            ),
            new(
                "power/point-light",
                "mean by the lumen method",
                row => PointLight.MeanLux(row["fluxLm"], row["usedShare"], row["keptShare"], row["areaM2"])
            ),
            new(
                "power/lamp-battery",
                "capacity",
                row =>
                    LampBattery.CapacityWh(
                        row["nightlyWh"],
                        row["autonomyDays"],
                        row["depthShare"],
                        row["efficiencyShare"],
                        row["coldShare"]
                    ) / row["batteryV"]
            ),
            new(
                "power/lamp-battery",
                "share left in the cold",
                row => LampBattery.ColdShare(BatteryKind.LeadAcid, row["degC"])
            ),
            new(
                "power/charging-module",
                "rating",
                row =>
                    ChargingModule.RatingW(
                        row["nightlyWh"],
                        row["sunKWhPerM2Day"],
                        row["keptShare"],
                        row["marginRatio"]
                    )
            ),
        ];

    private static double AdiabaticMm2(PublishedCase row) =>
        ProtectiveConductor.AdiabaticMm2(row["faultA"], row["timeS"], row["kCoefficient"]);
}
