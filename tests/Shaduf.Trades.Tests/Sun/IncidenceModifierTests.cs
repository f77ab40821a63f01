using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class IncidenceModifierTests
{
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
