using Shaduf.Working;

namespace Shaduf.Water;

// How the published rows of routes, trenches and networks are computed.
internal static class PipeworkChecks
{
    // The project's own example W-NET-02: bores in mm, lengths and levels in m; three taps of 0.25 L/s.
    private static readonly (int Up, double LengthM, double BoreMm, double LevelM, double TapLPerS)[] ExampleTree =
    [
        (-1, 420, 55.4, 34, 0),
        (0, 160, 28.0, 30, 0.25),
        (0, 380, 44.0, 28, 0),
        (2, 90, 28.0, 31, 0.25),
        (2, 450, 35.2, 22, 0.25),
    ];

    public static PublishedCheck[] All =>
        [
            new("water/pipe-flow", "flow", FlowLPerS),
            new("water/route-profile", "air-valves", row => Marks(row, RouteFitting.AirValve)),
            new("water/route-profile", "washouts", row => Marks(row, RouteFitting.Washout)),
            .. Pushed,
            .. Tested,
            .. Laid,
            .. Networks,
        ];

    private static PublishedCheck[] Pushed =>
        [
            new("water/thrust-block", "bend", BendKN),
            new("water/thrust-block", "end", row => ThrustBlock.EndKN(row["testBar"], row["outerMm"])),
            new("water/thrust-block", "bearing", row => ThrustBlock.BearingM2(BendKN(row), row["groundKPa"])),
            new(
                "water/pressure-stop",
                "speed",
                row =>
                    PressureStop.SpeedRatio(
                        PressureClass.HeadM(row["gaugeBar"], row["densityKgPerM3"]) + row["restM"],
                        row["shutOffM"]
                    )
            ),
            new(
                "water/pressure-stop",
                "room",
                row => PressureStop.Between(row["runningBar"], row["closedBar"]).RoomBar
            ),
        ];

    private static PublishedCheck[] Tested =>
        [
            new("water/pressure-test", "test", row => PressureTest.TestBar(row["designBar"])),
            new(
                "water/pressure-test",
                "added",
                row =>
                    PressureTest.AddedL(
                        row["volumeL"],
                        row["riseKPa"],
                        row["boreMm"] / row["wallMm"],
                        row["modulusKPa"]
                    )
            ),
            new(
                "water/pressure-test",
                "released",
                row =>
                    PressureTest.MostReleasedL(
                        row["volumeL"],
                        row["dropKPa"],
                        row["boreMm"] / row["wallMm"],
                        row["modulusKPa"]
                    )
            ),
        ];

    private static PublishedCheck[] Laid =>
        [
            new("water/pipe-trench", "dig", row => row["lengthM"] * Trench(row).DigM2),
            new("water/pipe-trench", "bedding", row => row["lengthM"] * Trench(row).BeddingM2),
            new("water/pipe-trench", "surround", row => row["lengthM"] * Trench(row).SurroundM2),
            new("water/pipe-trench", "backfill", row => row["lengthM"] * Trench(row).BackfillM2),
            new("water/pipe-trench", "pipe", row => row["lengthM"] * Trench(row).PipeM2),
            new("water/pipe-flush", "flow", row => PipeFlush.FlowLPerS(row["boreMm"], row["speedMPerS"])),
            new("water/pipe-flush", "volume", row => PipeFlush.VolumeL(row["boreMm"], row["lengthM"])),
            new(
                "water/pipe-flush",
                "product",
                row => 1000 * PipeFlush.ProductKg(row["volumeL"], row["doseMgPerL"], row["chlorineShare"])
            ),
            new("water/soakaway", "wall", WallM2),
            new("water/soakaway", "pit-depth", row => Soakaway.PitDepthM(WallM2(row), row["diameterM"])),
            new("water/soakaway", "trench", row => Soakaway.TrenchM(WallM2(row), row["depthM"])),
        ];

    private static PublishedCheck[] Networks =>
        [
            new("water/gravity-tree", "flow", row => Example.FlowsM3PerS()[Pipe(row)] * 1000),
            new("water/gravity-tree", "residual", ResidualM),
            new(
                "water/gravity-tree",
                "at-rest",
                row => Example.RestLevelsM(52.5)[Pipe(row)] - Example.Pipes[Pipe(row)].LevelM
            ),
            new("water/least-cost-tree", "cost", row => (double)TwoInLine(row["sourceM"]).Cost),
        ];

    private static GravityTree Example =>
        new([.. ExampleTree.Select(pipe => new TreePipe(pipe.Up, pipe.LevelM, null, pipe.TapLPerS / 1000))]);

    private static int Pipe(PublishedCase row) => (int)row["pipeIndex"];

    private static double ResidualM(PublishedCase row)
    {
        var losses = ExampleTree.Zip(
            Example.FlowsM3PerS(),
            (pipe, flow) =>
                DarcyWeisbach.Loss(new(pipe.BoreMm / 1000, 0.01e-3, pipe.LengthM, 0), flow, 0.8927e-6).TotalM
        );
        return Example.GradeLevelsM(51, [.. losses])[Pipe(row)] - Example.Pipes[Pipe(row)].LevelM;
    }

    private static LeastCostTree TwoInLine(double sourceM) =>
        LeastCostTree.Choose(
            new([new(-1, 0, null, 0), new(0, 0, 10, 0.001)]),
            sourceM,
            [
                [new(1, 40), new(6, 25)],
                [new(1, 30), new(6, 12)],
            ]
        );

    private static double FlowLPerS(PublishedCase row) =>
        1000
        * PipeFlow.M3PerS(
            new(row["boreMm"] / 1000, row["roughnessMm"] / 1000, row["lengthM"], 0),
            row["headM"],
            WaterState.At(row["temperatureDegC"]).KinematicViscosityM2PerS
        );

    private static double Marks(PublishedCase row, RouteFitting fitting) =>
        RouteProfile
            .Marks([
                new(0, row["firstM"]),
                new(row["spacingM"], row["secondM"]),
                new(2 * row["spacingM"], row["thirdM"]),
                new(3 * row["spacingM"], row["fourthM"]),
            ])
            .Count(mark => mark.Fitting == fitting);

    private static double BendKN(PublishedCase row) =>
        ThrustBlock.BendKN(row["testBar"], row["outerMm"], row["bendDeg"]);

    private static TrenchParts Trench(PublishedCase row) =>
        PipeTrench.Of(new(row["widthM"], row["coverM"], row["beddingM"], row["overM"]), row["outerMm"]);

    private static double WallM2(PublishedCase row) => Soakaway.WallM2(row["wasteLPerDay"], row["soakageMmPerDay"]);
}
