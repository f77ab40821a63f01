using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What the search chose, and why.</summary>
internal static class ChoiceNotes
{
    private const string Search =
        "of the arrangements of all cards the cheapest that meets the target: pump, drive, pipes, array, tilt and tank together";

    private const string Asked = "asked for in the brief";

    /// <summary>The notes of a choice.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="sizing">The choice.</param>
    /// <returns>The notes.</returns>
    public static IEnumerable<ChoiceNote> Of(Brief brief, Sizing sizing)
    {
        var choice = sizing.Choice;
        yield return new(
            "pump",
            choice.Pump.Name,
            sizing.Limit is not null ? $"none meets the target; this comes nearest. {sizing.Limit.Says}"
                : brief.Lift.Pump is not null ? Asked
                : Invariant(
                    $"{Search}; {sizing.Tally.CandidateCount:#,0} looked at, {sizing.Tally.RunCount:#,0} run through the year, the others ruled out by bounds"
                )
        );
        yield return new(
            "drive",
            choice.Drive.Name,
            brief.Lift.Drive is not null
                ? Asked
                : "carries the motor's current after derating, and its window takes the strings"
        );
        yield return new(
            "array",
            Invariant(
                $"{choice.ModuleCount} of {choice.Module.Name}: {choice.SeriesCount} in series, {choice.StringCount} strings"
            ),
            brief.Array is { SeriesCount: not null, StringCount: not null } ? Asked : Search
        );
        if (brief.Array.TiltDeg is null)
        {
            yield return new(
                "tilt of the modules",
                Invariant($"{choice.Facing.TiltDeg:0} deg"),
                "of the tilt with the most sun for the demand in the worst month and its neighbours the one of the cheapest arrangement: a steeper rack costs more steel; not below 10 deg, so that rain washes the glass"
            );
        }

        yield return new("tank", Invariant($"{choice.TankCount} of {choice.Tank.Name}"), Search);
        yield return new(
            "main",
            choice.Lift.Lay.Name,
            choice.Lift.Lay.Reaches.Count > 1
                ? "the mains whose pressure class and speed fit were priced with each pump; the weaker class where the pressure lets it"
                : "the mains whose pressure class and speed fit were priced with each pump"
        );
        yield return new(
            choice.Lift.Foot.Name,
            choice.Lift.Foot.Card.Name,
            choice.Lift.Foot is Suction
                ? Invariant(
                    $"of the narrowest that carry the flow at {Suction.FastestMPerS} m/s at most: less lost before the pump, so that it does not cavitate"
                )
                : Invariant(
                    $"of the two narrowest that carry the flow at {Riser.FastestMPerS} m/s at most and the closed-valve head"
                )
        );
    }
}
