using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Largest and smallest coefficient of a part of the plane; above 0 presses on the glass, below 0 lifts.</summary>
/// <param name="DownCoefficient">Largest.</param>
/// <param name="UpCoefficient">Smallest, the worse of the free and the given blockage.</param>
public readonly record struct CanopyPair(double DownCoefficient, double UpCoefficient);

/// <summary>
/// The plane of modules as a canopy with one slope that stands alone, air passing below it. The force acts square to
/// the plane at a quarter of the slope from the windward edge; each edge is windward in turn.
/// </summary>
/// <param name="Force">Whole plane, for frame, columns and footings: c_f.</param>
/// <param name="Middle">Net pressure of zone A, for modules, rails and their welds.</param>
/// <param name="Sides">Net pressure of zone B: strips of a tenth of the width along the side edges.</param>
/// <param name="Edges">Net pressure of zone C: strips of a tenth of the slope along the low and the high edge.</param>
public sealed record MonopitchCanopy(CanopyPair Force, CanopyPair Middle, CanopyPair Sides, CanopyPair Edges)
{
    /// <summary>Steepest tilt of the table [deg].</summary>
    public const double SteepestDeg = 30;

    /// <summary>Distance of the force from the windward edge as a share of the slope's length.</summary>
    public const double CentreShare = 0.25;

    private static readonly IReadOnlyList<CsvRow> Table = Csv.Embedded(
        typeof(MonopitchCanopy).Assembly,
        "MonopitchCanopy.csv"
    );

    /// <summary>Coefficients of a plane. Blockage 0 is always looked at beside the one given.</summary>
    /// <param name="tiltDeg">Tilt [deg], 0 to 30; the table ends there and is not stretched.</param>
    /// <param name="blockageShare">Solid area below the plane over the whole area below it, 0 to 1.</param>
    /// <returns>The coefficients.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, 7.3 and table 7.6, straight between its lines</source>
    public static MonopitchCanopy Of(double tiltDeg, double blockageShare)
    {
        Within.Require(tiltDeg, 0, SteepestDeg, "deg");
        Within.Require(blockageShare, 0, 1, "");
        CanopyPair Pair(string zone)
        {
            var free = Read(zone + "MinFree", tiltDeg);
            var blocked = free + (blockageShare * (Read(zone + "MinBlocked", tiltDeg) - free));
            return new(Read(zone + "Max", tiltDeg), Math.Min(free, blocked));
        }

        return new(Pair("force"), Pair("a"), Pair("b"), Pair("c"));
    }

    /// <summary>Lifting coefficient at just the blockage given, as the table is read.</summary>
    internal static double UpAtCoefficient(double tiltDeg, double blockageShare)
    {
        var free = Read("forceMinFree", tiltDeg);
        return free + (blockageShare * (Read("forceMinBlocked", tiltDeg) - free));
    }

    private static double Read(string column, double tiltDeg)
    {
        var above = Math.Max(1, Table.TakeWhile(row => row.Number("tiltDeg") < tiltDeg).Count());
        var (low, high) = (Table[above - 1], Table[above]);
        var share = (tiltDeg - low.Number("tiltDeg")) / (high.Number("tiltDeg") - low.Number("tiltDeg"));
        return low.Number(column) + (share * (high.Number(column) - low.Number(column)));
    }
}
