using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>A pit or trench that lets waste water seep away. Only its walls count: the bottom clogs.</summary>
public static class Soakaway
{
    private static readonly IReadOnlyList<CsvRow> Table = Csv.Embedded(typeof(Soakaway).Assembly, "Soakaway.csv");

    /// <summary>Grounds in the table.</summary>
    public static IReadOnlyList<string> Grounds { get; } = [.. Table.Select(row => row["ground"])];

    /// <summary>Wall that the waste water needs.</summary>
    /// <param name="wasteLPerDay">Waste water [L/d], 0 to 1e10.</param>
    /// <param name="soakageMmPerDay">Soakage of the ground, litres per square metre of wall and day [mm/d], 1 to 200.</param>
    /// <returns>Wall [m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>WHO, A guide to the development of on-site sanitation, 1992, chapter 8</source>
    public static double WallM2(double wasteLPerDay, double soakageMmPerDay)
    {
        Within.Require(wasteLPerDay, 0, 1e10, "L/d");
        Within.Require(soakageMmPerDay, 1, 200, "mm/d");
        return wasteLPerDay / soakageMmPerDay;
    }

    /// <summary>Depth of a round pit below its inlet.</summary>
    /// <param name="wallM2">Wall [m2], 0 to 1e10.</param>
    /// <param name="diameterM">Diameter of the pit [m], 0.5 to 5.</param>
    /// <returns>Depth [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>geometry; WHO 1992, example 8.6</source>
    public static double PitDepthM(double wallM2, double diameterM)
    {
        Within.Require(wallM2, 0, 1e10, "m2");
        Within.Require(diameterM, 0.5, 5, "m");
        return wallM2 / (Math.PI * diameterM);
    }

    /// <summary>Length of a trench that soaks on both sides.</summary>
    /// <param name="wallM2">Wall [m2], 0 to 1e10.</param>
    /// <param name="depthM">Depth of the wall below the inlet [m], 0.2 to 3.</param>
    /// <returns>Length [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>geometry; WHO 1992, example 8.7</source>
    public static double TrenchM(double wallM2, double depthM)
    {
        Within.Require(wallM2, 0, 1e10, "m2");
        Within.Require(depthM, 0.2, 3, "m");
        return wallM2 / (2 * depthM);
    }

    /// <summary>Soakage of a ground.</summary>
    /// <param name="ground">One of <see cref="Grounds"/>.</param>
    /// <returns>Litres per square metre of wall and day [mm/d].</returns>
    /// <exception cref="ArgumentException">The table has no such ground.</exception>
    /// <source>WHO 1992, table 5.4, from memory (one row looked up)</source>
    public static double SoakageMmPerDay(string ground) =>
        Table.SingleOrDefault(row => row["ground"] == ground)?.Number("soakage_mm_d")
        ?? throw new ArgumentException(
            $"there is no ground '{ground}'; accepted: {string.Join(", ", Grounds)}",
            nameof(ground)
        );
}
