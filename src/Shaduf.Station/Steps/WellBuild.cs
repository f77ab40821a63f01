using Shaduf.Ground;
using Shaduf.Money;
using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A set of legs over the borehole.</summary>
/// <param name="HeightM">Height of the head above ground [m].</param>
/// <param name="LegM">Length of a leg [m].</param>
/// <param name="LegKN">Force along a leg under the hoist's load [kN].</param>
/// <param name="ThrustKN">Pull in the tie of each foot [kN].</param>
/// <param name="Pipe">Steel pipe for the legs; null when no card is strong enough.</param>
/// <param name="LegLimitKN">What such a leg carries [kN]; 0 without pipe.</param>
public sealed record TripodBuild(
    double HeightM,
    double LegM,
    double LegKN,
    double ThrustKN,
    PipeCard? Pipe,
    double LegLimitKN
);

/// <summary>A slab at the source: round the wellhead, or under a surface pump.</summary>
/// <param name="SideM">Side of the square [m].</param>
/// <param name="ThickM">Thickness [m].</param>
/// <param name="Mix">Concrete by volume.</param>
/// <param name="Quantities">What it takes, waste included.</param>
public sealed record ApronBuild(double SideM, double ThickM, string Mix, MixQuantities Quantities)
{
    private const double WasteShare = 0.05;

    /// <summary>Concrete [m³].</summary>
    public double ConcreteM3 => SideM * SideM * ThickM;

    /// <summary>The house's slab: 0.1 m thick, 0.6 m out at least, here 2.4 m square.</summary>
    public static ApronBuild House { get; } = Of(2.4, 0.1, "1:2:4");

    /// <summary>A plinth under a surface pump: heavy enough to hold it still; judgement, no source.</summary>
    public static ApronBuild Plinth { get; } = Of(1.0, 0.3, "1:2:4");

    private static ApronBuild Of(double sideM, double thickM, string mix) =>
        new(
            sideM,
            thickM,
            mix,
            NominalMix
                .Named(mix)
                .PerM3(NominalMix.UsualDryVolumeFactor, NominalMix.UsualCementKgPerM3)
                .Times(sideM * sideM * thickM, WasteShare)
        );
}

/// <summary>The borehole's equipment as it is built: what hangs, what lifts it, what stands on top.</summary>
/// <param name="Well">The borehole.</param>
/// <param name="Cooling">Cooling of the motor.</param>
/// <param name="Hung">Masses.</param>
/// <param name="RunningKN">Pull at the top of the riser while the pump runs [kN].</param>
/// <param name="StressMPa">Stress in the wall, or in the root of the thread [MPa]; null when the wall is too thin for a thread.</param>
/// <param name="AllowedMPa">Stress that is allowed [MPa].</param>
/// <param name="StretchM">Stretch when hung [m].</param>
/// <param name="YearsStretchM">Stretch after years under load [m].</param>
/// <param name="JointCount">Joints of the riser.</param>
/// <param name="ClipCount">Clips of the cable.</param>
/// <param name="HoistT">Hoist to bring [t]; null when none of the usual ones is enough.</param>
/// <param name="RopeKN">Breaking load of the safety rope, with knots [kN].</param>
/// <param name="Tripod">The legs.</param>
/// <param name="Apron">The slab.</param>
public sealed record WellBuild(
    Well Well,
    Cooling Cooling,
    HungMass Hung,
    double RunningKN,
    double? StressMPa,
    double AllowedMPa,
    double StretchM,
    double YearsStretchM,
    int JointCount,
    int ClipCount,
    double? HoistT,
    double RopeKN,
    TripodBuild Tripod,
    ApronBuild Apron
) : SourceBuild
{
    /// <summary>Cable clips stand so far apart [m]; makers' instructions.</summary>
    public const double ClipM = 3;

    private const double BarM = 6;
    private const double PolyethyleneLimitMPa = 5;
    private const double SteelLimitMPa = 195.0 / 3;

    // Taper threads are cut a little under the pipe's own diameter: at most 1.3 % from DN 25 to DN 100.
    private const double ThreadMajorShare = 0.987;
    private const double YearsModulusGPa = 0.2;
    private const double LeanDeg = 20;
    private const double BucklingFactor = 3;

    // Long enough for the legs of a usual tripod; a steel riser hangs in bars.
    private const double CoilHeightM = 3.5;
    private const double HookRoomM = 1.5;
    private static readonly double[] s_hoistsT = [0.5, 1, 2, 3, 5];

    /// <summary>Works out the equipment.</summary>
    /// <param name="ground">All that was settled before the choice.</param>
    /// <param name="well">The well.</param>
    /// <param name="sizing">The choice.</param>
    /// <param name="electrics">Cables.</param>
    /// <returns>The equipment.</returns>
    public static WellBuild Of(SizingGround ground, Well well, Sizing sizing, Electrics electrics)
    {
        var (choice, survey) = (sizing.Choice, ground.Survey);
        var riser = choice.Lift.Foot.Card;
        var isPlastic = riser.LosesStrengthWhenWarm;
        var hung = HungMass.Of(choice, electrics);
        var runningKN = HangingRiser.PullKN(
            hung.TotalKg,
            WellheadBar(choice.Lift, well, sizing.Table.FullFlowM3PerH),
            riser.BoreMm
        );
        var joints = isPlastic ? 2 : (int)Math.Ceiling(choice.Lift.Foot.LengthM / BarM) + 1;
        var hoistKN = HangingRiser.HoistKN(hung.TotalKg);
        return new(
            well,
            Cooling.Of(survey["casing"], choice.Pump, sizing.Table),
            hung,
            runningKN,
            StressOf(riser, runningKN),
            AllowedOf(riser, survey),
            StretchOf(choice.Lift, hung, runningKN, riser.ModulusGPa),
            StretchOf(choice.Lift, hung, runningKN, isPlastic ? YearsModulusGPa : riser.ModulusGPa),
            joints,
            (int)Math.Ceiling(choice.Lift.Foot.LengthM / ClipM) + joints,
            s_hoistsT.Cast<double?>().FirstOrDefault(t => t * Gravity.MPerS2 >= hoistKN),
            HangingRiser.RopeKN(hung.TotalKg, 0.5),
            TripodOf(hoistKN, isPlastic ? CoilHeightM : BarM + HookRoomM, ground.Shelf),
            ApronBuild.House
        );
    }

    /// <summary>How the pump is lowered, step by step.</summary>
    /// <param name="choice">What was chosen.</param>
    /// <returns>The steps in order.</returns>
    public IReadOnlyList<string> LoweringSteps(Choice choice) => Station.LoweringSteps.Of(this, choice);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Findings(Design design) =>
        [.. WellFindings.Of(design, this), .. WellBuildFindings.Of(this, design.Choice)];

    /// <inheritdoc/>
    public override IEnumerable<WorkingSheet> Show(Choice choice) => [Hung.Show(choice)];

    /// <inheritdoc/>
    public override string SettingLabour => "lower";

    /// <inheritdoc/>
    public override IEnumerable<QuantityLine> Lines(Choice choice) => WellTakeoff.Of(choice, this);

    // What the main asks for at the wellhead while the pump runs.
    private static double WellheadBar(Lift lift, Well well, double flowM3PerH)
    {
        var head = lift.System.Breakdown(flowM3PerH / 3600);
        var aboveM = head.TotalM - well.RestDryM - head.DrawdownM - head.Runs[0].TotalM;
        return PressureClass.PressureBar(Math.Max(0, aboveM), lift.Water.DensityKgPerM3);
    }

    /// <summary>Whether a riser carries itself, its water and its pump, as far as that is known before the choice.</summary>
    /// <param name="riser">The riser.</param>
    /// <param name="pumpKg">Mass of pump and motor [kg].</param>
    /// <param name="ground">What is settled before the choice.</param>
    /// <param name="well">The well.</param>
    /// <returns>True when it does.</returns>
    internal static bool Carries(PipeCard riser, double pumpKg, SizingGround ground, Well well)
    {
        var aboveM = Lift.TopM(ground.Brief.Lift) - ground.Brief.Lift.Route[0].ElevationM + FrictionAllowanceM;
        var perMetreKg = riser.MassKgPerM + HangingRiser.WaterKgPerM(riser.BoreMm, 1000) + HungMass.CableAndRopeKgPerM;
        var pullKN = HangingRiser.PullKN(
            pumpKg + (well.PumpSettingM * perMetreKg),
            PressureClass.PressureBar(Math.Max(0, aboveM), 1000),
            riser.BoreMm
        );
        return StressOf(riser, pullKN) <= AllowedOf(riser, ground.Survey);
    }

    // Before main and flow are known; judgement, no source.
    private const double FrictionAllowanceM = 10;

    private static double? StressOf(PipeCard riser, double pullKN)
    {
        if (riser.LosesStrengthWhenWarm)
        {
            return pullKN * 1000 / HangingRiser.WallMm2(riser.OuterMm, riser.BoreMm);
        }

        try
        {
            return pullKN * 1000 / HangingRiser.ThreadRootMm2(riser.OuterMm * ThreadMajorShare, riser.BoreMm);
        }
        catch (ArgumentOutOfRangeException)
        {
            // The thread would cut through the wall.
            return null;
        }
    }

    private static double AllowedOf(PipeCard riser, Survey survey) =>
        riser.LosesStrengthWhenWarm
            ? PolyethyleneLimitMPa * PressureClass.PolyethyleneFactor(Math.Clamp(survey["pipe-temperature"], 20, 40))
            : SteelLimitMPa;

    private static double StretchOf(Lift lift, HungMass hung, double runningKN, double modulusGPa)
    {
        var spreadKN = (hung.PipeKg + hung.CableKg + hung.RopeKg) * Gravity.MPerS2 / 1000;
        return HangingRiser.StretchM(
            Math.Max(0, runningKN - spreadKN),
            spreadKN,
            lift.Foot.LengthM,
            HangingRiser.WallMm2(lift.Foot.Card.OuterMm, lift.Foot.Card.BoreMm),
            modulusGPa
        );
    }

    private static TripodBuild TripodOf(double hoistKN, double heightM, CardShelf shelf)
    {
        var legM = heightM / Math.Cos(LeanDeg * Math.PI / 180);
        var legKN = Water.Tripod.LegKN(hoistKN, LeanDeg);
        var pipes = shelf
            .All<PipeCard>()
            .Where(pipe => !pipe.LosesStrengthWhenWarm)
            .Select(pipe =>
                (Pipe: pipe, LimitKN: Water.Tripod.BucklingKN(pipe.OuterMm, pipe.BoreMm, pipe.ModulusGPa, legM))
            )
            .Select(each => (each.Pipe, LimitKN: each.LimitKN / BucklingFactor))
            .OrderBy(each => each.LimitKN);
        var (chosen, limitKN) = pipes.FirstOrDefault(each => each.LimitKN >= legKN);
        return new(heightM, legM, legKN, Water.Tripod.ThrustKN(hoistKN, LeanDeg), chosen, limitKN);
    }
}
