using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class NearShadeTests
{
    private static readonly IReadOnlyList<IReadOnlyList<Spot>> OneCell =
    [
        [new Spot(0, 0, 0)],
    ];

    [Fact]
    public void A_wall_hides_the_sun_below_its_top_and_between_its_ends()
    {
        var wall = new Screen(new(-5, 10, 0), new(10, 0, 0), new(0, 0, 10), 0);
        var shade = new NearShade(new(0, 0), OneCell, [wall]);
        Assert.Equal(0, shade.BeamKeptShare(new(60, 0)));
        Assert.Equal(1, shade.BeamKeptShare(new(39, 0)));
        Assert.Equal(1, shade.BeamKeptShare(new(60, 90)));
        Assert.Equal(1, shade.BeamKeptShare(new(60, 180)));
    }

    [Fact]
    public void Mesh_lets_through_its_share_and_the_darkest_cell_counts_for_its_group()
    {
        var mesh = new Screen(new(-500, 10, 0), new(1000, 0, 0), new(0, 0, 10), 0.8);
        IReadOnlyList<Spot> low = [new(0, 0, 0)];
        IReadOnlyList<Spot> high = [new(0, 0, 20)];
        IReadOnlyList<Spot> both = [new(0, 0, 0), new(0, 0, 20)];
        double Kept(params IReadOnlyList<Spot>[] groups) =>
            new NearShade(new(0, 0), groups, [mesh]).BeamKeptShare(new(75, 0));
        Assert.Equal(0.8, Kept(low), 1e-12);
        Assert.Equal(1, Kept(high), 1e-12);
        Assert.Equal(0.9, Kept(low, high), 1e-12);
        Assert.Equal(0.8, Kept(both), 1e-12);
    }

    [Fact]
    public void A_long_row_in_front_takes_the_sky_that_its_view_factor_says()
    {
        // Rows of 2.3 m at 15 deg, 4 m from front edge to front edge, facing south; from the middle of the slope.
        const double depthM = 2.3;
        const double pitchM = 4.0;
        const double upM = 1.15;
        var tiltRad = 15 * Math.PI / 180;
        var (sin, cos) = (Math.Sin(tiltRad), Math.Cos(tiltRad));
        var spot = new Spot(0, upM * cos, upM * sin);
        var front = new Screen(new(-2000, -pitchM, 0), new(4000, 0, 0), new(0, depthM * cos, depthM * sin), 0);
        var hiddenRad = Math.Atan2((depthM - upM) * sin, pitchM - ((depthM - upM) * cos));
        var expected = (1 + Math.Cos(tiltRad + hiddenRad)) / (1 + cos);
        var shade = new NearShade(
            new(15, 180),
            [
                [spot],
            ],
            [front]
        );
        Assert.Equal(expected, shade.SkyKeptShare, 0.005);
    }

    [Theory]
    [InlineData(5, 0.5568)]
    [InlineData(10, 0.2854)]
    [InlineData(15, 0.0998)]
    [InlineData(20, 0)]
    public void A_row_shades_the_part_of_the_slope_behind_it_that_the_profile_angle_says(
        double elevationDeg,
        double shaded
    )
    {
        const double depthM = 2.3;
        const double pitchM = 4.0;
        var tiltRad = 15 * Math.PI / 180;
        var (sin, cos) = (Math.Sin(tiltRad), Math.Cos(tiltRad));
        const int count = 2000;
        var front = new Screen(new(-2000, -pitchM, 0), new(4000, 0, 0), new(0, depthM * cos, depthM * sin), 0);
        var elevationRad = elevationDeg * Math.PI / 180;
        var sun = new SunDirection(0, -Math.Cos(elevationRad), Math.Sin(elevationRad));
        var hidden = Enumerable
            .Range(0, count)
            .Select(i => (i + 0.5) / count * depthM)
            .Count(up => front.Hides(new(0, up * cos, up * sin), sun));
        Assert.Equal(shaded, hidden / (double)count, 1e-3);
    }

    [Fact]
    public void A_pole_is_as_wide_from_all_sides()
    {
        var from = new Spot(0, 0, 1.5);
        var pole = Screen.Facing(new(3, 4, 0), from, 0.1, 0, 6);
        Assert.Equal(
            0.1,
            Math.Sqrt((pole.Along.EastM * pole.Along.EastM) + (pole.Along.NorthM * pole.Along.NorthM)),
            1e-12
        );
        Assert.Equal(0, (pole.Along.EastM * 3) + (pole.Along.NorthM * 4), 1e-12);
        Assert.True(pole.Hides(from, SunDirection.Of(new(60, Math.Atan2(3, 4) * 180 / Math.PI))));
    }

    [Fact]
    public void Shares_stay_shares_whatever_stands_there() =>
        Gen.Select(
                Gen.Select(Gen.Double[-20, 20], Gen.Double[-20, 20], Gen.Double[0, 5]).Array[3],
                Gen.Select(Gen.Double[0, 90], Gen.Double[0, 360]),
                Gen.Select(Gen.Double[0, 180], Gen.Double[0, 360])
            )
            .Sample(
                (points, facing, sun) =>
                {
                    Spot[] spots = [.. points.Select(p => new Spot(p.Item1, p.Item2, p.Item3))];
                    var screen = new Screen(spots[0], spots[1], spots[2], 0.3);
                    var shade = new NearShade(new(facing.Item1, facing.Item2), OneCell, [screen]);
                    return shade.SkyKeptShare is >= 0 and <= 1
                        && shade.BeamKeptShare(new(sun.Item1, sun.Item2)) is >= 0 and <= 1;
                },
                iter: 50
            );
}
