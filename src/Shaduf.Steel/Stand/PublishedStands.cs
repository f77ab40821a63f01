using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Which shipped kernel computes each quantity of the published rows of tank stands: wind, earthquake, legs, platform.</summary>
internal static class PublishedStands
{
    private const double YieldNPerMm2 = 235;

    // The worked stand: a tank of 1.8 m width, 2.1 m height and 120 kg, its middle in the gust at 8.3 m.
    private const double TankWidthM = 1.8;
    private const double TankHeightM = 2.1;
    private const double TankN = 120 * 9.80665;

    internal static IReadOnlyList<PublishedCheck> All { get; } = [.. Wind, .. Earthquake, .. Shaken, .. Legs, .. Deck];

    private static IEnumerable<PublishedCheck> Wind =>
        [
            new(
                "steel/cylinder-drag",
                "coefficient",
                row => CylinderDrag.Coefficient(row["diameterM"], GustNPerM2(row), row["roughnessMm"])
            ),
            new("steel/block-drag", "long", row => BlockDrag.LongCoefficient(row["depthM"], row["breadthM"])),
            new(
                "steel/block-drag",
                "coefficient",
                row => BlockDrag.Coefficient(row["depthM"], row["breadthM"], row["heightM"])
            ),
            new("steel/tower-drag", "square", row => TowerDrag.SquareCoefficient(row["solidM2"] / row["grossM2"])),
            new("steel/tower-drag", "diagonal", row => TowerDrag.DiagonalFactor(row["solidM2"] / row["grossM2"])),
            new("steel/tower-drag", "stand-shear", row => StandShearKN(row, 1)),
            new(
                "steel/tower-drag",
                "stand-shear-diagonal",
                row => StandShearKN(row, TowerDrag.DiagonalFactor(row["solidM2"] / row["grossM2"]))
            ),
        ];

    private static IEnumerable<PublishedCheck> Earthquake =>
        [
            new(
                "steel/spectrum",
                "design",
                row => Spectrum.DesignRatio(row["groundRatio"], Ground(row), row["periodS"], row["behaviourFactor"])
            ),
            new(
                "steel/spectrum",
                "elastic",
                row => Spectrum.ElasticRatio(row["groundRatio"], Ground(row), row["periodS"], row["dampingPercent"])
            ),
            new("steel/tank-sloshing", "sloshing-share", row => Water(row).SloshingShare),
            new("steel/tank-sloshing", "rigid-share", row => Water(row).RigidShare),
            new("steel/tank-sloshing", "sloshing-mass", row => Water(row).SloshingShare * row["massKg"]),
            new("steel/tank-sloshing", "rigid-mass", row => Water(row).RigidShare * row["massKg"]),
            new("steel/tank-sloshing", "period", row => Water(row).SloshingS),
            new("steel/tank-sloshing", "sloshing-height", row => Water(row).SloshingHeightRatio),
            new("steel/tank-sloshing", "rigid-height", row => Water(row).RigidHeightRatio),
            new("steel/tank-sloshing", "wall-sloshing-height", row => Water(row).WallSloshingHeightRatio),
            new("steel/tank-sloshing", "wall-rigid-height", row => Water(row).WallRigidHeightRatio),
            new(
                "steel/tank-sloshing",
                "housner-rigid-share",
                row => TankSloshing.HousnerShares(2 * row["radiusM"], row["depthM"]).RigidShare
            ),
            new(
                "steel/tank-sloshing",
                "housner-sloshing-share",
                row => TankSloshing.HousnerShares(2 * row["radiusM"], row["depthM"]).SloshingShare
            ),
        ];

    private static IEnumerable<PublishedCheck> Shaken =>
        [
            new("steel/elevated-tank", "period", row => Push(row).RigidS),
            new("steel/elevated-tank", "rigid-ratio", row => Push(row).RigidRatio),
            new("steel/elevated-tank", "rigid-force", row => Push(row).RigidKN),
            new("steel/elevated-tank", "sloshing-force", row => Push(row).SloshingKN),
            new("steel/elevated-tank", "shear", row => Push(row).ShearKN),
            new("steel/elevated-tank", "moment", row => Push(row).MomentKNm),
            new("steel/elevated-tank", "wave", row => ElevatedTank.WaveM(row["radiusM"], row["sloshingRatio"])),
        ];

    private static IEnumerable<PublishedCheck> Legs =>
        [
            new("steel/stand-legs", "stand-weight", row => StandKg(row["platformKg"]) * 9.80665 / 1000),
            new(
                "steel/stand-legs",
                "leg",
                row => StandLegs.LegKN(row["momentKNm"], (int)row["legCount"], row["radiusM"])
            ),
            // Square, wind on a face: half of what a square of that side gives on its diagonal, times the root of two.
            new(
                "steel/stand-legs",
                "leg-face",
                row => StandLegs.LegKN(row["momentKNm"], 4, row["sideM"] / Math.Sqrt(2)) / Math.Sqrt(2)
            ),
            new(
                "steel/stand-legs",
                "diagonal",
                row => StandLegs.DiagonalKN(row["shearKN"], (int)row["legCount"], row["riseDeg"])
            ),
            new(
                "steel/stand-legs",
                "stiffness",
                row =>
                    StandLegs.StiffnessNPerMm(
                        row["heightMm"],
                        row["sideMm"],
                        (int)row["bayCount"],
                        row["diagonalMm2"],
                        row["legMm2"]
                    )
            ),
            new(
                "steel/stand-legs",
                "critical",
                row => StandLegs.CriticalFactor(row["stiffnessNPerMm"], row["heightM"], row["weightKN"])
            ),
        ];

    private static IEnumerable<PublishedCheck> Deck =>
        [
            new("steel/tank-hold", "push", PushN),
            new("steel/tank-hold", "strap", row => TankHold.StrapN(PushN(row), TankN, TankHeightM, TankWidthM)),
            new("steel/tank-hold", "stay", row => TankHold.StayKg(PushN(row), TankN)),
            new("steel/guard-post", "moment", row => GuardPost.MomentKNm(row["spacingM"], row["heightM"])),
            new("steel/guard-post", "design-moment", row => 1.5 * GuardPost.MomentKNm(row["spacingM"], row["heightM"])),
            new("steel/guard-post", "resistance", row => Round(row).PlasticModulusYMm3!.Value * YieldNPerMm2 / 1e6),
            new(
                "steel/guard-post",
                "move",
                row => GuardPost.MoveMm(row["spacingM"], row["heightM"], Round(row).InertiaYMm4)
            ),
            new(
                "steel/floor-beam",
                "moment",
                row => row["loadFactor"] * FloorBeam.MomentKNm(row["loadKNPerM"], row["spanM"])
            ),
            new(
                "steel/floor-beam",
                "sag",
                row => FloorBeam.SagMm(row["loadKNPerM"], row["spanM"], Rectangle(row).InertiaYMm4)
            ),
            new("steel/floor-beam", "resistance", row => Rectangle(row).PlasticModulusYMm3!.Value * YieldNPerMm2 / 1e6),
        ];

    // Grounds A to E are written as 1 to 5; type 1.
    private static GroundType Ground(PublishedCase row) => GroundType.Of("ABCDE"[(int)row["ground"] - 1].ToString(), 1);

    private static double GustNPerM2(PublishedCase row) =>
        WindPressure.PeakNPerM2(row["basicMPerS"], Terrain.All[(int)row["terrain"]], row["heightM"]);

    private static TankSloshing Water(PublishedCase row) => TankSloshing.OfRound(row["radiusM"], row["depthM"]);

    private static TankPush Push(PublishedCase row) =>
        new ElevatedTank(
            row["waterKg"],
            row["structureKg"],
            row["stiffnessNPerMm"],
            row["platformM"],
            row["depthM"],
            Water(row)
        ).Under(new(row["groundRatio"], Ground(row), Quake.PlainFactor), row["plateau"] > 0);

    private static double PushN(PublishedCase row) =>
        TankHold.PushN(
            WindPressure.PeakNPerM2(row["basicMPerS"], Terrain.Of("II"), 8.3),
            0.80,
            TankWidthM,
            TankHeightM
        );

    // The worked stand: tank at 8.3 m, tower and 2.0 m2 of platform at 6.2 m, 0.30 m2 for each of the legs' 6.0 m.
    private static double StandShearKN(PublishedCase row, double diagonalFactor)
    {
        double Gust(double heightM) => WindPressure.PeakNPerM2(row["basicMPerS"], Terrain.Of("II"), heightM) / 1000;
        var tower = TowerDrag.SquareCoefficient(row["solidM2"] / row["grossM2"]) * row["solidM2"] * diagonalFactor;
        return (Gust(8.3) * 0.80 * TankWidthM * TankHeightM) + (Gust(6.2) * (tower + 2.0 + (0.30 * 6.0)));
    }

    private static double StandKg(double platformKg) =>
        (4 * 6.0 * SquareHollow.ColdFormed(100, 4).MassKgPerM)
        + (4 * 1.9 * EqualAngle.Of(70, 6, 9, 4.5).Section.MassKgPerM)
        + (16 * 3.606 * EqualAngle.Of(60, 5, 8, 4).Section.MassKgPerM)
        + platformKg;

    private static SectionProperties Round(PublishedCase row) => CircularHollow.Of(row["diameterMm"], row["wallMm"]);

    private static SectionProperties Rectangle(PublishedCase row) =>
        RectangularHollow.ColdFormed(row["heightMm"], row["widthMm"], row["wallMm"]);
}
