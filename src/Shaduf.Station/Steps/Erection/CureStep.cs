using Shaduf.Ground;

namespace Shaduf.Station;

/// <summary>A step of the work that waits for the concrete.</summary>
/// <param name="Name">What is done then.</param>
/// <param name="StrengthShare">Share of the strength at 28 days that the concrete must have.</param>
/// <param name="LeastDays">Days that are waited at least.</param>
public sealed record CureStep(string Name, double StrengthShare, double LeastDays)
{
    // Slow, blended or unknown cement.
    private const double CementFactor = 0.38;

    /// <summary>Days from casting to the step.</summary>
    /// <param name="airDegC">Mean air [°C].</param>
    /// <returns>Days; null when it is too cold to cast.</returns>
    public double? DaysAt(double airDegC) =>
        airDegC < Erection.ColdestDegC
            ? null
            : Math.Max(
                LeastDays,
                Math.Ceiling(ConcreteAge.DaysToShare(StrengthShare, CementFactor, Math.Min(50, airDegC)) - 1e-9)
            );
}
