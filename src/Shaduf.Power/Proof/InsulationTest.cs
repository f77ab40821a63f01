using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>How the insulation of an array is tested.</summary>
public static class InsulationTest
{
    /// <summary>Voltage of the test.</summary>
    /// <param name="systemV">Open-circuit voltage of a string at 25 °C times 1.25 [V], 0 to 1500.</param>
    /// <returns>Voltage [V].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>IEC 62446-1: 250 V below 120 V, 500 V to 500 V, 1000 V above; 1500 V above 1000 V from memory</source>
    public static double TestV(double systemV)
    {
        Within.Require(systemV, 0, 1500, "V");
        return systemV < 120 ? 250
            : systemV <= 500 ? 500
            : systemV <= 1000 ? 1000
            : 1500;
    }

    /// <summary>Least resistance to earth that passes.</summary>
    /// <param name="systemV">Open-circuit voltage of a string at 25 °C times 1.25 [V], 0 to 1500.</param>
    /// <returns>Resistance [MΩ].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>IEC 62446-1: 0.5 MΩ below 120 V, 1 MΩ above; from memory</source>
    public static double LeastMohm(double systemV)
    {
        Within.Require(systemV, 0, 1500, "V");
        return systemV < 120 ? 0.5 : 1;
    }
}
