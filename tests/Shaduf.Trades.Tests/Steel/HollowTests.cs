using CsCheck;
using Shaduf.Steel;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Steel;

public sealed class HollowTests
{
    public static TheoryData<string> Rows =>
        [.. Oracle.Where(row => row["kind"] == "square_hollow").Select(row => row["id"])];

    private static IReadOnlyList<CsvRow> Oracle { get; } =
        Csv.Rows(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Oracle", "sections.csv")));

    [Theory]
    [MemberData(nameof(Rows))]
    public void Agrees_with_independent_integration(string id)
    {
        var row = Oracle.Single(row => row["id"] == id);
        var (widthMm, wallMm) = (row.Number("b_mm"), row.Number("t_mm"));
        var section =
            row.Number("r_outer_mm") < 1.9 * wallMm
                ? SquareHollow.HotFinished(widthMm, wallMm)
                : SquareHollow.ColdFormed(widthMm, wallMm);
        Near.Share(row.Number("area_mm2"), section.AreaMm2, 0.001);
        Near.Share(row.Number("mass_kg_m_7850"), section.MassKgPerM, 0.001);
        Near.Share(row.Number("outer_perimeter_mm"), section.PerimeterMm, 0.001);
        Near.Share(row.Number("iy_mm4"), section.InertiaYMm4, 0.001);
        Near.Share(row.Number("iz_mm4"), section.InertiaZMm4, 0.001);
        Near.Share(row.Number("wel_y_mm3"), section.ElasticModulusYMm3, 0.001);
        Near.Share(row.Number("wpl_y_mm3"), section.PlasticModulusYMm3!.Value, 0.001);
        Near.Share(row.Number("j_thin_mm4"), section.TorsionConstantMm4, 0.005);
        // The two-dimensional solution is the truth: the standard's formula stays within 2 % of it.
        Near.Share(row.Number("j_solved_mm4"), section.TorsionConstantMm4, 0.02);
    }

    [Fact]
    public void Turning_a_rectangle_swaps_its_axes() =>
        Gen.Select(Gen.Double[60, 200], Gen.Double[60, 200], Gen.Double[1, 8])
            .Sample(
                (heightMm, widthMm, wallMm) =>
                {
                    var upright = RectangularHollow.ColdFormed(heightMm, widthMm, wallMm);
                    var flat = RectangularHollow.ColdFormed(widthMm, heightMm, wallMm);
                    Near.Share(upright.InertiaYMm4, flat.InertiaZMm4, 1e-9);
                    Near.Share(upright.PlasticModulusZMm3!.Value, flat.PlasticModulusYMm3!.Value, 1e-9);
                    Near.Share(upright.TorsionConstantMm4, flat.TorsionConstantMm4, 1e-9);
                    Assert.True(upright.PlasticModulusYMm3 > upright.ElasticModulusYMm3);
                }
            );

    [Fact]
    public void Round_tube_as_thick_as_its_radius_is_a_solid_bar() =>
        Near.Share(Math.PI / 64 * Math.Pow(20, 4), CircularHollow.Of(20, 10).InertiaYMm4, 1e-12);

    [Theory]
    [InlineData(50, double.NaN)]
    [InlineData(double.NaN, 3)]
    [InlineData(50, 0)]
    [InlineData(10, 3)]
    [InlineData(600, 3)]
    public void Refuses_what_cannot_be(double widthMm, double wallMm)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SquareHollow.ColdFormed(widthMm, wallMm));
        Assert.Throws<ArgumentOutOfRangeException>(() => CircularHollow.Of(widthMm, wallMm * 2));
    }
}
