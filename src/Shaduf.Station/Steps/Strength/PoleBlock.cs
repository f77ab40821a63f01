using Shaduf.Ground;
using Shaduf.Steel;
using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The block under the tallest light column or lightning mast, in the wind on pole, lamp, battery and charging module.</summary>
/// <param name="Block">The block; the least that holds, or the largest that was looked at.</param>
/// <param name="Strength">Its check.</param>
/// <param name="Wind">The wind at the lamp's height.</param>
/// <param name="HeadM2">Area of lamp, battery and module that the wind sees [m2].</param>
/// <param name="HeightM">Height of the pole [m].</param>
public sealed record PoleBlock(
    FootingBlock Block,
    FootingStrength Strength,
    RackWind Wind,
    double HeadM2,
    double HeightM
)
{
    private const double StepMm = 50;

    /// <summary>Whether a lightning mast stands on it.</summary>
    public bool IsMast { get; init; }

    /// <summary>What stands on it, in words.</summary>
    public string Name => IsMast ? "lightning mast" : "light column";

    /// <summary>How many blocks of which size, in words.</summary>
    /// <param name="count">How many.</param>
    internal string BlocksText(int count) =>
        Invariant(
            $"{count} {(count == 1 ? "block" : "blocks")} of {Block.LengthMm:0} x {Block.WidthMm:0} mm, {Block.DepthMm:0} mm deep, under {(count == 1 ? $"a {Name}" : $"{Name}s")}"
        );

    /// <summary>Moment of the wind at the ground, without partial factors [kN·m].</summary>
    public double MomentKNm => Strength.Service[0].MomentKNm;

    /// <summary>Side load of the wind, without partial factors [kN].</summary>
    public double SideKN => Strength.Service[0].SideKN;

    /// <summary>The least square block for a site's light columns, no narrower than the one that their bolts are checked in.</summary>
    /// <param name="strength">The checked column; null when none stands.</param>
    /// <param name="site">The site.</param>
    /// <returns>The block; null when no column stands.</returns>
    public static PoleBlock? Of(LightColumnStrength? strength, SiteBrief site)
    {
        if (strength is null)
        {
            return null;
        }

        var (column, national) = (strength.Column, strength.National);
        var pole = column.Pole;
        var heightM = column.HeightMm / 1000;
        var foot = strength.ForcesAt(strength.Wind.PeakKNPerM2, 0);
        var side = foot.ShearZN / national.VariableFactor / 1000;
        var moment = foot.BendingYNMm / national.VariableFactor / 1e6;
        var weightKN = (pole.MassKg + column.Foot.MassKg + strength.Sail.MassKg) * Gravity.MPerS2 / 1000;
        FootLoad Load(string name, double weight, double blown) =>
            new(pole.Mark, name, weight * weightKN, 0, blown * side, -blown * moment, 0);
        var any = new FootingStrength(
            FootingGround.Of(site) with
            {
                LateralFactor = 2,
            },
            Footings.BlockOf(column.Size.BlockMm, 600, 0) with
            {
                PlinthHeightMm = 0,
            },
            [
                Load("least G + W", national.LeastWeightFactor, national.VariableFactor),
                Load("G + W with factors", national.PermanentFactor, national.VariableFactor),
            ],
            [Load("G + W", 1, 1)]
        )
        {
            National = national,
        };
        var all = Blocks(any.Block).Select(block => any with { Block = block }).OrderBy(each => each.Block.ConcreteM3);
        var taken = all.FirstOrDefault(each => each.Holds) ?? all.Last();
        return new(taken.Block, taken, strength.Wind, strength.Sail.AreaM2, heightM) { IsMast = strength.IsMast };
    }

    /// <summary>The finding.</summary>
    /// <returns>Whether a block of this size holds the pole.</returns>
    public Finding Finding()
    {
        var finding = Shaduf.Working.Finding.AtMost(
            IsMast ? "guard/mast-block" : "guard/pole-block",
            Strength.TurningShare,
            1,
            "",
            Invariant(
                $"the {Name} of {HeightM:0.0} m{(HeadM2 > 0 ? Invariant($", with {HeadM2:0.00} m2 of lamp, battery and module on it,") : "")} pulls {SideKN:0.00} kN and {MomentKNm:0.0} kN m at the ground at {Wind.BasicMPerS:0.#} m/s; a block of {Block.LengthMm:0} x {Block.WidthMm:0} mm, {Block.DepthMm:0} mm deep in {Strength.Soil.Name} {(Strength.Holds ? "holds it" : "does not hold it: a lower pole, a smaller module or an engineer's footing")}"
            ),
            "IBC 2018, 1807.3, lateral bearing doubled by 1806.3.4 for a pole that may lean by 12 mm at the ground; EN 1991-1-4:2005, 7.4.3 and 7.9; area of the head: judgement"
        );
        return Wind.IsKnown
            ? finding
            : finding with
            {
                Status = FindingStatus.Unchecked,
                Says = $"the wind speed is unknown, so this is only a plan: {finding.Says}",
            };
    }

    /// <summary>The calculation.</summary>
    /// <returns>The sheet.</returns>
    public WorkingSheet Show() =>
        new(
            $"Block of the {Name}",
            [
                new(
                    "H",
                    "q_p (1.2 D h + 1.8 A)",
                    Invariant($"q_p = {Wind.PeakKNPerM2:0.000} kN/m2, h = {HeightM:0.00} m, A = {HeadM2:0.00} m2"),
                    SideKN,
                    "kN",
                    "steel/wind-pressure",
                    "EN 1991-1-4:2005, 7.4.3 and 7.9"
                ),
                new(
                    "M",
                    "q_p (1.2 D h²/2 + 1.8 A h_A)",
                    "",
                    MomentKNm,
                    "kN m",
                    "steel/wind-pressure",
                    "EN 1991-1-4:2005, 7.4.3 and 7.9"
                ),
                new(
                    "d",
                    "depth to stand by its sides",
                    Strength.Soil.Name,
                    Strength.NeededDepthM,
                    "m",
                    Strength.Soil is { IsTested: true, IsFelt: false } ? "ground/short-pile" : "ground/pier-in-soil",
                    "IBC 2018, equation 18-1, 1806.3.4; Broms 1964"
                ),
            ]
        );

    private static IEnumerable<FootingBlock> Blocks(FootingBlock least)
    {
        for (var side = least.LengthMm; side <= 1000; side += StepMm)
        {
            for (var depth = least.DepthMm; depth <= FootingChoice.DeepestMm; depth += StepMm)
            {
                yield return least with
                {
                    LengthMm = side,
                    WidthMm = side,
                    DepthMm = depth,
                };
            }
        }
    }
}
