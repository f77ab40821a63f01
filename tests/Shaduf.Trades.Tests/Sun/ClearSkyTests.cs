using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class ClearSkyTests
{
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
