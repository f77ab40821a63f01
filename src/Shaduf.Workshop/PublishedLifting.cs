using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>Checks of ropes, poles and hands against published rows.</summary>
internal static class PublishedLifting
{
    private const double KNPerLb = 4.4482216e-3;

    internal static IEnumerable<PublishedCheck> All =>
        [
            new(
                "workshop/guy-rope",
                "pull",
                row => GuyRope.PullKN(row["windKN"], row["windHeightM"], row["tiedHeightM"], row["slopeDeg"])
            ),
            new("workshop/guy-rope", "up", row => GuyRope.UpKN(row["pullKN"], row["slopeDeg"])),
            new("workshop/sling", "leg", row => Leg(row, row["weightKN"])),
            new("workshop/sling", "leg-lb", row => Leg(row, row["weightLb"] * KNPerLb) / KNPerLb),
            new("workshop/lifting-pole", "tripod-leg", row => LiftingPole.TripodLegKN(row["weightKN"], row["legDeg"])),
            new(
                "workshop/lifting-pole",
                "tripod-thrust",
                row => LiftingPole.TripodThrustKN(row["weightKN"], row["legDeg"])
            ),
            new(
                "workshop/lifting-pole",
                "gin-guy",
                row => LiftingPole.GuyKN(row["weightKN"], row["leanDeg"], row["guyDeg"])
            ),
            new(
                "workshop/lifting-pole",
                "gin-pole",
                row => LiftingPole.PoleKN(row["weightKN"], row["leanDeg"], row["guyDeg"])
            ),
            new("workshop/hand-lift", "man-elbow", row => Team(row, HandLift.ManKg(LiftHeight.Elbow))),
            new("workshop/hand-lift", "woman-elbow", row => Team(row, HandLift.WomanKg(LiftHeight.Elbow))),
        ];

    private static double Leg(PublishedCase row, double weightKN) =>
        Sling.LegKN(weightKN, (int)row["legCount"], row["slopeDeg"]);

    private static double Team(PublishedCase row, double singleKg) =>
        HandLift.TeamKg(singleKg, (int)row["peopleCount"]);
}
