using System.Collections.Immutable;

namespace Shaduf.Station;

/// <summary>What a source may give, month by month, January first.</summary>
/// <param name="HourM3">In an hour [m³].</param>
/// <param name="DayM3">In a day [m³]; infinite where nothing limits it.</param>
public sealed record SourceLimits(ImmutableArray<double> HourM3, ImmutableArray<double> DayM3)
{
    /// <summary>Nothing but the largest flow of the pump's table.</summary>
    public static SourceLimits None { get; } = new(Endless, Endless);

    private static ImmutableArray<double> Endless => [.. Enumerable.Repeat(double.PositiveInfinity, 12)];
}
