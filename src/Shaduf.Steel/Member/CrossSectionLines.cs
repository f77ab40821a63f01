using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>The working of the check of a cross-section.</summary>
internal static class CrossSectionLines
{
    private const string Method = "steel/cross-section-check";

    internal static IEnumerable<Line> Of(
        MemberSection section,
        SteelGrade grade,
        MemberForces forces,
        SteelFactors factors,
        CrossSectionParts parts
    )
    {
        var (fy, gamma) = (grade.YieldNPerMm2, factors.SectionFactor);
        var tauNPerMm2 = Math.Abs(forces.TorsionNMm) / section.TorsionModulusMm3;
        var limitNPerMm2 = fy / (Math.Sqrt(3) * gamma);
        var y = Invariant($"{tauNPerMm2:0.0}/{limitNPerMm2:0.0}");
        yield return Step("class", "table 5.2", section.Name + ", " + grade.Name, (parts.ClassNumber, ""), "table 5.2");
        yield return Step(
            "n",
            "N/(A f_y/γ_M0)",
            Invariant($"{Math.Abs(forces.TensionN) / 1000:0.00}e3/({section.Frame.AreaMm2:0} · {fy:0}/{gamma:0.00})"),
            (parts.AxialShare, ""),
            "6.2.3, 6.2.4"
        );
        yield return Step(
            "V_y share",
            "τ_t/τ_Rd + V_y/(A_v,y τ_Rd), τ_Rd = f_y/(√3 γ_M0)",
            y
                + Invariant(
                    $" + {Math.Abs(forces.ShearYN) / 1000:0.00}e3/({section.ShearAreaYMm2:0} · {limitNPerMm2:0.0})"
                ),
            (parts.ShearYShare, ""),
            "6.2.6, 6.2.7"
        );
        yield return Step(
            "V_z share",
            "τ_t/τ_Rd + V_z/(A_v,z τ_Rd)",
            y
                + Invariant(
                    $" + {Math.Abs(forces.ShearZN) / 1000:0.00}e3/({section.ShearAreaZMm2:0} · {limitNPerMm2:0.0})"
                ),
            (parts.ShearZShare, ""),
            "6.2.6, 6.2.7"
        );
        foreach (
            var line in parts.MomentYNMm > 0 ? Plastic(section, forces, parts) : Elastic(forces, parts, fy / gamma)
        )
        {
            yield return line;
        }

        if (parts.ClassNumber < 3 && !parts.Result.Holds)
        {
            yield return Step(
                "used",
                "1/λ: all forces times λ just hold",
                "",
                (parts.Result.UtilisationShare, ""),
                "6.2.1"
            );
        }
    }

    private static IEnumerable<Line> Plastic(MemberSection section, MemberForces forces, CrossSectionParts parts)
    {
        var (y, z) = (forces.BendingYNMm / 1e6, forces.BendingZNMm / 1e6);
        if (parts.YieldShare < 1)
        {
            yield return Step("1 - ρ", "1 - (2 V share - 1)²", "", (parts.YieldShare, ""), "6.2.10");
        }

        yield return Step(
            "M_N,y,Rd",
            "M_pl,y (1 - ρ) (1 - n)/(1 - 0.5 a_w), round: M_pl min(1 - n^1.7, cos(π n/2))",
            Invariant($"W_pl,y = {section.PlasticModulusYMm3 / 1000:0.00} cm³, n = {parts.AxialShare:0.000}"),
            (parts.MomentYNMm / 1e6, "kNm"),
            "6.2.9.1"
        );
        yield return Step(
            "M_N,z,Rd",
            "M_pl,z (1 - ρ) (1 - n)/(1 - 0.5 a_f)",
            Invariant($"W_pl,z = {section.PlasticModulusZMm3 / 1000:0.00} cm³, n = {parts.AxialShare:0.000}"),
            (parts.MomentZNMm / 1e6, "kNm"),
            "6.2.9.1"
        );
        yield return Step(
            "share",
            "(M_y/M_N,y)^α + (M_z/M_N,z)^α, at least each alone",
            Invariant($"({Math.Abs(y):0.000}/{parts.MomentYNMm / 1e6:0.000})^{parts.PowerNumber:0.00}")
                + Invariant($" + ({Math.Abs(z):0.000}/{parts.MomentZNMm / 1e6:0.000})^{parts.PowerNumber:0.00}"),
            (parts.BendingShare, ""),
            "6.2.9.1(6)"
        );
    }

    private static IEnumerable<Line> Elastic(MemberForces forces, CrossSectionParts parts, double limitNPerMm2)
    {
        if (parts.PeakNPerMm2 == 0)
        {
            yield break;
        }

        yield return Step(
            "σ",
            "N/A + stress of M_y and M_z at the worst corner, skew axes counted",
            Invariant($"N {forces.TensionN / 1000:0.00} kN, M_y {forces.BendingYNMm / 1e6:0.000} kNm, ")
                + Invariant($"M_z {forces.BendingZNMm / 1e6:0.000} kNm"),
            (parts.PeakNPerMm2, "N/mm²"),
            "6.2.9.2"
        );
        yield return Step(
            "share",
            "√((σ/f_yd)² + (V share)²)",
            Invariant($"√(({parts.PeakNPerMm2:0.0}/{limitNPerMm2:0.0})² + ")
                + Invariant($"{Math.Max(parts.ShearYShare, parts.ShearZShare):0.000}²)"),
            (parts.BendingShare, ""),
            "6.2.1(5)"
        );
    }

    private static Line Step(
        string symbol,
        string formula,
        string numbers,
        (double Value, string Unit) result,
        string clause
    ) => new(symbol, formula, numbers, result.Value, result.Unit, Method, "EN 1993-1-1:2005, " + clause);
}
