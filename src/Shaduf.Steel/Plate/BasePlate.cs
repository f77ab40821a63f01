using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>A square base plate on four bolts at the corners of a square.</summary>
public static class BasePlate
{
    /// <summary>Force of the most pulled bolt: moments by the couple of the bolts, axial force by quarters.</summary>
    /// <param name="spacingMm">Distance of the bolts along a side [mm], 50 to 1,000.</param>
    /// <param name="compressionN">Compression on the plate, uplift below 0 [N], -10,000,000 to 10,000,000.</param>
    /// <param name="momentYNMm">Moment about one side [N·mm], -1e10 to 1e10.</param>
    /// <param name="momentZNMm">Moment about the other side [N·mm], -1e10 to 1e10; for a moment M across the diagonal M/√2 about both.</param>
    /// <returns>Tension [N]; below 0 when no bolt is pulled.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics: square M/(2 s) - N/4, diagonal M/(√2 s) - N/4</source>
    public static double BoltTensionN(double spacingMm, double compressionN, double momentYNMm, double momentZNMm)
    {
        Within.Require(spacingMm, 50, 1_000, "mm");
        Within.Require(compressionN, -1e7, 1e7, "N");
        Within.Require(momentYNMm, -1e10, 1e10, "N·mm");
        Within.Require(momentZNMm, -1e10, 1e10, "N·mm");
        return ((Math.Abs(momentYNMm) + Math.Abs(momentZNMm)) / (2 * spacingMm)) - (compressionN / 4);
    }

    /// <summary>Force of the most pressed bolt when the plate stands on levelling nuts and grout is not counted.</summary>
    /// <param name="spacingMm">Distance of the bolts along a side [mm], 50 to 1,000.</param>
    /// <param name="compressionN">Compression on the plate, uplift below 0 [N], -10,000,000 to 10,000,000.</param>
    /// <param name="momentYNMm">Moment about one side [N·mm], -1e10 to 1e10.</param>
    /// <param name="momentZNMm">Moment about the other side [N·mm], -1e10 to 1e10.</param>
    /// <returns>Compression [N]; below 0 when no bolt is pressed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics</source>
    public static double BoltCompressionN(
        double spacingMm,
        double compressionN,
        double momentYNMm,
        double momentZNMm
    ) => BoltTensionN(spacingMm, -compressionN, momentYNMm, momentZNMm);

    /// <summary>Breadth of plate that bends with one bolt.</summary>
    /// <param name="leverMm">From the bolt's centre to the toe of the weld or the tube's face [mm], 5 to 300.</param>
    /// <param name="washerMm">Outside diameter of the washer [mm], 10 to 100.</param>
    /// <param name="shareMm">Breadth that belongs to the bolt: half the distance to the next and the rest to the edge [mm], 10 to 1,000.</param>
    /// <returns>The smaller of 2 x + washer and the share [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>45 degree spread, common practice, no source</source>
    public static double BendingBreadthMm(double leverMm, double washerMm, double shareMm)
    {
        Within.Require(leverMm, 5, 300, "mm");
        Within.Require(washerMm, 10, 100, "mm");
        Within.Require(shareMm, 10, 1_000, "mm");
        return Math.Min((2 * leverMm) + washerMm, shareMm);
    }

    /// <summary>Thickness of plate that one bolt's pull needs.</summary>
    /// <param name="grade">Steel of the plate.</param>
    /// <param name="tensionN">Pull of the bolt [N], 0 to 10,000,000.</param>
    /// <param name="leverMm">From the bolt's centre to the toe of the weld or the tube's face [mm], 5 to 300.</param>
    /// <param name="breadthMm">Breadth that bends [mm], 10 to 1,000.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>√(4 F x γ_M0/(b f_y)) [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Plastic bending of a plate, W_pl = b t²/4; prying is avoided by the thick plate</source>
    public static double ThicknessMm(
        SteelGrade grade,
        double tensionN,
        double leverMm,
        double breadthMm,
        SteelFactors? factors = null
    )
    {
        Within.Require(tensionN, 0, 1e7, "N");
        Within.Require(leverMm, 5, 300, "mm");
        Within.Require(breadthMm, 10, 1_000, "mm");
        return Math.Sqrt(4 * tensionN * leverMm / (breadthMm * Yield(grade, factors)));
    }

    /// <summary>Strength of concrete under a plate on a small block.</summary>
    /// <param name="cylinderNPerMm2">Characteristic strength of a cylinder f_ck [N/mm2], 8 to 50.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>f_jd = α_cc f_ck/γ_C [N/mm2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1993-1-8:2005, 6.2.5(7); EN 1992-1-1:2004, 3.1.6; kept at f_cd because the block is hardly wider than the plate</source>
    public static double BearingNPerMm2(double cylinderNPerMm2, SteelFactors? factors = null)
    {
        Within.Require(cylinderNPerMm2, 8, 50, "N/mm2");
        var given = factors ?? SteelFactors.Recommended;
        return given.LongTermFactor * cylinderNPerMm2 / given.ConcreteFactor;
    }

    /// <summary>Width of plate beside the tube's wall that passes pressure on to the concrete.</summary>
    /// <param name="grade">Steel of the plate.</param>
    /// <param name="plateMm">Thickness of the plate [mm], 4 to 60.</param>
    /// <param name="bearingNPerMm2">Strength of the concrete under it [N/mm2], 1 to 50.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>c = t √(f_y/(3 f_jd γ_M0)) [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1993-1-8:2005, equation 6.5</source>
    public static double SpreadMm(SteelGrade grade, double plateMm, double bearingNPerMm2, SteelFactors? factors = null)
    {
        Within.Require(plateMm, 4, 60, "mm");
        Within.Require(bearingNPerMm2, 1, 50, "N/mm2");
        return plateMm * Math.Sqrt(Yield(grade, factors) / (3 * bearingNPerMm2));
    }

    /// <summary>Area of concrete that a square tube presses through its plate: a strip beside its walls, out to the plate's edge at most, the inside counted once.</summary>
    /// <param name="sideMm">Side of the tube [mm], 20 to 500.</param>
    /// <param name="wallMm">Wall of the tube [mm], 1 to 20.</param>
    /// <param name="plateSideMm">Side of the plate [mm], 20 to 1,000; at least the tube's.</param>
    /// <param name="spreadMm">Width of the strip on each side c [mm], 0 to 300.</param>
    /// <returns>Area [mm2]; times the concrete's strength it is the resistance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN, or a plate smaller than the tube.</exception>
    /// <source>EN 1993-1-8:2005, 6.2.5</source>
    public static double PressedMm2(double sideMm, double wallMm, double plateSideMm, double spreadMm)
    {
        Within.Require(sideMm, 20, 500, "mm");
        Within.Require(wallMm, 1, Math.Min(20, sideMm / 2), "mm");
        Within.Require(plateSideMm, Math.Max(20, sideMm), 1_000, "mm");
        Within.Require(spreadMm, 0, 300, "mm");
        var outsideMm = Math.Min(plateSideMm, sideMm + (2 * spreadMm));
        var insideMm = Math.Max(0, sideMm - (2 * wallMm) - (2 * spreadMm));
        return (outsideMm * outsideMm) - (insideMm * insideMm);
    }

    /// <summary>The working of the most pulled bolt and of the plate that it bends.</summary>
    /// <param name="grade">Steel of the plate.</param>
    /// <param name="spacingMm">Distance of the bolts along a side [mm].</param>
    /// <param name="forces">Forces at the foot, tension above 0.</param>
    /// <param name="leverMm">From the bolt's centre to the toe of the weld or the tube's face [mm].</param>
    /// <param name="breadthMm">Breadth that bends [mm].</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The lines.</returns>
    public static IReadOnlyList<Line> Lines(
        SteelGrade grade,
        double spacingMm,
        MemberForces forces,
        double leverMm,
        double breadthMm,
        SteelFactors? factors = null
    )
    {
        var (y, z) = (Math.Abs(forces.BendingYNMm), Math.Abs(forces.BendingZNMm));
        var tensionN = BoltTensionN(spacingMm, -forces.TensionN, y, z);
        var pulledN = Math.Max(0, tensionN);
        return
        [
            new(
                "T",
                "(M_y + M_z)/(2 s) - N/4",
                Invariant(
                    $"({y / 1e6:0.000}e6 + {z / 1e6:0.000}e6)/(2 · {spacingMm:0}) + {forces.TensionN / 1000:0.00}e3/4"
                ),
                tensionN / 1000,
                "kN",
                "steel/base-plate",
                "statics"
            ),
            new(
                "t",
                "√(4 T x γ_M0/(b_eff f_y)), no pull: 0",
                Invariant($"√(4 · {pulledN / 1000:0.00}e3 · {leverMm:0}/({breadthMm:0} · {grade.YieldNPerMm2:0}))"),
                ThicknessMm(grade, pulledN, leverMm, breadthMm, factors),
                "mm",
                "steel/base-plate",
                "plastic bending of a plate"
            ),
        ];
    }

    private static double Yield(SteelGrade grade, SteelFactors? factors) =>
        grade.YieldNPerMm2 / (factors ?? SteelFactors.Recommended).SectionFactor;
}
