namespace Shaduf.Water;

/// <summary>A pump at any speed, as the lift sees it.</summary>
public interface IPumpCurve
{
    /// <summary>Head against a closed valve at the curve's own speed, or that of its relief valve [m].</summary>
    double ShutOffHeadM { get; }

    /// <summary>Largest head lifted at the curve's own speed [m].</summary>
    double ReachM { get; }

    /// <summary>Flow of the most efficient point at the curve's own speed [m3/s].</summary>
    double BestFlowM3PerS { get; }

    /// <summary>Largest flow of the maker's points at the curve's own speed [m3/s].</summary>
    double LargestFlowM3PerS { get; }

    /// <summary>Flow at no head and the curve's own speed [m3/s].</summary>
    double NoHeadFlowM3PerS { get; }

    /// <summary>Head at a flow.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="speedRatio">Speed over the curve's own, 0.1 to 1.5.</param>
    /// <returns>Head [m].</returns>
    double HeadM(double flowM3PerS, double speedRatio);

    /// <summary>Efficiency of the pump alone.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="speedRatio">Speed over the curve's own, 0.1 to 1.5.</param>
    /// <returns>Efficiency [share].</returns>
    double EfficiencyShare(double flowM3PerS, double speedRatio);

    /// <summary>Power at the shaft.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to less than r times <see cref="NoHeadFlowM3PerS"/>.</param>
    /// <param name="speedRatio">Speed over the curve's own, 0.1 to 1.5.</param>
    /// <param name="densityKgPerM3">Density [kg/m3], 500 to 1500.</param>
    /// <returns>Power [W].</returns>
    double ShaftW(double flowM3PerS, double speedRatio, double densityKgPerM3);

    /// <summary>Speed at which the pump gives a flow at a head; with no flow, the speed from which water comes.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="headM">Head [m], 0 to 2000.</param>
    /// <returns>Speed over the curve's own.</returns>
    double SpeedRatio(double flowM3PerS, double headM);

    /// <summary>Whether an operating point lies beyond the maker's points.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="headM">Head [m], 0 to 2000.</param>
    /// <param name="speedRatio">Speed over the curve's own, 0.1 to 1.5.</param>
    /// <returns>True when it does.</returns>
    bool IsBeyond(double flowM3PerS, double headM, double speedRatio);

    /// <summary>How far an operating point lies within the maker's points; it falls as the speed rises, below 0 beyond them.</summary>
    /// <param name="lift">The system.</param>
    /// <param name="speedRatio">Speed over the curve's own, 0.1 to 1.5.</param>
    /// <returns>Head between the point and the end of the curve [m].</returns>
    double RoomM(LiftSystem lift, double speedRatio);
}
