using Shaduf.Ground;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the site plan and on the pits' pegs.</summary>
internal static class SettingOutFindings
{
    /// <summary>Whether the tapes cross well, and whether the plan knows where things lie.</summary>
    /// <param name="design">The design so far.</param>
    public static IEnumerable<Finding> Of(Design design)
    {
        var pits = design.Works.Pits;
        yield return new(
            "ground/pegs",
            pits.LeastCrossingDeg >= PegPlace.LeastCrossingDeg ? FindingStatus.Holds : FindingStatus.Look,
            Invariant(
                $"smallest angle at which the tapes from the two pegs cross at a pit, at {pits.Pits.MinBy(pit => pit.CrossingDeg)!.Name}; where it is smaller, far rows are set out from two pits of the first row"
            ),
            pits.LeastCrossingDeg,
            PegPlace.LeastCrossingDeg,
            "deg",
            "geometry; limit: judgement"
        );
        var plan = SitePlan.Of(design);
        if (TankPlaces.Of(design, plan) is { IsTold: true } tanks)
        {
            yield return new(
                "site/tank-room",
                tanks.FreeM >= 0 ? FindingStatus.Holds : FindingStatus.Stop,
                tanks.FreeM >= 0
                    ? "the tanks stand free of racks, poles, source and fence"
                    : "where it was told to stand, a tank with its stand lies on a rack, a pole, the source or the fence: measure its place again",
                tanks.FreeM,
                0,
                "m",
                "geometry; round each tank, its platform and its footings"
            );
        }

        string[] missing =
        [
            .. plan.Source.IsTold ? [] : (string[])[plan.Source.Name],
            .. plan.Tank is null ? ["tank"] : (string[])[],
        ];
        yield return new(
            "site/places",
            missing.Length == 0 ? FindingStatus.Holds : FindingStatus.Look,
            missing.Length == 0
                ? "the site plan knows where source and tank lie"
                : $"the site plan does not know where these lie: {string.Join(", ", missing)}; measure bearing and distance from the middle of the front rack's low edge and write them into site.places",
            missing.Length,
            0,
            "places",
            "brief"
        );
    }
}
