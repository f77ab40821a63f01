using Shaduf.Ground;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The calculation of the footings, to follow with a pocket calculator.</summary>
internal static class FootingWorking
{
    /// <summary>The sheet; none where the method ends.</summary>
    /// <param name="footings">The footings.</param>
    /// <returns>The sheet, or nothing.</returns>
    public static IEnumerable<WorkingSheet> Show(Footings footings)
    {
        if (footings.Strength is { } blocks)
        {
            yield return new(
                Invariant($"Footing: {Footings.Says(footings.Form, footings.Block)} in {blocks.Soil.Name}"),
                [
                    .. Weight(blocks),
                    .. blocks.Soil is { IsTested: true, IsFelt: false } ? [TestedSides(blocks)] : Sides(blocks),
                    .. Tipping(blocks),
                    Slide(blocks),
                    .. Pressure(blocks),
                ]
            );
        }
    }

    private static IEnumerable<Line> Weight(FootingStrength blocks)
    {
        var wet = blocks.Soil.DrownedShare(blocks.Block);
        var (least, variable) = (blocks.National.LeastWeightFactor, blocks.National.VariableFactor);
        yield return new(
            Invariant($"{least:0.##} W_b"),
            Invariant($"{least:0.##} γ V"),
            wet > 0
                ? Invariant(
                    $"{least:0.##} · ({Uplift.ConcreteKNPerM3:0} · {1 - wet:0.00} + {Uplift.DrownedKNPerM3:0} · {wet:0.00}) · {blocks.Block.ConcreteM3:0.000}, plinth counted; {wet * 100:0} % of it taken in water"
                )
                : Invariant(
                    $"{least:0.##} · {Uplift.ConcreteKNPerM3:0} · {blocks.Block.ConcreteM3:0.000}, plinth counted"
                ),
            blocks.HeldKN,
            "kN",
            "ground/uplift",
            "EN 1997-1:2004, 2.4.7.4"
        );
        yield return new(
            "F_up",
            Invariant($"{variable:0.##} W − {least:0.##} G of what stands on it"),
            Invariant($"column {blocks.Pulling.Column}, {blocks.Pulling.Combination}"),
            blocks.PullKN,
            "kN",
            "ground/uplift",
            "EN 1990:2002, expression 6.10"
        );
    }

    private static IEnumerable<Line> Sides(FootingStrength blocks)
    {
        var load = blocks.Turning;
        var diagonalM = Math.Min(blocks.Block.WidthMm, blocks.Block.LengthMm) / 1000 * Math.Sqrt(2);
        var perForce = 7.02 / (blocks.Soil.Class.LateralKNPerM3 * diagonalM);
        const string Source = "IBC 2018, equation 18-1, table 1806.2";
        yield return new(
            "P",
            "side load at the ground, without partial factors",
            Invariant($"column {load.Column}, {load.Combination}"),
            load.SideKN,
            "kN",
            "steel/skeleton-frame",
            "frame analysis"
        );
        yield return new(
            "P h",
            "moment at the ground",
            Invariant($"column {load.Column}, {load.Combination}"),
            load.MomentKNm,
            "kN m",
            "steel/skeleton-frame",
            "frame analysis"
        );
        yield return new(
            "k",
            "7.02 P/(S b), b the diagonal",
            Invariant($"7.02 · {load.SideKN:0.00}/({blocks.Soil.Class.LateralKNPerM3:0.0} · {diagonalM:0.000})"),
            perForce * load.SideKN,
            "m2",
            "ground/pier-in-soil",
            Source
        );
        yield return new(
            "d",
            "d³ = k d + 1.09 · 7.02 P h/(S b)",
            Invariant(
                $"d³ = {perForce * load.SideKN:0.000} d + {1.09 * perForce * load.MomentKNm:0.000}; beyond 3.66 m S d/3 grows no more{(blocks.Soil.IsFelt ? "; the deeper of this and of Broms" : "")}"
            ),
            blocks.NeededDepthM,
            "m",
            "ground/pier-in-soil",
            Source
        );
    }

    private static Line TestedSides(FootingStrength blocks)
    {
        var (load, soil) = (blocks.Turning, blocks.Soil);
        return new(
            "d",
            soil.Grain is null
                ? "Broms, clay: H and M doubled"
                : "Broms, sand: H and M doubled; 0.3 m more for topsoil",
            Invariant(
                $"H = {load.SideKN:0.00} kN, M = {load.MomentKNm:0.00} kN m (column {load.Column}, {load.Combination}), {soil.Name}"
            ),
            blocks.NeededDepthM,
            "m",
            "ground/short-pile",
            "Broms 1964, safety 2"
        );
    }

    private static IEnumerable<Line> Tipping(FootingStrength blocks)
    {
        var (load, block) = (blocks.Tipped, blocks.Block);
        var (along, across) = load.AtKNm(block.DepthMm / 1000);
        var downKN = load.DownKN + blocks.HeldKN;
        yield return new(
            "M_d",
            "M + H D about the edge, the greater of both directions",
            Invariant($"column {load.Column}, {load.Combination}: {along:0.00} along, {across:0.00} across the row"),
            Math.Max(along, across),
            "kN m",
            "ground/tipping",
            "EN 1990:2002, table A1.2(A)"
        );
        yield return new(
            "V_d",
            Invariant($"V + {blocks.National.LeastWeightFactor:0.##} W_b"),
            Invariant($"{load.DownKN:0.00} + {blocks.HeldKN:0.00}; half the width is its arm"),
            downKN,
            "kN",
            "ground/tipping",
            "EN 1990:2002, table A1.2(A)"
        );
    }

    private static Line Slide(FootingStrength blocks) =>
        new(
            "H_R",
            blocks.Soil.IsTested ? "V tan φ/1.1 or A c_u/1.1, and S D² b/2" : "μ V or A c, and S D² b/2",
            Invariant(
                $"column {blocks.Pushed.Column}, {blocks.Pushed.Combination}; S = {blocks.Soil.Class.LateralKNPerM3:0.0} kN/m3; it pushes with {blocks.Pushed.SideKN:0.00} kN"
            ),
            blocks.SlideHeldKN,
            "kN",
            "ground/sliding",
            "EN 1997-1:2004, 6.5.3; IBC 2018, 1806.3"
        );

    private static IEnumerable<Line> Pressure(FootingStrength blocks)
    {
        var use = blocks.Bearing;
        var (block, upright) = (blocks.Block, blocks.IsHeldBySides || blocks.WeightShare > 1);
        yield return new(
            "q",
            upright ? "(N + W_b)/(B L)" : "(N + W_b)/((B − 2 e_x)(L − 2 e_y))",
            Invariant(
                $"B = {block.WidthMm / 1000:0.00} m, L = {block.LengthMm / 1000:0.00} m; column {use.Load.Column}, {use.Load.Combination}"
            ),
            use.PressureKPa,
            "kPa",
            "ground/eccentric-bearing",
            "EN 1997-1:2004, 6.5.2"
        );
        yield return new(
            "q_R",
            use.IsTested ? "annex D, divided by 1.4" : "allowable",
            Invariant(
                $"{blocks.Soil.Name}; {blocks.Soil.SurchargeKPa(block.DepthMm / 1000):0.0} kPa of ground beside the base"
            ),
            use.BearsKPa,
            "kPa",
            use.IsTested ? "ground/bearing-resistance" : "ground/soil-class",
            use.IsTested ? "EN 1997-1:2004, annex D" : "IBC 2018, table 1806.2"
        );
    }
}
