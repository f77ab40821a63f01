using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The calculation of the rack, to follow with a pocket calculator.</summary>
internal static class RackWorking
{
    private const string Canopy = "EN 1991-1-4:2005, 7.3, table 7.6";

    /// <summary>The sheets: wind, then the governing check of each kind of member, then that of the welds.</summary>
    /// <param name="choice">The rack.</param>
    /// <returns>The sheets; none where the method ends.</returns>
    public static IEnumerable<WorkingSheet> Show(RackChoice choice)
    {
        if (choice.Taken.Strength is not { } strength)
        {
            yield break;
        }

        yield return new("Wind on the rack", [.. Wind(strength)]);
        foreach (var (held, use) in strength.Governing(member => member.Role))
        {
            var member = strength.Rack.Skeleton.Members[use.Member];
            yield return new(
                Invariant(
                    $"{member.Role} {use.Member + 1} {member.Mark}, {Place(use)}: {strength.Combinations.Strength[use.Combination].Name}{held.HeldSays}"
                ),
                Lines(held, use, member)
            );
        }

        var weld = strength.BothDepths.SelectMany(each => each.Joints).MaxBy(use => use.RequiredLegMm)!;
        if (JointUse.Group(strength.Rack.Skeleton, weld.Joint, strength.Rules) is { } group)
        {
            var legMm = strength.Rack.Skeleton.Joints[weld.Joint].Weld!.LegMm;
            yield return new(
                Invariant(
                    $"Weld '{weld.Name}', leg {legMm:0.0} mm: {strength.Combinations.Strength[weld.Combination].Name}"
                ),
                group.Lines(weld.Forces, strength.Rules.Grade, FilletWeld.ThroatMm(legMm), strength.Rules.Factors)
            );
        }

        foreach (var sheet in RackJointFindings.Show(strength))
        {
            yield return sheet;
        }
    }

    private static string Place(MemberUse use) =>
        use.Lengths is null
            ? Invariant($"{use.AtMm / 1000:0.00} m from its start")
            : "the whole member against buckling";

    private static IReadOnlyList<Line> Lines(RackStrength strength, MemberUse use, Member member) =>
        use.Lengths is { } lengths
            ? MemberBuckling.Lines(
                strength.Rules.Section(member),
                strength.Rules.Grade,
                use.Forces,
                lengths,
                MemberRules.Moments,
                strength.Rules.Factors
            )
            : CrossSectionCheck.Lines(
                strength.Rules.Section(member),
                strength.Rules.Grade,
                use.Forces,
                strength.Rules.Factors
            );

    private static IEnumerable<Line> Wind(RackStrength strength)
    {
        var (wind, rack, force) = (strength.Wind, strength.Rack, strength.Canopy.Force);
        var areaM2 = rack.Size.LengthMm * rack.Size.DepthMm * 1e-6;
        var exposure = WindPressure.ExposureFactor(wind.Terrain, wind.HeightM, wind.HillFactor);
        yield return new(
            "v_b",
            "ten-minute mean, 50 years",
            wind.From,
            wind.BasicMPerS,
            "m/s",
            "steel/wind-averaging",
            "EN 1991-1-4:2005, 4.2"
        );
        yield return new(
            "c_e",
            "(1 + 7 I_v(z)) (c_r(z) c_0)²",
            Invariant($"category {wind.Terrain.Name}, z = {wind.HeightM:0.00} m, c_0 = {wind.HillFactor:0.00}"),
            exposure,
            "",
            "steel/wind-pressure",
            "EN 1991-1-4:2005, equation 4.8"
        );
        yield return new(
            "q_p",
            "c_e ρ v_b²/2",
            Invariant($"{exposure:0.000} · {wind.AirKgPerM3:0.00} · {wind.BasicMPerS:0.0}²/2000"),
            wind.PeakKNPerM2,
            "kN/m2",
            "steel/wind-pressure",
            "EN 1991-1-4:2005, equation 4.8"
        );
        foreach (
            var (symbol, name, coefficient) in new[]
            {
                ("F_down", "down", force.DownCoefficient),
                ("F_up", "up", force.UpCoefficient),
            }
        )
        {
            yield return new(
                symbol,
                "c_f q_p b d', square to the plane, at d'/4 from the windward edge",
                Invariant(
                    $"{coefficient:0.00} · {wind.PeakKNPerM2:0.000} · {rack.Size.LengthMm / 1000:0.00} · {rack.Size.DepthMm / 1000:0.00} ({name}, tilt {rack.Setting.TiltDeg:0.#} deg)"
                ),
                coefficient * wind.PeakKNPerM2 * areaM2,
                "kN",
                "steel/monopitch-canopy",
                Canopy
            );
        }

        yield return new(
            "G",
            "(steel + modules) g",
            Invariant($"({rack.Steel.MassKg:0} + {rack.ModuleMassKg:0}) · 9.81/1000"),
            (rack.Steel.MassKg + rack.ModuleMassKg) * 9.81 / 1000,
            "kN",
            "steel/skeleton-frame",
            "EN 1991-1-1:2002"
        );
    }
}
