using Shaduf.Ground;
using Shaduf.Station;
using static Shaduf.Pack.DesignEntries;

namespace Shaduf.Pack;

/// <summary>The fence: metres to the east and north of the middle of the front rack's low edge; levels above the ground under its low left corner.</summary>
/// <param name="RoundM">Length round the site, the gate included.</param>
/// <param name="HeightM">Height of the mesh.</param>
/// <param name="FreeM">Least free ground to what stands inside.</param>
/// <param name="Corners">The points of its line.</param>
/// <param name="GateWidthM">Width of the gate; 0 without one.</param>
/// <param name="GatePosts">The two posts of the gate.</param>
/// <param name="BayCount">Bays.</param>
/// <param name="PostCount">Posts.</param>
/// <param name="StrutCount">Struts.</param>
/// <param name="RailCount">Rails in bays without room for a strut.</param>
/// <param name="MeshM">Mesh to buy.</param>
/// <param name="WireM">Line wire to buy.</param>
/// <param name="ConcreteM3">Concrete.</param>
/// <param name="Parts">Posts, struts and rails by mark.</param>
public sealed record FenceEntry(
    double RoundM,
    double HeightM,
    double FreeM,
    IReadOnlyList<FencePointEntry> Corners,
    double GateWidthM,
    IReadOnlyList<FencePointEntry> GatePosts,
    int BayCount,
    int PostCount,
    int StrutCount,
    int RailCount,
    double MeshM,
    double WireM,
    double ConcreteM3,
    IReadOnlyList<PartEntry> Parts
)
{
    internal static FenceEntry Of(StationFence fence)
    {
        var line = fence.Line;
        return new(
            R(line.RoundM),
            R(line.Form.HeightM),
            R(fence.FreeM),
            [.. line.Corners.Select(FencePointEntry.Of)],
            R(line.Gate?.WidthM ?? 0),
            line.GatePosts is var (from, to) ? [FencePointEntry.Of(from), FencePointEntry.Of(to)] : [],
            line.BayCount,
            line.Posts.Count,
            line.StrutCount,
            line.Rails.Count,
            R(line.MeshM),
            R(line.WireM),
            R(line.ConcreteM3),
            PartsOf(fence.Steel, 1)
        );
    }
}

/// <summary>A point of the fence.</summary>
public sealed record FencePointEntry(double EastM, double NorthM, double LevelM)
{
    internal static FencePointEntry Of(FencePoint point) => new(R(point.EastM), R(point.NorthM), R(point.LevelM));
}
