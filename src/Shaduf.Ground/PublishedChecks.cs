using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>Which shipped kernel computes each quantity of the trade's published rows.</summary>
public static class PublishedChecks
{
    /// <summary>One check for each quantity that the published files of the trade name.</summary>
    public static IReadOnlyList<PublishedCheck> All { get; } =
    [
        Mix("cement", mix => mix.CementM3),
        Mix("cement-mass", mix => mix.CementKg),
        Mix("bags", mix => mix.BagCount),
        Mix("sand", mix => mix.SandM3),
        Mix("stone", mix => mix.StoneM3),
        Strength("share-aci209", StrengthGain.Aci209),
        Strength("share-en1992-n", StrengthGain.En1992ClassN),
        Strength("share-en1992-s", StrengthGain.En1992ClassS),
        new("ground/spoil", "loose", row => Spoil.LooseM3(row["bankM3"], row["swellShare"])),
        new("ground/spoil", "backfill-bank", row => Spoil.BackfillBankM3(row["fillM3"], row["bankToFillFactor"])),
        new(
            "ground/spoil",
            "surplus-loose",
            row => Spoil.SurplusLooseM3(row["dugM3"], row["backfillBankM3"], row["swellShare"])
        ),
        new("ground/footing-block", "concrete", row => row["blockCount"] * Block(row).ConcreteM3),
        new("ground/footing-block", "excavation", row => row["blockCount"] * Block(row).ExcavationM3),
        new("ground/uplift", "pull", PullKN),
        new("ground/uplift", "concrete", row => Uplift.ConcreteM3(PullKN(row), 0)),
        Bearing("linear", (row, e) => EccentricBearing.LinearKPa(row["forceKN"], e, row["widthM"], row["lengthM"])),
        Bearing(
            "meyerhof",
            (row, e) => EccentricBearing.MeyerhofKPa(row["forceKN"], e, 0, row["widthM"], row["lengthM"])
        ),
        Pier("free", PierInSoil.FreeDepthM),
        Pier("held", PierInSoil.HeldDepthM),
        .. ShortPileChecks,
        .. PublishedBearing.All,
        new("ground/concrete-age", "at20", row => ConcreteAge.At20Days(row["ageDays"], row["temperatureDegC"])),
        new(
            "ground/concrete-age",
            "warm-share-n",
            row =>
                ConcreteStrength.ShareAtDays(
                    ConcreteAge.At20Days(row["ageDays"], row["temperatureDegC"]),
                    StrengthGain.En1992ClassN
                )
        ),
        new(
            "ground/concrete-age",
            "days-to-share",
            row => ConcreteAge.DaysToShare(row["strengthShare"], row["cementFactor"], row["temperatureDegC"])
        ),
        new("ground/pit-side", "slope", row => PitSide.SlopeDeg(row["runRatio"])),
        new("ground/peg-place", "along", row => Peg(row).AlongM),
        new("ground/peg-place", "off", row => Peg(row).OffM),
        new("ground/peg-place", "from-a", row => PegPlace.TapesM(row["baseM"], row["alongM"], row["offM"]).FromAM),
        new("ground/peg-place", "from-b", row => PegPlace.TapesM(row["baseM"], row["alongM"], row["offM"]).FromBM),
        new(
            "ground/squareness",
            "error",
            row => Squareness.ErrorDeg(row["lengthM"], row["widthM"], row["firstM"], row["secondM"])
        ),
        new("ground/fence", "bays", row => Ring(row).BayCount),
        new("ground/fence", "posts", row => Ring(row).Posts.Count),
        new("ground/fence", "mesh", row => Ring(row).MeshM),
        new("ground/fence", "struts", row => Ring(row).StrutCount),
        new("ground/fence", "intermediates", row => Ring(row).CountOf(FencePostKind.Intermediate)),
        new("ground/fence", "wire", row => Ring(row).WireM),
        new("ground/fence", "concrete", row => Ring(row).ConcreteM3),
    ];

    private static IEnumerable<PublishedCheck> ShortPileChecks =>
        [
            new(
                "ground/short-pile",
                "clay-force",
                row => ShortPile.ClayForceKN(row["widthM"], row["depthM"], row["heightM"], row["cohesionKPa"])
            ),
            new(
                "ground/short-pile",
                "clay-depth",
                row => ShortPile.ClayDepthM(row["forceKN"], row["momentKNm"], row["widthM"], row["cohesionKPa"])
            ),
            new(
                "ground/short-pile",
                "sand-force",
                row =>
                    ShortPile.SandForceKN(
                        row["widthM"],
                        row["depthM"],
                        row["heightM"],
                        row["frictionDeg"],
                        row["weightKNPerM3"]
                    )
            ),
            new(
                "ground/short-pile",
                "sand-depth",
                row =>
                    ShortPile.SandDepthM(
                        row["forceKN"],
                        row["momentKNm"],
                        row["widthM"],
                        row["frictionDeg"],
                        row["weightKNPerM3"]
                    )
            ),
        ];

    private static double PullKN(PublishedCase row) =>
        Uplift.PullKN(row["windUpKN"], row["rackKN"]) / row["columnCount"];

    private static PublishedCheck Bearing(string quantity, Func<PublishedCase, double, double> pressure) =>
        new("ground/eccentric-bearing", quantity, row => pressure(row, row["momentKNm"] / row["forceKN"]));

    private static PublishedCheck Pier(string quantity, Func<double, double, double, double, double> depth) =>
        new(
            "ground/pier-in-soil",
            quantity,
            row => depth(row["forceKN"], row["forceKN"] * row["heightM"], row["widthM"], row["lateralKNPerM3"])
        );

    private static PublishedCheck Mix(string quantity, Func<MixQuantities, double> take) =>
        new(
            "ground/nominal-mix",
            quantity,
            row =>
                row.Inputs.GetValueOrDefault("concreteM3", 1)
                * take(
                    new NominalMix("", "", row["sandRatio"], row["stoneRatio"], 0.55).PerM3(
                        row["dryFactor"],
                        row["cementKgPerM3"]
                    )
                )
        );

    private static PublishedCheck Strength(string quantity, StrengthGain gain) =>
        new("ground/concrete-strength", quantity, row => ConcreteStrength.ShareAtDays(row["ageDays"], gain));

    private static FootingBlock Block(PublishedCase row) =>
        new(row["lengthMm"], row["widthMm"], row["depthMm"], row["plinthSideMm"], row["plinthHeightMm"]);

    private static (double AlongM, double OffM) Peg(PublishedCase row) =>
        PegPlace.Of(row["baseM"], row["fromAM"], row["fromBM"]);

    // A rectangle with its gate in the middle of the first side.
    private static FenceLine Ring(PublishedCase row)
    {
        var (x, y) = (row["lengthM"], row["depthM"]);
        return Fence.Around(
            [new(0, 0, 0), new(x, 0, 0), new(x, y, 0), new(0, y, 0)],
            new(row["spacingM"], row["heightM"]),
            new(0, x / 2, row["gateWidthM"])
        );
    }
}
