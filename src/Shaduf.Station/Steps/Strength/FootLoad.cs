using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>What columns put on one footing under one combination, at the surface of the ground in the footing's middle.</summary>
/// <param name="Column">Mark of the column; of several, joined by a plus.</param>
/// <param name="Combination">What acts together.</param>
/// <param name="DownKN">Force down [kN]; negative when it pulls.</param>
/// <param name="AlongKN">Force along the row, to the right [kN].</param>
/// <param name="AcrossKN">Force across the row, towards the high edge [kN].</param>
/// <param name="AboutAlongKNm">Moment about the line along the row [kN·m].</param>
/// <param name="AboutAcrossKNm">Moment about the line across the row [kN·m].</param>
public sealed record FootLoad(
    string Column,
    string Combination,
    double DownKN,
    double AlongKN,
    double AcrossKN,
    double AboutAlongKNm,
    double AboutAcrossKNm
)
{
    /// <summary>Side load [kN].</summary>
    public double SideKN => Math.Sqrt((AlongKN * AlongKN) + (AcrossKN * AcrossKN));

    /// <summary>Moment at the surface of the ground [kN·m].</summary>
    public double MomentKNm => Math.Sqrt((AboutAlongKNm * AboutAlongKNm) + (AboutAcrossKNm * AboutAcrossKNm));

    /// <summary>Moments at a depth, as large as they are, about the lines along and across the row [kN·m].</summary>
    /// <param name="depthM">Depth below the ground [m].</param>
    public (double AboutAlongKNm, double AboutAcrossKNm) AtKNm(double depthM) =>
        (Math.Abs(AboutAlongKNm - (depthM * AcrossKN)), Math.Abs(AboutAcrossKNm + (depthM * AlongKN)));

    /// <summary>The loads of all columns under some combinations.</summary>
    /// <param name="rack">The analysed rack.</param>
    /// <param name="combinations">The combinations.</param>
    /// <param name="gustKNPerM2">Gust [kN/m2].</param>
    /// <returns>The loads.</returns>
    public static IReadOnlyList<FootLoad> Of(
        RackStrength rack,
        IReadOnlyList<Combination> combinations,
        double gustKNPerM2
    ) => Of(rack, combinations, gustKNPerM2, FootGroups.Of(rack.Rack.Skeleton, FootingForm.Block));

    /// <summary>The loads of all footings under some combinations.</summary>
    /// <param name="rack">The analysed rack.</param>
    /// <param name="combinations">The combinations.</param>
    /// <param name="gustKNPerM2">Gust [kN/m2].</param>
    /// <param name="groups">The columns of each footing.</param>
    /// <returns>The loads.</returns>
    public static IReadOnlyList<FootLoad> Of(
        RackStrength rack,
        IReadOnlyList<Combination> combinations,
        double gustKNPerM2,
        IReadOnlyList<IReadOnlyList<FootPlace>> groups
    ) =>
        [
            .. from combination in combinations
            let factors = combination.EachFactor(gustKNPerM2)
            from columns in groups
            select Together([
                .. columns.Select(column =>
                    (
                        Of(
                            rack.Rack.Skeleton.Members[rack.Rack.Skeleton.Feet[column.Foot].Member].Mark,
                            combination.Name,
                            rack.Cases.Foot(column.Foot, factors),
                            rack.HeldAtMm
                        ),
                        column.AlongM,
                        column.AcrossM
                    )
                ),
            ]),
        ];

    /// <summary>The loads of each foot of a frame under some combinations.</summary>
    /// <param name="cases">The solved frame.</param>
    /// <param name="combinations">The combinations.</param>
    /// <param name="gustKNPerM2">Gust [kN/m2].</param>
    /// <param name="heldMm">Depth below the ground at which its feet are held; below 0 above it [mm].</param>
    /// <returns>The loads.</returns>
    public static IReadOnlyList<FootLoad> Of(
        FrameCases cases,
        IReadOnlyList<Combination> combinations,
        double gustKNPerM2,
        double heldMm
    ) =>
        [
            .. from combination in combinations
            let factors = combination.EachFactor(gustKNPerM2)
            from foot in Enumerable.Range(0, cases.Frame.Skeleton.Feet.Count)
            select Of(
                cases.Frame.Skeleton.Members[cases.Frame.Skeleton.Feet[foot].Member].Mark,
                combination.Name,
                cases.Foot(foot, factors),
                heldMm
            ),
        ];

    /// <summary>Loads under the same combination taken together at the middle of a stiff footing.</summary>
    /// <param name="loads">The loads with their distances from the middle, along and across the row [m].</param>
    /// <returns>The load.</returns>
    public static FootLoad Together(IReadOnlyList<(FootLoad Load, double AlongM, double AcrossM)> loads) =>
        loads is [var (only, along, across)] && along == 0 && across == 0
            ? only
            : new(
                string.Join("+", loads.Select(each => each.Load.Column)),
                loads[0].Load.Combination,
                loads.Sum(each => each.Load.DownKN),
                loads.Sum(each => each.Load.AlongKN),
                loads.Sum(each => each.Load.AcrossKN),
                loads.Sum(each => each.Load.AboutAlongKNm - (each.AcrossM * each.Load.DownKN)),
                loads.Sum(each => each.Load.AboutAcrossKNm + (each.AlongM * each.Load.DownKN))
            );

    // The column puts on the ground the opposite of what the ground puts on it, kept where the foot is held.
    private static FootLoad Of(string column, string combination, Reaction ground, double heldMm)
    {
        var (force, moment) = (ground.Force, ground.Moment);
        return new(
            column,
            combination,
            force.ZN / 1000,
            -force.XN / 1000,
            -force.YN / 1000,
            -(moment.XNMm + (heldMm * force.YN)) * 1e-6,
            -(moment.YNMm - (heldMm * force.XN)) * 1e-6
        );
    }
}
