using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class IncidenceModifierTests
{
    [Fact]
    public void Agrees_with_the_oracle()
    {
        foreach (var row in Oracle.Rows("iam.csv"))
        {
            var deg = row.Number("aoi_deg");
            void Same(string column, double share) => Assert.Equal(row.Number(column), share, 1e-9);
            Same("ashrae_b005", IncidenceModifier.AshraeShare(deg, 0.05));
            Same("ashrae_b004", IncidenceModifier.AshraeShare(deg, 0.04));
            Same("physical_n1526_k4_l0002", IncidenceModifier.PhysicalShare(deg, Glass.Usual));
            Same(
                "physical_ar129_n1526_k4_l0002",
                IncidenceModifier.PhysicalShare(deg, Glass.Usual with { CoatingIndex = 1.29 })
            );
            Same("physical_n15_k4_l0004", IncidenceModifier.PhysicalShare(deg, new(1.5, 4, 0.004)));
            Same("martin_ruiz_ar016", IncidenceModifier.MartinRuizShare(deg, 0.16));
        }
    }

    [Fact]
    public void Glass_takes_in_less_the_flatter_the_light_falls() =>
        Gen.Select(Gen.Double[0, 90], Gen.Double[0, 90], Gen.Double[1.3, 2], Gen.Double[0, 60], Gen.Double[0, 0.02])
            .Sample(
                (oneDeg, otherDeg, index, extinctionPerM, thicknessM) =>
                {
                    var glass = new Glass(index, extinctionPerM, thicknessM);
                    var steep = IncidenceModifier.PhysicalShare(Math.Min(oneDeg, otherDeg), glass);
                    var flat = IncidenceModifier.PhysicalShare(Math.Max(oneDeg, otherDeg), glass);
                    return flat >= 0 && steep <= 1 + 1e-12 && flat <= steep + 1e-12;
                }
            );

    [Fact]
    public void The_slants_of_sky_and_ground_stand_for_the_whole_of_each()
    {
        // The even sky over a level plane, summed up ring by ring, passes the glass as light at its slant does.
        var (passed, all) = (0.0, 0.0);
        for (var deg = 0.5; deg < 90; deg++)
        {
            var ring = Math.Sin(2 * deg * Math.PI / 180);
            passed += ring * IncidenceModifier.PhysicalShare(deg, Glass.Usual);
            all += ring;
        }

        Assert.Equal(passed / all, IncidenceModifier.PhysicalShare(IncidenceModifier.SkyDeg(0), Glass.Usual), 0.005);
    }
}
