using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Water that must stand over a strainer so that it draws no air.</summary>
public static class StrainerCover
{
    /// <summary>Least water over the mouth of the suction pipe.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 2.</param>
    /// <param name="mouthM">Outside diameter of the mouth [m], 0.02 to 2.</param>
    /// <returns>Depth [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>S = D (1 + 2.3 F), F = v/sqrt(g D); ANSI/HI 9.8, from memory</source>
    public static double LeastM(double flowM3PerS, double mouthM)
    {
        Within.Require(flowM3PerS, 0, 2, "m3/s");
        Within.Require(mouthM, 0.02, 2, "m");
        var velocity = flowM3PerS / (Math.PI / 4 * mouthM * mouthM);
        return mouthM * (1 + (2.3 * velocity / Math.Sqrt(Gravity.MPerS2 * mouthM)));
    }
}
