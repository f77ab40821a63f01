using Shaduf.Ground;

namespace Shaduf.Station;

/// <summary>The blocks of concrete under the columns.</summary>
/// <param name="Block">One block with its plinth.</param>
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
    private const string UsualMix = "1:2:4";

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

    /// <summary>A square block with a plinth a hand wider than the column.</summary>
    /// <param name="sideMm">Side [mm].</param>
    /// <param name="depthMm">Depth [mm].</param>
    /// <param name="columnMm">Side of the column [mm].</param>
    /// <returns>The block.</returns>
    internal static FootingBlock BlockOf(double sideMm, double depthMm, double columnMm) =>
        new(sideMm, sideMm, depthMm, Math.Min(sideMm, columnMm + 150), Rack.PlinthHeightMm);

    /// <summary>A block for each column, of customary size where the brief leaves it open.</summary>
    /// <param name="brief">The rack as the brief has it.</param>
    /// <param name="rack">The rack.</param>
    /// <returns>The footings.</returns>
    public static Footings Of(RackBrief brief, Rack rack)
    {
        var sideMm = brief.FootingSideMm ?? UsualSideMm;
        var mix = NominalMix.Named(brief.Mix ?? UsualMix);
        return new(
            BlockOf(sideMm, DepthMm(brief), rack.Sections.Column.SideMm),
            rack.ColumnCount,
            mix,
            mix.PerM3(NominalMix.UsualDryVolumeFactor, NominalMix.UsualCementKgPerM3),
            [.. NotesOf(brief)]
        );
    }

    private static IEnumerable<ChoiceNote> NotesOf(RackBrief brief)
    {
        if (brief.Mix is null)
        {
            yield return new("concrete", UsualMix, "nominal mix by volume, common practice");
        }
    }
}
