using System.Collections.Immutable;
using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>One arrangement of pump, drive, pipes, array and tank.</summary>
internal sealed record Arrangement(
    Choice Choice,
    Hydraulics Hydraulics,
    PumpTable Table,
    ImmutableArray<double> ModuleW,
    double Cost
);

/// <summary>What the search found for one pump.</summary>
/// <param name="Pump">The pump.</param>
/// <param name="Best">Its cheapest arrangement that serves, else the one that comes nearest; null when there is none.</param>
/// <param name="WorstShare">Share of the demand met in the worst month by <paramref name="Best"/>.</param>
/// <param name="Serves">Whether the target is met.</param>
/// <param name="Why">Kind of the limit when it is not.</param>
/// <param name="WhyNot">The limit in words.</param>
internal sealed record PumpSearch(
    PumpCard Pump,
    Arrangement? Best,
    double? WorstShare,
    bool Serves,
    string Why,
    string WhyNot
);
