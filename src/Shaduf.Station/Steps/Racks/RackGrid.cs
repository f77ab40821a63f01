namespace Shaduf.Station;

/// <summary>How the modules stand in racks that are all alike.</summary>
/// <param name="Rows">Rows of modules up the slope of a rack.</param>
/// <param name="Columns">Modules side by side in a row.</param>
/// <param name="RackCount">Racks.</param>
public sealed record RackGrid(int Rows, int Columns, int RackCount)
{
    /// <summary>Longest rack [m]; common practice, no source.</summary>
    public const double LongestM = 14;

    /// <summary>Largest plane of a rack [m²]; beyond it an engineer decides.</summary>
    public const double LargestPlaneM2 = 60;

    /// <summary>All modules.</summary>
    public int ModuleCount => Rows * Columns * RackCount;

    /// <summary>
    /// The grid for a number of modules: two rows from eight modules on if that fills the racks evenly, else one, and as few racks as their
    /// length and plane allow.
    /// </summary>
    /// <param name="moduleCount">Modules, at least 1.</param>
    /// <param name="brief">What the brief fixes.</param>
    /// <param name="module">The module's size.</param>
    /// <returns>The grid, or null when no equal racks hold that number.</returns>
    public static RackGrid? For(int moduleCount, RackBrief brief, ModuleBody module)
    {
        IReadOnlyList<int> rowsTried =
            brief.Rows is { } given ? [given]
            : moduleCount >= 8 ? [2, 1]
            : [1, 2];
        foreach (var rows in rowsTried)
        {
            var most = MostColumns(rows, brief, ModuleLay.Of(module, brief.Way));
            if (moduleCount % rows != 0 || most < 1)
            {
                continue;
            }

            var columns = moduleCount / rows;
            var racks = Enumerable.Range(1, columns).FirstOrDefault(n => columns % n == 0 && columns / n <= most);

            // A row of single modules side by side in many racks is not a rack; two or three racks of a few are.
            if (racks > 0 && (racks == 1 || columns / racks >= Math.Min(3, brief.Columns ?? 3)))
            {
                return new(rows, columns / racks, racks);
            }
        }

        return null;
    }

    private static int MostColumns(int rows, RackBrief brief, ModuleLay module)
    {
        var most = Math.Min(
            (int)(LongestM * 1000 / module.AlongMm),
            (int)(LargestPlaneM2 * 1e6 / (rows * module.UpMm * module.AlongMm))
        );
        return Math.Min(most, brief.Columns ?? most);
    }
}
