using Shaduf.Ground;
using Shaduf.Steel;
using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The block under the tallest light column, in the wind on pole, lamp, battery and charging module.</summary>
/// <param name="Block">The block; the least that holds, or the largest that was looked at.</param>
/// <param name="Strength">Its check.</param>
/// <param name="Wind">The wind at the lamp's height.</param>
/// <param name="HeadM2">Area of lamp, battery and module that the wind sees [m2].</param>
/// <param name="HeightM">Height of the lamp [m].</param>
public sealed record PoleBlock(
    FootingBlock Block,
    FootingStrength Strength,
    RackWind Wind,
    double HeadM2,
    double HeightM
)
{
    // A round tube of less than 150 mm, and a flat plate on a pole.
    private const double TubeCoefficient = 1.2;
    private const double PlateCoefficient = 1.8;

    // Lamp and battery box, and the rating of a square metre of module; judgement, no source.
    private const double LampM2 = 0.15;
    private const double ModuleWPerM2 = 180;
    private const double HeadKg = 25;
    private const double StepMm = 50;

    /// <summary>Moment of the wind at the ground, without partial factors [kN·m].</summary>
    public double MomentKNm => Strength.Service[0].MomentKNm;

    /// <summary>Side load of the wind, without partial factors [kN].</summary>
    public double SideKN => Strength.Service[0].SideKN;

    /// <summary>The least square block for a site's light columns.</summary>
    /// <param name="guard">Light and poles.</param>
    /// <param name="site">The site.</param>
    /// <param name="survey">The survey.</param>
    /// <returns>The block; null when no column stands.</returns>
    public static PoleBlock? Of(Guard guard, SiteBrief site, Survey survey)
    {
        if (guard.Column is not { } column || guard.Light is not { } light)
        {
            return null;
        }

        var pole = column.Steel.Parts[0];
        var heightM = pole.LengthMm / 1000;
        var wind = RackWind.Of(site, survey, pole.LengthMm);
        var headM2 = LampM2 + (light.ModulesEach * light.Card.Charger.RatedW / ModuleWPerM2);
        var poleKN = TubeCoefficient * pole.Section.SideMm / 1000 * heightM * wind.PeakKNPerM2;
        var headKN = PlateCoefficient * headM2 * wind.PeakKNPerM2;
        var (side, moment) = (poleKN + headKN, (poleKN * heightM / 2) + (headKN * heightM));
        var weightKN = (pole.MassKg + column.Foot.MassKg + HeadKg) * Gravity.MPerS2 / 1000;
        FootLoad Load(string name, double weight, double blown) =>
            new(pole.Mark, name, weight * weightKN, 0, blown * side, -blown * moment, 0);
        var any = new FootingStrength(
            FootingGround.Of(site),
            Footings.BlockOf(column.Foot.SideMm + 200, 600, 0) with
            {
                PlinthHeightMm = 0,
            },
            [Load("0.9 G + 1.5 W", 0.9, 1.5), Load("1.35 G + 1.5 W", 1.35, 1.5)],
            [Load("G + W", 1, 1)]
        );
        var all = Blocks(any.Block).Select(block => any with { Block = block }).OrderBy(each => each.Block.ConcreteM3);
        var taken = all.FirstOrDefault(each => each.Holds) ?? all.Last();
        return new(taken.Block, taken, wind, headM2, heightM);
    }

    /// <summary>The finding.</summary>
    /// <returns>Whether a block of this size holds the pole.</returns>
    public Finding Finding()
    {
        var finding = Shaduf.Working.Finding.AtMost(
            "guard/pole-block",
            Strength.TurningShare,
            1,
            "",
            Invariant(
                $"the light column of {HeightM:0.0} m, with {HeadM2:0.00} m2 of lamp, battery and module at its top, pulls {SideKN:0.00} kN and {MomentKNm:0.0} kN m at the ground at {Wind.BasicMPerS:0.#} m/s; a block of {Block.LengthMm:0} x {Block.WidthMm:0} mm, {Block.DepthMm:0} mm deep in {Strength.Soil.Name} {(Strength.Holds ? "holds it" : "does not hold it: a lower pole, a smaller module or an engineer's footing")}"
            ),
            "IBC 2018, 1807.3; EN 1991-1-4:2005, 7.4.3 and 7.9; area of the head: judgement"
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
            "Block of the light column",
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
                    "q_p (1.2 D h²/2 + 1.8 A h)",
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
                    "IBC 2018, equation 18-1; Broms 1964"
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
