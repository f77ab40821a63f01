using CsCheck;
using Shaduf.Power;

namespace Shaduf.Station.Tests;

/// <summary>Tanks on the site: never on each other, nor on what stands there.</summary>
public sealed class TankPlacesTests
{
    /// <summary>Whatever number of racks and tanks, wherever the first was told to stand: footprints keep apart.</summary>
    [Fact]
    public void Footprints_never_overlap() =>
        Gen.Select(
                Gen.Select(Gen.Double[2, 40], Gen.Double[1.5, 5], Gen.Double[0.5, 8], Gen.Int[1, 6]),
                Gen.Double[0, 360],
                Gen.Select(Gen.Double[0, 360], Gen.Double[1, 45], Gen.Bool),
                Gen.Int[1, 9],
                Gen.Select(Gen.Double[0.4, 5], Gen.Double[1, 6])
            )
            .Sample(
                (racks, azimuthDeg, told, count, sizes) =>
                {
                    var (lengthM, rackM, wayM, rackCount) = racks;
                    var field = new GuardField(lengthM, rackM, rackM + wayM, rackCount, 1, 2);
                    var bearing = new RackBearing(azimuthDeg, lengthM);
                    var margin = sizes.Item2;
                    SitePlace[] fence =
                    [
                        bearing.At(new(-margin, -margin)),
                        bearing.At(new(lengthM + margin, -margin)),
                        bearing.At(new(lengthM + margin, field.DepthM + margin)),
                        bearing.At(new(-margin, field.DepthM + margin)),
                    ];
                    var taken = new SiteTaken(
                        field,
                        bearing,
                        fence,
                        [bearing.At(new(lengthM / 2, field.DepthM + 0.5))]
                    );
                    var radiusM = sizes.Item1;
                    SitePlace? first = told.Item3 ? SitePlace.By(told.Item1, told.Item2) : null;
                    var places = TankPlaces.Of(taken, first, count, radiusM);
                    Assert.Equal(count, places.Middles.Count);
                    foreach (var (i, place) in places.Middles.Index())
                    {
                        // Only the first may lie badly, where it was told so: a finding stops it.
                        Assert.True(
                            taken.FreeM(place, radiusM) >= 0 || (i == 0 && first is not null && places.FreeM < 0)
                        );
                        Assert.All(
                            places.Middles.Take(i),
                            other =>
                                Assert.True(
                                    double.Hypot(other.EastM - place.EastM, other.NorthM - place.NorthM) > 2 * radiusM
                                )
                        );
                    }
                }
            );

    [Fact]
    public void Three_tanks_near_the_racks_stand_in_a_row_away_from_them()
    {
        var taken = new SiteTaken(new(12, 3, 6, 1, 1, 2), new(180, 12), [], []);
        var places = TankPlaces.Of(taken, new(0, 8), 3, 1.5);
        Assert.Equal([8, 12, 16], places.Middles.Select(place => Math.Round(place.NorthM, 6)));
        Assert.All(places.Middles, place => Assert.Equal(0, place.EastM, 6));
    }

    [Fact]
    public void A_tank_told_onto_a_rack_is_seen()
    {
        var taken = new SiteTaken(new(12, 3, 6, 1, 1, 2), new(180, 12), [], []);
        Assert.True(TankPlaces.Of(taken, new(0, 1), 1, 1.5).FreeM < 0);
    }
}
