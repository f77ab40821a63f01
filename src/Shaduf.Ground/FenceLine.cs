namespace Shaduf.Ground;

/// <summary>A point of a fence on the ground.</summary>
/// <param name="EastM">To the east [m].</param>
/// <param name="NorthM">To the north [m].</param>
/// <param name="LevelM">Level of the ground [m].</param>
public readonly record struct FencePoint(double EastM, double NorthM, double LevelM)
{
    internal double PlanM(FencePoint to) => double.Hypot(to.EastM - EastM, to.NorthM - NorthM);

    internal double SlopeM(FencePoint to) => double.Hypot(PlanM(to), to.LevelM - LevelM);

    internal FencePoint Toward(FencePoint to, double share) =>
        new(
            EastM + ((to.EastM - EastM) * share),
            NorthM + ((to.NorthM - NorthM) * share),
            LevelM + ((to.LevelM - LevelM) * share)
        );
}

/// <summary>A rectangular hole for a post or a strut.</summary>
/// <param name="LengthM">Along the fence [m].</param>
/// <param name="WidthM">Across it [m].</param>
/// <param name="DepthM">Depth [m].</param>
public readonly record struct FenceHole(double LengthM, double WidthM, double DepthM)
{
    /// <summary>Its volume [m³].</summary>
    public double VolumeM3 => LengthM * WidthM * DepthM;
}

/// <summary>How a fence is made.</summary>
/// <param name="SpacingM">Widest bay between posts [m], from <see cref="LeastSpacingM"/> to 5.</param>
/// <param name="HeightM">Height of the mesh [m], 0.9 to 2.25.</param>
public sealed record FenceForm(double SpacingM, double HeightM)
{
    private const double LowM = 1.4;
    private const double FewWiresM = 1.2;
    private const double StrutShare = 0.75;
    private const double StrutInHoleM = 0.4;

    // From where a strut enters the ground to the middle of its hole: half of what lies in it, so that concrete is all round.
    private const double StrutHoleOffM = 0.15;

    // Between the holes of two posts, at the least.
    private const double BetweenHolesM = 0.25;

    /// <summary>Line wires.</summary>
    public int WireCount => HeightM < FewWiresM ? 2 : 3;

    /// <summary>Hole of a post that a strut holds.</summary>
    public FenceHole StrainedHole => new(0.45, 0.45, HeightM <= LowM ? 0.6 : 0.75);

    /// <summary>Hole of a post between them.</summary>
    public FenceHole PlainHole { get; } = new(0.3, 0.3, 0.6);

    /// <summary>Hole of a strut's foot.</summary>
    public FenceHole StrutHole { get; } = new(0.45, 0.3, 0.45);

    /// <summary>Where a strut meets its post, and as far from it its foot goes into the ground: it leans at 45 deg [m].</summary>
    public double StrutReachM => StrutShare * HeightM;

    /// <summary>Length of a strut on level ground [m].</summary>
    public double StrutM => (StrutReachM * Math.Sqrt(2)) + StrutInHoleM;

    /// <summary>How far a strut goes on below the ground and beyond where it enters it, at the most [m].</summary>
    public double StrutBuriedM { get; } = StrutInHoleM / Math.Sqrt(2);

    /// <summary>From the middle of a post to the middle of the hole of its strut, along the ground [m].</summary>
    public double StrutHoleAtM => StrutReachM + StrutHoleOffM;

    /// <summary>Shortest bay in which a strut's hole keeps off that of the next post [m].</summary>
    public double ClearBayM => StrutHoleAtM + ((StrutHole.LengthM + PlainHole.LengthM) / 2);

    /// <summary>Shortest bay that has room for the struts of the posts at both its ends [m].</summary>
    public double BothStrutsM => (2 * StrutHoleAtM) + StrutHole.LengthM;

    /// <summary>Least spacing at which no strut's hole need meet that of a post [m].</summary>
    public double LeastSpacingM => ClearBayM + BetweenHolesM;

    /// <summary>Hole of a post.</summary>
    /// <param name="kind">The post.</param>
    public FenceHole HoleOf(FencePostKind kind) => kind == FencePostKind.Intermediate ? PlainHole : StrainedHole;
}

/// <summary>What a post of a fence is for.</summary>
public enum FencePostKind
{
    /// <summary>Between the others.</summary>
    Intermediate,

    /// <summary>Where the fence turns on the plan or in slope.</summary>
    Corner,

    /// <summary>Beside the gate.</summary>
    Gate,

    /// <summary>In a long straight, so that the wires can be strained.</summary>
    Strainer,
}

/// <summary>A post of a fence.</summary>
/// <param name="Kind">What it is for.</param>
/// <param name="Foot">Where it stands.</param>
/// <param name="LengthM">Its length, what is in the ground included [m].</param>
/// <param name="StrutsTo">Toward which points its struts lean: none, one or two.</param>
public sealed record FencePost(FencePostKind Kind, FencePoint Foot, double LengthM, IReadOnlyList<FencePoint> StrutsTo);

/// <summary>A straight of a fence between two corners, or between a corner and the gate.</summary>
/// <param name="SideIndex">Side of the fence in which it lies, from 0.</param>
/// <param name="From">Its start.</param>
/// <param name="To">Its end.</param>
/// <param name="BayCount">Bays.</param>
public sealed record FenceRun(int SideIndex, FencePoint From, FencePoint To, int BayCount)
{
    /// <summary>Slope beyond which the mesh does not follow the ground but goes down in steps, bay by bay [deg]; common practice, no source.</summary>
    public const double SteepestRakeDeg = 20;

    /// <summary>Slope beyond which no fence is built [deg]; common practice, no source.</summary>
    public const double SteepestDeg = 45;

    /// <summary>Length on the plan [m].</summary>
    public double PlanM => From.PlanM(To);

    /// <summary>Length along the ground [m].</summary>
    public double SlopeM => From.SlopeM(To);

    /// <summary>Rise from its start to its end; below 0 where it falls [m].</summary>
    public double RiseM => To.LevelM - From.LevelM;

    /// <summary>Slope of the ground, up or down [deg].</summary>
    public double SlopeDeg => Math.Atan2(Math.Abs(RiseM), PlanM) * 180 / Math.PI;

    /// <summary>Whether the mesh goes in level steps.</summary>
    public bool IsStepped => SlopeDeg is > SteepestRakeDeg and <= SteepestDeg;

    /// <summary>Mesh along it: along the ground, or level where it is stepped [m].</summary>
    public double MeshM => IsStepped ? PlanM : SlopeM;

    /// <summary>Width of the bay at each of its ends where equal bays would be too short for a strut; null where all are equal [m].</summary>
    public double? EndBayM { get; init; }

    /// <summary>Widths of its bays, measured as the mesh lies [m].</summary>
    public IReadOnlyList<double> BaysM =>
        EndBayM is { } endM
            ? [endM, .. Enumerable.Repeat((MeshM - (2 * endM)) / (BayCount - 2), BayCount - 2), endM]
            : [.. Enumerable.Repeat(MeshM / BayCount, BayCount)];

    /// <summary>Width of its widest bay [m].</summary>
    public double BayM => BaysM.Max();

    /// <summary>By how much its posts are longer where it is stepped [m].</summary>
    public double StepM => IsStepped ? Math.Abs(RiseM) * BayM / MeshM : 0;
}

/// <summary>A tube between two neighbouring posts, which holds them apart where a bay has no room for a strut.</summary>
/// <param name="From">The post at which it begins.</param>
/// <param name="To">The post at which it ends.</param>
public sealed record FenceRail(FencePost From, FencePost To);

/// <summary>A gate.</summary>
/// <param name="SideIndex">Side of the fence in which it stands, from 0.</param>
/// <param name="MiddleM">From the start of that side to its middle, on the plan [m].</param>
/// <param name="WidthM">Width between its posts [m].</param>
public sealed record FenceGate(int SideIndex, double MiddleM, double WidthM);

/// <summary>A fence, post by post.</summary>
/// <param name="Form">How it is made.</param>
/// <param name="Corners">The points of its line.</param>
/// <param name="Gate">Its gate; null for none.</param>
/// <param name="Runs">Its straights, from the gate round to the gate.</param>
/// <param name="Posts">Its posts in the same order.</param>
/// <param name="Rails">Rails in bays without room for a strut.</param>
public sealed record FenceLine(
    FenceForm Form,
    IReadOnlyList<FencePoint> Corners,
    FenceGate? Gate,
    IReadOnlyList<FenceRun> Runs,
    IReadOnlyList<FencePost> Posts,
    IReadOnlyList<FenceRail> Rails
)
{
    /// <summary>Mesh bought for one metre of fence: tension and joints; common practice, no source.</summary>
    public const double MeshFactor = 1.03;

    /// <summary>Wire bought for one metre of fence; common practice, no source.</summary>
    public const double WireFactor = 1.05;

    private const double TieKgPerM2 = 0.01;

    /// <summary>Bays.</summary>
    public int BayCount => Runs.Sum(run => run.BayCount);

    /// <summary>Posts of a kind.</summary>
    /// <param name="kind">The kind.</param>
    public int CountOf(FencePostKind kind) => Posts.Count(post => post.Kind == kind);

    /// <summary>Posts that struts hold.</summary>
    public int StrainedCount => Posts.Count - CountOf(FencePostKind.Intermediate);

    /// <summary>Struts.</summary>
    public int StrutCount => Posts.Sum(post => post.StrutsTo.Count);

    /// <summary>Mesh to buy [m].</summary>
    public double MeshM => Runs.Sum(run => run.MeshM) * MeshFactor;

    /// <summary>Line wire to buy [m].</summary>
    public double WireM => Runs.Sum(run => run.MeshM) * Form.WireCount * WireFactor;

    /// <summary>Wire to tie the mesh with [kg]; common practice, no source.</summary>
    public double TieKg => Runs.Sum(run => run.MeshM) * Form.HeightM * TieKgPerM2;

    /// <summary>Bars that hold the ends of the mesh: one at a gate post, two at a corner or strainer.</summary>
    public int StretcherCount => (2 * StrainedCount) - CountOf(FencePostKind.Gate);

    /// <summary>Concrete round posts and struts, their own volume not taken off; as much is dug [m³].</summary>
    public double ConcreteM3 =>
        Posts.Sum(post => Form.HoleOf(post.Kind).VolumeM3) + (StrutCount * Form.StrutHole.VolumeM3);

    /// <summary>Length round the site on the plan, the gate included [m].</summary>
    public double RoundM => Runs.Sum(run => run.PlanM) + (Gate?.WidthM ?? 0);

    /// <summary>The two posts of the gate, in the order of the line; null without a gate.</summary>
    public (FencePoint From, FencePoint To)? GatePosts => Gate is null ? null : (Posts[^1].Foot, Posts[0].Foot);
}
