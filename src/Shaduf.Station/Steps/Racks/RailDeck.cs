using Shaduf.Parts;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Rails along the row on cross tubes, two under each row of modules, and clamps on them between the modules.</summary>
/// <param name="grid">Rows and columns of modules.</param>
/// <param name="lay">Sides of a module as it lies.</param>
/// <param name="sections">Sections.</param>
/// <param name="clamping">Gaps, and where the clamps hold.</param>
/// <param name="tubes">Cross tubes, 0 for the customary spacing, and the longest free end over the span beside it.</param>
internal sealed class RailDeck(
    RackGrid grid,
    ModuleLay lay,
    RackSections sections,
    RackClamping clamping,
    (int Count, double EndShare) tubes
) : RackDeck(grid, lay, tubes)
{
    /// <inheritdoc/>
    public override double InsideLengthMm => (Grid.Columns * Lay.AlongMm) + ((Grid.Columns - 1) * clamping.GapMm);

    /// <inheritdoc/>
    public override double LengthMm => InsideLengthMm + (2 * RackClamping.RailEndMm);

    /// <inheritdoc/>
    public override double InsideDepthMm => DepthMm;

    /// <inheritdoc/>
    public override double DepthMm => (Grid.Rows * RowPitchMm) - RackClamping.RowGapMm;

    /// <inheritdoc/>
    public override double ThicknessMm => sections.Angle.SideMm + clamping.ModuleThicknessMm;

    /// <inheritdoc/>
    public override (double FirstMm, double PitchMm) Along => (RackClamping.RailEndMm, Lay.AlongMm + clamping.GapMm);

    /// <inheritdoc/>
    public override IReadOnlyList<ModuleRow> Rows =>
        [
            .. Enumerable
                .Range(0, Grid.Rows)
                .Select(i => new ModuleRow(
                    i * RowPitchMm,
                    (i * RowPitchMm) + Lay.UpMm,
                    2 * i,
                    (i * RowPitchMm) + clamping.FromEndMm,
                    (2 * i) + 1,
                    (i * RowPitchMm) + Lay.UpMm - clamping.FromEndMm
                )),
        ];

    /// <inheritdoc/>
    public override IReadOnlyList<int> Bear(RackSteel steel)
    {
        var setting = steel.Setting;
        var rails = new List<int>();
        foreach (var slope in RailSlopesMm)
        {
            var axis = (setting.OnSlope(0, slope, AxisMm), setting.OnSlope(LengthMm, slope, AxisMm));

            // The splices of the two rails under a row are staggered.
            var isTurned = rails.Count % 2 == 1;
            var rail = Part.Over("R1", "rail", sections.Angle, axis, TubePlacesMm, isTurned);
            rails.Add(steel.Add(rail, setting.UpSlope));
        }

        return rails;
    }

    /// <inheritdoc/>
    public override void Join(RackSteel steel, int tube, IReadOnlyList<int> bearers)
    {
        var (setting, x) = (steel.Setting, steel[tube].From.XMm);
        foreach (var bearer in bearers)
        {
            var slope = RailSlopesMm.ElementAt(bearer);
            steel.Weld(
                "rail to cross tube",
                (tube, setting.OnSlope(x, slope, -sections.Tube.SideMm / 2)),
                (bearer, setting.OnSlope(x, slope, AxisMm)),
                new(WeldPattern.TwoRuns, RackSteel.WeldLegMm, sections.Tube.SideMm, sections.Angle.SideMm, new(1, 0, 0))
            );
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<Seam> Seams => [];

    private IEnumerable<double> RailSlopesMm => Rows.SelectMany(row => new[] { row.LowAtMm, row.HighAtMm });

    private double RowPitchMm => Lay.UpMm + RackClamping.RowGapMm;

    private double AxisMm => sections.Angle.SideMm / 2;
}
