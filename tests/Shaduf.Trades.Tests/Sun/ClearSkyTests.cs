using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class ClearSkyTests
{
    [Fact]
    public void Every_model_agrees_with_the_oracle()
    {
        foreach (var row in Oracle.Rows("clear_sky.csv"))
        {
            var (zenithDeg, pressurePa) = (row.Number("apparent_zenith_deg"), row.Number("pressure_pa"));
            var normalWPerM2 = row.Number("dni_extra_w_m2");
            Oracle.AssertIrradiance(row, "haurwitz_ghi", ClearSky.HaurwitzWPerM2(zenithDeg));
            var ineichen = ClearSky.IneichenPerez(
                zenithDeg,
                pressurePa,
                row.Number("altitude_m"),
                row.Number("linke_turbidity"),
                normalWPerM2
            );
            Oracle.AssertIrradiance(row, "ineichen_ghi", ineichen.GlobalWPerM2);
            Oracle.AssertIrradiance(row, "ineichen_dni", ineichen.DirectNormalWPerM2);
            Oracle.AssertIrradiance(row, "ineichen_dhi", ineichen.DiffuseWPerM2);
            var solis = ClearSky.SimplifiedSolis(
                zenithDeg,
                pressurePa,
                row.Number("aod700"),
                row.Number("precipitable_water_cm") * 10,
                normalWPerM2
            );
            Oracle.AssertIrradiance(row, "solis_ghi", solis.GlobalWPerM2);
            Oracle.AssertIrradiance(row, "solis_dni", solis.DirectNormalWPerM2);
            Oracle.AssertIrradiance(row, "solis_dhi", solis.DiffuseWPerM2);
        }
    }

    [Fact]
    public void Direct_and_diffuse_make_up_the_global() =>
        Gen.Select(Gen.Double[0, 180], Gen.Double[0, 4000], Gen.Double[1, 15])
            .Sample(
                (zenithDeg, elevationM, linkeFactor) =>
                {
                    var sky = ClearSky.IneichenPerez(
                        zenithDeg,
                        AirMass.PressurePa(elevationM),
                        elevationM,
                        linkeFactor,
                        1361
                    );
                    var back =
                        (sky.DirectNormalWPerM2 * Math.Max(0, Math.Cos(zenithDeg * Math.PI / 180))) + sky.DiffuseWPerM2;
                    return sky is { DirectNormalWPerM2: >= 0, DiffuseWPerM2: >= 0 }
                        && Math.Abs(back - sky.GlobalWPerM2) < 1e-9;
                }
            );
}
