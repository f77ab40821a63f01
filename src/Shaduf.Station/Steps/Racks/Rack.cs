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

    /// <summary>Mark of the pieces across a column's foot.</summary>
    public const string FootMark = "K1";

    /// <summary>Concrete left under the foot of a column [mm]; common practice, no source.</summary>
    public const double CoverMm = 100;

    // Height of the plinth: common practice, no source.
    internal const double PlinthHeightMm = 250;

    /// <summary>Thickness of the plate on a column that is wider than the tube across it [mm]; common practice, no source.</summary>
    public const double CapMm = 8;

    /// <summary>Role of that plate.</summary>
    public const string CapRole = "cap plate on a column";

    /// <summary>Mass of the steel of all racks [kg].</summary>
    public double MassKg => Steel.MassKg * Grid.RackCount;

    /// <summary>Columns of all racks.</summary>
    public int ColumnCount => Skeleton.Feet.Count * Grid.RackCount;

    /// <summary>Where the axis of a column, on through its cap plate, meets the underside of its cross tube, up the slope [mm].</summary>
    /// <param name="column">The column.</param>
    public double HeadSlopeMm(Part column) =>
        Setting.SlopeMm(column.Shape.End)
        + (Steel.Plates.Count > 0 ? CapMm * Math.Tan(Setting.TiltDeg * Math.PI / 180) : 0);

    /// <summary>Its form, with the cross tubes counted.</summary>
    public required RackForm Form { get; init; }

    /// <summary>Sides of a module as it lies.</summary>
    public required ModuleLay Lay { get; init; }

    /// <summary>Where the first module of a row begins along the row, and the distance from module to module [mm].</summary>
    public required (double FirstMm, double PitchMm) Along { get; init; }

    /// <summary>How modules are clamped; null where they slide in.</summary>
    public RackClamping? Clamping { get; init; }

    /// <summary>Generates the rack for a grid of modules.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="module">The module.</param>
    /// <param name="grid">Rows and columns.</param>
    /// <param name="tiltDeg">Tilt [deg].</param>
    /// <param name="shelf">The cards.</param>
    /// <param name="form">The form; null for the brief's, with what it leaves open by custom.</param>
    /// <returns>The rack; null when no angle makes a channel for the module.</returns>
    /// <exception cref="ArgumentException">A part would have no length or cannot be sawn so; the message names it.</exception>
    public static Rack? Of(
        RackBrief brief,
        ModuleCard module,
        RackGrid grid,
        double tiltDeg,
        CardShelf shelf,
        RackForm? form = null
    )
    {
        if (RackSections.Of(brief, module, shelf, form) is not { } sections)
        {
            return null;
        }

        var asked = form ?? RackForm.Of(brief);
        var lay = ModuleLay.Of(module.Body, brief.Way);
        var clamping = asked.Type == RackType.ClampedRails ? RackClamping.Of(brief, module, grid.Columns) : null;
        var rowClearanceMm = brief.RowClearanceMm ?? UsualRowClearanceMm(grid.Columns);
        RackDeck deck = clamping is null
            ? new SlideInDeck(grid, lay, sections, rowClearanceMm, (asked.TubeCount, asked.EndShare))
            : new RailDeck(grid, lay, sections, clamping, (asked.TubeCount, asked.EndShare));
        var setting = new RackSetting(
            tiltDeg,
            0,
            clamping is null ? rowClearanceMm : clamping.GapMm * (grid.Columns - 1),
            Footings.DepthMm(brief) - CoverMm,
            PlinthHeightMm + 150
        )
        {
            Ground = brief.Ground,
        }.ClearOfGround(brief.LowEdgeM * 1000 ?? UsualLowEdgeMm, deck.LengthMm, deck.DepthMm);
        var steel = new RackFrame(deck, sections, asked.Lines, brief.Crew).Built(setting);
        return new(
            grid,
            sections,
            setting,
            steel.Assembly,
            steel.Skeleton,
            RackSize.Of(deck, setting),
            deck.Rows,
            deck.TubePlacesMm,
            grid.Rows * grid.Columns * module.Body.MassKg,
            [.. sections.Notes, .. RackNotes.Of(brief, grid, setting, asked, clamping)]
        )
        {
            Form = asked with { TubeCount = deck.TubePlacesMm.Count },
            Lay = lay,
            Along = deck.Along,
            Clamping = clamping,
        };
    }

    /// <summary>The rack with other legs of its welds.</summary>
    /// <param name="legsMm">Legs by name of the joint [mm]; what is not named stays.</param>
    /// <returns>The rack.</returns>
    public Rack WithLegs(IReadOnlyDictionary<string, double> legsMm) =>
        this with
        {
            Steel = WeldLegs.On(Steel, legsMm),
            Skeleton = WeldLegs.On(Skeleton, legsMm),
        };

    /// <summary>Findings of the rack's size and shape.</summary>
    /// <param name="module">The module.</param>
    /// <returns>The findings.</returns>
    public IEnumerable<Finding> Findings(ModuleCard module)
    {
        var planeM2 = Size.LengthMm * Size.DepthMm / 1e6;
        yield return Limit("rack/plane", planeM2, RackGrid.LargestPlaneM2, "m2", "plane of one rack");
        yield return Limit("rack/top-edge", Size.TopEdgeMm / 1000, 4, "m", "height of the top edge");
        var spanMm = TubePlacesMm.Zip(TubePlacesMm.Skip(1), (a, b) => b - a).DefaultIfEmpty(0).Max();
        var columns = string.Join(", ", Steel.Parts.Select(part => part.Mark).Where(mark => mark[0] == 'C').Distinct());
        yield return Limit("rack/span", spanMm / 1000, 5, "m", $"distance between two columns {columns} along the row");
        yield return Limit("rack/tilt", Setting.TiltDeg, 30, "deg", "tilt");
        if (Sections.Channel is { } channel)
        {
            yield return Lip(channel, module);
        }
    }

    private static Finding Lip(SlideInChannel channel, ModuleCard module)
    {
        var covers = channel.LipCoverMm > module.Body.EdgeToCellMm;
        return new(
            "rack/lip",
            covers ? FindingStatus.Look : FindingStatus.Holds,
            covers
                ? "the lip of the channel reaches over the cells and shades them: ask for an angle with a shorter leg or a module with a wider rim"
                : "the lip of the channel covers no cell",
            channel.LipCoverMm,
            module.Body.EdgeToCellMm,
            "mm",
            "module card"
        );
    }

    // A row of bare widths jams: 2 mm a module and 10 mm more.
    internal static double UsualRowClearanceMm(int columns) => 10 + (2 * columns);

    private static Finding Limit(string id, double value, double limit, string unit, string what) =>
        value <= limit
            ? new(
                id,
                FindingStatus.Holds,
                $"{what} within what this program judges",
                value,
                limit,
                unit,
                "limits of the method, judgement"
            )
            : Finding.HandedOver(
                id,
                value,
                limit,
                unit,
                $"{what} beyond what this program judges: have an engineer design this rack",
                "limits of the method, judgement"
            );
}

/// <summary>Sizes of one rack.</summary>
/// <param name="LengthMm">Outside length along the row [mm].</param>
/// <param name="DepthMm">Outside depth up the slope [mm].</param>
/// <param name="InsideLengthMm">Inside length along the row [mm].</param>
/// <param name="InsideDepthMm">Inside depth up the slope, holders not counted [mm].</param>
/// <param name="TopEdgeMm">Greatest height of the top edge above the ground under it [mm].</param>
public sealed record RackSize(
    double LengthMm,
    double DepthMm,
    double InsideLengthMm,
    double InsideDepthMm,
    double TopEdgeMm
)
{
    /// <summary>Height of the plane's upper side above the cross tubes, square to it [mm].</summary>
    public required double DeckMm { get; init; }

    /// <summary>The sizes of a plane as it stands.</summary>
    internal static RackSize Of(RackDeck deck, RackSetting setting) =>
        new(
            deck.LengthMm,
            deck.DepthMm,
            deck.InsideLengthMm,
            deck.InsideDepthMm,
            new[] { 0, deck.LengthMm }.Max(x =>
                setting.AboveGroundMm(setting.OnSlope(x, deck.DepthMm, deck.ThicknessMm))
            )
        )
        {
            DeckMm = deck.ThicknessMm,
        };
}
