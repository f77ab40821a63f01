using Shaduf.Parts;
using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>One of the racks, which are all alike.</summary>
/// <param name="Grid">Rows, columns and number of racks.</param>
/// <param name="Sections">What it is made of.</param>
/// <param name="Setting">Tilt, heights and clearances.</param>
/// <param name="Steel">The solid model of one rack.</param>
/// <param name="Skeleton">The lines along which it carries.</param>
/// <param name="Size">Outside sizes of one rack.</param>
/// <param name="Rows">Rows of modules, from the low edge up.</param>
/// <param name="TubePlacesMm">Places of the cross tubes, and so of the columns, along the row [mm].</param>
/// <param name="ModuleMassKg">Mass of the modules of one rack [kg].</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record Rack(
    RackGrid Grid,
    RackSections Sections,
    RackSetting Setting,
    Assembly Steel,
    Skeleton Skeleton,
    RackSize Size,
    IReadOnlyList<ModuleRow> Rows,
    IReadOnlyList<double> TubePlacesMm,
    double ModuleMassKg,
    IReadOnlyList<ChoiceNote> Notes
)
{
    /// <summary>Height of the low edge when the brief leaves it open [mm]; common practice, no source.</summary>
    public const double UsualLowEdgeMm = 1000;

    // Concrete left under the foot of a column, and height of the plinth: common practice, no source.
    internal const double CoverMm = 100;
    internal const double PlinthHeightMm = 250;

    /// <summary>Mass of the steel of all racks [kg].</summary>
    public double MassKg => Steel.MassKg * Grid.RackCount;

    /// <summary>Columns of all racks.</summary>
    public int ColumnCount => TubePlacesMm.Count * Grid.RackCount;

    /// <summary>Generates the rack for a grid of modules.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="module">The module.</param>
    /// <param name="grid">Rows and columns.</param>
    /// <param name="tiltDeg">Tilt [deg].</param>
    /// <param name="shelf">The cards.</param>
    /// <returns>The rack; null when no angle makes a channel for the module.</returns>
    public static Rack? Of(RackBrief brief, ModuleCard module, RackGrid grid, double tiltDeg, CardShelf shelf)
    {
        if (RackSections.Of(brief, module, shelf) is not { } sections)
        {
            return null;
        }

        var rowClearanceMm = brief.RowClearanceMm ?? UsualRowClearanceMm(grid.Columns);
        var setting = new RackSetting(
            tiltDeg,
            brief.LowEdgeM * 1000 ?? UsualLowEdgeMm,
            rowClearanceMm,
            Footings.DepthMm(brief) - CoverMm,
            PlinthHeightMm + 150
        );
        var frame = new RackFrame(grid, module.Body, sections, setting);
        var (steel, skeleton) = frame.Built();
        return new(
            grid,
            sections,
            setting,
            steel,
            skeleton,
            new(frame.LengthMm, frame.DepthMm, frame.InsideLengthMm, frame.InsideDepthMm, frame.TopEdgeMm),
            frame.Rows,
            frame.TubePlacesMm,
            grid.Rows * grid.Columns * module.Body.MassKg,
            [.. sections.Notes, .. NotesOf(brief, grid, setting)]
        );
    }

    /// <summary>Findings of the rack.</summary>
    /// <param name="site">The site.</param>
    /// <param name="module">The module.</param>
    /// <returns>The findings.</returns>
    public IEnumerable<Finding> Findings(SiteBrief site, ModuleCard module)
    {
        var wind = site.Wind is { } given
            ? Invariant($"{given.SpeedMPerS:0.#} m/s is given")
            : "the wind speed is unknown";
        foreach (
            var (id, what) in new[]
            {
                ("rack/strength", "columns, tubes, struts and frame against wind"),
                ("rack/welds", "welds and splices"),
                ("rack/module-holding", "the modules in their channels against suction"),
                ("rack/stops-at-wind", "the wind speed at which the rack stops holding"),
            }
        )
        {
            yield return new(
                id,
                FindingStatus.Unchecked,
                $"{what}: not checked, the structural method is not in this version ({wind}); have it checked by an engineer before building",
                null,
                null,
                "",
                ""
            );
        }

        var planeM2 = Size.LengthMm * Size.DepthMm / 1e6;
        yield return Limit("rack/plane", planeM2, RackGrid.LargestPlaneM2, "m2", "plane of one rack");
        yield return Limit("rack/top-edge", Size.TopEdgeMm / 1000, 4, "m", "height of the top edge");
        yield return Limit("rack/tilt", Setting.TiltDeg, 30, "deg", "tilt");
        yield return new(
            "rack/lip",
            Sections.Channel.LipCoverMm <= module.Body.EdgeToCellMm ? FindingStatus.Holds : FindingStatus.Look,
            LipSays(module),
            Sections.Channel.LipCoverMm,
            module.Body.EdgeToCellMm,
            "mm",
            "module card"
        );
    }

    // A row of bare widths jams: 2 mm a module and 10 mm more.
    private static double UsualRowClearanceMm(int columns) => 10 + (2 * columns);

    private static Finding Limit(string id, double value, double limit, string unit, string what) =>
        new(
            id,
            value <= limit ? FindingStatus.Holds : FindingStatus.Look,
            value <= limit
                ? $"{what} within what this program judges"
                : $"{what} beyond what this program judges: an engineer decides",
            value,
            limit,
            unit,
            "limits of the method, judgement"
        );

    private string LipSays(ModuleCard module) =>
        Sections.Channel.LipCoverMm <= module.Body.EdgeToCellMm
            ? "the lip of the channel covers no cell"
            : "the lip of the channel reaches over the cells and shades them: ask for an angle with a shorter leg or a module with a wider rim";

    private static IEnumerable<ChoiceNote> NotesOf(RackBrief brief, RackGrid grid, RackSetting setting)
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

        if (brief.LowEdgeM is null)
        {
            yield return new(
                "height of the low edge",
                Invariant($"{UsualLowEdgeMm / 1000:0.0} m"),
                "clear of grass, goats and splashing; common practice, no source"
            );
        }

        if (brief.Rows is null || brief.Columns is null)
        {
            yield return new(
                "racks",
                Invariant($"{grid.RackCount} of {grid.Rows} rows x {grid.Columns} modules"),
                Invariant(
                    $"two rows from eight modules on where they fill the racks evenly, racks alike, at most {RackGrid.LongestM:0} m long and {RackGrid.LargestPlaneM2:0} m2; each rack is taken as standing alone in the wind"
                )
            );
        }
    }
}

/// <summary>Sizes of one rack.</summary>
/// <param name="LengthMm">Outside length along the row [mm].</param>
/// <param name="DepthMm">Outside depth up the slope [mm].</param>
/// <param name="InsideLengthMm">Inside length along the row [mm].</param>
/// <param name="InsideDepthMm">Inside depth up the slope, holders not counted [mm].</param>
/// <param name="TopEdgeMm">Height of the top edge above ground [mm].</param>
public sealed record RackSize(
    double LengthMm,
    double DepthMm,
    double InsideLengthMm,
    double InsideDepthMm,
    double TopEdgeMm
);
