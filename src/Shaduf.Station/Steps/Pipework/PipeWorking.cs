using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>How surge, and for comparison the old rule of friction, were worked out.</summary>
internal static class PipeWorking
{
    // A drive that ramps down in this time closes slowly; common practice, no source.
    private const double RampS = 10;

    // Hazen-Williams C of plastic, and of galvanised steel when new.
    private const double PlasticC = 150;
    private const double SteelC = 120;

    /// <summary>The sheets.</summary>
    /// <param name="design">The design so far.</param>
    /// <returns>Surge, and the comparison when the brief asks for it.</returns>
    public static IEnumerable<WorkingSheet> Show(Design design)
    {
        yield return Surge(design);
        if (design.Brief.Lift.ShowsHazenWilliams)
        {
            yield return HazenWilliamsBeside(design);
        }
    }

    private static WorkingSheet Surge(Design design)
    {
        var (lift, flow) = (design.Choice.Lift, design.ShownFlowM3PerH);
        var duty = MainDuty.Of(design.Brief, design.Survey, flow, design.Sizing.Hydraulics.Curve.ShutOffHeadM);
        var pipe = lift.Lay.Reaches.MaxBy(reach => duty.RiseM(reach.Pipe))!.Pipe;
        var (wave, speed) = (duty.WaveMPerS(pipe), Lift.SpeedMPerS(pipe, flow));
        var wall = Invariant(
            $"K {lift.Water.BulkModulusPa / 1e9:0.000} GPa, D {pipe.BoreMm:0.0} mm, e {(pipe.OuterMm - pipe.BoreMm) / 2:0.0} mm, E {pipe.ModulusGPa:0.##} GPa"
        );
        var (hardM, critS) = (WaterHammer.JoukowskyM(wave, speed), WaterHammer.CriticalS(lift.MainM, wave));
        var slowM = WaterHammer.RiseM(lift.MainM, wave, speed, RampS);
        return new(
            $"Surge in the main when the pump stops: {pipe.Name}",
            [
                Of("a", "√(K/ρ)/√(1 + K D/(E e))", wall, (wave, "m/s"), "Korteweg 1878, pipe free to move"),
                Of("ΔH", "a v/g", Invariant($"v {speed:0.000} m/s"), (hardM, "m"), "Joukowsky 1898"),
                Of("T_c", "2 L/a", Invariant($"L {lift.MainM:0.#} m"), (critS, "s"), "the wave there and back"),
                Of("ΔH_slow", "2 L v/(g t), where t > T_c", RampText, (slowM, "m"), "Michaud 1878"),
            ]
        );
    }

    private static string RampText => Invariant($"a drive that ramps down in t = {RampS:0} s");

    private static Line Of(
        string symbol,
        string formula,
        string numbers,
        (double Value, string Unit) result,
        string source
    ) => new(symbol, formula, numbers, result.Value, result.Unit, "water/water-hammer", source);

    private static WorkingSheet HazenWilliamsBeside(Design design)
    {
        var lift = design.Choice.Lift;
        return new(
            "Friction in the main by the old rule, beside the one designed by",
            [
                .. lift
                    .Lay.Reaches.Zip(lift.System.Runs.Skip(1))
                    .SelectMany(pair => Beside(pair.First.Pipe, pair.Second, lift, design.ShownFlowM3PerH / 3600)),
            ]
        );
    }

    private static Line[] Beside(PipeCard pipe, PipeRun run, Lift lift, double flowM3PerS)
    {
        var smooth = pipe.LosesStrengthWhenWarm ? PlasticC : SteelC;
        return
        [
            new(
                "h_f",
                "f (L/D) v²/(2g)",
                pipe.Name,
                DarcyWeisbach.Loss(run, flowM3PerS, lift.System.KinematicViscosityM2PerS).FrictionM,
                "m",
                "water/darcy-weisbach",
                "Darcy-Weisbach with Colebrook-White; designed by"
            ),
            new(
                "h_HW",
                "10.67 L Q^1.852/(C^1.852 D^4.8704)",
                Invariant($"{pipe.Name}, C {smooth:0}"),
                HazenWilliams.LossM(run.BoreM, run.LengthM, flowM3PerS, smooth),
                "m",
                "water/hazen-williams",
                "Williams and Hazen 1905; too little in small plastic pipe, for comparison only"
            ),
        ];
    }
}
