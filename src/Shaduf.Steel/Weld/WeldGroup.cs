using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>
/// Welds of one joint in one plane, as lines: x square to the plane, y and z in it. Second moments are for a throat of
/// 1 mm; forces are those of the member's end, x along the member.
/// </summary>
/// <param name="LengthMm">Length of all lines [mm].</param>
/// <param name="InertiaYMm3">Second moment about y [mm3].</param>
/// <param name="InertiaZMm3">Second moment about z [mm3].</param>
/// <param name="FarYMm">Farthest place along y from the middle [mm].</param>
/// <param name="FarZMm">Farthest place along z from the middle [mm].</param>
public sealed record WeldGroup(double LengthMm, double InertiaYMm3, double InertiaZMm3, double FarYMm, double FarZMm)
{
    /// <summary>Butt weld all round a section, as lines along its walls: what joins two bars end to end.</summary>
    /// <param name="section">The section.</param>
    /// <returns>The weld.</returns>
    /// <source>Elastic properties of the section over its wall; EN 1993-1-8:2005, 4.7</source>
    public static WeldGroup Butt(MemberSection section) =>
        new(
            section.Frame.AreaMm2 / section.WallMm,
            section.Frame.InertiaYMm4 / section.WallMm,
            section.Frame.InertiaZMm4 / section.WallMm,
            section.Frame.InertiaZMm4 / section.ElasticModulusZMm3,
            section.Frame.InertiaYMm4 / section.ElasticModulusYMm3
        );

    /// <summary>Force on a millimetre of weld at the worst corner: all parts added there by size, then as a vector.</summary>
    /// <param name="forces">Forces of the joint.</param>
    /// <returns>Force [N/mm].</returns>
    /// <source>Elastic distribution over lines; EN 1993-1-8:2005, 2.5 and 4.9</source>
    public double ForceNPerMm(MemberForces forces)
    {
        var (normal, y, z) = Parts(forces);
        return Math.Sqrt((normal * normal) + (y * y) + (z * z));
    }

    /// <summary>Check by the simplified method.</summary>
    /// <param name="forces">Forces of the joint.</param>
    /// <param name="grade">Steel of the weaker part joined.</param>
    /// <param name="throatMm">Throat [mm], 3 to 20.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The check.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The throat is outside its range, or NaN.</exception>
    public CheckResult Utilisation(
        MemberForces forces,
        SteelGrade grade,
        double throatMm,
        SteelFactors? factors = null
    ) => new(ForceNPerMm(forces) / FilletWeld.ResistanceNPerMm(grade, throatMm, factors), FilletWeld.Simplified);

    /// <summary>Throat that carries the joint; never below the least one.</summary>
    /// <param name="forces">Forces of the joint.</param>
    /// <param name="grade">Steel of the weaker part joined.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>Throat [mm].</returns>
    public double RequiredThroatMm(MemberForces forces, SteelGrade grade, SteelFactors? factors = null) =>
        FilletWeld.RequiredThroatMm(grade, ForceNPerMm(forces), factors);

    /// <summary>The working of the check.</summary>
    /// <param name="forces">Forces of the joint.</param>
    /// <param name="grade">Steel of the weaker part joined.</param>
    /// <param name="throatMm">Throat [mm].</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The lines.</returns>
    public IReadOnlyList<Line> Lines(
        MemberForces forces,
        SteelGrade grade,
        double throatMm,
        SteelFactors? factors = null
    ) => [.. ForceLines(forces), .. FilletWeld.Lines(grade, ForceNPerMm(forces), throatMm, factors)];

    /// <summary>The working of the force on a millimetre of weld.</summary>
    /// <param name="forces">Forces of the joint.</param>
    /// <returns>The lines.</returns>
    public IReadOnlyList<Line> ForceLines(MemberForces forces)
    {
        var (normal, y, z) = Parts(forces);
        return
        [
            Step(
                "f_x",
                "N/L + M_y z/I_y + M_z y/I_z",
                Invariant($"{Size(forces.TensionN, 1e3)}e3/{LengthMm:0} + {Size(forces.BendingYNMm, 1e6)}e6 · ")
                    + Invariant($"{FarZMm:0.0}/{InertiaYMm3:0} + {Size(forces.BendingZNMm, 1e6)}e6 · ")
                    + Invariant($"{FarYMm:0.0}/{InertiaZMm3:0}"),
                normal
            ),
            Step("f_y", "V_y/L + T z/(I_y + I_z)", Shear(forces.ShearYN, forces, FarZMm), y),
            Step("f_z", "V_z/L + T y/(I_y + I_z)", Shear(forces.ShearZN, forces, FarYMm), z),
            Step(
                "F_w,Ed",
                "√(f_x² + f_y² + f_z²)",
                Invariant($"√({normal:0.0}² + {y:0.0}² + {z:0.0}²)"),
                ForceNPerMm(forces)
            ),
        ];
    }

    private (double Normal, double Y, double Z) Parts(MemberForces forces)
    {
        var polar = InertiaYMm3 + InertiaZMm3;
        var torque = Math.Abs(forces.TorsionNMm);
        return (
            (Math.Abs(forces.TensionN) / LengthMm)
                + (Math.Abs(forces.BendingYNMm) * FarZMm / InertiaYMm3)
                + (Math.Abs(forces.BendingZNMm) * FarYMm / InertiaZMm3),
            (Math.Abs(forces.ShearYN) / LengthMm) + (torque * FarZMm / polar),
            (Math.Abs(forces.ShearZN) / LengthMm) + (torque * FarYMm / polar)
        );
    }

    private string Shear(double shearN, MemberForces forces, double armMm) =>
        Invariant($"{Size(shearN, 1e3)}e3/{LengthMm:0} + {Size(forces.TorsionNMm, 1e6)}e6 · ")
        + Invariant($"{armMm:0.0}/{InertiaYMm3 + InertiaZMm3:0}");

    private static string Size(double value, double scale) => Invariant($"{Math.Abs(value) / scale:0.000}");

    private static Line Step(string symbol, string formula, string numbers, double value) =>
        new(symbol, formula, numbers, value, "N/mm", "steel/tube-weld", "EN 1993-1-8:2005, 4.9");
}
