using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>At which factors on its full load a stand buckles.</summary>
/// <param name="SwayFactor">The whole stand sways out of place: K h/V, or the frame's own factor where that is small.</param>
/// <param name="Frame">The frame's own factor, at which the first bar buckles between its joints: the members' checks judge that; found when it is asked for.</param>
public sealed record StandBuckling(double SwayFactor, Lazy<double?> Frame)
{
    /// <summary>The factors of a stand.</summary>
    /// <param name="stand">The stand.</param>
    /// <param name="cases">Its solved frame.</param>
    /// <param name="stiffnessNPerMm">Its sideways stiffness at the platform, the softer way [N/mm].</param>
    /// <param name="national">What the country's annex sets.</param>
    /// <source>EN 1993-1-1:2005, 5.2.1(4); by the frame below 10, for K h/V flatters legs that bend</source>
    internal static StandBuckling Of(
        TankStand stand,
        FrameCases cases,
        double stiffnessNPerMm,
        NationalChoices national
    )
    {
        var pressing = StandCombinations.Pressing(national);
        var frame = new Lazy<double?>(() => pressing.Select(each => cases.CriticalFactor(each.EachFactor(0))).Min());
        var factors = pressing[0].EachFactor(0);
        var weightN = Enumerable.Range(0, stand.Skeleton.Feet.Count).Sum(foot => cases.Foot(foot, factors).Force.ZN);
        var sway = StandLegs.CriticalFactor(
            stiffnessNPerMm,
            (stand.Plan.FloorMm - StandPlan.FootMm) / 1000,
            weightN / 1000
        );
        return new(sway >= RackStrength.StiffCriticalFactor ? sway : Math.Min(sway, frame.Value ?? sway), frame);
    }
}
