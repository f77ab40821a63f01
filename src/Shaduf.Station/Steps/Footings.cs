using Shaduf.Ground;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The concrete under the columns.</summary>
/// <param name="Block">One footing with its plinths: its length along the row, its width across.</param>
/// <param name="Count">How many.</param>
/// <param name="Mix">Mix by volume.</param>
/// <param name="PerM3">What a cubic metre of it takes.</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record Footings(
    FootingBlock Block,
    int Count,
    NominalMix Mix,
    MixQuantities PerM3,
    IReadOnlyList<ChoiceNote> Notes
)
{
    /// <summary>Share of concrete lost on the way; common practice, no source.</summary>
    public const double WasteShare = 0.05;

    /// <summary>Swell of dug soil; 25 % for ordinary ground, from memory.</summary>
    public const double SwellShare = 0.25;

    private const double UsualSideMm = 600;
    private const double UsualDepthMm = 1200;
    internal const string UsualMix = "1:2:4";

    /// <summary>Strength classes of concrete and the strength of a cylinder [N/mm2].</summary>
    /// <source>EN 1992-1-1:2004, table 3.1</source>
    internal static IReadOnlyList<(string Name, double CylinderNPerMm2)> Classes { get; } =
    [("C12/15", 12), ("C16/20", 16), ("C20/25", 20), ("C25/30", 25), ("C30/37", 30)];

    // What hand-mixed concrete is good for where nobody controls it: judgement.
    private const double UncontrolledNPerMm2 = 12;

    // Cylinder over cube.
    private const double CylinderShare = 0.8;

    /// <summary>Whether they are a plan only: the ground is handed over, and no size of them is drawn.</summary>
    public bool IsPlan { get; init; }

    /// <summary>Shape of the footings.</summary>
    public FootingForm Form { get; init; }

    /// <summary>What is known of the concrete: its class, or its mix.</summary>
    public required string ConcreteName { get; init; }

    /// <summary>Strength of a cylinder at 28 days [N/mm2].</summary>
    public required double CylinderNPerMm2 { get; init; }

    /// <summary>All concrete, waste not counted [m³].</summary>
    public double ConcreteM3 => Count * Block.ConcreteM3;

    /// <summary>All digging, as it lies [m³].</summary>
    public double ExcavationM3 => Count * Block.ExcavationM3;

    /// <summary>Depth of a block below ground [mm].</summary>
    /// <param name="rack">The rack as the brief has it.</param>
    /// <returns>Depth [mm].</returns>
    public static double DepthMm(RackBrief rack) => rack.FootingDepthMm ?? UsualDepthMm;

    /// <summary>Their check; null where the method ends.</summary>
    public FootingStrength? Strength { get; init; }

    /// <summary>How the columns hold in them; null where the method ends.</summary>
    public ColumnHold? Hold { get; init; }

    /// <summary>How far ground and concrete are used by what uses them most; 0 where the method ends.</summary>
    public double UseShare => Math.Max(Strength?.UseShare ?? 0, Hold?.UseShare ?? 0);

    /// <summary>A square block with a plinth a hand wider than the column.</summary>
    /// <param name="sideMm">Side [mm].</param>
    /// <param name="depthMm">Depth [mm].</param>
    /// <param name="columnMm">Side of the column [mm].</param>
    /// <returns>The block.</returns>
    internal static FootingBlock BlockOf(double sideMm, double depthMm, double columnMm) =>
        new(sideMm, sideMm, depthMm, Math.Min(sideMm, columnMm + 150), Rack.PlinthHeightMm);

    /// <summary>A footing in words.</summary>
    /// <param name="form">Its shape.</param>
    /// <param name="block">Its sizes.</param>
    /// <returns>Shape and sizes.</returns>
    public static string Says(FootingForm form, FootingBlock block) =>
        form switch
        {
            FootingForm.Beam => Invariant(
                $"a beam across the row under {(block.PlinthCount > 1 ? "each pair of columns" : "each column")}, {block.WidthMm:0} mm long across, {block.LengthMm:0} mm wide, {block.DepthMm:0} mm deep"
            ),
            FootingForm.Strip => Invariant(
                $"a strip along the row under each line of columns, {block.LengthMm:0} mm long, {block.WidthMm:0} mm wide, {block.DepthMm:0} mm deep"
            ),
            _ => Invariant($"{block.LengthMm:0} x {block.WidthMm:0} x {block.DepthMm:0} mm"),
        };

    /// <summary>A block for each column, of customary size where the brief leaves it open.</summary>
    /// <param name="brief">The rack as the brief has it.</param>
    /// <param name="rack">The rack.</param>
    /// <returns>The footings.</returns>
    public static Footings Of(RackBrief brief, Rack rack) =>
        Of(
            brief,
            rack,
            new(
                FootingForm.Block,
                BlockOf(brief.FootingSideMm ?? UsualSideMm, DepthMm(brief), rack.Sections.Column.SideMm)
            )
        );

    /// <summary>Footings of a form.</summary>
    /// <param name="brief">The rack as the brief has it.</param>
    /// <param name="rack">The rack.</param>
    /// <param name="option">Form and sizes.</param>
    /// <returns>The footings.</returns>
    internal static Footings Of(RackBrief brief, Rack rack, FootingOption option)
    {
        var mix = MixOf(brief);
        var (name, cylinder) = ConcreteOf(brief);
        return new(
            option.Block,
            FootGroups.Of(rack.Skeleton, option.Form).Count * rack.Grid.RackCount,
            mix,
            mix.PerM3(NominalMix.UsualDryVolumeFactor, NominalMix.UsualCementKgPerM3),
            [.. NotesOf(brief)]
        )
        {
            Form = option.Form,
            ConcreteName = name,
            CylinderNPerMm2 = cylinder,
        };
    }

    // A class is taken at its word; a mix stands for a cube, and for no more than 12 N/mm2 where nobody controls it.
    internal static (string Name, double CylinderNPerMm2) ConcreteOf(RackBrief brief)
    {
        var mix = MixOf(brief);
        if (brief.ConcreteClass is { } given)
        {
            return (given, Classes.First(each => each.Name == given).CylinderNPerMm2);
        }

        var cylinder = CylinderShare * mix.CubeNPerMm2;
        return brief.HasConcreteControl || cylinder <= UncontrolledNPerMm2
            ? (mix.Name, cylinder)
            : ($"{mix.Name}, mixed without control", UncontrolledNPerMm2);
    }

    /// <summary>The mix of the brief, or the customary one.</summary>
    internal static NominalMix MixOf(RackBrief brief) => NominalMix.Named(brief.Mix ?? UsualMix);

    private static IEnumerable<ChoiceNote> NotesOf(RackBrief brief)
    {
        if (brief.Mix is null)
        {
            yield return new("concrete", UsualMix, "nominal mix by volume, common practice");
        }
    }
}
