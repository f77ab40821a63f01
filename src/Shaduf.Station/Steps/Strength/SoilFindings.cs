using Shaduf.Ground;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the ground and the concrete in it.</summary>
internal static class SoilFindings
{
    // Clay weaker than that is an engineer's; water nearer to the surface stands in every pit: judgement, no source.
    private const double WeakestClayKPa = 20;
    private const double StandingM = 0.3;
    private const string HandedOver = "swelling, sinking and made ground is handed over; practice of building in it";

    /// <summary>What the ground is, how that was found out, and what it asks for.</summary>
    /// <param name="site">The site.</param>
    /// <param name="ground">The ground.</param>
    /// <returns>The finding.</returns>
    public static Finding Soil(SiteBrief site, FootingGround ground) =>
        Refused(site.Soil, ground) is { } why
            ? new("ground/soil", FindingStatus.Stop, why, null, null, "", HandedOver)
            : new(
                "ground/soil",
                site.Soil is null or SoilKind.Rock || ground.IsFelt ? FindingStatus.Look : FindingStatus.Holds,
                Says(site.Soil, ground),
                null,
                null,
                "",
                "IBC 2018, table 1806.2; field tests: common practice"
            );

    /// <summary>How high the water comes.</summary>
    /// <param name="ground">The ground.</param>
    /// <param name="footings">The footings.</param>
    /// <returns>The finding.</returns>
    public static Finding Water(FootingGround ground, Footings footings)
    {
        var baseM = footings.Block.DepthMm / 1000;
        var (status, says) = ground.WaterM switch
        {
            null => (
                FindingStatus.Look,
                "how high the water comes in the wet season is unknown: the concrete is weighed as if it stood in water. Dig one pit at the end of the rains, leave it for a day and look; ask the neighbours how high their wells stand"
            ),
            < StandingM => (
                FindingStatus.Stop,
                "water stands at the surface: no pit stays open and no concrete sets well in it. Drain the place, build elsewhere, or have an engineer design the footings"
            ),
            { } deep when deep < baseM => (
                FindingStatus.Look,
                Invariant(
                    $"water comes up to {deep:0.0} m below the ground, and the footings go down to {baseM:0.00} m: cast them in the dry season, keep the pit pumped out until the concrete has set, and shore its sides; the concrete below the water is weighed lighter"
                )
            ),
            { } deep => (
                FindingStatus.Holds,
                Invariant($"water stays {deep - baseM:0.0} m below the footings, at {deep:0.0} m below the ground")
            ),
        };
        return new(
            "ground/water",
            status,
            says,
            ground.WaterM,
            ground.WaterM is null ? null : baseM,
            ground.WaterM is null ? "" : "m",
            "buoyancy, EN 1997-1:2004, 2.4.7.4; standing water: judgement, no source"
        );
    }

    /// <summary>Whether the concrete bears what column and ground do to it without bars.</summary>
    /// <param name="footings">The footings.</param>
    /// <param name="blocks">Their check.</param>
    /// <param name="strength">The analysed rack.</param>
    /// <returns>The finding.</returns>
    public static Finding Concrete(Footings footings, FootingStrength blocks, RackStrength strength)
    {
        var check = FootingConcrete.Of(footings, blocks, strength);
        var needsBars = check.NeededDepthMm > footings.Block.DepthMm;
        var thin = check.NeededUnderMm > Rack.CoverMm;
        var says = Invariant(
            $"concrete of {footings.CylinderNPerMm2:0} N/mm2 ({footings.ConcreteName}): pulling a column out uses {check.PullShare:0.00} of what the concrete round it bears without bars; pressed down it needs {check.NeededUnderMm:0} mm of concrete under its foot, and has {Rack.CoverMm:0} mm{(thin ? Invariant($": dig {Math.Ceiling((check.NeededUnderMm - Rack.CoverMm) / 10) * 10:0} mm deeper right under it") : "")}; the footing reaches {check.ProjectionMm:0} mm beyond the column, for which {check.NeededDepthMm:0} mm of depth are needed without bars, and is {footings.Block.DepthMm:0} mm deep"
        );
        var bars = footings.Form switch
        {
            FootingForm.Block when !needsBars => "",
            FootingForm.Beam when !needsBars && footings.Block.PlinthCount == 1 => "",
            _ =>
                ". It bends between and beyond its columns: an engineer designs bars for it before it is cast; they are not in the bill",
        };
        var finding = Finding.AtMost(
            "ground/concrete",
            check.PullShare,
            1,
            "",
            says + bars,
            "EN 1992-1-1:2004, 12.6.3 and 12.9.3, from memory"
        );
        return (thin || bars.Length > 0) && finding.Status == FindingStatus.Holds
            ? finding with
            {
                Status = FindingStatus.Look,
            }
            : finding;
    }

    /// <summary>Why ground is handed over; null where it is not.</summary>
    /// <param name="soil">Kind of soil; null when unknown.</param>
    /// <param name="ground">What is known of it.</param>
    internal static string? Refused(SoilKind? soil, FootingGround ground) =>
        soil switch
        {
            SoilKind.Fill =>
                "loose fill carries no footing: dig down to grown ground, or have a geotechnical design made",
            SoilKind.ExpansiveClay =>
                "swelling clay lifts light footings out: a geotechnical design is needed. Usual there: no more than about 50 kPa, at least 1.5 m deep and 0.15 to 0.30 m below the cracks, all of it taken out where it is only 1 to 1.5 m thick, sand between concrete and clay, no friction of the sides counted",
            SoilKind.Peat =>
                "peat and organic soil sink under any load: take them out down to firm ground, or have a geotechnical design made",
            SoilKind.Loess => "loess collapses when it is wetted: a geotechnical design is needed",
            _ when ground.ClayKPa < WeakestClayKPa => Invariant(
                $"clay of {ground.ClayKPa:0} kPa is too soft for these footings: below {WeakestClayKPa:0} kPa a geotechnical design is needed"
            ),
            _ => null,
        };

    private static string Says(SoilKind? soil, FootingGround ground) =>
        soil switch
        {
            SoilKind.Rock =>
                "rock: clear it of all that is loose and weathered and cast on the clean face. Where no pit of the drawn depth can be broken out, the sides do not hold a block: bars drilled and grouted into sound rock, by an engineer's design",
            null =>
                $"the soil is unknown: taken as the weakest that may be presumed, {ground.Class.Name}. Dig a pit to half a metre below the footings. Roll a wet ball: a ribbon longer than 50 mm is clay; what falls apart is sand or silt. In sand push a pointed picket of 50 mm with all your weight, in clay a thumb. Ten millilitres of dry fines that swell to more than fifteen in a jar of water are swelling clay: stop",
            _ when ground.IsTested =>
                $"{ground.Name}{(ground.IsFelt ? ": felt, not tested, so the presumed values are kept to as well" : "")}",
            _ when ground.ReportKPa is not null => ground.Name,
            _ => Invariant(
                $"{ground.Name}: values that may be presumed without a test. Make sure in the pit at the depth of the base: a pointed picket of 50 mm pushed into sand with all your weight goes in less than {FootingGround.LooseMm:0} mm; a thumb dents clay with a firm push only; no roots, rubbish, black cracked clay or standing water"
            ),
        };
}
