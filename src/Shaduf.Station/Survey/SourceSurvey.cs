namespace Shaduf.Station;

/// <summary>What is settled of the source.</summary>
public abstract record SourceSurvey
{
    /// <summary>Level of the highest water that the pump may draw from, above sea [m].</summary>
    /// <param name="groundM">Level of the ground where the main begins [m].</param>
    /// <returns>Level [m].</returns>
    public abstract double HighestWaterM(double groundM);

    /// <summary>Settles a brief's source.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="taken">Where assumptions are listed.</param>
    /// <returns>The source.</returns>
    internal static SourceSurvey Of(Brief brief, List<Assumption> taken) =>
        brief.Source switch
        {
            BoreholeBrief borehole => WellSurvey.Of(borehole, taken),
            SurfaceBrief surface => IntakeSurvey.Of(surface, brief.Lift.Route[0].ElevationM, taken),
            _ => throw new InvalidOperationException("a kind of source without a survey"),
        };
}

/// <summary>What is settled of a borehole or well. Depths are below ground.</summary>
/// <param name="Brief">The borehole as the brief has it.</param>
/// <param name="DepthM">Depth [m].</param>
/// <param name="RestLevelM">Depth to the water at rest on the day of the test [m].</param>
/// <param name="Tested">What its tests say.</param>
public sealed record WellSurvey(BoreholeBrief Brief, double DepthM, double RestLevelM, TestedWell Tested) : SourceSurvey
{
    /// <inheritdoc/>
    public override double HighestWaterM(double groundM) => groundM - RestLevelM;

    internal static WellSurvey Of(BoreholeBrief brief, List<Assumption> taken)
    {
        var restM = brief.RestLevelM ?? Assumption.Take(taken, "rest-level", 0.8 * brief.DepthM!.Value, "m");
        var depthM = brief.DepthM ?? Assumption.Take(taken, "depth", restM + 20, "m");
        return new(brief, depthM, restM, TestedWell.Of(brief, depthM - restM, taken));
    }
}
