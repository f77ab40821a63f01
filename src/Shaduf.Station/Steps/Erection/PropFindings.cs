using Shaduf.Working;
using Shaduf.Workshop;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Finding on what carries a frame over its open pits, and its calculation.</summary>
internal static class PropFindings
{
    private const string Source =
        "statics; EN 1993-1-1:2005, 6.3.1; EN 1991-1-6:2005, table 3.1, from memory; 29 CFR 1926.651(j)(2); presumed pressure halved at the surface: judgement";

    /// <summary>The finding.</summary>
    /// <param name="props">The props.</param>
    public static Finding Of(Propping props)
    {
        var finding = new Finding(
            "build/props",
            props.Holds ? FindingStatus.Holds : FindingStatus.Stop,
            Says(props) + (props.Holds ? "" : props.Works.Advice),
            Math.Max(props.UseShare, props.TubeUseShare),
            1,
            "",
            Source
        );
        return props.Works.Wind.IsKnown
            ? finding
            : finding with
            {
                Status = FindingStatus.Unchecked,
                Says = $"the wind speed is unknown, so this is only a plan: {finding.Says}",
            };
    }

    private static string Says(Propping props)
    {
        var works = props.Works;
        return Invariant(
                $"until the concrete holds, {props.Count} props carry one frame of {works.FrameKg:0} kg, {props.ASide} at each end of each {props.TubeRole}: {props.MostAlongKN:0.0} kN along the hardest pressed, by the weight, {GuyRope.UpKN(works.RopeKN, Erection.RopeDeg):0.0} kN down of each rope that pulls, ropes taken tight, and {works.PressKN:0.0} kN of wind from above (in {works.StageMPerS:0.0} m/s; {works.PressAtStopKN:0.0} kN in the {Erection.StopsMPerS.Ladders:0} m/s at which nobody is on a ladder). A tube of {Propping.TubeMm:0.0} x {Propping.TubeWallMm:0.0} mm, {props.Worst.Prop.LengthMm / 1000:0.00} m long, is used to {props.UseShare:0.00} against buckling, the {props.TubeRole} on it to {props.TubeUseShare:0.00}; boards of {props.BoardMm:0} x {props.BoardMm:0} mm put {props.PressureKPa:0} of {props.SurfaceKPa:0} kPa on the ground; a prop leans up to {props.LeanDeg:0} of {Propping.MostLeanDeg:0} deg, its foot {PropPlaces.ClearOfPitMm:0} mm and more from the pit"
            )
            + (
                works.LiftKN >= 0.05
                    ? Invariant(
                        $"; the same wind may lift {works.LiftKN:0.0} kN more than the frame weighs, which the ropes hold down"
                    )
                    : "; the same wind does not lift the frame off them"
            );
    }

    /// <summary>The calculation.</summary>
    /// <param name="props">The props.</param>
    public static IEnumerable<Line> Show(Propping props) => [.. Carried(props), .. Under(props)];

    private static IEnumerable<Line> Carried(Propping props)
    {
        var (works, worst) = (props.Works, props.Worst);
        const string Buckling = "steel/flexural-buckling";
        return
        [
            new(
                "W",
                "c A q_p of the bare frame from above",
                Invariant(
                    $"{Erection.SquareShare * Erection.DragCoefficient:0.0} · {works.Above.DragM2 / Erection.DragCoefficient:0.00} m2"
                ),
                works.PressKN,
                "kN",
                "station/propping",
                "judgement: half as hard square to the wind as along it"
            ),
            new(
                "V",
                "1.35 (G + ropes taken tight) + 1.5 W on the worst pair, and the ropes of one side that pull",
                Invariant(
                    $"G = {props.WeightKN:0.00} kN; {props.PairShare:0.00} of all on the pair; {4 * works.RopesASide} ropes of {Propping.TightKN:0.0} kN; the more pressed end"
                ),
                worst.UprightKN,
                "kN",
                "station/propping",
                "statics; EN 1990:2002, equation 6.10"
            ),
            new(
                "N",
                "V/(n cos β)",
                Invariant($"n = {props.ASide}, β = {worst.Prop.LeanDeg:0.0} deg"),
                props.MostAlongKN,
                "kN",
                "station/propping",
                "statics"
            ),
            new(
                "N_b",
                "χ A f_y/γ_M1 of one prop",
                Invariant(
                    $"tube {Propping.TubeMm:0.0} x {Propping.TubeWallMm:0.0} mm with its wall a tenth thin, unmarked steel, pinned; {worst.Prop.LengthMm:0} mm, relative slenderness {Propping.SlendernessRatio(worst.Prop):0.00}"
                ),
                Propping.ResistanceKN(worst.Prop),
                "kN",
                Buckling,
                "EN 1993-1-1:2005, equations 6.47 to 6.50"
            ),
        ];
    }

    private static IEnumerable<Line> Under(Propping props) =>
        [
            new(
                "p",
                "V_k/(n b²) under a board",
                Invariant(
                    $"{props.BoardKN:0.00} kN without factors, b = {props.BoardMm:0} mm; allowed {props.SurfaceKPa:0.0} kPa"
                ),
                props.PressureKPa,
                "kPa",
                "station/propping",
                "half the presumed pressure: judgement"
            ),
            new(
                "σ/f_y",
                "(M/W_el + H/A)/f_y of the tube on the props",
                Invariant($"greatest moment {props.MostMomentKNm:0.00} kNm, H = V tan β"),
                props.TubeUseShare,
                "",
                "station/propping",
                "EN 1993-1-1:2005, equation 6.1"
            ),
            new(
                "H",
                "V tan β at the feet of one end",
                Invariant($"{props.StakesASide} stakes of {Propping.StakeKN:0.0} kN"),
                props.PushKN,
                "kN",
                "station/propping",
                "statics; stakes from memory"
            ),
        ];
}
