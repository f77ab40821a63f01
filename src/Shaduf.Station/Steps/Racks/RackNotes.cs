using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What was chosen for a rack, and why.</summary>
internal static class RackNotes
{
    /// <summary>The notes of a rack's form and setting.</summary>
    /// <param name="brief">The rack as the brief has it.</param>
    /// <param name="grid">Rows, columns and racks.</param>
    /// <param name="setting">Tilt, heights and clearances.</param>
    /// <param name="form">Its form.</param>
    /// <param name="clamping">How modules are clamped; null where they slide in.</param>
    /// <returns>The notes.</returns>
    public static IEnumerable<ChoiceNote> Of(
        RackBrief brief,
        RackGrid grid,
        RackSetting setting,
        RackForm form,
        RackClamping? clamping
    ) =>
        [
            .. form.Type == RackType.SlideIn ? OfChannels(brief, setting) : OfRails(brief, clamping!),
            .. OfStanding(brief, form),
            .. OfGrid(brief, grid),
        ];

    private static IEnumerable<ChoiceNote> OfChannels(RackBrief brief, RackSetting setting)
    {
        if (brief.RowClearanceMm is null)
        {
            yield return new(
                "free length in a row",
                Invariant($"{setting.RowClearanceMm:0} mm"),
                "10 mm and 2 mm a module: a row of bare widths jams; common practice, no source"
            );
        }

        if (brief.DepthClearanceMm is null)
        {
            yield return new(
                "free depth in the channel",
                Invariant($"{RackSections.UsualDepthClearanceMm:0} mm"),
                "room for paint and for sliding; common practice, no source"
            );
        }
    }

    private static IEnumerable<ChoiceNote> OfRails(RackBrief brief, RackClamping clamping)
    {
        if (brief.RailsAtMm is null)
        {
            yield return new(
                "rails under the modules",
                Invariant($"{clamping.FromEndMm:0} mm from either end"),
                clamping.Why
            );
        }

        if (brief.RowClearanceMm is null)
        {
            yield return new(
                "gap between modules",
                Invariant($"{clamping.GapMm:0} mm"),
                "room for a clamp that holds two modules; common practice, no source"
            );
        }
    }

    private static IEnumerable<ChoiceNote> OfStanding(RackBrief brief, RackForm form)
    {
        if (brief.Lines is null)
        {
            yield return new(
                "lines of columns",
                Invariant($"{form.Lines}"),
                form.Lines == 1
                    ? "the least steel and the fewest pits, as long as columns and footings take the wind's moment"
                    : "each line takes the whole wind force of its half, and no footing has to hold the plane upright alone"
            );
        }

        if (brief.LowEdgeM is null)
        {
            yield return new(
                "height of the low edge",
                Invariant($"{Rack.UsualLowEdgeMm / 1000:0.0} m"),
                "clear of grass, goats and splashing; common practice, no source"
            );
        }

        if (brief.Ground != default)
        {
            yield return new(
                "ground under a rack",
                Invariant(
                    $"falls {brief.Ground.AlongShare * 100:0.#} % along the row and {brief.Ground.BackShare * 100:0.#} % to the back"
                ),
                "columns of different length; heights are told from the ground under the low edge's left end"
            );
        }
    }

    private static IEnumerable<ChoiceNote> OfGrid(RackBrief brief, RackGrid grid)
    {
        if (grid.RackCount > 1)
        {
            yield return new(
                "racks beside one another",
                Invariant($"{grid.RackCount} racks, each for the whole wind"),
                "each rack is taken as standing alone: none is reckoned to shelter another"
            );
        }

        if (brief.Rows is null || brief.Columns is null)
        {
            yield return new(
                "racks",
                Invariant($"{grid.RackCount} of {grid.Rows} rows x {grid.Columns} modules"),
                Invariant(
                    $"two rows from eight modules on where they fill the racks evenly, racks alike, at most {RackGrid.LongestM:0} m long and {RackGrid.LargestPlaneM2:0} m2"
                )
            );
        }
    }
}
