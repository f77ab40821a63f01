using Shaduf.Steel;
using Shaduf.Working;
using Shaduf.Workshop;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The calculation of ropes and lifting.</summary>
internal static class ErectionWorking
{
    private const string Ropes = "workshop/guy-rope";

    /// <summary>The sheet.</summary>
    /// <param name="erection">The works.</param>
    /// <returns>The sheet.</returns>
    public static WorkingSheet Show(Erection erection) =>
        new(
            "Before the concrete sets: ropes, props and lifting",
            [.. Wind(erection), .. Pulls(erection), .. PropFindings.Show(erection.Props)]
        );

    private static IEnumerable<Line> Wind(Erection erection)
    {
        var drag = erection.Worst;
        return
        [
            new(
                "v",
                "v_b c_prob, 20 m/s at least",
                Invariant($"{erection.Wind.BasicMPerS:0.0} · {WindPressure.ReturnFactor(Erection.StageYears):0.0000}"),
                erection.StageMPerS,
                "m/s",
                "steel/wind-pressure",
                "EN 1991-1-4:2005, 4.2(2); EN 1991-1-6:2005, table 3.1, from memory"
            ),
            new(
                "q_p",
                "c_e ρ v²/2",
                Invariant($"{erection.Wind.HeightM:0.00} m, category {erection.Wind.Terrain.Name}"),
                erection.StageKNPerM2,
                "kN/m2",
                "steel/wind-pressure",
                "EN 1991-1-4:2005, 4.5"
            ),
            new(
                "F",
                "c A q_p of the bare frame",
                Invariant(
                    $"2.0 · {drag.DragM2 / 2:0.00} m2; across the row {erection.Across.DragM2 / 2:0.00}, along it {erection.Along.DragM2 / 2:0.00} m2"
                ),
                erection.WindKN,
                "kN",
                Ropes,
                "coefficient 2.0 of sharp edges, EN 1991-1-4:2005, 7.7"
            ),
        ];
    }

    private static IEnumerable<Line> Pulls(Erection erection) =>
        [
            new(
                "U",
                "1.5 W - 0.9 G, lift that the ropes hold down, 0 at least",
                Invariant($"W = {erection.PressKN:0.00} kN up, G = {erection.Props.WeightKN:0.00} kN"),
                erection.LiftKN,
                "kN",
                "station/propping",
                "EN 1990:2002, table A1.2(A), 1.5 and 0.9"
            ),
            new(
                "T",
                "(1.5 F h_F/(h_g cos θ) + U/(4 sin θ))/n",
                Invariant(
                    $"h_F = {erection.Worst.HeightM:0.00} m, h_g = {erection.TiedM:0.00} m, θ = {Erection.RopeDeg:0} deg, n = {erection.RopesASide}"
                ),
                erection.RopeKN,
                "kN",
                Ropes,
                "statics"
            ),
            new(
                "V",
                "T sin θ at each anchor",
                "",
                GuyRope.UpKN(erection.RopeKN, Erection.RopeDeg),
                "kN",
                Ropes,
                "statics"
            ),
            new(
                "S",
                "W/(2 sin 60°), four legs",
                Invariant($"{erection.FrameKg:0} kg"),
                erection.SlingKN,
                "kN",
                "workshop/sling",
                "statics; two counted legs"
            ),
        ];
}
