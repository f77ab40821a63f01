using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Which shipped kernel computes each quantity of the trade's files of independent figures.</summary>
public static class OracleChecks
{
    private static readonly OracleTable Hollows = Sections("square_hollow");
    private static readonly OracleTable Angles = Sections("equal_angle");

    /// <summary>One check for each quantity that is compared.</summary>
    public static IReadOnlyList<OracleCheck> All { get; } =
    [
        Hollow("area_mm2", hollow => hollow.AreaMm2),
        Hollow("mass_kg_m_7850", hollow => hollow.MassKgPerM),
        Hollow("outer_perimeter_mm", hollow => hollow.PerimeterMm),
        Hollow("iy_mm4", hollow => hollow.InertiaYMm4),
        Hollow("iz_mm4", hollow => hollow.InertiaZMm4),
        Hollow("wel_y_mm3", hollow => hollow.ElasticModulusYMm3),
        Hollow("wpl_y_mm3", hollow => hollow.PlasticModulusYMm3 ?? double.NaN),
        Hollow("j_thin_mm4", hollow => hollow.TorsionConstantMm4),
        // The solution in two dimensions is the truth: the standard's thin-wall form stays within 2 % of it.
        Hollow("j_solved_mm4", hollow => hollow.TorsionConstantMm4, 2),
        Angle("area_mm2", angle => angle.Section.AreaMm2),
        Angle("mass_kg_m_7850", angle => angle.Section.MassKgPerM),
        Angle("outer_perimeter_mm", angle => angle.Section.PerimeterMm),
        Angle("centroid_mm", angle => angle.CentroidMm),
        Angle("iy_mm4", angle => angle.Section.InertiaYMm4),
        Angle("iyz_mm4", angle => angle.ProductOfInertiaMm4),
        Angle("iu_mm4", angle => angle.InertiaUMm4),
        Angle("iv_mm4", angle => angle.InertiaVMm4),
        Angle("wel_y_mm3", angle => angle.Section.ElasticModulusYMm3),
        Angle("j_thin_mm4", angle => angle.Section.TorsionConstantMm4),
        .. OracleFrames.All,
    ];

    private static OracleTable Sections(string kind) =>
        new(typeof(OracleChecks).Assembly, "sections.csv", row => row["kind"] == kind);

    private static OracleCheck Hollow(
        string column,
        Func<SectionProperties, double> figure,
        double mostPercent = 0.1
    ) =>
        Hollows.Check(
            $"{column}, square hollow",
            new(mostPercent, "%"),
            row => row.Number(column),
            row => figure(HollowOf(row))
        );

    private static OracleCheck Angle(string column, Func<EqualAngle, double> figure) =>
        Angles.Check($"{column}, equal angle", new(0.1, "%"), row => row.Number(column), row => figure(AngleOf(row)));

    // Corners rounded by less than two walls are those of a hot finished hollow.
    private static SectionProperties HollowOf(CsvRow row)
    {
        var (widthMm, wallMm) = (row.Number("b_mm"), row.Number("t_mm"));
        return row.Number("r_outer_mm") < 1.9 * wallMm
            ? SquareHollow.HotFinished(widthMm, wallMm)
            : SquareHollow.ColdFormed(widthMm, wallMm);
    }

    private static EqualAngle AngleOf(CsvRow row) =>
        EqualAngle.Of(row.Number("b_mm"), row.Number("t_mm"), row.Number("r_root_mm"), row.Number("r_toe_mm"));
}
