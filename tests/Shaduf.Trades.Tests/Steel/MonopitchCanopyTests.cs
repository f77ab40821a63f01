using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class MonopitchCanopyTests
{
    private static readonly Gen<(double TiltDeg, double Share)> Plane = Gen.Select(
        Gen.Double[0, MonopitchCanopy.SteepestDeg],
        Gen.Double[0, 1]
    );

    [Fact]
    public void A_blocked_plane_is_never_taken_to_lift_less_than_a_free_one() =>
        Plane.Sample(
            (tilt, share) =>
                MonopitchCanopy.Of(tilt, share).Force.UpCoefficient <= MonopitchCanopy.Of(tilt, 0).Force.UpCoefficient
        );

    [Fact]
    public void Every_part_is_pressed_and_lifted() =>
        Plane.Sample(
            (tilt, share) =>
            {
                var canopy = MonopitchCanopy.Of(tilt, share);
                Assert.All(
                    [canopy.Force, canopy.Middle, canopy.Sides, canopy.Edges],
                    pair => Assert.True(pair.DownCoefficient > 0 && pair.UpCoefficient < 0)
                );
            }
        );

    [Fact]
    public void Above_the_end_of_the_table_nothing_is_stretched() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MonopitchCanopy.Of(30.01, 0));
}
