using CsCheck;
using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Steel;

public sealed class EqualAngleTests
{
    // The root fillet that the formula leaves out makes the angle stiffer, never softer.
    [Fact]
    public void Torsion_is_no_stiffer_than_the_solution_in_two_dimensions()
    {
        var rows = Csv.Embedded(typeof(OracleChecks).Assembly, "sections.csv")
            .Where(row => row["kind"] == "equal_angle")
            .ToList();
        Assert.NotEmpty(rows);
        Assert.All(
            rows,
            row =>
            {
                var angle = EqualAngle.Of(
                    row.Number("b_mm"),
                    row.Number("t_mm"),
                    row.Number("r_root_mm"),
                    row.Number("r_toe_mm")
                );
                Assert.InRange(angle.Section.TorsionConstantMm4 / row.Number("j_solved_mm4"), 0.85, 1);
            }
        );
    }

    [Fact]
    public void Sharp_angle_is_two_rectangles()
    {
        var angle = EqualAngle.Of(50, 5, 0, 0);
        Near.Share(475, angle.Section.AreaMm2, 1e-12);
        Near.Share((5 * 50 * 25 + 45 * 5 * 2.5) / 475, angle.CentroidMm, 1e-12);
        Near.Share(200, angle.Section.PerimeterMm, 1e-12);
    }

    [Fact]
    public void Weak_axis_is_the_weakest_and_the_principal_sum_holds() =>
        Gen.Select(Gen.Double[25, 150], Gen.Double[0.06, 0.2], Gen.Double[0, 1.2], Gen.Double[0, 0.6])
            .Sample(
                (legMm, thicknessShare, rootShare, toeShare) =>
                {
                    var thicknessMm = Math.Max(2, legMm * thicknessShare);
                    var angle = EqualAngle.Of(legMm, thicknessMm, rootShare * thicknessMm, toeShare * thicknessMm);
                    Assert.InRange(angle.InertiaVMm4, 0, angle.Section.InertiaYMm4);
                    Near.Share(2 * angle.Section.InertiaYMm4, angle.InertiaUMm4 + angle.InertiaVMm4, 1e-9);
                }
            );

    [Theory]
    [InlineData(50, 5, 7, double.NaN)]
    [InlineData(50, 20, 7, 3)]
    [InlineData(50, 5, 7, 6)]
    [InlineData(10, 3, 3, 1)]
    public void Refuses_what_cannot_be(double legMm, double thicknessMm, double rootMm, double toeMm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EqualAngle.Of(legMm, thicknessMm, rootMm, toeMm));
}
