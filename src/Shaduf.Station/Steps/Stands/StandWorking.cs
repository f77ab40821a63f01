using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The calculation of the stand, to follow with a pocket calculator.</summary>
internal static class StandWorking
{
    private const double Gravity = TankStand.GravityNPerKg;

    /// <summary>The sheets: weights, wind, earthquake, legs by hand, the governing check of each kind of member, feet, blocks.</summary>
    /// <param name="stand">The stand; null where none is designed here.</param>
    /// <returns>The sheets.</returns>
    public static IEnumerable<WorkingSheet> Show(StandDesign? stand)
    {
        if (stand is null)
        {
            yield break;
        }

        var strength = stand.Strength;
        yield return new("Stand: weights and wind", [.. Weights(strength), .. Wind(strength)]);
        if (!strength.Quake.IsCalm)
        {
            yield return new("Stand: earthquake on the full tank", [.. StandQuakeWorking.Lines(strength)]);
        }

        yield return new("Stand: legs by hand, wind on the diagonal, tank empty", [.. LegsByHand(strength)]);
        foreach (var use in Governing(strength))
        {
            var member = strength.Stand.Skeleton.Members[use.Member];
            yield return new(
                Invariant(
                    $"Stand, {member.Role} {use.Member + 1} {member.Mark}, {(use.Lengths is null ? Invariant($"{use.AtMm / 1000:0.00} m from its start") : "the whole member against buckling")}: {strength.Combinations.Strength[use.Combination].Name}"
                ),
                Lines(strength, use, member)
            );
        }

        foreach (var sheet in StandJointFindings.Show(strength))
        {
            yield return sheet;
        }

        yield return new("Stand: base plate and bolts", Foot(strength.Feet));
        foreach (var sheet in FootingWorking.Show(stand.Footings))
        {
            yield return sheet with
            {
                Title = $"Stand: {sheet.Title}",
                Lines =
                [
                    .. sheet.Lines.Select(line =>
                        line with
                        {
                            Numbers = line.Numbers.Replace("column ", "leg ", StringComparison.Ordinal),
                        }
                    ),
                ],
            };
        }
    }

    /// <summary>The member of each role that is used most.</summary>
    /// <param name="strength">The checked stand.</param>
    public static IEnumerable<MemberUse> Governing(StandStrength strength) =>
        strength
            .Members.GroupBy(use => strength.Stand.Skeleton.Members[use.Member].Role)
            .Select(alike => alike.MaxBy(use => use.Result.UtilisationShare)!);

    private static IReadOnlyList<Line> Lines(StandStrength strength, MemberUse use, Member member) =>
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

    private static IEnumerable<Line> Weights(StandStrength strength)
    {
        var (stand, tank) = (strength.Stand, strength.Stand.Plan.Tank);
        yield return new(
            "G",
            "(steel + empty tank) g",
            Invariant($"({stand.MassKg:0} + {tank.EmptyKg:0}) · {Gravity:0.000}/1000"),
            (stand.MassKg + tank.EmptyKg) * Gravity / 1000,
            "kN",
            "steel/skeleton-frame",
            "EN 1991-1-1:2002"
        );
        yield return new(
            "W",
            "ρ V g, up to the overflow",
            Invariant($"998.2 · {tank.WaterM3:0.00} · {Gravity:0.000}/1000"),
            tank.WaterKg * Gravity / 1000,
            "kN",
            "steel/skeleton-frame",
            "EN 1991-1-1:2002"
        );
        yield return new(
            "p",
            "(W + tank)/A_bottom",
            Invariant($"A = {tank.BottomMm2 * 1e-6:0.00} m2; joists {stand.Plan.PitchMm:0} mm apart"),
            tank.PressureKPa,
            "kN/m2",
            "steel/floor-beam",
            "statics"
        );
    }

    private static IEnumerable<Line> Wind(StandStrength strength)
    {
        var (wind, drag, tank) = (strength.Wind, strength.Drag, strength.Stand.Plan.Tank);
        var face = drag.Faces.AlongY;
        var platform = drag.TowerShare * wind.PeakKNPerM2;
        yield return new(
            "q_p",
            "c_e ρ v_b²/2 at the tank's top",
            Invariant($"v_b = {wind.BasicMPerS:0.0} m/s, category {wind.Terrain.Name}, z = {wind.HeightM:0.00} m"),
            wind.PeakKNPerM2,
            "kN/m2",
            "steel/wind-pressure",
            "EN 1991-1-4:2005, equation 4.8"
        );
        yield return new(
            "F_tank",
            "c_f q_p D H",
            Invariant(
                $"{drag.TankCoefficient:0.00} · {wind.PeakKNPerM2:0.000} · {tank.WidthMm / 1000:0.00} · {tank.HeightMm / 1000:0.00}"
            ),
            drag.TankCoefficient * wind.PeakKNPerM2 * tank.WidthMm * tank.HeightMm * 1e-6,
            "kN",
            tank.IsRound ? "steel/cylinder-drag" : "steel/block-drag",
            "EN 1991-1-4:2005, 7.6 and 7.9"
        );
        yield return new(
            "c_t",
            "4.0 φ² − 5.9 φ + 4.0",
            Invariant($"φ = {face.SolidM2:0.000}/{face.GrossM2:0.00}, one face along a row"),
            face.Coefficient,
            "",
            "steel/tower-drag",
            "ASCE 7, trussed towers (from memory)"
        );
        yield return new(
            "F_tower",
            "c_t q_p(platform) A_face",
            Invariant($"{face.Coefficient:0.000} · {platform:0.000} · {face.SolidM2:0.000}"),
            face.PushM2 * platform,
            "kN",
            "steel/tower-drag",
            "ASCE 7, trussed towers (from memory)"
        );
        yield return new(
            "F_rest",
            "(2.0 + 0.30 H_p) q_p(platform)",
            Invariant(
                $"platform, rail, ladder, pipe: (2.0 + 0.30 · {strength.Stand.Plan.FloorMm / 1000:0.0}) · {platform:0.000}"
            ),
            (StandWind.PlatformM2 + (StandWind.LadderM2PerM * strength.Stand.Plan.FloorMm / 1000)) * platform,
            "kN",
            "steel/tower-drag",
            "judgement, no source"
        );
    }

    // The moment of the whole wind at the feet, and what it does to the hardest used leg, beside the frame's figure.
    private static IEnumerable<Line> LegsByHand(StandStrength strength)
    {
        var plan = strength.Stand.Plan;
        var factors = new double[StandActions.CaseCount];
        factors[StandActions.Wind + 1] = strength.Wind.PeakKNPerM2;
        var feet = Enumerable
            .Range(0, strength.Stand.Skeleton.Feet.Count)
            .Select(foot => (strength.Stand.Skeleton.Feet[foot].Ground, strength.Cases.Foot(foot, factors).Force))
            .ToList();
        var (midX, midY) = (feet.Average(foot => foot.Ground.XMm), feet.Average(foot => foot.Ground.YMm));
        var (x, y) = (
            feet.Sum(foot => foot.Force.ZN * (foot.Ground.XMm - midX)) * 1e-6,
            feet.Sum(foot => foot.Force.ZN * (foot.Ground.YMm - midY)) * 1e-6
        );
        var moment = Math.Sqrt((x * x) + (y * y));
        var inertiaX = feet.Sum(foot => Math.Pow((foot.Ground.XMm - midX) / 1000, 2));
        var inertiaY = feet.Sum(foot => Math.Pow((foot.Ground.YMm - midY) / 1000, 2));
        yield return new(
            "M",
            "moment of the wind at the feet, by their forces",
            "frame analysis",
            moment,
            "kN m",
            "steel/skeleton-frame",
            "frame analysis"
        );
        yield return new(
            "N_M",
            plan.LegCount == 4 ? "M/(s √2)" : "M_x x/Σx² + M_y y/Σy²",
            Invariant($"s = {plan.SideMm / 1000:0.00} m, {plan.LegCount} legs"),
            (Math.Abs(x) * midX / 1000 / inertiaX)
                + (Math.Abs(y) * Math.Max(midY, plan.SideMm - midY) / 1000 / inertiaY),
            "kN",
            "steel/stand-legs",
            "statics"
        );
        yield return new(
            "N",
            "the same leg in the frame",
            "frame analysis",
            feet.Max(foot => Math.Abs(foot.Force.ZN)) / 1000,
            "kN",
            "steel/skeleton-frame",
            "frame analysis"
        );
    }

    private static IReadOnlyList<Line> Foot(StandFeet feet)
    {
        var bearing = feet.BearingNPerMm2;
        var spread = BasePlate.SpreadMm(feet.Rules.Grade, feet.Foot.ThicknessMm, bearing, feet.Rules.Factors);
        return
        [
            new(
                "c",
                "t √(f_y/(3 f_jd))",
                Invariant($"t = {feet.Foot.ThicknessMm:0} mm, f_jd = {bearing:0.00} N/mm2"),
                spread,
                "mm",
                "steel/base-plate",
                "EN 1993-1-8:2005, equation 6.5"
            ),
            new(
                "share",
                "(N + 2 M/side)/(A f_jd), worst foot",
                Invariant($"A = {BasePlate.PressedMm2(feet.LegMm, feet.WallMm, feet.Foot.SideMm, spread):0} mm2"),
                feet.PressShare,
                "",
                "steel/base-plate",
                "EN 1993-1-8:2005, 6.2.5"
            ),
            .. BasePlate.Lines(
                feet.Rules.Grade,
                feet.Foot.SpacingMm,
                feet.Pulled,
                feet.Foot.LeverMm(feet.LegMm),
                feet.BreadthMm,
                feet.Rules.Factors
            ),
            new(
                "bolts",
                "pull and shear together, steel and concrete, worst foot",
                feet.Bolts.Clause,
                feet.Bolts.UtilisationShare,
                "",
                "steel/cast-in-anchor",
                "EN 1992-4:2018, table 7.3"
            ),
        ];
    }
}
