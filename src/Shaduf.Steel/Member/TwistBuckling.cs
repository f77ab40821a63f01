using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Lateral-torsional buckling of an open section bent in its height: its pressed part runs away sideways and it twists.</summary>
public static class TwistBuckling
{
    // C_2 of a uniform load on a simply supported beam; C_1 is taken 1, a uniform moment.
    private const double LoadHeightFactor = 0.45;

    /// <summary>
    /// Elastic critical moment of a beam held against moving sideways and twisting at both ends of a length. Warping is
    /// left out, which is exact for angles and on the safe side for channels; the moment is taken uniform (C_1 = 1).
    /// </summary>
    /// <param name="section">The section.</param>
    /// <param name="heldMm">Distance between the places that hold it [mm], 1 to 20,000.</param>
    /// <param name="loadAboveMm">Height of the load above the shear centre; above 0 when it pushes towards it [mm], -500 to 500.</param>
    /// <returns>Critical moment [N·mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Timoshenko and Gere, Theory of elastic stability; three-factor formula of ENV 1993-1-1:1992, annex F (from memory), with I_w = 0, C_1 = 1, C_2 = 0.45</source>
    public static double CriticalNMm(MemberSection section, double heldMm, double loadAboveMm = 0)
    {
        Within.Require(heldMm, 1, 20_000, "mm");
        Within.Require(loadAboveMm, -500, 500, "mm");
        var euler =
            Math.PI * Math.PI * FrameModel.SteelElasticModulusNPerMm2 * section.LeastInertiaMm4 / (heldMm * heldMm);
        var twist = FrameModel.SteelShearModulusNPerMm2 * section.Frame.TorsionConstantMm4 / euler;
        var load = LoadHeightFactor * loadAboveMm;
        return euler * (Math.Sqrt(twist + (load * load)) - load);
    }

    /// <summary>Share of the bending resistance that is left: curve d on the elastic moment. Tubes keep all of it.</summary>
    /// <param name="section">The section; of a rectangular tube the height is at most twice the width.</param>
    /// <param name="grade">Its steel.</param>
    /// <param name="heldMm">Distance between the places that hold it [mm], 1 to 20,000.</param>
    /// <param name="loadAboveMm">Height of the load above the shear centre [mm], -500 to 500.</param>
    /// <returns>χ_LT, above 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1993-1-1:2005, 6.3.2.2, table 6.4</source>
    public static double ReductionFactor(MemberSection section, SteelGrade grade, double heldMm, double loadAboveMm = 0)
    {
        var criticalNMm = CriticalNMm(section, heldMm, loadAboveMm);
        if (section.IsTube)
        {
            return 1;
        }

        var slenderness = Math.Sqrt(section.ElasticModulusYMm3 * grade.YieldNPerMm2 / criticalNMm);
        return FlexuralBuckling.ReductionFactor(slenderness, BucklingCurve.D);
    }
}
