using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class AirMassTests
{
    [Fact]
    public void Agrees_with_the_oracle()
    {
        foreach (var row in Oracle.Rows("clear_sky.csv").Where(row => row.Number("apparent_zenith_deg") <= 90))
        {
            var ratio = AirMass.KastenYoungRatio(row.Number("apparent_zenith_deg"));
            Assert.Equal(row.Number("airmass_relative"), ratio, 1e-6);
            Assert.Equal(row.Number("airmass_absolute"), ratio * row.Number("pressure_pa") / AirMass.SeaLevelPa, 1e-6);
        }
    }
}
