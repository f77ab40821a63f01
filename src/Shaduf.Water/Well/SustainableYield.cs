using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>The rate that a well may be asked for, day after day.</summary>
public static class SustainableYield
{
    /// <summary>A share of the rate that a constant-rate test held.</summary>
    /// <param name="testedM3PerS">Rate held through the constant-rate test [m3/s], 0 to 1.</param>
    /// <param name="share">Share taken of it [share], 0 to 1; usual 0.60 to 0.70, above 0.80 a hydrogeologist decides.</param>
    /// <returns>Largest rate to pump [m3/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>share of the tested rate: national practice, from memory</source>
    public static double FlowM3PerS(double testedM3PerS, double share)
    {
        Within.Require(testedM3PerS, 0, 1, "m3/s");
        Within.Require(share, 0, 1, "of the tested rate");
        return testedM3PerS * share;
    }
}
