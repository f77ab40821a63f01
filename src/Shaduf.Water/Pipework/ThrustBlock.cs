using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Force of the water on a bend or an end, and the ground that must hold it.</summary>
public static class ThrustBlock
{
    /// <summary>Factor on the force when the bearing area is found.</summary>
    public const double SafetyFactor = 1.5;

    private static readonly IReadOnlyList<CsvRow> Table = Csv.Embedded(typeof(ThrustBlock).Assembly, "ThrustBlock.csv");

    /// <summary>Grounds in the table, weakest first.</summary>
    public static IReadOnlyList<string> Grounds { get; } = [.. Table.Select(row => row["ground"])];

    /// <summary>Force on a bend, outwards.</summary>
    /// <param name="testBar">Test pressure [bar], 0 to 1500.</param>
    /// <param name="outerMm">Outside diameter [mm], 10 to 1000.</param>
    /// <param name="bendDeg">Change of direction [deg], 0 to 180.</param>
    /// <returns>Force [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>statics: F = 2 p A sin(theta/2), A on the outside diameter</source>
    public static double BendKN(double testBar, double outerMm, double bendDeg)
    {
        Within.Require(bendDeg, 0, 180, "deg");
        return 2 * EndKN(testBar, outerMm) * Math.Sin(bendDeg / 2 * Math.PI / 180);
    }

    /// <summary>Force on a closed end or on a branch.</summary>
    /// <param name="testBar">Test pressure [bar], 0 to 1500.</param>
    /// <param name="outerMm">Outside diameter [mm], 10 to 1000.</param>
    /// <returns>Force [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>statics: F = p A, A on the outside diameter</source>
    public static double EndKN(double testBar, double outerMm)
    {
        Within.Require(testBar, 0, 1500, "bar");
        Within.Require(outerMm, 10, 1000, "mm");
        return testBar * 100 * Math.PI / 4 * Math.Pow(outerMm / 1000, 2);
    }

    /// <summary>Area of undisturbed ground that a block must lean on.</summary>
    /// <param name="forceKN">Force [kN], 0 to 1000000.</param>
    /// <param name="groundKPa">Horizontal resistance of the ground [kPa], 10 to 1000.</param>
    /// <returns>Area [m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>common practice, no source: area = 1.5 F/q</source>
    public static double BearingM2(double forceKN, double groundKPa)
    {
        Within.Require(forceKN, 0, 1_000_000, "kN");
        Within.Require(groundKPa, 10, 1000, "kPa");
        return SafetyFactor * forceKN / groundKPa;
    }

    /// <summary>Horizontal resistance of a ground at 0.9 to 1.2 m depth.</summary>
    /// <param name="ground">One of <see cref="Grounds"/>.</param>
    /// <returns>Resistance [kPa].</returns>
    /// <exception cref="ArgumentException">The table has no such ground.</exception>
    /// <source>ThrustBlock.csv, from memory</source>
    public static double GroundKPa(string ground) =>
        Table.SingleOrDefault(row => row["ground"] == ground)?.Number("resistance_kPa")
        ?? throw new ArgumentException(
            $"there is no ground '{ground}'; accepted: {string.Join(", ", Grounds)}",
            nameof(ground)
        );
}
