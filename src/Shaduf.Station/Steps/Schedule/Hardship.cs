using Shaduf.Programme;

namespace Shaduf.Station;

/// <summary>Whether heat or thin air slows all work.</summary>
internal static class Hardship
{
    // Above it work in the open slows down, as in thin air: judgement, no source.
    private const double HotDegC = 35;
    private const double ThinAirM = 2500;

    /// <summary>Factor on all durations.</summary>
    /// <param name="brief">The brief: what it says, else what its place and months say.</param>
    /// <returns>Factor.</returns>
    public static double FactorOf(Brief brief) =>
        brief.Rack.Crew.HasHardship
        ?? (brief.Site.ElevationM > ThinAirM || brief.Site.Months.Any(month => month.HighDegC > HotDegC))
            ? Duration.HardshipFactor
            : 1;
}
