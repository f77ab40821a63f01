using Shaduf.Ground;
using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the footings of a rack.</summary>
internal static class FootingFindings
{
    private const string Turning =
        "IBC 2018, 1807.3.2.1 and table 1806.2, an allowable method: characteristic wind of EN 1991-1-4; by weight EN 1990 (EQU) 0.9 and 1.5";

    private const string Tested =
        "Broms 1964 with a safety of 2, characteristic wind of EN 1991-1-4; by weight EN 1990 (EQU) 0.9 and 1.5";

    /// <summary>The findings.</summary>
    /// <param name="footings">The footings.</param>
    /// <param name="strength">The analysed rack; null where the method ends.</param>
    /// <param name="site">The site.</param>
    /// <param name="otherwise">What would hold in the place of the rack, where no footing under it does; begins with a full stop.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(
        Footings footings,
        RackStrength? strength,
        SiteBrief site,
        string otherwise = ""
    )
    {
        var soil = FootingGround.Of(site);
        IEnumerable<Finding> all =
            footings.Strength is { } blocks && strength is not null
                ? Checked(footings, blocks, strength, otherwise)
                : Beyond();
        if (strength?.Wind.IsKnown == false)
        {
            all = all.Select(finding => Plan(finding, "the wind speed is unknown"));
        }

        var ground = SoilFindings.Soil(site, soil);
        return
        [
            .. ground.Status == FindingStatus.Stop
                ? all.Select(finding => Plan(finding, "no pressure may be presumed for this ground"))
                : all,
            ground,
            SoilFindings.Water(soil, footings),
            .. PlaceFindings.Of(site, footings.Block),
            .. strength is null ? [] : (Finding[])[PlaceFindings.Slope(strength.Rack.Setting.Ground)],
        ];
    }

    private static Finding[] Checked(Footings footings, FootingStrength blocks, RackStrength strength, string otherwise)
    {
        var advice = blocks.Holds ? "" : Advice(FootingChoice.Least(strength, blocks.Soil, null, null), otherwise);
        return
        [
            Lift(blocks, advice),
            Turn(blocks, advice),
            Slide(blocks, advice),
            Press(blocks, advice),
            SoilFindings.Concrete(footings, blocks, strength),
            Stops(
                strength.Wind.StopsAtMPerS(gust =>
                    FootingStrength.Of(strength, blocks.Soil, blocks.Block, gust, footings.Form).Holds
                ),
                strength.Wind.BasicMPerS
            ),
        ];
    }

    /// <summary>The findings on footings under something else than a rack.</summary>
    /// <param name="blocks">The checked footings.</param>
    /// <param name="stopsMPerS">Basic wind speed up to which they hold [m/s].</param>
    /// <param name="basicMPerS">Basic wind speed that is checked [m/s].</param>
    /// <param name="advice">What would hold where they do not; empty where they do.</param>
    public static Finding[] Of(FootingStrength blocks, double stopsMPerS, double basicMPerS, string advice) =>
        [
            Lift(blocks, advice),
            Turn(blocks, advice),
            Slide(blocks, advice),
            Press(blocks, advice),
            Stops(stopsMPerS, basicMPerS),
        ];

    private static Finding Lift(FootingStrength blocks, string advice)
    {
        var (held, least) = (blocks.HeldKN, blocks.National.LeastWeightFactor);
        var holds = blocks.PullKN <= held;
        var drowned = least * blocks.DrownedKN;
        var water = blocks.Soil.WaterM switch
        {
            null => "nobody knows how high the water comes, so it is weighed as if it stood in water",
            { } deep when deep * 1000 >= blocks.Block.DepthMm => Invariant(
                $"with water up to the surface it would be {drowned:0.0} kN{(blocks.PullKN > drowned && holds ? ", which is too little: where water can stand in the pit, make it larger" : "")}"
            ),
            { } wet => Invariant($"what stands below the water at {wet:0.0} m is counted lighter"),
        };
        return Finding.AtMost(
            "ground/uplift",
            blocks.PullKN,
            held,
            "kN",
            Invariant(
                $"the footing of column {blocks.Pulling.Column} is pulled up with {blocks.PullKN:0.0} kN more than what stands on it weighs ({blocks.Pulling.Combination}); {least:0.##} of its weight holds {held:0.0} kN; {water}"
            ) + (holds ? "" : advice),
            "EN 1997-1:2004, 2.4.7.4 (UPL); EN 1990; friction of the ground left out"
        );
    }

    private static Finding Turn(FootingStrength blocks, string advice)
    {
        var (load, block, soil) = (blocks.Turning, blocks.Block, blocks.Soil);
        var broms = blocks.BromsDepthM() is { } depth
            ? Invariant(
                $" (Broms, {(soil.Class.Number == 5 ? "clay" : "sand")}, safety 2: {depth:0.00} m, and 0.3 m more for topsoil)"
            )
            : "";
        var weight =
            blocks.WeightShare < 10
                ? Invariant($"by its weight alone it is used to {blocks.WeightShare:0.00}")
                : "its weight alone does not hold it";
        return Finding.AtMost(
            "ground/overturning",
            blocks.TurningShare,
            1,
            "",
            Invariant(
                $"the footing of column {load.Column} carries {load.SideKN:0.0} kN sideways and {load.MomentKNm:0.0} kN m at the ground: to stand by its sides in {(soil.IsTested ? "" : $"soil of class {soil.Class.Number}, ")}{soil.Name}, it must go {blocks.NeededDepthM:0.00} m deep{broms}, and goes {block.DepthMm / 1000:0.00} m; {weight}"
            ) + (blocks.TurningShare <= 1 ? "" : advice),
            soil.IsTested ? Tested : Turning
        );
    }

    private static Finding Slide(FootingStrength blocks, string advice)
    {
        var load = blocks.Pushed;
        var says = Invariant(
            $"the side load of {load.SideKN:0.0} kN at column {load.Column} ({load.Combination}) against {blocks.SlideHeldKN:0.0} kN of base and sides"
        );
        const string Source = "EN 1997-1:2004, 6.5.3; IBC 2018, table 1806.2 and 1806.3";
        return blocks.SidesShare <= 1
            ? new(
                "ground/sliding",
                FindingStatus.Holds,
                $"the sides of the footing take the side load with the moment, as its depth is reckoned; by themselves: {says}",
                null,
                null,
                "",
                Source
            )
            : Finding.AtMost(
                "ground/sliding",
                blocks.SlidingShare,
                1,
                "",
                says + (blocks.SlidingShare <= 1 ? "" : advice),
                Source
            );
    }

    private static Finding Press(FootingStrength blocks, string advice)
    {
        var use = blocks.Bearing;
        var how =
            blocks.IsHeldBySides || blocks.WeightShare > 1
                ? "straight down: its sides have to take the moment"
                : "off its middle, for its weight takes the moment";
        var bears = use.IsTested
            ? Invariant($"{use.BearsKPa:0} kPa is the design resistance of {blocks.Soil.Name}")
            : Invariant(
                $"{use.BearsKPa:0} kPa may be put {(blocks.Soil.ReportKPa is null ? "untested " : "")}on {blocks.Soil.Name}"
            );
        return Finding.AtMost(
            "ground/bearing",
            use.PressureKPa,
            use.BearsKPa,
            "kPa",
            Invariant($"{use.PressureKPa:0} kPa under a footing, {how}; {bears}") + (use.UseShare <= 1 ? "" : advice),
            use.IsTested
                ? "EN 1997-1:2004, annex D and table A.5, design approach 2: loads 1.35 and 1.5, resistance divided by 1.4"
                : "IBC 2018, table 1806.2, loads without partial factors; EN 1997-1:2004, 6.5.2"
        );
    }

    private static Finding Stops(double stops, double basicMPerS)
    {
        var says =
            stops >= RackWind.MostMPerS ? Invariant($"the footings hold up to {RackWind.MostMPerS:0} m/s and more")
            : stops > 0 ? Invariant($"the footings hold up to {stops:0.0} m/s")
            : "the footings do not even hold in a calm";
        return Finding.Told(
            "ground/stops-at-wind",
            stops,
            basicMPerS,
            "m/s",
            $"{says}, the factors on wind and weights counted in it; wind speed as mean of ten minutes 10 m above open country",
            "the checks of the footings, with the wind raised until one fails"
        );
    }

    private static string Advice(FootingOption? least, string otherwise) =>
        least switch
        {
            null =>
                $". No block, beam or strip that is dug by hand holds: footings by an engineer, or another rack{otherwise}",
            { Form: FootingForm.Block } =>
                $". What would hold, of the same mix: blocks of {Footings.Says(least.Form, least.Block)}",
            _ =>
                $". Square blocks grow silly; what would hold: {Footings.Says(least.Form, least.Block)} (leave footingSide and footingDepth of the rack to choose)",
        };

    private static Finding Plan(Finding finding, string why) =>
        finding with
        {
            Status = FindingStatus.Unchecked,
            Says = $"{why}, so this is only a plan: {finding.Says}",
        };

    // No wind table goes there: an engineer's matter.
    private static IEnumerable<Finding> Beyond() =>
        new[]
        {
            "ground/uplift",
            "ground/overturning",
            "ground/sliding",
            "ground/bearing",
            "ground/concrete",
            "ground/column-hold",
            "ground/column-pull",
            "ground/stops-at-wind",
        }.Select(id => new Finding(
            id,
            FindingStatus.Unchecked,
            Invariant(
                $"not checked: the tilt is beyond the table of wind coefficients, which ends at {MonopitchCanopy.SteepestDeg:0} deg; have an engineer design the footings"
            ),
            null,
            null,
            "",
            "EN 1991-1-4:2005, table 7.6"
        ));
}
