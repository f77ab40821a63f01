using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on what hangs in the borehole.</summary>
internal static class WellBuildFindings
{
    // Makers' instructions: about 2 %; also what the sump must leave free.
    private const double MostStretchShare = 0.02;

    /// <summary>Strength and stretch of the riser, hoist and legs.</summary>
    /// <param name="build">The equipment.</param>
    /// <param name="choice">What was chosen.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(WellBuild build, Choice choice) =>
        [Strength(build, choice), Stretch(build, choice), Hoist(build), Legs(build.Tripod)];

    private static Finding Stretch(WellBuild build, Choice choice)
    {
        var share = build.YearsStretchM / choice.Lift.Foot.LengthM;
        return new(
            "source/riser-stretch",
            share <= MostStretchShare ? FindingStatus.Holds : FindingStatus.Look,
            share <= MostStretchShare
                ? Invariant(
                    $"stretch of the riser after years: {build.YearsStretchM:0.00} m, of which {build.StretchM:0.00} m at once"
                )
                : "the riser stretches too much: a stiffer or a wider one",
            share * 100,
            MostStretchShare * 100,
            "%",
            "about 2 %, instructions of several pump makers"
        );
    }

    private static Finding Hoist(WellBuild build) =>
        build.HoistT is { } tonnes
            ? new(
                "source/hoist",
                FindingStatus.Holds,
                Invariant(
                    $"hoist of {tonnes:0.#} t for {build.Hung.TotalKg:0} kg when the riser comes up full, with 1.3 for start and rubbing"
                ),
                1.3 * build.Hung.TotalKg / 1000,
                tonnes,
                "t",
                "common practice, no source"
            )
            : new(
                "source/hoist",
                FindingStatus.Look,
                "heavier than a hand hoist lifts: a crane or a rig with its own plan",
                1.3 * build.Hung.TotalKg / 1000,
                5,
                "t",
                "common practice, no source"
            );

    private static Finding Legs(TripodBuild legs) =>
        legs.Pipe is { } pipe
            ? new(
                "source/tripod",
                FindingStatus.Holds,
                Invariant(
                    $"legs of {pipe.Name}, {legs.LegM:0.0} m long, feet tied for {legs.ThrustKN:0.0} kN each; a rope led down over a block would double the load"
                ),
                legs.LegKN,
                legs.LegLimitKN,
                "kN",
                "statics; Euler with a factor of 3; judgement, no source"
            )
            : new(
                "source/tripod",
                FindingStatus.Look,
                Invariant(
                    $"no steel pipe of the cards makes legs of {legs.LegM:0.0} m for this load: hire a tripod or a rig that is marked for it"
                ),
                legs.LegKN,
                null,
                "kN",
                "statics; Euler with a factor of 3; judgement, no source"
            );

    private static Finding Strength(WellBuild build, Choice choice) =>
        build.StressMPa is { } stress
            ? Finding.AtMost(
                "source/riser-strength",
                stress,
                build.AllowedMPa,
                "MPa",
                Invariant(
                    $"the riser at its top while the pump runs: {build.RunningKN:0.0} kN{(choice.Lift.Foot.Card.LosesStrengthWhenWarm ? "" : ", in the root of its thread")}"
                ),
                choice.Lift.Foot.Card.LosesStrengthWhenWarm
                    ? "5 MPa at 20 degC, less for joints than the 8 MPa of PE100, by temperature; judgement, no source"
                    : "a third of the yield of 195 MPa, EN 10255; the third is judgement, no source"
            )
            : new(
                "source/riser-strength",
                FindingStatus.Stop,
                "the wall of the riser is too thin for a thread",
                choice.Lift.Foot.Card.OuterMm,
                choice.Lift.Foot.Card.BoreMm,
                "mm",
                "thread of ISO 7-1 (from memory)"
            );
}
