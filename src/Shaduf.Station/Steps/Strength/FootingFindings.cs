using Shaduf.Ground;
using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the blocks in the ground.</summary>
internal static class FootingFindings
{
    private const string Turning =
        "IBC 2018, 1807.3.2.1 and table 1806.2, an allowable method: characteristic wind of EN 1991-1-4; by weight EN 1990 (EQU) 0.9 and 1.5";

    /// <summary>The findings.</summary>
    /// <param name="footings">The blocks.</param>
    /// <param name="strength">The analysed rack; null where the method ends.</param>
    /// <param name="soil">Kind of soil; null when unknown.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Footings footings, RackStrength? strength, SoilKind? soil)
    {
        var handedOver = soil is SoilKind.ExpansiveClay or SoilKind.Fill;
        IEnumerable<Finding> all =
            footings.Strength is { } blocks && strength is not null ? Checked(blocks, strength) : Beyond();
        if (strength?.Wind.IsKnown == false)
        {
            all = all.Select(finding => Plan(finding, "the wind speed is unknown"));
        }

        return handedOver
            ?
            [
                .. all.Select(finding => Plan(finding, "no pressure may be presumed for this ground")),
                HandedOver(soil!.Value),
            ]
            : all;
    }

    private static Finding[] Checked(FootingStrength blocks, RackStrength strength)
    {
        var advice = blocks.Holds ? "" : Advice(FootingChoice.Least(strength, blocks.Soil, null, null));
        return [Lift(blocks, advice), Turn(blocks, advice), Press(blocks, advice), Stops(blocks, strength)];
    }

    private static Finding Lift(FootingStrength blocks, string advice)
    {
        var held = Uplift.HoldingFactor * blocks.WeightKN;
        var holds = blocks.PullKN <= held;
        var drowned = Uplift.HoldingFactor * blocks.DrownedKN;
        return Finding.AtMost(
            "ground/uplift",
            blocks.PullKN,
            held,
            "kN",
            Invariant(
                $"the wind pulls at the block of column {blocks.Pulling.Column} with {blocks.PullKN:0.0} kN more than the rack weighs ({blocks.Pulling.Combination}); 0.9 of its weight holds {held:0.0} kN in dry ground, and {drowned:0.0} kN with water up to the surface{(blocks.PullKN > drowned && holds ? ", which is too little: where water can stand in the pit, make it larger" : "")}"
            ) + (holds ? "" : advice),
            "EN 1997-1:2004, 2.4.7.4 (UPL); EN 1990 factors 1.5 and 0.9; friction of the ground left out"
        );
    }

    private static Finding Turn(FootingStrength blocks, string advice)
    {
        var (load, block) = (blocks.Turning, blocks.Block);
        var broms = blocks.BromsDepthM() is { } depth
            ? Invariant(
                $" (Broms, {(blocks.Soil.Number == 5 ? "clay" : "sand")}, safety 2: {depth:0.00} m, and 0.3 m more for topsoil)"
            )
            : "";
        var weight = double.IsFinite(blocks.WeightShare)
            ? Invariant($"by its weight alone it is used to {blocks.WeightShare:0.00}")
            : "its weight alone does not hold it";
        return Finding.AtMost(
            "ground/overturning",
            blocks.TurningShare,
            1,
            "",
            Invariant(
                $"the block of column {load.Column} carries {load.SideKN:0.0} kN sideways and {load.MomentKNm:0.0} kN m at the ground: to stand by its sides in soil of class {blocks.Soil.Number} ({blocks.Soil.Name}) it must go {blocks.NeededDepthM:0.00} m deep{broms}, and goes {block.DepthMm / 1000:0.00} m; {weight}"
            ) + (blocks.TurningShare <= 1 ? "" : advice),
            Turning
        );
    }

    private static Finding Press(FootingStrength blocks, string advice) =>
        Finding.AtMost(
            "ground/bearing",
            blocks.BearingKPa,
            blocks.Soil.BearingKPa,
            "kPa",
            Invariant(
                $"{blocks.BearingKPa:0} kPa under a block, {(blocks.IsHeldBySides || blocks.WeightShare > 1 ? "straight down: its sides have to take the moment" : "off its middle, for its weight takes the moment")}; {blocks.Soil.BearingKPa:0} kPa may be put untested on {blocks.Soil.Name}"
            ) + (blocks.BearingKPa <= blocks.Soil.BearingKPa ? "" : advice),
            "IBC 2018, table 1806.2, loads without partial factors; EN 1997-1:2004, 6.5.2"
        );

    private static Finding Stops(FootingStrength blocks, RackStrength strength)
    {
        var stops = strength.Wind.StopsAtMPerS(gust =>
            FootingStrength.Of(strength, blocks.Soil, blocks.Block, gust).Holds
        );
        var says =
            stops >= RackWind.MostMPerS ? Invariant($"the blocks hold up to {RackWind.MostMPerS:0} m/s and more")
            : stops > 0 ? Invariant($"the blocks hold up to {stops:0.0} m/s")
            : "the blocks do not even hold in a calm";
        return Finding.AtLeast(
            "ground/stops-at-wind",
            stops,
            strength.Wind.BasicMPerS,
            "m/s",
            $"{says}; wind speed as mean of ten minutes 10 m above open country",
            "the checks of the blocks, with the wind raised until one fails"
        );
    }

    private static string Advice(FootingBlock? least) =>
        least is null
            ? Invariant(
                $". No square block up to {FootingChoice.WidestMm:0} mm wide and {FootingChoice.DeepestMm:0} mm deep holds: two lines of columns, a lower tilt, fewer modules in a rack, or a strip or tied footing by an engineer"
            )
            : Invariant(
                $". What would hold, of the same mix: blocks of {least.LengthMm:0} x {least.WidthMm:0} mm, {least.DepthMm:0} mm deep"
            );

    private static Finding Plan(Finding finding, string why) =>
        finding with
        {
            Status = FindingStatus.Unchecked,
            Says = $"{why}, so this is only a plan: {finding.Says}",
        };

    // No wind table goes there: an engineer's matter.
    private static IEnumerable<Finding> Beyond() =>
        new[] { "ground/uplift", "ground/overturning", "ground/bearing", "ground/stops-at-wind" }.Select(
            id => new Finding(
                id,
                FindingStatus.Unchecked,
                Invariant(
                    $"not checked: the tilt is beyond the table of wind coefficients, which ends at {MonopitchCanopy.SteepestDeg:0} deg; have an engineer design the footings"
                ),
                null,
                null,
                "",
                "EN 1991-1-4:2005, table 7.6"
            )
        );

    private static Finding HandedOver(SoilKind soil) =>
        new(
            "ground/soil",
            FindingStatus.Stop,
            soil == SoilKind.Fill
                ? "loose fill carries no footing: a geotechnical design is needed"
                : "swelling clay lifts light footings out: a geotechnical design is needed",
            null,
            null,
            "",
            "black cotton soil and made ground are handed over"
        );
}
