using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>How the published figures of lightning are computed by the shipped kernels.</summary>
internal static class LightningChecks
{
    public static IEnumerable<PublishedCheck> All() => [.. OfStrikes(), .. OfSphere(), .. OfVolume()];

    private static IEnumerable<PublishedCheck> OfStrikes() =>
        [
            new(
                "power/flash-density",
                "Anderson and Eriksson",
                row => FlashDensity.AndersonPerKm2Year(row["thunderDays"])
            ),
            new(
                "power/flash-density",
                "in proportion",
                row => FlashDensity.LinearPerKm2Year(row["thunderDays"], row["perDayCoefficient"])
            ),
            new("power/flash-density", "largest", row => FlashDensity.LargestPerKm2Year(row["thunderDays"])),
            new(
                "power/strike-frequency",
                "collection area",
                row => StrikeFrequency.CollectionM2(row["lengthM"], row["widthM"], row["heightM"])
            ),
            new(
                "power/strike-frequency",
                "strikes a year",
                row => StrikeFrequency.PerYear(row["densityPerKm2Year"], row["collectionM2"], row["placeFactor"])
            ),
            Separation("class III, in air", LightningClass.III, SeparatedBy.Air),
            Separation("class III, in masonry", LightningClass.III, SeparatedBy.Masonry),
            Separation("class II, in air", LightningClass.II, SeparatedBy.Air),
        ];

    private static IEnumerable<PublishedCheck> OfSphere() =>
        [
            new(
                "power/rolling-sphere",
                "protection angle",
                row => RollingSphere.AngleDeg(row["sphereM"], row["heightM"])
            ),
            new(
                "power/rolling-sphere",
                "sag between two rods",
                row => RollingSphere.SagM(row["sphereM"], row["apartM"])
            ),
            new(
                "power/rolling-sphere",
                "reach",
                row => RollingSphere.ReachM(row["sphereM"], row["heightM"], row["atM"])
            ),
            new(
                "power/rolling-sphere",
                "protected height",
                row => RollingSphere.ProtectedM(row["sphereM"], row["heightM"], row["asideM"])
            ),
            new(
                "power/rolling-sphere",
                "needed height",
                row => RollingSphere.NeededHeightM(row["sphereM"], row["asideM"], row["atM"]) ?? double.NaN
            ),
        ];

    private static IEnumerable<PublishedCheck> OfVolume() =>
        [
            new(
                "power/protected-volume",
                "height midway between two rods",
                row =>
                    ProtectedVolume.HeightM(
                        row["sphereM"],
                        row["rodM"],
                        [new(0, 0), new(row["apartM"], 0)],
                        new(row["apartM"] / 2, 0)
                    )
            ),
            new(
                "power/protected-volume",
                "height in the middle of four rods",
                row =>
                    ProtectedVolume.HeightM(
                        row["sphereM"],
                        row["rodM"],
                        [
                            new(row["apartM"] / 2, 0),
                            new(-row["apartM"] / 2, 0),
                            new(0, row["apartM"] / 2),
                            new(0, -row["apartM"] / 2),
                        ],
                        new(0, 0)
                    )
            ),
            new(
                "power/protected-volume",
                "height beside one rod",
                row => ProtectedVolume.HeightM(row["sphereM"], row["rodM"], [new(0, 0)], new(0, row["asideM"]))
            ),
        ];

    private static PublishedCheck Separation(string quantity, LightningClass protection, SeparatedBy between) =>
        new(
            "power/separation-distance",
            quantity,
            row => SeparationDistance.LeastM(protection, (int)row["downConductorCount"], row["alongM"], between)
        );
}
