using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Equal earth rods that are joined: they share the soil between them and so help less than each alone.</summary>
public static class RodGroup
{
    private const int MostRods = 40;

    /// <summary>
    /// Resistance of joined rods wherever they stand: all at one voltage, each raised by its own current and, as from a
    /// half sphere of soil, by the others'.
    /// </summary>
    /// <param name="resistivityOhmM">Soil resistivity [Ω·m], 1 to 100000.</param>
    /// <param name="lengthM">Driven length [m], 0.3 to 100.</param>
    /// <param name="diameterM">Diameter [m], 0.005 to 0.1.</param>
    /// <param name="places">Where the rods stand, 1 to 40, each at least its length from the next.</param>
    /// <returns>Resistance [Ω].</returns>
    /// <exception cref="ArgumentException">A figure is outside its range, or two rods are nearer than their length.</exception>
    /// <source>BS 7430:2011, rods in parallel, with each rod's own share of the current instead of the mean λ.</source>
    public static double ResistanceOhm(
        double resistivityOhmM,
        double lengthM,
        double diameterM,
        IReadOnlyList<GroundPlace> places
    )
    {
        var oneOhm = EarthRod.ResistanceOhm(resistivityOhmM, lengthM, diameterM);
        Within.RequireCount(places.Count, 1, MostRods);
        RequireApart(places, lengthM);
        return JoinedOhm(
            places.Count,
            (i, j) => i == j ? oneOhm : resistivityOhmM / (2 * Math.PI * places[i].ToM(places[j]))
        );
    }

    /// <summary>Resistance of joined rods in a line.</summary>
    /// <param name="resistivityOhmM">Soil resistivity [Ω·m], 1 to 100000.</param>
    /// <param name="lengthM">Driven length [m], 0.3 to 100.</param>
    /// <param name="diameterM">Diameter [m], 0.005 to 0.1.</param>
    /// <param name="count">Rods, 1 to 40.</param>
    /// <param name="spacingM">Between rods [m], 0.3 to 1000, and at least their length.</param>
    /// <returns>Resistance [Ω].</returns>
    /// <exception cref="ArgumentException">A figure is outside its range, or two rods are nearer than their length.</exception>
    /// <source>BS 7430:2011, n rods in parallel: R (1 + λ a)/n, a = ρ/(2π R s).</source>
    public static double InLineOhm(double resistivityOhmM, double lengthM, double diameterM, int count, double spacingM)
    {
        Within.RequireCount(count, 1, MostRods);
        Within.Require(spacingM, 0.3, 1000, "m");
        return ResistanceOhm(resistivityOhmM, lengthM, diameterM, Line(count, spacingM));
    }

    /// <summary>The factor λ of rods in a line.</summary>
    /// <param name="count">Rods, 2 to 40.</param>
    /// <param name="sharedRatio">ρ/(2π R s), 0.01 to 0.4: how much a neighbour raises a rod, against itself.</param>
    /// <returns>λ, a ratio: R of the group is R of one rod (1 + λ a)/n.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>BS 7430:2011, table of λ for rods in a line.</source>
    public static double LineFactor(int count, double sharedRatio)
    {
        Within.RequireCount(count, 2, MostRods);
        return Lambda(Line(count, 1), sharedRatio);
    }

    /// <summary>The factor λ of rods along the sides of a square.</summary>
    /// <param name="perSide">Rods on a side, corners counted, 2 to 10.</param>
    /// <param name="sharedRatio">ρ/(2π R s), 0.01 to 0.4.</param>
    /// <returns>λ, a ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>BS 7430:2011, table of λ for rods in a hollow square.</source>
    public static double HollowSquareFactor(int perSide, double sharedRatio)
    {
        Within.RequireCount(perSide, 2, 10);
        var last = perSide - 1;
        return Lambda(
            [
                .. Enumerable
                    .Range(0, perSide * perSide)
                    .Select(i => new GroundPlace(i % perSide, i / perSide))
                    .Where(place => place.XM == 0 || place.YM == 0 || place.XM == last || place.YM == last),
            ],
            sharedRatio
        );
    }

    private static GroundPlace[] Line(int count, double spacingM) =>
        [.. Enumerable.Range(0, count).Select(i => new GroundPlace(i * spacingM, 0))];

    private static double Lambda(IReadOnlyList<GroundPlace> places, double sharedRatio)
    {
        Within.Require(sharedRatio, 0.01, 0.4, "");
        var joined = JoinedOhm(places.Count, (i, j) => i == j ? 1 : sharedRatio / places[i].ToM(places[j]));
        return ((joined * places.Count) - 1) / sharedRatio;
    }

    private static void RequireApart(IReadOnlyList<GroundPlace> places, double lengthM)
    {
        foreach (var (i, place) in places.Index())
        {
            if (places.Skip(i + 1).Any(other => !(other.ToM(place) >= lengthM * (1 - 1e-9))))
            {
                throw new ArgumentException("two rods are nearer to each other than their length", nameof(places));
            }
        }
    }

    // One volt on all: solves raise · current = 1 by elimination (the matrix is symmetric, its diagonal the largest).
    private static double JoinedOhm(int count, Func<int, int, double> raiseOhm)
    {
        var rows = Enumerable
            .Range(0, count)
            .Select(i => Enumerable.Range(0, count).Select(j => raiseOhm(i, j)).Append(1).ToArray())
            .ToArray();
        for (var pivot = 0; pivot < count; pivot++)
        {
            foreach (var row in rows.Where((_, i) => i != pivot))
            {
                var share = row[pivot] / rows[pivot][pivot];
                for (var column = pivot; column <= count; column++)
                {
                    row[column] -= share * rows[pivot][column];
                }
            }
        }

        return 1 / Enumerable.Range(0, count).Sum(i => rows[i][count] / rows[i][i]);
    }
}
