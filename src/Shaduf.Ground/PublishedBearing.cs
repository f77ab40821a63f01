using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>Checks of shallow footings against published rows.</summary>
internal static class PublishedBearing
{
    internal static IEnumerable<PublishedCheck> All =>
        [
            .. Factors,
            new(
                "ground/bearing-resistance",
                "terzaghi-square",
                row =>
                    BearingResistance.TerzaghiSquareKPa(
                        Printed(BearingFactors.Terzaghi(row["frictionDeg"])),
                        Soil(row),
                        row["surchargeKPa"],
                        row["widthM"]
                    )
            ),
            new("ground/bearing-resistance", "annex-d-use", AnnexDShare),
            new(
                "ground/bearing-resistance",
                "undrained",
                row =>
                    BearingResistance.UndrainedKPa(
                        new(row["widthM"], row["lengthM"], row["forceKN"], row["sideKN"], 0),
                        row["cohesionKPa"],
                        row["surchargeKPa"]
                    )
            ),
            new(
                "ground/bearing-resistance",
                "local-friction",
                row => new SoilStrength(row["frictionDeg"], 0, 17).Local.FrictionDeg
            ),
            .. Slides,
            .. Concrete,
            new("ground/tipping", "held", row => Tipping.HeldKNm(row["weightKN"], row["widthM"])),
            // Without the partial factors.
            new(
                "ground/tipping",
                "safety",
                row =>
                    Tipping.HeldKNm(row["weightKN"], row["widthM"])
                    / Uplift.HoldingFactor
                    * Uplift.LiftingFactor
                    / Tipping.TurningKNm(row["momentKNm"], row["sideKN"], row["depthM"], 0, row["widthM"])
            ),
            new(
                "ground/tipping",
                "turning",
                row => Tipping.TurningKNm(row["momentKNm"], row["sideKN"], row["depthM"], row["liftKN"], row["widthM"])
            ),
        ];

    private static IEnumerable<PublishedCheck> Factors =>
        [
            Factor("en1997-c", row => BearingFactors.En1997(row).CohesionFactor),
            Factor("en1997-q", row => BearingFactors.En1997(row).SurchargeFactor),
            Factor("en1997-gamma", row => BearingFactors.En1997(row).WeightFactor),
            Factor("terzaghi-c", row => BearingFactors.Terzaghi(row).CohesionFactor),
            Factor("terzaghi-q", row => BearingFactors.Terzaghi(row).SurchargeFactor),
            Factor("terzaghi-gamma", row => BearingFactors.Terzaghi(row).WeightFactor),
        ];

    private static IEnumerable<PublishedCheck> Slides =>
        [
            new("ground/sliding", "drained", row => Sliding.DrainedKN(row["forceKN"], row["frictionDeg"])),
            new(
                "ground/sliding",
                "undrained",
                row => Sliding.UndrainedKN(row["forceKN"], row["areaM2"], row["cohesionKPa"])
            ),
            new(
                "ground/sliding",
                "presumed",
                row => Sliding.PresumedKN(row["forceKN"], row["areaM2"], SoilClass.Of((int)row["class"]))
            ),
            new(
                "ground/side-friction",
                "pull",
                row => SideFriction.PullKN(row["depthM"], row["perimeterM"], row["frictionDeg"], row["weightKNPerM3"])
            ),
        ];

    private static IEnumerable<PublishedCheck> Concrete =>
        [
            new(
                "ground/plain-concrete",
                "compression",
                row => PlainConcrete.CompressionNPerMm2(row["cylinderNPerMm2"])
            ),
            new("ground/plain-concrete", "tension", row => PlainConcrete.TensionNPerMm2(row["cylinderNPerMm2"])),
            new("ground/plain-concrete", "shear", row => PlainConcrete.ShearKN(row["faceMm2"], row["cylinderNPerMm2"])),
            new(
                "ground/plain-concrete",
                "pad-depth",
                row => PlainConcrete.PadDepthMm(row["projectionMm"], row["pressureKPa"], row["cylinderNPerMm2"])
            ),
        ];

    private static PublishedCheck Factor(string quantity, Func<double, double> factor) =>
        new("ground/bearing-factors", quantity, row => factor(row["frictionDeg"]));

    // As books print them and reckon with them: two decimals.
    private static BearingFactorSet Printed(BearingFactorSet factors) =>
        new(
            Math.Round(factors.CohesionFactor, 2),
            Math.Round(factors.SurchargeFactor, 2),
            Math.Round(factors.WeightFactor, 2)
        );

    private static SoilStrength Soil(PublishedCase row) =>
        new(row["frictionDeg"], row["cohesionKPa"], row["weightKNPerM3"]);

    // Design pressure over design resistance of a pad under a load in its middle.
    private static double AnnexDShare(PublishedCase row)
    {
        var downKN = (row["heavyFactor"] * row["heavyKN"]) + (row["windFactor"] * row["windKN"]);
        var load = new PadLoad(row["widthM"], row["lengthM"], downKN, 0, 0);
        var soil = new SoilStrength(row["frictionDeg"], 0, row["weightKNPerM3"]).Weakened(row["soilFactor"]);
        var resistance = BearingResistance.DrainedKPa(load, soil, row["weightKNPerM3"] * row["depthM"]);
        return downKN / load.AreaM2 / (resistance / row["resistanceFactor"]);
    }
}
