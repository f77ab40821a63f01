using System.Collections.Frozen;
using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>What a cable's conductor is made of, by IEC 60228.</summary>
public enum Conductor
{
    /// <summary>Plain copper, stranded.</summary>
    CopperClass2,

    /// <summary>Tinned copper, stranded.</summary>
    CopperClass2Tinned,

    /// <summary>Plain copper, flexible.</summary>
    CopperClass5,

    /// <summary>Tinned copper, flexible; the conductor of photovoltaic cable.</summary>
    CopperClass5Tinned,

    /// <summary>Aluminium, stranded.</summary>
    AluminiumClass2,
}

/// <summary>Resistance of a cable's conductor, one way.</summary>
public static class ConductorResistance
{
    /// <summary>Largest resistance that the standard allows at 20 °C.</summary>
    /// <param name="conductor">Kind of conductor.</param>
    /// <param name="sizeMm2">Nominal size [mm²], 1.5 to 120, a size of the table.</param>
    /// <returns>Resistance [Ω/km].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table has no such size for this conductor.</exception>
    /// <source>IEC 60228:2004, tables 2 and 3; looked up in four tables that agree.</source>
    public static double OhmPerKm(Conductor conductor, double sizeMm2) => Of(conductor).At(sizeMm2);

    /// <summary>Resistance at the conductor's temperature.</summary>
    /// <param name="conductor">Kind of conductor.</param>
    /// <param name="sizeMm2">Nominal size [mm²], 1.5 to 120, a size of the table.</param>
    /// <param name="conductorDegC">Temperature of the conductor [°C], -60 to 250.</param>
    /// <returns>Resistance [Ω/km].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range or the table.</exception>
    /// <source>IEC 60287-1-1, table 1: 0.00393 1/K for copper, 0.00403 1/K for aluminium, from 20 °C.</source>
    public static double AtTemperatureOhmPerKm(Conductor conductor, double sizeMm2, double conductorDegC)
    {
        Within.Require(conductorDegC, -60, 250, "°C");
        return OhmPerKm(conductor, sizeMm2) * (1 + TemperaturePerK(conductor) * (conductorDegC - 20));
    }

    /// <summary>Factor that takes a resistance measured on copper to 20 °C.</summary>
    /// <param name="measuredDegC">Temperature of the conductor when it was measured [°C], -60 to 120.</param>
    /// <returns>Factor Kt: R at 20 °C is Kt times R measured.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    /// <source>IEC 60228:2004, annex B: Kt = 250/(230 + t).</source>
    public static double AnnexBFactor(double measuredDegC)
    {
        Within.Require(measuredDegC, -60, 120, "°C");
        return 250 / (230 + measuredDegC);
    }

    /// <summary>Temperature of a loaded conductor: its rise goes with the square of the current.</summary>
    /// <param name="warmth">Surroundings and the insulation's limit.</param>
    /// <param name="loadRatio">Current over ampacity in these surroundings, 0 to 1.</param>
    /// <returns>Temperature [°C].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Heat balance behind IEC 60287-1-1, with losses in the conductor only.</source>
    public static double WorkingDegC(CableWarmth warmth, double loadRatio)
    {
        Within.Require(warmth.LargestConductorDegC, 60, 120, "°C");
        Within.Require(warmth.SurroundingsDegC, -40, warmth.LargestConductorDegC, "°C");
        Within.Require(loadRatio, 0, 1, "");
        var riseK = warmth.LargestConductorDegC - warmth.SurroundingsDegC;
        return warmth.SurroundingsDegC + riseK * loadRatio * loadRatio;
    }

    /// <summary>The smallest standard size that is not below a computed one.</summary>
    /// <param name="conductor">Kind of conductor.</param>
    /// <param name="leastMm2">Computed size [mm²], 0 to 120.</param>
    /// <returns>Nominal size [mm²].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The computed size is outside its range.</exception>
    /// <source>IEC 60228:2004, tables 2 and 3.</source>
    public static double StandardMm2(Conductor conductor, double leastMm2)
    {
        Within.Require(leastMm2, 0, 120, "mm²");
        return Of(conductor).SizesMm2.First(sizeMm2 => sizeMm2 >= leastMm2);
    }

    internal static double TemperaturePerK(Conductor conductor) =>
        conductor == Conductor.AluminiumClass2 ? 0.00403 : 0.00393;

    private static readonly FrozenDictionary<Conductor, SizeTable> ByConductor = Enum.GetValues<Conductor>()
        .ToFrozenDictionary(
            conductor => conductor,
            conductor => new SizeTable("ConductorResistance.csv", $"{conductor}", $"{conductor}")
        );

    private static SizeTable Of(Conductor conductor) =>
        ByConductor.TryGetValue(conductor, out var table)
            ? table
            : throw new ArgumentOutOfRangeException(nameof(conductor), conductor, "There is no such conductor.");
}
