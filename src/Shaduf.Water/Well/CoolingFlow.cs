using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Least water that must pass a submersible motor, by its makers' rule, in water up to 30 °C.</summary>
public static class CoolingFlow
{
    private const double FootM = 0.3048;

    /// <summary>Least speed of the water past a motor.</summary>
    /// <param name="motorM">Outside diameter of the motor [m], 0.05 to 0.4.</param>
    /// <param name="shaftKW">Rated power at the shaft [kW], 0.05 to 500.</param>
    /// <returns>Speed [m/s]: 0 for a 4-inch motor below 2.2 kW, 0.0762 from there on, 0.1524 for wider motors.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>submersible-motor makers' application manual, looked up: 0.25 ft/s and 0.5 ft/s to 30 degC; 115 mm parts 4-inch from 6-inch motors</source>
    public static double LeastMPerS(double motorM, double shaftKW)
    {
        Within.Require(motorM, 0.05, 0.4, "m");
        Within.Require(shaftKW, 0.05, 500, "kW");
        return (motorM > 0.115, shaftKW >= 2.2) switch
        {
            (true, _) => 0.5 * FootM,
            (_, true) => 0.25 * FootM,
            _ => 0,
        };
    }

    /// <summary>Flow that passes a motor at a speed.</summary>
    /// <param name="boreM">Inside diameter of casing or shroud [m], 0.05 to 5.</param>
    /// <param name="motorM">Outside diameter of the motor [m], 0.03 to less than the bore.</param>
    /// <param name="speedMPerS">Speed of the water [m/s], 0 to 10.</param>
    /// <returns>Flow [m3/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>continuity, Q = v (pi/4)(D_b2 - D_m2)</source>
    public static double PastMotorM3PerS(double boreM, double motorM, double speedMPerS)
    {
        Within.Require(boreM, 0.05, 5, "m");
        Within.Require(motorM, 0.03, Math.BitDecrement(boreM), "m");
        Within.Require(speedMPerS, 0, 10, "m/s");
        return speedMPerS * Math.PI / 4 * ((boreM * boreM) - (motorM * motorM));
    }
}
