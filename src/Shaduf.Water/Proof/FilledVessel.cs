using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Flow by a vessel and a watch.</summary>
public static class FilledVessel
{
    /// <summary>The flow.</summary>
    /// <param name="volumeL">Water that was caught [L], 1 to 1000000.</param>
    /// <param name="timeS">Time that it took [s], 1 to 1000000.</param>
    /// <returns>Flow [m³/h].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>Q = V/t</source>
    public static double FlowM3PerH(double volumeL, double timeS)
    {
        Within.Require(volumeL, 1, 1e6, "L");
        Within.Require(timeS, 1, 1e6, "s");
        return volumeL / timeS * 3.6;
    }

    /// <summary>How uncertain it is.</summary>
    /// <param name="volumeL">Water that was caught [L], 1 to 1000000.</param>
    /// <param name="offVolumeL">Uncertainty of the volume [L], 0 to 100000.</param>
    /// <param name="timeS">Time that it took [s], 1 to 1000000.</param>
    /// <param name="offTimeS">Uncertainty of the time [s], 0 to 100000.</param>
    /// <returns>Share of the flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>u(Q)/Q = sqrt((u_V/V)² + (u_t/t)²); propagation of uncertainty</source>
    public static double UncertainShare(double volumeL, double offVolumeL, double timeS, double offTimeS)
    {
        Within.Require(volumeL, 1, 1e6, "L");
        Within.Require(offVolumeL, 0, 1e5, "L");
        Within.Require(timeS, 1, 1e6, "s");
        Within.Require(offTimeS, 0, 1e5, "s");
        return Math.Sqrt(Math.Pow(offVolumeL / volumeL, 2) + Math.Pow(offTimeS / timeS, 2));
    }
}
