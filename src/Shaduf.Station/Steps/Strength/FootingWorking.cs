using Shaduf.Ground;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The calculation of the blocks in the ground, to follow with a pocket calculator.</summary>
internal static class FootingWorking
{
    /// <summary>The sheet; none where the method ends.</summary>
    /// <param name="footings">The blocks.</param>
    /// <returns>The sheet, or nothing.</returns>
    public static IEnumerable<WorkingSheet> Show(Footings footings)
    {
        if (footings.Strength is { } blocks)
        {
            var block = blocks.Block;
            yield return new(
                Invariant(
                    $"Footing block {block.LengthMm:0} x {block.WidthMm:0} x {block.DepthMm:0} mm in {blocks.Soil.Name}"
                ),
                [.. Weight(blocks), .. Sides(blocks), Pressure(blocks)]
            );
        }
    }

    private static IEnumerable<Line> Weight(FootingStrength blocks)
    {
        yield return new(
            "0.9 W_b",
            "0.9 γ V",
            Invariant($"0.9 · {Uplift.ConcreteKNPerM3:0} · {blocks.Block.ConcreteM3:0.000}, plinth counted"),
            Uplift.HoldingFactor * blocks.WeightKN,
            "kN",
            "ground/uplift",
            "EN 1997-1:2004, 2.4.7.4"
        );
        yield return new(
            "F_up",
            "1.5 W − 0.9 G of one column",
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
        var diagonalM = blocks.Block.WidthMm / 1000 * Math.Sqrt(2);
        var perForce = 7.02 / (blocks.Soil.LateralKNPerM3 * diagonalM);
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
            Invariant($"7.02 · {load.SideKN:0.00}/({blocks.Soil.LateralKNPerM3:0.0} · {diagonalM:0.000})"),
            perForce * load.SideKN,
            "m2",
            "ground/pier-in-soil",
            Source
        );
        yield return new(
            "d",
            "d³ = k d + 1.09 · 7.02 P h/(S b)",
            Invariant(
                $"d³ = {perForce * load.SideKN:0.000} d + {1.09 * perForce * load.MomentKNm:0.000}; beyond 3.66 m S d/3 grows no more"
            ),
            blocks.NeededDepthM,
            "m",
            "ground/pier-in-soil",
            Source
        );
    }

    private static Line Pressure(FootingStrength blocks) =>
        new(
            "q",
            blocks.IsHeldBySides || blocks.WeightShare > 1 ? "(N + W_b)/B²" : "(N + W_b)/((B − 2 e_x)(B − 2 e_y))",
            Invariant(
                $"B = {blocks.Block.WidthMm / 1000:0.00} m, W_b = {blocks.WeightKN:0.0} kN, largest of all loads"
            ),
            blocks.BearingKPa,
            "kPa",
            "ground/eccentric-bearing",
            "EN 1997-1:2004, 6.5.2"
        );
}
