using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Cooling of a submersible motor by the water that rises past it.</summary>
public static class MotorCooling
{
    /// <summary>Mean velocity in the ring between casing and motor.</summary>
    /// <param name="flowM3PerS">Lowest flow at which the motor runs on [m3/s], 0 to 1.</param>
    /// <param name="casingM">Inside diameter of casing or shroud [m], 0.05 to 5; an open well is a wide casing.</param>
    /// <param name="motorM">Outside diameter of the motor [m], 0.03 to less than the casing.</param>
    /// <returns>Velocity [m/s]. It holds only where the inflow lies below the motor or a shroud is fitted.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>continuity, v = Q/[(pi/4)(D_c2 - D_m2)]</source>
    public static double VelocityMPerS(double flowM3PerS, double casingM, double motorM)
    {
        Within.Require(flowM3PerS, 0, 1, "m3/s");
        Within.Require(casingM, 0.05, 5, "m");
        Within.Require(motorM, 0.03, Math.BitDecrement(casingM), "m");
        return flowM3PerS / (Math.PI / 4 * ((casingM * casingM) - (motorM * motorM)));
    }
}
