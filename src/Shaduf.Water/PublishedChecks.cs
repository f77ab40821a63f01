using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>How each quantity of this trade's published rows is computed.</summary>
public static class PublishedChecks
{
    private const double SPerH = 3600;
    private const double M3PerSPerGpm = 231 * 0.0254 * 0.0254 * 0.0254 / 60;
    private const double MPerFt = 0.3048;
    private const double KgPerM3PerLbPerFt3 = 0.45359237 / (MPerFt * MPerFt * MPerFt);
    private const double WPerHp = 550 * 0.45359237 * Gravity.MPerS2 * MPerFt;

    // The system and the pump of the project's own example W-PU-05 and W-PU-06.
    private static readonly LiftSystem ExampleLift = new(
        50,
        StepDrawdown.Fit([.. new double[] { 1, 3, 6 }.Select(q => new PumpedStep(q / SPerH, (1.2 + (0.05 * q)) * q))]),
        [new(0.0531, 0.00015, 90, 3), new(0.0514, 0.00001, 850, 10)],
        0,
        0.8927e-6
    );

    private static readonly PumpCurve ExamplePump = PumpCurve.Fit([
        .. new double[] { 0, 2, 4, 6, 8 }.Select(q => new PumpPoint(
            q / SPerH,
            110 - (1.6 * q * q),
            0.6 * (1 - Math.Pow(1 - (q / 5), 2))
        )),
    ]);

    /// <summary>One check for each quantity named in a published file of this trade.</summary>
    public static IReadOnlyList<PublishedCheck> All =>
        [
            .. Demand,
            .. DrawAndTank,
            .. CropChecks.All,
            .. WellChecks.All,
            .. CoolingChecks.All(),
            .. ProofChecks.All(),
            .. LogChecks.All(),
            .. Friction,
            .. PressureInPipes,
            .. Power,
            .. Points,
            .. PipeworkChecks.All,
        ];

    private static PublishedCheck[] Demand =>
        [
            new(
                "water/population",
                "people",
                row => Population.GeometricCount(row["presentCount"], row["growthPerYearShare"], row["years"])
            ),
            new("water/losses", "production", row => Losses.ProductionM3(row["netM3"], row["lossShare"])),
            new(
                "water/losses",
                "production-marked-up",
                row =>
                    Losses.ProductionM3(
                        row["peopleCount"] * row["useLPerDay"] / 1000,
                        Losses.ShareFromMarkUp(row["markUpShare"])
                    )
            ),
            new("water/peak-day", "peak-day", row => PeakDay.M3PerDay(row["meanM3PerDay"], row["peakDayFactor"])),
            new("water/peak-day", "taps", row => PeakDay.TapCount(row["peopleCount"])),
            new(
                "water/livestock",
                "litres",
                row => Livestock.Named(Livestock.Animals[(int)row["animalIndex"]]).LitresAt(row["airDegC"])
            ),
        ];

    private static PublishedCheck[] DrawAndTank =>
        [
            new("water/draw-pattern", "peak-hour-factor", row => Pattern(row).PeakHourFactor),
            new("water/mass-curve", "useful-volume-half-sine", row => UsefulPercent(row, HalfSine)),
            new("water/mass-curve", "useful-volume-even", row => UsefulPercent(row, share => share)),
        ];

    private static PublishedCheck[] Friction =>
        [
            new(
                "water/water-state",
                "viscosity",
                row => WaterState.At(row["temperatureDegC"]).KinematicViscosityM2PerS * 1e6
            ),
            new(
                "water/water-state",
                "dynamic-viscosity",
                row =>
                    WaterState.At(row["temperatureDegC"]).KinematicViscosityM2PerS
                    * WaterState.At(row["temperatureDegC"]).DensityKgPerM3
                    * 1e6
            ),
            new(
                "water/water-state",
                "vapour-pressure",
                row => WaterState.At(row["temperatureDegC"]).VapourPressurePa / 1e3
            ),
            new("water/friction-factor", "laminar", row => FrictionFactor.Laminar(row["reynoldsNumber"])),
            new(
                "water/friction-factor",
                "colebrook",
                row => FrictionFactor.Colebrook(row["reynoldsNumber"], row["relativeRoughnessRatio"])
            ),
            new("water/darcy-weisbach", "velocity", row => PlainPipe(row).VelocityMPerS),
            new("water/darcy-weisbach", "friction", row => PlainPipe(row).FrictionM),
            new(
                "water/hazen-williams",
                "friction",
                row =>
                    HazenWilliams.LossM(
                        row["boreMm"] / 1000,
                        row["lengthM"],
                        row["flowLPerS"] / 1000,
                        row["smoothnessCoefficient"]
                    )
            ),
            new(
                "water/fitting-loss",
                "coefficient",
                row => FittingLoss.Coefficient(FittingLoss.Names[(int)row["fittingIndex"]], row["boreMm"] / 1000)
            ),
        ];

    private static PublishedCheck[] PressureInPipes =>
        [
            new(
                "water/wave-speed",
                "speed",
                row =>
                    WaveSpeed.MPerS(
                        row["boreMm"] / 1000,
                        row["wallMm"] / 1000,
                        row["modulusPa"],
                        row["supportFactor"],
                        WaterState.At(20) with
                        {
                            DensityKgPerM3 = row["densityKgPerM3"],
                            BulkModulusPa = row["bulkModulusPa"],
                        }
                    )
            ),
            new(
                "water/water-hammer",
                "hard-stop",
                row => WaterHammer.JoukowskyM(row["waveSpeedMPerS"], row["velocityMPerS"])
            ),
            new(
                "water/water-hammer",
                "slow-stop",
                row => WaterHammer.SlowClosingM(row["lengthM"], row["velocityMPerS"], row["closingS"])
            ),
            new(
                "water/water-hammer",
                "critical-time",
                row => WaterHammer.CriticalS(row["lengthM"], row["waveSpeedMPerS"])
            ),
            new(
                "water/water-hammer",
                "rise",
                row => WaterHammer.RiseM(row["lengthM"], row["waveSpeedMPerS"], row["velocityMPerS"], row["closingS"])
            ),
            new(
                "water/pressure-class",
                "nominal",
                row =>
                    PressureClass.NominalBar(
                        row["requiredStrengthMPa"],
                        row["designCoefficient"],
                        row["diameterOverWallRatio"]
                    )
            ),
            new("water/pressure-class", "factor-pe", row => PressureClass.PolyethyleneFactor(row["temperatureDegC"])),
            new("water/pressure-class", "factor-pvc", row => PressureClass.PvcFactor(row["temperatureDegC"])),
            new(
                "water/pressure-class",
                "pressure",
                row => PressureClass.PressureBar(row["headM"], row["densityKgPerM3"])
            ),
        ];

    private static PublishedCheck[] Power =>
        [
            new(
                "water/hydraulic-power",
                "power",
                row => HydraulicPower.W(row["flowLPerS"] / 1000, row["headM"], row["densityKgPerM3"])
            ),
            new(
                "water/hydraulic-power",
                "energy",
                row => HydraulicPower.EnergyKWh(row["volumeM3"], row["headM"], row["densityKgPerM3"])
            ),
            new("water/hydraulic-power", "shaft-power", ShaftPowerHp),
            new(
                "water/affinity",
                "flow",
                row => Affinity.FlowM3PerS(row["flowGpm"] * M3PerSPerGpm, Speed(row)) / M3PerSPerGpm
            ),
            new("water/affinity", "head", row => Affinity.HeadM(row["headFt"] * MPerFt, Speed(row)) / MPerFt),
            new("water/affinity", "power", row => Affinity.PowerW(row["powerHp"] * WPerHp, Speed(row)) / WPerHp),
        ];

    private static PublishedCheck[] Points =>
        [
            new("water/lift-system", "total-head", row => ExampleLift.HeadM(row["flowLPerS"] / 1000)),
            new("water/lift-system", "steel-line-head", SteelLineHeadFt),
            .. RotorChecks.All,
            new("water/pump-curve", "shut-off-head", _ => ExamplePump.ShutOffHeadM),
            new("water/pump-curve", "head", row => ExamplePump.HeadM(row["flowM3PerH"] / SPerH, row["speedRatio"])),
            new("water/operating-point", "flow", row => At(row).FlowM3PerS * SPerH),
            new("water/operating-point", "head", row => At(row).HeadM),
            new(
                "water/operating-point",
                "least-speed",
                row =>
                    OperatingPoint.LeastSpeedRatio(ExamplePump, ExampleLift with { StaticHeadM = row["staticHeadM"] })
            ),
            new(
                "water/pump-table",
                "full-flow",
                row => Table(new(0.1, row["highestRatio"], double.PositiveInfinity)).FullFlowM3PerH
            ),
            new(
                "water/pump-table",
                "highest-speed",
                row => Table(new(0.1, 1, row["largestFlowM3PerH"] / SPerH)).HighestRatio
            ),
        ];

    private static DrawPattern Pattern(PublishedCase row) =>
        DrawPattern.Named(DrawPattern.Names[(int)row["patternIndex"]]);

    private static double HalfSine(double share) => (1 - Math.Cos(Math.PI * share)) / 2;

    // A supply that has given the share 'given(t)' of its day when the share t of its hours has passed.
    private static double UsefulPercent(PublishedCase row, Func<double, double> given)
    {
        double Passed(int hour) => Math.Clamp((hour - row["startH"]) / (row["endH"] - row["startH"]), 0, 1);
        double[] supply = [.. Enumerable.Range(0, 24).Select(hour => given(Passed(hour + 1)) - given(Passed(hour)))];
        return 100 * MassCurve.UsefulShare(supply, Pattern(row).HourShares);
    }

    private static PipeLoss PlainPipe(PublishedCase row) =>
        DarcyWeisbach.Loss(
            new(row["boreMm"] / 1000, row["roughnessMm"] / 1000, row["lengthM"], 0),
            row["flowLPerS"] / 1000,
            row["viscosityM2PerS"]
        );

    private static double SteelLineHeadFt(PublishedCase row)
    {
        const double mPerIn = 0.0254;
        var run = new PipeRun(
            row["boreIn"] * mPerIn,
            row["roughnessIn"] * mPerIn,
            row["lengthFt"] * MPerFt,
            row["fittingsCoefficient"]
        );
        var viscosity = row["viscosityCp"] * 1e-3 / (row["densityLbPerFt3"] * KgPerM3PerLbPerFt3);
        var lift = new LiftSystem(row["liftFt"] * MPerFt, null, [run], 0, viscosity);
        return lift.HeadM(row["flowGpm"] * M3PerSPerGpm) / MPerFt;
    }

    private static double ShaftPowerHp(PublishedCase row) =>
        HydraulicPower.W(
            row["flowGpm"] * M3PerSPerGpm,
            row["headFt"] * MPerFt,
            row["densityLbPerFt3"] * KgPerM3PerLbPerFt3
        )
        / row["efficiencyShare"]
        / WPerHp;

    private static double Speed(PublishedCase row) => row["speedRpm"] / row["curveSpeedRpm"];

    private static OperatingPoint At(PublishedCase row) =>
        OperatingPoint.Solve(ExamplePump, ExampleLift, row["speedRatio"]);

    private static PumpTable Table(SpeedRange range) =>
        PumpTable.Build(ExamplePump, ExampleLift, range, shaftW => shaftW / 0.75);
}
