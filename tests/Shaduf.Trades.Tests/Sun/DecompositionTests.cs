using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class DecompositionTests
{
    [Fact]
    public void Agrees_with_the_oracle()
    {
        foreach (var row in Oracle.Rows("decomposition.csv"))
        {
            var (globalWPerM2, zenithDeg) = (row.Number("ghi"), row.Number("zenith_deg"));
            var normalWPerM2 = row.Number("dni_extra_1366_1");
            Assert.Equal(row.Number("kt"), Decomposition.ClearnessRatio(globalWPerM2, zenithDeg, normalWPerM2), 1e-9);
            var erbs = Decomposition.ErbsSplit(globalWPerM2, zenithDeg, normalWPerM2);
            Oracle.AssertIrradiance(row, "erbs_dni", erbs.DirectNormalWPerM2);
            Oracle.AssertIrradiance(row, "erbs_dhi", erbs.DiffuseWPerM2);
            (string Name, Func<double, double> Share)[] rules =
            [
                ("orgill_hollands", Decomposition.OrgillHollandsHourlyDiffuseShare),
                ("erbs_driesse", Decomposition.ErbsDriesseHourlyDiffuseShare),
                ("boland60", Decomposition.BolandHourlyDiffuseShare),
                ("boland15", Decomposition.BolandQuarterHourlyDiffuseShare),
            ];
            foreach (var (name, share) in rules)
            {
                var split = Decomposition.Split(globalWPerM2, zenithDeg, normalWPerM2, share);
                Oracle.AssertIrradiance(row, $"{name}_dni", split.DirectNormalWPerM2);
                Oracle.AssertIrradiance(row, $"{name}_dhi", split.DiffuseWPerM2);
            }

            var disc = Decomposition.DiscDirectNormalWPerM2(
                globalWPerM2,
                zenithDeg,
                row.Number("disc_dni_extra_1370"),
                AirMass.SeaLevelPa
            );
            Oracle.AssertIrradiance(row, "disc_dni", disc);
        }
    }

    [Fact]
    public void Parts_make_up_the_whole() =>
        Gen.Select(Gen.Double[0, 1200], Gen.Double[0, 180], Gen.Double[1310, 1415])
            .Sample(
                (globalWPerM2, zenithDeg, normalWPerM2) =>
                {
                    var split = Decomposition.ErbsSplit(globalWPerM2, zenithDeg, normalWPerM2);
                    var back = (split.DirectNormalWPerM2 * Math.Cos(zenithDeg * Math.PI / 180)) + split.DiffuseWPerM2;
                    return split.DirectNormalWPerM2 >= 0
                        && split.DiffuseWPerM2 >= 0
                        && Math.Abs(back - globalWPerM2) < 1e-9;
                }
            );

    [Theory]
    [InlineData(double.NaN, 30, 1361)]
    [InlineData(500, double.NaN, 1361)]
    [InlineData(500, 30, 0)]
    [InlineData(-1, 30, 1361)]
    public void Refuses_what_cannot_be(double globalWPerM2, double zenithDeg, double normalWPerM2) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Decomposition.ErbsSplit(globalWPerM2, zenithDeg, normalWPerM2)
        );
}
