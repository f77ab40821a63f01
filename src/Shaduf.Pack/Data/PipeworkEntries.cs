using Shaduf.Station;
using Shaduf.Water;
using static Shaduf.Pack.DesignEntries;

namespace Shaduf.Pack;

/// <summary>A length of the main of one pipe.</summary>
public sealed record ReachEntry(string Pipe, double FromM, double ToM, double LengthM);

/// <summary>Pressure at a place of the main.</summary>
public sealed record MainPressureEntry(
    double ChainageM,
    double LevelM,
    double GradeM,
    double RunningBar,
    double ClosedBar,
    double NeededBar,
    double AllowedBar
);

/// <summary>A fitting along the main.</summary>
public sealed record RouteFittingEntry(string Fitting, double ChainageM, double LevelM, string Why);

/// <summary>What the whole costs with one main; null where nothing serves or a rate is missing.</summary>
public sealed record MainCostEntry(
    string Main,
    double SpeedMPerS,
    double? PipeCost,
    double? WholeCost,
    int ModuleCount
);

/// <summary>Trenches.</summary>
public sealed record TrenchEntry(
    double LengthM,
    double WidthM,
    double DepthM,
    double DigM3,
    double SandM3,
    double FillM3,
    double SurplusLooseM3
);

/// <summary>A thrust block.</summary>
public sealed record ThrustEntry(string What, double ChainageM, double ForceKN, double BearingM2, double ConcreteM3);

/// <summary>Test and flushing of the main.</summary>
public sealed record MainTestEntry(
    double DesignBar,
    double TestBar,
    double VolumeL,
    double AddedL,
    double LetDownBar,
    double MostReleasedL,
    double FlushLPerS,
    double FlushM3,
    double ChlorineKg
);

/// <summary>A point of the network to the taps, with the pipe that leads to it.</summary>
public sealed record TapPointEntry(
    string Name,
    string Kind,
    string From,
    string Pipe,
    double LengthM,
    double LevelM,
    double FlowLPerS,
    double SpeedMPerS,
    double LossM,
    double OpenHeadM,
    double RestHeadM,
    double? WantedHeadM
);

/// <summary>Main and taps as laid.</summary>
public sealed record PipeworkEntry(
    IReadOnlyList<ReachEntry> Reaches,
    IReadOnlyList<MainPressureEntry> Profile,
    double SurgeM,
    double LeastHeadM,
    IReadOnlyList<RouteFittingEntry> Fittings,
    IReadOnlyList<MainCostEntry> MainCosts,
    TrenchEntry MainTrench,
    TrenchEntry TapTrench,
    IReadOnlyList<ThrustEntry> ThrustBlocks,
    MainTestEntry Test,
    string TankFull,
    IReadOnlyList<TapPointEntry> TapNetwork
);

/// <summary>Builds the pipework of <c>design.json</c>.</summary>
internal static class PipeworkEntries
{
    /// <summary>The entry.</summary>
    /// <param name="design">The design.</param>
    /// <returns>Main and taps as laid.</returns>
    public static PipeworkEntry Of(Design design)
    {
        var (main, works) = (design.Works.Main, design.Works);
        return new(
            [.. design.Choice.Lift.Lay.Reaches.Select(ReachOf)],
            [.. main.Profile.Points.Select(PressureOf)],
            R(main.Profile.RiseM),
            R(main.Profile.LeastM),
            [.. main.Marks.Select(FittingOf)],
            [.. works.EconomicMain.Mains.Select(CostOf)],
            TrenchOf(main.Trench),
            TrenchOf(works.TapTrench),
            [.. main.Blocks.Select(BlockOf)],
            TestOf(main.Test),
            main.TankFull.Name,
            [.. works.Taps.Heads.Select(head => PointOf(head, works.Taps.Heads))]
        );
    }

    private static ReachEntry ReachOf(MainReach reach) =>
        new(reach.Pipe.Name, R(reach.FromM), R(reach.ToM), R(reach.LengthM));

    private static MainPressureEntry PressureOf(MainPoint point) =>
        new(
            R(point.ChainageM),
            R(point.LevelM),
            R(point.GradeM),
            R(point.RunningBar),
            R(point.ClosedBar),
            R(point.NeededBar),
            R(point.AllowedBar)
        );

    private static RouteFittingEntry FittingOf(RouteMark mark) =>
        new(mark.Fitting.ToString(), R(mark.At.ChainageM), R(mark.At.LevelM), mark.Why);

    private static MainCostEntry CostOf(MainCost each) =>
        new(each.Main.Name, R(each.SpeedMPerS), R(each.PipeCost), R(each.Cost), each.ModuleCount);

    private static ThrustEntry BlockOf(Station.Block block) =>
        new(block.What, R(block.ChainageM), R(block.ForceKN), R(block.BearingM2), R(block.ConcreteM3));

    private static TrenchEntry TrenchOf(Trenches trench) =>
        new(
            R(trench.LengthM),
            R(trench.WidthM),
            R(trench.DepthM),
            R(trench.DigM3),
            R(trench.SandM3),
            R(trench.FillM3),
            R(trench.SurplusM3)
        );

    private static MainTestEntry TestOf(MainTest test) =>
        new(
            R(test.DesignBar),
            R(test.TestBar),
            R(test.VolumeL),
            R(test.AddedL),
            R(test.LetDownBar),
            R(test.MostReleasedL),
            R(test.FlushLPerS),
            R(test.FlushM3),
            R(test.ChlorineKg)
        );

    private static TapPointEntry PointOf(TapHead head, IReadOnlyList<TapHead> heads) =>
        new(
            head.Name,
            head.Point.Kind.ToString(),
            head.Point.UpstreamIndex < 0 ? TapsBrief.TankName : heads[head.Point.UpstreamIndex].Name,
            head.Pipe.Name,
            R(head.Point.LengthM),
            R(head.Point.LevelM),
            R(head.FlowM3PerS * 1000),
            R(head.SpeedMPerS),
            R(head.LossM),
            R(head.ResidualM),
            R(head.StaticM),
            R(head.Point.NeedM)
        );
}
