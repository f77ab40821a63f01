using System.Collections.Frozen;
using System.Collections.Immutable;
using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>What a cable's insulation is made of.</summary>
public enum Insulation
{
    /// <summary>PVC, conductor at most 70 °C.</summary>
    Pvc70,

    /// <summary>Cross-linked polyethylene or the like, conductor at most 90 °C.</summary>
    Xlpe90,
}

/// <summary>How a cable for three loaded conductors is laid, by the reference methods of IEC 60364-5-52.</summary>
public enum LayingMethod
{
    /// <summary>B1: single cores in conduit on a wall, PVC; the table's figure is for two loaded conductors.</summary>
    B1,

    /// <summary>B2: multi-core in conduit on a wall, PVC.</summary>
    B2,

    /// <summary>C: multi-core clipped to a wall, PVC.</summary>
    C,

    /// <summary>E: multi-core free in air, cross-linked insulation.</summary>
    E,

    /// <summary>D1: multi-core in a buried duct, cross-linked insulation; ground of 20 °C.</summary>
    D1,
}

/// <summary>How photovoltaic cable lies.</summary>
public enum PvLaying
{
    /// <summary>A single cable free in air.</summary>
    FreeInAir,

    /// <summary>A single cable on a surface.</summary>
    OnSurface,

    /// <summary>Two loaded cables that touch, on a surface.</summary>
    TwoTouchingOnSurface,
}

/// <summary>Current that a cable may carry where it lies, and the factors that change it.</summary>
public static class Ampacity
{
    /// <summary>Factor on an ampacity given for 30 °C of air.</summary>
    /// <param name="insulation">Insulation.</param>
    /// <param name="airDegC">Air temperature [°C], -40 to 90; at most 70 for PVC.</param>
    /// <returns>Factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    /// <source>Heat balance; reproduces IEC 60364-5-52:2009, table B.52.14 within 0.01.</source>
    public static double AirTemperatureFactor(Insulation insulation, double airDegC) =>
        TemperatureFactor(insulation, airDegC, 30);

    /// <summary>Factor on an ampacity given for 20 °C of ground.</summary>
    /// <param name="insulation">Insulation.</param>
    /// <param name="groundDegC">Ground temperature [°C], -40 to 90; at most 70 for PVC.</param>
    /// <returns>Factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    /// <source>Heat balance behind IEC 60364-5-52:2009, table B.52.15.</source>
    public static double GroundTemperatureFactor(Insulation insulation, double groundDegC) =>
        TemperatureFactor(insulation, groundDegC, 20);

    /// <summary>Factor for circuits that touch, bunched or in one duct; a count between rows takes the lower row.</summary>
    /// <param name="circuitCount">Loaded circuits, 1 to 9.</param>
    /// <returns>Factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is outside its range.</exception>
    /// <source>IEC 60364-5-52:2009, table B.52.17; from memory.</source>
    public static double GroupingFactor(int circuitCount)
    {
        Within.RequireCount(circuitCount, 1, 9);
        return Grouping.First(row => row.Circuits >= circuitCount).Factor;
    }

    /// <summary>Factor for soil that carries heat away better or worse than the standard's 2.5 K·m/W; interpolated between the rows.</summary>
    /// <param name="soilMKPerW">Thermal resistivity of the soil [m·K/W], 0.5 to 3; dry sand lies at the upper end.</param>
    /// <returns>Factor on the ampacity of a cable in a buried duct.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resistivity is outside its range.</exception>
    /// <source>IEC 60364-5-52:2009, table B.52.16, cables in buried ducts; from memory.</source>
    public static double SoilFactor(double soilMKPerW)
    {
        Within.Require(soilMKPerW, 0.5, 3, "m·K/W");
        return Between(Soil, soilMKPerW);
    }

    /// <summary>Factor for the depth of a buried cable: 1 down to 0.7 m, falling on a straight line to 0.98 at 1 m and on beyond.</summary>
    /// <param name="depthM">Depth of the cable [m], 0.3 to 3.</param>
    /// <returns>Factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is outside its range.</exception>
    /// <source>IEC 60364-5-52:2009 takes 0.7 m as its base; 0.98 at 1 m from memory; straight line beyond: judgement, no source.</source>
    public static double DepthFactor(double depthM)
    {
        Within.Require(depthM, 0.3, 3, "m");
        return 1 - 0.02 / 0.3 * Math.Max(0, depthM - 0.7);
    }

    /// <summary>Current of a copper cable as one of the standard's reference methods lays it, air 30 °C or ground 20 °C.</summary>
    /// <param name="sizeMm2">Nominal size [mm²], 1.5 to 35, a size of the table.</param>
    /// <param name="method">The reference method.</param>
    /// <returns>Current [A].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside the table.</exception>
    /// <source>IEC 60364-5-52:2009, annex B; methods B2 and C looked up in a manual that quotes them, the others from memory.</source>
    public static double InstalledA(double sizeMm2, LayingMethod method)
    {
        if (!Installed.TryGetValue(method, out var table))
        {
            throw new ArgumentOutOfRangeException(nameof(method), method, "There is no such method.");
        }

        return table.At(sizeMm2);
    }

    /// <summary>Current of one line of submersible cable under water.</summary>
    /// <param name="sizeMm2">Nominal size [mm²], 1.5 to 35, a size of the table.</param>
    /// <returns>Current [A].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table has no such size.</exception>
    /// <source>Table in a submersible-motor maker's application manual; looked up.</source>
    public static double SubmersibleA(double sizeMm2) => UnderWater.At(sizeMm2);

    /// <summary>
    /// Current of photovoltaic cable (H1Z2Z2-K). Below 60 °C of air the figure for 60 °C stands; between the rows of
    /// the temperature table the factor is interpolated.
    /// </summary>
    /// <param name="sizeMm2">Nominal size [mm²], 1.5 to 25, a size of the table.</param>
    /// <param name="laying">How it lies.</param>
    /// <param name="airDegC">Air temperature [°C], -40 to 90; 60 to 70 under modules in the sun.</param>
    /// <returns>Current [A].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range or the table.</exception>
    /// <source>EN 50618:2014, tables A.3 and A.4; from memory.</source>
    public static double PvCableA(double sizeMm2, PvLaying laying, double airDegC)
    {
        if (!PvCable.TryGetValue(laying, out var table))
        {
            throw new ArgumentOutOfRangeException(nameof(laying), laying, "There is no such laying.");
        }

        return table.At(sizeMm2) * PvTemperatureFactor(airDegC);
    }

    /// <summary>Factor on an ampacity of photovoltaic cable given for 60 °C of air; interpolated between the rows, 1 below 60 °C.</summary>
    /// <param name="airDegC">Air temperature [°C], -40 to 90.</param>
    /// <returns>Factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    /// <source>EN 50618:2014, table A.4; from memory.</source>
    public static double PvTemperatureFactor(double airDegC)
    {
        Within.Require(airDegC, -40, 90, "°C");
        return Between(PvTemperature, Math.Max(airDegC, PvTemperature[0].At));
    }

    private static double Between(ImmutableArray<(double At, double Factor)> rows, double at)
    {
        var upper = rows.First(row => row.At >= at);
        var lower = rows.LastOrDefault(row => row.At < at, upper);
        return upper == lower
            ? upper.Factor
            : double.Lerp(lower.Factor, upper.Factor, (at - lower.At) / (upper.At - lower.At));
    }

    private static readonly ImmutableArray<(int Circuits, double Factor)> Grouping =
    [
        .. Csv.Embedded(typeof(Ampacity).Assembly, "Grouping.csv")
            .Select(row => ((int)row.Number("circuits"), row.Number("factor"))),
    ];

    private static readonly ImmutableArray<(double At, double Factor)> PvTemperature =
    [
        .. Csv.Embedded(typeof(Ampacity).Assembly, "PvCableTemperature.csv")
            .Select(row => (row.Number("air_degc"), row.Number("factor"))),
    ];

    private static readonly ImmutableArray<(double At, double Factor)> Soil =
    [
        .. Csv.Embedded(typeof(Ampacity).Assembly, "SoilHeat.csv")
            .Select(row => (row.Number("m_k_per_w"), row.Number("factor"))),
    ];

    private static readonly FrozenDictionary<LayingMethod, SizeTable> Installed = Enum.GetValues<LayingMethod>()
        .ToFrozenDictionary(
            method => method,
            method => new SizeTable("InstalledCable.csv", $"{method}", $"the table of method {method}")
        );

    private static readonly SizeTable UnderWater = new(
        "SubmersibleCable.csv",
        "under_water_a",
        "the submersible cable table"
    );

    private static readonly FrozenDictionary<PvLaying, SizeTable> PvCable = Enum.GetValues<PvLaying>()
        .ToFrozenDictionary(
            laying => laying,
            laying => new SizeTable("PvCable.csv", $"{laying}", "the photovoltaic cable table")
        );

    private static double TemperatureFactor(Insulation insulation, double surroundingsDegC, double referenceDegC)
    {
        var largestDegC = insulation switch
        {
            Insulation.Pvc70 => 70.0,
            Insulation.Xlpe90 => 90.0,
            _ => throw new ArgumentOutOfRangeException(nameof(insulation), insulation, "There is no such insulation."),
        };
        Within.Require(surroundingsDegC, -40, largestDegC, "°C");
        return Math.Sqrt((largestDegC - surroundingsDegC) / (largestDegC - referenceDegC));
    }
}
