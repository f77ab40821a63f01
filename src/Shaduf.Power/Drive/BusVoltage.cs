using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>
/// What the direct-current bus allows a three-phase motor behind an inverter without a boost stage, modulated by space
/// vectors or with the third harmonic. A brushless motor with its own controller has no such limit beyond its window.
/// </summary>
public static class BusVoltage
{
    /// <summary>Bus voltage at which the motor gets its rated voltage.</summary>
    /// <param name="motorV">Rated voltage between lines [V], 10 to 1000.</param>
    /// <param name="dropShare">Drop in filter and motor cable as a share of the rated voltage, 0 to 0.5.</param>
    /// <returns>Bus voltage [V].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Mohan, Undeland, Robbins, Power Electronics, three-phase inverters, linear range with space-vector
    /// modulation: largest fundamental between lines is the bus voltage over √2; from memory.</source>
    public static double FullSpeedV(double motorV, double dropShare)
    {
        Within.Require(motorV, 10, 1000, "V");
        Within.Require(dropShare, 0, 0.5, "");
        return Math.Sqrt(2) * motorV * (1 + dropShare);
    }

    /// <summary>
    /// Largest speed at constant volts per hertz, as a share of rated speed. It is capped at 1: a bus with voltage to
    /// spare does not turn the motor above its rated speed.
    /// </summary>
    /// <param name="dcV">Bus voltage under load [V], 0 to 2000.</param>
    /// <param name="motorV">Rated voltage between lines [V], 10 to 1000.</param>
    /// <param name="dropShare">Drop in filter and motor cable as a share of the rated voltage, 0 to 0.5.</param>
    /// <returns>Speed ratio, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>As <see cref="FullSpeedV"/>.</source>
    public static double SpeedRatio(double dcV, double motorV, double dropShare)
    {
        Within.Require(dcV, 0, 2000, "V");
        return Math.Min(1, dcV / FullSpeedV(motorV, dropShare));
    }
}
