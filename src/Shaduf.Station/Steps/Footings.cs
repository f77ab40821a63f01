using Shaduf.Ground;
using Shaduf.Working;
using static System.FormattableString;

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

    /// <summary>A block for each column.</summary>
    /// <param name="brief">The rack as the brief has it.</param>
    /// <param name="rack">The rack.</param>
    /// <returns>The footings.</returns>
    public static Footings Of(RackBrief brief, Rack rack)
    {
        var sideMm = brief.FootingSideMm ?? UsualSideMm;
        var plinthMm = Math.Min(sideMm, rack.Sections.Column.SideMm + 150);
        var mix = NominalMix.Named(brief.Mix ?? UsualMix);
        return new(
            new(sideMm, sideMm, DepthMm(brief), plinthMm, Rack.PlinthHeightMm),
            rack.ColumnCount,
            mix,
            mix.PerM3(NominalMix.UsualDryVolumeFactor, NominalMix.UsualCementKgPerM3),
            [.. NotesOf(brief, sideMm)]
        );
    }

    private static IEnumerable<ChoiceNote> NotesOf(RackBrief brief, double sideMm)
    {
        if (brief.FootingSideMm is null || brief.FootingDepthMm is null)
        {
            yield return new(
                "footing block",
                Invariant($"{sideMm:0} x {sideMm:0} x {DepthMm(brief):0} mm"),
                "a customary block, no source; whether it holds against the wind is not checked yet"
            );
        }

        if (brief.Mix is null)
        {
            yield return new("concrete", UsualMix, "nominal mix by volume, common practice");
        }
    }

    /// <summary>Findings of the footings.</summary>
    /// <param name="site">The site.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Findings(SiteBrief site)
    {
        foreach (
            var (id, what) in new[]
            {
                ("ground/uplift", "uplift"),
                ("ground/overturning", "overturning"),
                ("ground/bearing", "bearing"),
            }
        )
        {
            yield return new(
                id,
                FindingStatus.Unchecked,
                $"{what} of the footing blocks: not checked, the method is not in this version; most racks are lost at the footing, have it checked by an engineer before digging",
                null,
                null,
                "",
                ""
            );
        }

        if (site.Soil is SoilKind.ExpansiveClay or SoilKind.Fill)
        {
            yield return new(
                "ground/soil",
                FindingStatus.Stop,
                site.Soil == SoilKind.Fill
                    ? "loose fill carries no footing: a geotechnical design is needed"
                    : "swelling clay lifts light footings out: a geotechnical design is needed",
                null,
                null,
                "",
                "black cotton soil and made ground are handed over"
            );
        }
    }
}
