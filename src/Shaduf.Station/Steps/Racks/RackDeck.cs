namespace Shaduf.Station;

/// <summary>What holds the modules: the plane of a rack without the tubes across and the columns.</summary>
/// <param name="grid">Rows and columns of modules.</param>
/// <param name="lay">Sides of a module as it lies.</param>
/// <param name="tubes">Cross tubes, 0 for the customary spacing, and the longest free end over the span beside it.</param>
internal abstract class RackDeck(RackGrid grid, ModuleLay lay, (int Count, double EndShare) tubes)
{
    // Widest distance between cross tubes; common practice (2.75 m in a row of seven 1.1 m modules), no source.
    private const double WidestSpacingMm = 2800;

    // Longest overhang: one module on its short side, half a module on its long side; common practice, no source.
    private const double LongestOverhangMm = 1400;

    /// <summary>Rows, columns and racks.</summary>
    public RackGrid Grid => grid;

    /// <summary>Sides of a module as it lies.</summary>
    public ModuleLay Lay => lay;

    /// <summary>Length along the row between what closes it [mm].</summary>
    public abstract double InsideLengthMm { get; }

    /// <summary>Outside length along the row [mm].</summary>
    public abstract double LengthMm { get; }

    /// <summary>Depth up the slope that modules and their clearances take [mm].</summary>
    public abstract double InsideDepthMm { get; }

    /// <summary>Outside depth up the slope [mm].</summary>
    public abstract double DepthMm { get; }

    /// <summary>Height of the plane's upper side above the tubes [mm].</summary>
    public abstract double ThicknessMm { get; }

    /// <summary>The rows of modules on the members that carry them, which are the first of the skeleton.</summary>
    public abstract IReadOnlyList<ModuleRow> Rows { get; }

    /// <summary>Where the first module of a row begins along the row, and the distance from module to module [mm].</summary>
    public abstract (double FirstMm, double PitchMm) Along { get; }

    /// <summary>Puts the bars along the row in place, first of all parts.</summary>
    /// <param name="steel">The rack's steel.</param>
    /// <returns>Members that lie on the tubes, from the low edge up.</returns>
    public abstract IReadOnlyList<int> Bear(RackSteel steel);

    /// <summary>Sets the bars on a tube.</summary>
    /// <param name="steel">The rack's steel.</param>
    /// <param name="tube">Index of the tube.</param>
    /// <param name="bearers">Members that lie on it.</param>
    public abstract void Join(RackSteel steel, int tube, IReadOnlyList<int> bearers);

    /// <summary>Welds that are no joints of the skeleton.</summary>
    public abstract IEnumerable<Parts.Seam> Seams { get; }

    /// <summary>Its bolts.</summary>
    /// <param name="steel">The rack's steel.</param>
    public virtual IEnumerable<Parts.Fixing> Bolts(RackSteel steel) => [];

    /// <summary>Name of the tubes across.</summary>
    public const string TubeRole = "cross tube";

    /// <summary>Places of the tubes along the row [mm].</summary>
    public IReadOnlyList<double> TubePlacesMm
    {
        get
        {
            var first =
                grid.Columns < 3
                    ? LengthMm / 4
                    : ((LengthMm - InsideLengthMm) / 2)
                        + (lay.AlongMm > LongestOverhangMm ? lay.AlongMm / 2 : lay.AlongMm);
            var betweenMm = LengthMm - (2 * first);
            var spans =
                tubes.Count > 0 ? tubes.Count - 1
                : grid.Columns < 3 ? 1
                : Math.Max(1, (int)Math.Ceiling(betweenMm / WidestSpacingMm));

            // More tubes than custom has are for strength: then the free ends are no longer than their spans can balance.
            var balanced = tubes.EndShare * LengthMm / (spans + (2 * tubes.EndShare));
            if (tubes.Count > 0 && balanced < first)
            {
                first = balanced;
                betweenMm = LengthMm - (2 * first);
            }

            return [.. Enumerable.Range(0, spans + 1).Select(i => first + (i * betweenMm / spans))];
        }
    }
}
