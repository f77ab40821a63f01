using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>The part of <see cref="PublishedChecks"/> that concerns protection and filters.</summary>
internal static class ProtectionChecks
{
    // The lowest impulse current that the kernel takes: it has no part in the figures asked for here.
    private const double AnyImpulseKA = 1;

    internal static IEnumerable<PublishedCheck> All() =>
        [
            new(
                "power/output-filter",
                "critical length",
                row => OutputFilter.CriticalM(row["riseNs"] * 1e-9, row["waveMPerUs"] * 1e6)
            ),
            new(
                "power/output-filter",
                "peak at the motor",
                row => OutputFilter.PeakV(row["busV"], row["cableM"], row["criticalM"])
            ),
            new("power/output-filter", "kind of filter", row => (double)Filter(row).Kind),
            new(
                "power/impulse-withstand",
                "photovoltaic circuit",
                row => ImpulseWithstand.WithstandKV(row["voltageV"], OvervoltageCategory.CategoryTwo)
            ),
            new(
                "power/impulse-withstand",
                "motor",
                row => ImpulseWithstand.WithstandKV(row["voltageV"], OvervoltageCategory.CategoryThree)
            ),
            Critical("critical length of a ground plant", SurgeSite.GroundPlant),
            Critical("critical length of a farm building", SurgeSite.FarmBuilding),
            Critical("critical length of a dwelling", SurgeSite.Dwelling),
            new(
                "power/surge-protection",
                "continuous voltage",
                row =>
                    SurgeProtection
                        .Direct(row["coldV"], row["openCircuitV"], 6, AnyImpulseKA, LightningRod.None, 0)
                        .LeastContinuousV
            ),
            new(
                "power/surge-protection",
                "let-through",
                row =>
                    SurgeProtection
                        .Direct(500, 500, row["withstandKV"], AnyImpulseKA, LightningRod.None, 0)
                        .MostLetThroughKV
            ),
            new(
                "power/surge-protection",
                "impulse current",
                row => SurgeProtection.ImpulseKA((LightningClass)((int)row["lightningClass"] - 1))
            ),
            Earth("size in conduit", EarthRun.Guarded),
            Earth("size from frames with a rod", EarthRun.FrameWithRod),
        ];

    private static PublishedCheck Critical(string quantity, SurgeSite site) =>
        new("power/surge-protection", quantity, row => SurgeProtection.CriticalLengthM(row["flashesPerKm2Year"], site));

    private static PublishedCheck Earth(string quantity, EarthRun run) =>
        new(
            "power/equipment-earth",
            quantity,
            row => EquipmentEarth.For(row["faultA"], row["timeS"], row["kCoefficient"], run).SizeMm2
        );

    private static FilterNeed Filter(PublishedCase row) =>
        OutputFilter.For(
            row["busV"],
            row["motorV"],
            row["cableM"],
            row["riseNs"] * 1e-9,
            double.PositiveInfinity,
            double.PositiveInfinity
        );
}
