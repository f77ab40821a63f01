using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The earthquake on the full tank, to follow with a pocket calculator.</summary>
internal static class StandQuakeWorking
{
    private const string Water = "EN 1998-4:2006, annex A";
    private const string Spectra = "EN 1998-1:2004, 3.2.2";

    /// <summary>The lines.</summary>
    /// <param name="strength">The checked stand.</param>
    public static IEnumerable<Line> Lines(StandStrength strength) => [.. Masses(strength), .. Forces(strength)];

    private static IEnumerable<Line> Masses(StandStrength strength)
    {
        var (quake, shake) = (strength.Quake, strength.Shakes[0]);
        var (tank, sloshing) = (shake.Tank, shake.Tank.Sloshing);
        var isRound = strength.Stand.Plan.Tank.IsRound;
        yield return new(
            "a_g S",
            "γ_I a_gR S",
            Invariant($"{quake.From}; S = {quake.Quake.Ground.SoilFactor:0.00}"),
            quake.ShakenRatio,
            "g",
            "steel/ground-type",
            Spectra
        );
        yield return new(
            "m_c/m",
            isRound ? "2 tanh L/(L (1.841² − 1))" : "0.264 tanh(3.16 H/b)/(H/b)",
            Invariant($"H = {tank.DepthM:0.00} m; the rest moves with the tank"),
            sloshing.SloshingShare,
            "",
            "steel/tank-sloshing",
            Water
        );
        yield return new(
            "T_c",
            isRound ? "2π/√((1.841 g/R) tanh L)" : "2π/√((3.16 g/b) tanh(3.16 H/b))",
            "",
            sloshing.SloshingS,
            "s",
            "steel/tank-sloshing",
            Water
        );
        yield return new(
            "K",
            "side load over movement at the platform",
            "frame analysis",
            tank.StiffnessNPerMm,
            "N/mm",
            "steel/skeleton-frame",
            "frame analysis"
        );
        yield return new(
            "T_i",
            "2π √((m_i + m_s)/K)",
            Invariant($"m_i = {tank.WaterKg * sloshing.RigidShare:0} kg, m_s = {tank.StructureKg:0} kg"),
            shake.Push.RigidS,
            "s",
            "steel/elevated-tank",
            Water
        );
    }

    private static IEnumerable<Line> Forces(StandStrength strength)
    {
        var (quake, shake) = (strength.Quake, strength.Shakes[0]);
        var (tank, push) = (shake.Tank, shake.Push);
        yield return new(
            "S_d",
            "2.5 a_g S/q on the plateau, less beyond T_C",
            Invariant($"q = {quake.Quake.BehaviourFactor:0.0}"),
            push.RigidRatio,
            "g",
            "steel/spectrum",
            Spectra
        );
        yield return new(
            "S_e",
            "elastic, 0.5 % of damping",
            Invariant($"T = {shake.Tank.Sloshing.SloshingS:0.00} s"),
            push.SloshingRatio,
            "g",
            "steel/spectrum",
            Spectra
        );
        yield return new(
            "V",
            "S_d (m_i + m_s) g + S_e m_c g",
            Invariant($"{push.RigidKN:0.00} + {push.SloshingKN:0.00}"),
            push.ShearKN,
            "kN",
            "steel/elevated-tank",
            Water
        );
        yield return new(
            "M",
            "S_d g [m_i (H_p + h_i*) + m_s H_p] + S_e g m_c (H_p + h_c*)",
            Invariant($"H_p = {tank.PlatformM:0.00} m"),
            push.MomentKNm,
            "kN m",
            "steel/elevated-tank",
            Water
        );
        var movedMm = push.ShearKN * 1000 / tank.StiffnessNPerMm;
        yield return new(
            "θ",
            "P q d_e/(V h), to 0.10 left out",
            Invariant($"d_e = {movedMm:0.0} mm"),
            ElevatedTank.DriftRatio(
                (tank.WaterKg + tank.StructureKg) * TankStand.GravityNPerKg / 1000,
                movedMm,
                quake.Quake.BehaviourFactor,
                push.ShearKN,
                tank.PlatformM
            ),
            "",
            "steel/elevated-tank",
            "EN 1998-1:2004, 4.4.2.2"
        );
    }
}
