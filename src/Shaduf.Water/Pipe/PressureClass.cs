using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Pressure that a plastic pipe is made for.</summary>
public static class PressureClass
{
    private const double PaPerBar = 1e5;

    private static readonly IReadOnlyList<CsvRow> Table = Csv.Embedded(
        typeof(PressureClass).Assembly,
        "PressureClass.csv"
    );

    private static readonly double[] PeDegC = Column("PE", "temperature_degC");
    private static readonly double[] PeFactors = Column("PE", "factor");
    private static readonly double[] PvcDegC = Column("PVC-U", "temperature_degC");
    private static readonly double[] PvcFactors = Column("PVC-U", "factor");

    /// <summary>Nominal pressure at 20 degC.</summary>
    /// <param name="requiredStrengthMPa">Minimum required strength MRS [MPa], 3 to 30: PE100 10, PE80 8, PVC-U 25.</param>
    /// <param name="designCoefficient">C_d, 1.25 to 3: PE 1.25; PVC-U 2.5 up to 90 mm, 2.0 from 110 mm.</param>
    /// <param name="diameterOverWallRatio">SDR: outside diameter over wall, 5 to 60.</param>
    /// <returns>Nominal pressure [bar].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>ISO 4427-1, EN 12201-1, EN ISO 1452-2: PN = 20 MRS/(C_d (SDR - 1))</source>
    public static double NominalBar(double requiredStrengthMPa, double designCoefficient, double diameterOverWallRatio)
    {
        Within.Require(requiredStrengthMPa, 3, 30, "MPa");
        Within.Require(designCoefficient, 1.25, 3, "(C_d)");
        Within.Require(diameterOverWallRatio, 5, 60, "(SDR)");
        return 20 * requiredStrengthMPa / (designCoefficient * (diameterOverWallRatio - 1));
    }

    /// <summary>Factor on the nominal pressure of polyethylene; straight lines between the table's temperatures.</summary>
    /// <param name="temperatureDegC">Water temperature [degC], 0 to 40.</param>
    /// <returns>Factor; 1 up to 20 degC.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>EN 12201-1, from memory</source>
    public static double PolyethyleneFactor(double temperatureDegC)
    {
        Within.Require(temperatureDegC, 0, PeDegC[^1], "degC");
        return temperatureDegC <= PeDegC[0] ? PeFactors[0] : StraightLine.Between(PeDegC, PeFactors, temperatureDegC);
    }

    /// <summary>Factor on the nominal pressure of PVC-U; each figure holds up to its temperature, in steps.</summary>
    /// <param name="temperatureDegC">Water temperature [degC], 0 to 45.</param>
    /// <returns>Factor; 1 up to 25 degC.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>EN ISO 1452, from memory</source>
    public static double PvcFactor(double temperatureDegC)
    {
        Within.Require(temperatureDegC, 0, PvcDegC[^1], "degC");
        return PvcFactors[Array.FindIndex(PvcDegC, limit => temperatureDegC <= limit)];
    }

    /// <summary>Head that stands for a pressure.</summary>
    /// <param name="pressureBar">Pressure [bar], -1 to 1000.</param>
    /// <param name="densityKgPerM3">Density [kg/m3], 500 to 1500.</param>
    /// <returns>Head [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>h = p/(rho g)</source>
    public static double HeadM(double pressureBar, double densityKgPerM3)
    {
        Within.Require(pressureBar, -1, 1000, "bar");
        Within.Require(densityKgPerM3, 500, 1500, "kg/m3");
        return pressureBar * PaPerBar / (densityKgPerM3 * Gravity.MPerS2);
    }

    /// <summary>Pressure under a head.</summary>
    /// <param name="headM">Head [m], -10 to 10000.</param>
    /// <param name="densityKgPerM3">Density [kg/m3], 500 to 1500.</param>
    /// <returns>Pressure [bar].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>p = rho g h</source>
    public static double PressureBar(double headM, double densityKgPerM3)
    {
        Within.Require(headM, -10, 10_000, "m");
        Within.Require(densityKgPerM3, 500, 1500, "kg/m3");
        return headM * densityKgPerM3 * Gravity.MPerS2 / PaPerBar;
    }

    private static double[] Column(string plastic, string name) =>
        [.. Table.Where(row => row["plastic"] == plastic).Select(row => row.Number(name))];
}
