using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>One arrangement of pump, drive, pipes, array and tank.</summary>
internal sealed record Arrangement(
    Choice Choice,
    Hydraulics Hydraulics,
    PumpTable Table,
    ModuleYear Module,
    double Cost,
    double Share
)
{
    /// <summary>What a year run of it needs.</summary>
    public YearInputs Inputs(SizingGround ground) =>
        new(Module.PowerW, Choice.ModuleCount * ground.Losses.KeptShare, Table, ground.Demand.HourM3, Choice.UsefulM3)
        {
            Stops = ground.Stops,
            Limits = ground.Source.Limits,
        };
}

/// <summary>What the search found for one pump.</summary>
/// <param name="Pump">The pump.</param>
/// <param name="Front">Its arrangements that no other beats in cost and share together.</param>
/// <param name="Best">Its cheapest arrangement that serves, else the one that comes nearest; null when there is none.</param>
/// <param name="Serves">Whether the target is met.</param>
/// <param name="Why">Kind of the limit when it is not.</param>
/// <param name="WhyNot">The limit in words.</param>
/// <param name="Tally">How many arrangements were looked at, and year runs made.</param>
internal sealed record PumpSearch(
    PumpCard Pump,
    IReadOnlyList<Arrangement> Front,
    Arrangement? Best,
    bool Serves,
    string Why,
    string WhyNot,
    SearchTally Tally
)
{
    /// <summary>Share of the demand met by <see cref="Best"/>, over what the brief measures it.</summary>
    public double? Share => Best?.Share;
}

/// <summary>How much a search looked at.</summary>
/// <param name="CandidateCount">Arrangements looked at.</param>
/// <param name="RunCount">Year runs made; the other arrangements were ruled out by a bound.</param>
public readonly record struct SearchTally(long CandidateCount, long RunCount);
