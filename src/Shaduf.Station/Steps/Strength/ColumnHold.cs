using Shaduf.Ground;
using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>How a rack's columns hold in their concrete: moment and shear by pressure, pull by the pieces across the foot.</summary>
/// <param name="WidthMm">Side of the column [mm].</param>
/// <param name="DepthMm">Length of column in the concrete [mm].</param>
/// <param name="BesideMm">Concrete beside the column [mm].</param>
/// <param name="CrossMm2">Area of the pieces across the foot that bears on the concrete [mm2].</param>
/// <param name="CrossWeldMm">Length of their welds to the column that carries [mm].</param>
/// <param name="StrengthNPerMm2">Strength of the concrete f_cd [N/mm2].</param>
/// <param name="Turning">The load that presses hardest.</param>
/// <param name="Pulling">The load that pulls hardest.</param>
public sealed record ColumnHold(
    double WidthMm,
    double DepthMm,
    double BesideMm,
    double CrossMm2,
    double CrossWeldMm,
    double StrengthNPerMm2,
    FootLoad Turning,
    FootLoad Pulling
)
{
    // Cylinder over cube; what is left of a nominal mix batched by hand.
    private const double CylinderShare = 0.8;
    private const string Pressed = "statics, straight-line distribution; EN 1992-1-1:2004, 3.1.6";

    /// <summary>Moment from which two ties go round the column near the top of its block [kN·m]; judgement, no source.</summary>
    public const double TiedFromKNm = 1;

    /// <summary>Pressure on the concrete [N/mm2].</summary>
    public double PressureNPerMm2 =>
        EmbeddedTube.PressureNPerMm2(WidthMm, DepthMm, Turning.SideKN * 1000, Turning.MomentKNm * 1e6);

    /// <summary>Pull that the concrete must hold [N].</summary>
    public double PullN => Math.Max(0, -Pulling.DownKN) * 1000;

    /// <summary>Area across the foot that the pull needs [mm2].</summary>
    public double NeededMm2 => EmbeddedTube.CrossBarMm2(PullN, StrengthNPerMm2);

    /// <summary>How far the concrete is used by pressure and by pull.</summary>
    public double UseShare => Math.Max(PressedShare, NeededMm2 / CrossMm2);

    private double PressedShare =>
        Math.Max(PressureNPerMm2 / StrengthNPerMm2, EmbeddedTube.LeastDepthMm(WidthMm) / DepthMm);

    /// <summary>Length of column that moment and shear need in the concrete [mm].</summary>
    public double NeededDepthMm =>
        EmbeddedTube.RequiredDepthMm(WidthMm, Turning.SideKN * 1000, Turning.MomentKNm * 1e6, StrengthNPerMm2);

    /// <summary>The hold of a rack's columns.</summary>
    /// <param name="strength">The analysed rack.</param>
    /// <param name="block">Their blocks.</param>
    /// <param name="mix">The concrete.</param>
    /// <returns>The hold.</returns>
    /// <source>Design loads of members and of uplift, EN 1990; f_ck 0.8 of the cube's strength that the nominal mix stands for</source>
    public static ColumnHold Of(RackStrength strength, FootingBlock block, NominalMix mix)
    {
        var loads = strength.BothDepths.SelectMany(Loads).ToList();
        var (width, depth) = (strength.Rack.Sections.Column.SideMm, Math.Max(100, strength.Rack.Setting.EmbedMm));
        var pieces = strength
            .Rack.Steel.Parts.Where(part => part.Mark == Rack.FootMark)
            .Take(
                strength.Rack.Steel.Parts.Count(part => part.Mark == Rack.FootMark) / strength.Rack.Skeleton.Feet.Count
            )
            .ToList();
        return new(
            width,
            depth,
            (Math.Min(block.LengthMm, block.WidthMm) - width) / 2,
            pieces.Sum(part => part.LengthMm * part.Section.SideMm),
            pieces.Sum(part => 2 * FilletWeld.EffectiveMm(part.LengthMm, FilletWeld.ThroatMm(RackSteel.WeldLegMm))),
            BasePlate.BearingNPerMm2(CylinderShare * Cube(mix), strength.Rules.Factors),
            loads.MaxBy(load => EmbeddedTube.PressureNPerMm2(width, depth, load.SideKN * 1000, load.MomentKNm * 1e6))!,
            loads.MinBy(load => load.DownKN)!
        );
    }

    private static IReadOnlyList<FootLoad> Loads(RackStrength strength) =>
        FootLoad.Of(
            strength,
            [.. strength.Combinations.Strength.Where(each => each.Members is null), .. strength.Combinations.Ground],
            strength.Wind.PeakKNPerM2
        );

    /// <summary>The findings.</summary>
    /// <param name="isWindKnown">Whether the wind speed is known.</param>
    /// <returns>The finding.</returns>
    public IEnumerable<Finding> Findings(bool isWindKnown)
    {
        Finding[] found = [Sideways(), Down()];
        return isWindKnown
            ? found
            : found.Select(each =>
                each with
                {
                    Status = FindingStatus.Unchecked,
                    Says = $"the wind speed is unknown, so this is only a plan: {each.Says}",
                }
            );
    }

    private Finding Sideways()
    {
        var narrow =
            BesideMm < WidthMm
                ? Invariant(
                    $"; {BesideMm:0} mm of concrete beside it are less than its side of {WidthMm:0} mm: make the block wider"
                )
                : "";
        var ties =
            Turning.MomentKNm > TiedFromKNm
                ? "; lay two closed ties of 8 mm bar round it near the top of the block"
                : "";
        var finding = Finding.AtMost(
            "ground/column-hold",
            PressedShare,
            1,
            "",
            Invariant(
                $"column {Turning.Column} stands {DepthMm:0} mm in its concrete and presses it with {PressureNPerMm2:0.0} of {StrengthNPerMm2:0.0} N/mm2 ({Turning.Combination}); {NeededDepthMm:0} mm would do"
            )
                + narrow
                + ties,
            Pressed
        );
        return finding.Status == FindingStatus.Holds && narrow.Length > 0
            ? finding with
            {
                Status = FindingStatus.Look,
            }
            : finding;
    }

    private Finding Down() =>
        Finding.AtMost(
            "ground/column-pull",
            NeededMm2,
            CrossMm2,
            "mm2",
            Invariant(
                $"the wind pulls column {Pulling.Column} with {PullN / 1000:0.0} kN ({Pulling.Combination}); the pieces {Rack.FootMark} across its foot bear on {CrossMm2:0} mm2 of concrete, and their welds are used to {WeldShare:0.00}; bond between steel and concrete is not counted"
            ),
            "statics; EN 1992-1-1:2004, 3.1.6; EN 1993-1-8:2005, 4.5.3.3"
        );

    // Weakest steel, so that the share stands for any.
    private double WeldShare =>
        CrossWeldMm > 0
            ? PullN
                / CrossWeldMm
                / FilletWeld.ResistanceNPerMm(SteelGrade.Unmarked, FilletWeld.ThroatMm(RackSteel.WeldLegMm))
            : 0;

    /// <summary>The working.</summary>
    /// <returns>The sheet.</returns>
    public WorkingSheet Show() =>
        new(
            $"Hold of column {Turning.Column} in its concrete: {Turning.Combination}",
            [
                .. EmbeddedTube.Lines(
                    WidthMm,
                    DepthMm,
                    Turning.SideKN * 1000,
                    Turning.MomentKNm * 1e6,
                    StrengthNPerMm2
                ),
                new(
                    "A_cross",
                    "N/f_cd",
                    Invariant(
                        $"{PullN / 1000:0.00}e3/{StrengthNPerMm2:0.00}; there are {CrossMm2:0} mm² ({Pulling.Combination})"
                    ),
                    NeededMm2,
                    "mm²",
                    "steel/embedded-tube",
                    "statics"
                ),
            ]
        );

    private static double Cube(NominalMix mix) =>
        double.Parse(mix.Grade.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture);
}
