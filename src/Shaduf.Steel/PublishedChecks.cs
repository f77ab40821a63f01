using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Which shipped kernel computes each quantity of the trade's published rows.</summary>
public static class PublishedChecks
{
    /// <summary>One check for each quantity that the published files of the trade name.</summary>
    public static IReadOnlyList<PublishedCheck> All { get; } =
    [
        .. Section("steel/square-hollow", "cold-", row => SquareHollow.ColdFormed(row["widthMm"], row["wallMm"])),
        .. Section("steel/square-hollow", "hot-", row => SquareHollow.HotFinished(row["widthMm"], row["wallMm"])),
        .. Section(
            "steel/rectangular-hollow",
            "cold-",
            row => RectangularHollow.ColdFormed(row["heightMm"], row["widthMm"], row["wallMm"])
        ),
        .. Section("steel/circular-hollow", "", row => CircularHollow.Of(row["diameterMm"], row["wallMm"])),
        .. Section("steel/equal-angle", "", row => Angle(row).Section),
        new("steel/equal-angle", "centroid", row => Angle(row).CentroidMm / 10),
        new("steel/equal-angle", "gyration-u", row => Angle(row).RadiusOfGyrationUMm / 10),
        new("steel/equal-angle", "gyration-v", row => Angle(row).RadiusOfGyrationVMm / 10),
        new("steel/slide-in-channel", "lap", row => Channel(row).LapMm),
        new("steel/slide-in-channel", "outer-depth", row => Channel(row).OuterDepthMm),
        new("steel/slide-in-channel", "lip-cover", row => Channel(row).LipCoverMm),
        .. PublishedFrames.All,
        .. PublishedMembers.All,
        .. PublishedWelds.All,
        .. PublishedPlates.All,
        .. PublishedOneLine.All,
        .. PublishedStands.All,
        new("steel/wind-pressure", "roughness", row => WindPressure.RoughnessFactor(TerrainOf(row), row["heightM"])),
        new("steel/wind-pressure", "turbulence", row => WindPressure.TurbulenceShare(TerrainOf(row), row["heightM"])),
        new("steel/wind-pressure", "exposure", row => WindPressure.ExposureFactor(TerrainOf(row), row["heightM"])),
        new("steel/wind-pressure", "peak", row => PeakNPerM2(row, TerrainOf(row))),
        new("steel/wind-pressure", "return", row => WindPressure.ReturnFactor(row["returnYears"])),
        new("steel/wind-pressure", "air", row => WindPressure.AirKgPerM3(row["elevationM"])),
        new("steel/monopitch-canopy", "force-down", row => Canopy(row).Force.DownCoefficient),
        new(
            "steel/monopitch-canopy",
            "force-up-at",
            row => MonopitchCanopy.UpAtCoefficient(row["tiltDeg"], row["blockageShare"])
        ),
        new("steel/monopitch-canopy", "plane-down", row => Canopy(row).Force.DownCoefficient * PlaneKN(row)),
        new("steel/monopitch-canopy", "plane-up", row => Canopy(row).Force.UpCoefficient * PlaneKN(row)),
        new(
            "steel/flexural-buckling",
            "slenderness",
            row => FlexuralBuckling.SlendernessRatio(row["bucklingMm"], row["gyrationMm"], row["yieldNPerMm2"])
        ),
        new(
            "steel/flexural-buckling",
            "reduction",
            row => FlexuralBuckling.ReductionFactor(row["slendernessRatio"], (BucklingCurve)row["curve"])
        ),
    ];

    // Section tables print centimetres.
    private static IEnumerable<PublishedCheck> Section(
        string method,
        string prefix,
        Func<PublishedCase, SectionProperties> section
    ) =>
        [
            new(method, prefix + "mass", row => section(row).MassKgPerM),
            new(method, prefix + "area", row => section(row).AreaMm2 / 1e2),
            new(method, prefix + "surface", row => section(row).PerimeterMm / 1e3),
            new(method, prefix + "inertia-y", row => section(row).InertiaYMm4 / 1e4),
            new(method, prefix + "inertia-z", row => section(row).InertiaZMm4 / 1e4),
            new(method, prefix + "gyration", row => section(row).RadiusOfGyrationYMm / 10),
            new(method, prefix + "elastic", row => section(row).ElasticModulusYMm3 / 1e3),
            new(method, prefix + "plastic-y", row => Plastic(section(row).PlasticModulusYMm3)),
            new(method, prefix + "plastic-z", row => Plastic(section(row).PlasticModulusZMm3)),
            new(method, prefix + "torsion", row => section(row).TorsionConstantMm4 / 1e4),
            new(method, prefix + "torsion-modulus", row => section(row).TorsionModulusMm3 / 1e3),
        ];

    private static double Plastic(double? modulusMm3) =>
        modulusMm3 / 1e3 ?? throw new ArgumentException("This section has no plastic modulus.", nameof(modulusMm3));

    private static EqualAngle Angle(PublishedCase row) =>
        EqualAngle.Of(row["legMm"], row["thicknessMm"], row["rootRadiusMm"], row["toeRadiusMm"]);

    private static SlideInChannel Channel(PublishedCase row) =>
        SlideInChannel.Of(row["legMm"], row["thicknessMm"], row["moduleThicknessMm"], row["clearanceMm"]);

    // Categories 0 to IV are written as 0 to 4.
    private static Terrain TerrainOf(PublishedCase row) => Terrain.All[(int)row["terrain"]];

    private static double PeakNPerM2(PublishedCase row, Terrain terrain) =>
        WindPressure.PeakNPerM2(row["basicMPerS"], terrain, row["heightM"]);

    private static MonopitchCanopy Canopy(PublishedCase row) =>
        MonopitchCanopy.Of(row["tiltDeg"], row["blockageShare"]);

    private static double PlaneKN(PublishedCase row) =>
        PeakNPerM2(row, Terrain.Of("II")) * row["slopeM"] * row["widthM"] / 1000;
}
