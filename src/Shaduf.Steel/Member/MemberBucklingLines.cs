using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>The working of the check of a member against buckling.</summary>
internal static class MemberBucklingLines
{
    internal static IEnumerable<Line> Of(
        MemberSection section,
        SteelGrade grade,
        MemberForces forces,
        (BucklingLengths Lengths, EquivalentMoments Moments, double Factor) given,
        MemberBucklingParts parts
    )
    {
        foreach (var line in Slenderness(section, grade, given.Lengths, parts))
        {
            yield return line;
        }

        var compressionKN = Math.Max(0, -forces.TensionN) / 1000;
        yield return Step(
            "k_yy",
            "C_my (1 + (λ_y - 0.2) n_y) up to C_my (1 + 0.8 n_y); class 3: C_my (1 + 0.6 λ_y n_y)",
            Invariant($"C_my = {given.Moments.AboutYFactor:0.00}, N = {compressionKN:0.00} kN"),
            parts.MomentYYFactor,
            "table B.1"
        );
        yield return Step(
            "k_zz",
            "as k_yy, about z",
            Invariant($"C_mz = {given.Moments.AboutZFactor:0.00}, N = {compressionKN:0.00} kN"),
            parts.MomentZZFactor,
            "table B.1"
        );
        if (!section.IsTube)
        {
            yield return Step(
                "χ_LT",
                "curve d, M_cr = (π/L) √(E I_v G I_t)",
                Invariant($"L = {given.Lengths.HeldMm:0} mm"),
                parts.ReductionTwistFactor,
                "6.3.2.2"
            );
        }

        var n = Invariant(
            $"{compressionKN:0.00}e3/(χ · {section.Frame.AreaMm2:0} · {grade.YieldNPerMm2:0}/{given.Factor:0.00})"
        );
        yield return Step(
            "6.61",
            "N/(χ_y N_Rk/γ_M1) + k_yy m_y + k_yz m_z, m = M/(M_Rk/γ_M1)",
            n + Terms(parts.MomentYYFactor, parts.MomentYZFactor, parts),
            parts.AboutYShare,
            "equation 6.61"
        );
        yield return Step(
            "6.62",
            "N/(χ_z N_Rk/γ_M1) + k_zy m_y + k_zz m_z",
            n + Terms(parts.MomentZYFactor, parts.MomentZZFactor, parts),
            parts.AboutZShare,
            "equation 6.62"
        );
    }

    private static IEnumerable<Line> Slenderness(
        MemberSection section,
        SteelGrade grade,
        BucklingLengths lengths,
        MemberBucklingParts parts
    )
    {
        var (gyrationY, gyrationZ) = MemberBuckling.Gyrations(section);
        foreach (
            var (axis, lengthMm, gyrationMm, slenderness, chi) in new[]
            {
                ("y", lengths.AboutYMm, gyrationY, parts.SlendernessYRatio, parts.ReductionYFactor),
                ("z", lengths.AboutZMm, gyrationZ, parts.SlendernessZRatio, parts.ReductionZFactor),
            }
        )
        {
            yield return Step(
                $"λ_{axis}",
                "(L_cr/i)/(π √(E/f_y))",
                Invariant($"({lengthMm:0}/{gyrationMm:0.00})/(93.9 · {grade.EpsilonFactor:0.000})"),
                slenderness,
                "equation 6.50"
            );
            yield return Step(
                $"χ_{axis}",
                "1/(Φ + √(Φ² - λ²)), Φ = 0.5 (1 + α (λ - 0.2) + λ²)",
                Invariant($"curve {CurveName(section.Curve)}, λ = {slenderness:0.000}"),
                chi,
                "equation 6.49"
            );
        }
    }

    private static string Terms(double aboutY, double aboutZ, MemberBucklingParts parts) =>
        Invariant($" + {aboutY:0.000} · {parts.BendingYShare:0.000} + {aboutZ:0.000} · {parts.BendingZShare:0.000}");

    private static string CurveName(BucklingCurve curve) => curve.ToString().ToLowerInvariant();

    private static Line Step(string symbol, string formula, string numbers, double value, string clause) =>
        new(symbol, formula, numbers, value, "", "steel/member-buckling", "EN 1993-1-1:2005, " + clause);
}
