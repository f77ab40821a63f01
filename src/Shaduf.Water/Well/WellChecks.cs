using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>How the published rows of wells are computed.</summary>
internal static class WellChecks
{
    private const double SPerDay = 86_400;
    private const double SPerH = 3600;
    private const double MPerFt = 0.3048;
    private const double PaPerPsi = 0.45359237 * Gravity.MPerS2 / (0.0254 * 0.0254);
    private const double KgPerM3PerLbPerFt3 = 0.45359237 / (MPerFt * MPerFt * MPerFt);

    public static PublishedCheck[] All =>
        [
            .. Tests,
            .. LongTest,
            .. LongUse,
            .. Pump,
            .. Suction,
            .. SuctionNeeded,
            .. Inlet,
            .. Riser,
            .. Stretch,
            .. Legs,
        ];

    private static PublishedCheck[] Tests =>
        [
            new("water/step-drawdown", "aquifer-loss", row => SixSteps(row).AquiferSPerM2 / SPerDay),
            new("water/step-drawdown", "well-loss", row => SixSteps(row).WellS2PerM5 / (SPerDay * SPerDay)),
            new("water/well-loss-class", "limit", row => WellLossClass.LimitsS2PerM5[(int)row["limitIndex"]]),
            new("water/theis", "well-function", row => Theis.WellFunctionRatio(row["argumentRatio"])),
            new(
                "water/theis",
                "drawdown",
                row =>
                    Theis.DrawdownM(
                        row["flowM3PerS"],
                        row["transmissivityM2PerS"],
                        row["storageCoefficient"],
                        row["distanceM"],
                        row["timeS"]
                    )
            ),
        ];

    private static PublishedCheck[] LongTest =>
        [
            new("water/cooper-jacob", "transmissivity", row => Line(row).TransmissivityM2PerS),
            new("water/cooper-jacob", "storage", row => Line(row).StorageCoefficient(row["distanceM"])),
            new("water/cooper-jacob", "slope", row => Line(row).SlopeM),
            new(
                "water/cooper-jacob",
                "later",
                row => Line(row).LaterM(row["drawdownM"], row["timeS"], row["laterDays"] * SPerDay)
            ),
        ];

    private static PublishedCheck[] LongUse =>
        [
            new(
                "water/sustainable-yield",
                "flow",
                row => SustainableYield.FlowM3PerS(row["testedLPerS"] / 1000, row["share"]) * 1000
            ),
            new(
                "water/daily-pumping",
                "day",
                row => DailyPumping.DaySPerM2(row["slopeSPerM2"], row["stepH"] * SPerH, row["dayH"] * SPerH)
            ),
            new(
                "water/daily-pumping",
                "residual",
                row =>
                    DailyPumping.ResidualM(
                        row["slopeSPerM2"],
                        row["volumeM3PerDay"],
                        row["hoursPerDayH"],
                        (int)row["dayCount"]
                    )
            ),
        ];

    private static PublishedCheck[] Pump =>
        [
            new(
                "water/motor-cooling",
                "velocity",
                row =>
                    MotorCooling.VelocityMPerS(row["flowLPerS"] / 1000, row["casingMm"] / 1000, row["motorMm"] / 1000)
            ),
        ];

    private static PublishedCheck[] Suction =>
        [
            new(
                "water/suction-head",
                "available",
                row => SuctionHead.AvailableM(row["elevationM"], row["waterDegC"], row["liftM"], row["lossM"])
            ),
            new(
                "water/suction-head",
                "available-closed-ft",
                row =>
                    SuctionHead.FromPressuresM(
                        row["airPsi"] * PaPerPsi,
                        row["vapourPsi"] * PaPerPsi,
                        row["densityLbPerFt3"] * KgPerM3PerLbPerFt3,
                        row["liftFt"] * MPerFt,
                        row["lossFt"] * MPerFt
                    ) / MPerFt
            ),
        ];

    private static PublishedCheck[] SuctionNeeded =>
        [
            new("water/suction-head", "needed", row => SuctionHead.NeededM(row["pumpM"])),
            new(
                "water/suction-head",
                "air-head",
                row =>
                    SuctionHead.FromPressuresM(
                        AirMoisture.PressureKPa(row["elevationM"]) * 1000,
                        0,
                        WaterState.At(20).DensityKgPerM3,
                        0,
                        0
                    )
            ),
        ];

    private static PublishedCheck[] Inlet =>
        [
            new("water/npsh-curve", "between", OnSheetM),
            new("water/npsh-curve", "below", OnSheetM),
            new("water/strainer-cover", "least", row => StrainerCover.LeastM(row["flowM3PerH"] / SPerH, row["mouthM"])),
        ];

    private static double OnSheetM(PublishedCase row) =>
        NpshCurve
            .Of([new(row["flow1M3PerH"] / SPerH, row["head1M"]), new(row["flow2M3PerH"] / SPerH, row["head2M"])])
            .RequiredM(row["flowM3PerH"] / SPerH);

    private static PublishedCheck[] Riser =>
        [
            new("water/hanging-riser", "water", row => HangingRiser.WaterKgPerM(row["boreMm"], row["densityKgPerM3"])),
            new("water/hanging-riser", "pull", PullKN),
            new(
                "water/hanging-riser",
                "stress",
                row => PullKN(row) * 1000 / HangingRiser.WallMm2(row["outerMm"], row["boreMm"])
            ),
        ];

    private static PublishedCheck[] Stretch =>
        [
            new(
                "water/hanging-riser",
                "stretch",
                row =>
                    HangingRiser.StretchM(
                        row["endKg"] * Gravity.MPerS2 / 1000,
                        row["spreadKg"] * Gravity.MPerS2 / 1000,
                        row["lengthM"],
                        HangingRiser.WallMm2(row["outerMm"], row["boreMm"]),
                        row["modulusGPa"]
                    )
            ),
            new("water/hanging-riser", "thread-root", row => HangingRiser.ThreadRootMm2(row["majorMm"], row["boreMm"])),
            new("water/hanging-riser", "hoist", row => HangingRiser.HoistKN(row["hungKg"])),
            new("water/hanging-riser", "rope", row => HangingRiser.RopeKN(row["hungKg"], row["endShare"])),
        ];

    private static PublishedCheck[] Legs =>
        [
            new("water/tripod", "leg", row => Tripod.LegKN(row["loadKN"], row["leanDeg"])),
            new(
                "water/tripod",
                "buckling",
                row => Tripod.BucklingKN(row["outerMm"], row["boreMm"], row["modulusGPa"], row["lengthM"])
            ),
            new("water/tripod", "thrust", row => Tripod.ThrustKN(row["loadKN"], row["leanDeg"])),
        ];

    private static double PullKN(PublishedCase row) =>
        HangingRiser.PullKN(row["hungKg"], row["wellheadBar"], row["boreMm"]);

    private static StepDrawdown SixSteps(PublishedCase row) =>
        StepDrawdown.Fit([
            .. Enumerable.Range(1, 6).Select(i => new PumpedStep(row[$"q{i}M3PerD"] / SPerDay, row[$"s{i}M"])),
        ]);

    private static CooperJacob Line(PublishedCase row) =>
        CooperJacob.Fit(
            row["flowM3PerS"],
            [
                .. Enumerable
                    .Range(1, 100)
                    .TakeWhile(i => row.Inputs.ContainsKey($"t{i}S"))
                    .Select(i => new TimedDrawdown(row[$"t{i}S"], row[$"s{i}M"])),
            ]
        )!;
}
