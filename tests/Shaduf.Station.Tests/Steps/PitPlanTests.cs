using Shaduf.Ground;

namespace Shaduf.Station.Tests;

/// <summary>Pits from two pegs, and the station from above.</summary>
public sealed class PitPlanTests
{
    public static TheoryData<string> Names { get; } = [.. Examples.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_leg_of_a_stand_has_its_place_on_a_footing(string example)
    {
        if (Examples.DesignOf(example).Works.Stand is not { } stands)
        {
            return;
        }

        var pits = StandPits.Of(stands);
        Assert.Equal(stands.Stand.Plan.LegCount, pits.Legs.Count);
        Assert.Equal(stands.Footings.Count, pits.Footings.Count * stands.Count);
        Assert.Equal(0, pits.Legs[0].FromFirstM);
        Assert.Equal(pits.Diagonals[0].LengthM, pits.Diagonals[1].LengthM, 1e-9);
        var (half, deep) = (stands.Footings.Block.LengthMm / 2000, stands.Footings.Block.WidthMm / 2000);
        Assert.All(
            pits.Legs,
            leg =>
                Assert.Contains(
                    pits.Footings,
                    footing => Math.Abs(footing.AlongM - leg.AlongM) < half && Math.Abs(footing.OffM - leg.OffM) < deep
                )
        );
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Two_tapes_lead_to_the_foot_of_every_column(string example)
    {
        var works = Examples.DesignOf(example).Works;
        var plan = works.Pits;
        Assert.Equal(works.Footings.Count, plan.Pits.Count);
        Assert.True(plan.LeastCrossingDeg >= PegPlace.LeastCrossingDeg);
        foreach (var pit in plan.Pits)
        {
            var (along, off) = PegPlace.Of(plan.BaseM, pit.FromAM, pit.FromBM);
            Assert.Equal(pit.Middle.XM, plan.A.XM + along, 1e-6);
            Assert.Equal(pit.Middle.YM, plan.A.YM + off, 1e-6);
            Assert.Equal(plan.Block.DepthMm / 1000, pit.GroundM - pit.BottomM, 1e-9);
        }

        var columns = plan.Pits.SelectMany(pit => pit.Columns).ToList();
        Assert.Equal(works.Rack.ColumnCount, columns.Count);
        foreach (var part in works.Rack.Steel.Parts.Where(part => part.Mark[0] == 'C'))
        {
            Assert.Contains(
                columns,
                column =>
                    column.Mark == part.Mark
                    && Math.Abs((column.Place.XM * 1000) - part.Shape.Start.XMm) < 0.01
                    && Math.Abs((column.Place.YM * 1000) - part.Shape.Start.YMm) < 0.01
                    && Math.Abs((column.FootM * 1000) - part.Shape.Start.ZMm) < 0.01
            );
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Diagonals_are_alike_two_by_two(string example)
    {
        var lines = Examples.DesignOf(example).Works.Pits.Diagonals;
        Assert.Equal(0, lines.Count % 2);
        Assert.All(lines.Chunk(2), pair => Assert.Equal(pair[0].LengthM, pair[1].LengthM, 1e-6));
    }

    /// <summary>Modules that look south have their row from west to east, and its back to the north.</summary>
    [Fact]
    public void The_field_lies_on_the_site_as_the_modules_look()
    {
        var south = new RackBearing(180, 10);
        Assert.Equal(90, south.RowDeg, 1e-9);
        Same(new(5, 0), south.At(new(10, 0)));
        Same(new(-5, 3), south.At(new(0, 3)));
        var north = new RackBearing(0, 10);
        Assert.Equal(270, north.RowDeg, 1e-9);
        Same(new(-5, -3), north.At(new(10, 3)));
    }

    [Fact]
    public void Places_come_from_the_brief_or_are_said_not_to_be_known()
    {
        var design = Examples.DesignOf("homestead");
        var plan = SitePlan.Of(design);
        Assert.False(plan.Source.IsTold);
        Assert.Null(plan.Tank);
        Assert.Empty(plan.Fence);
        var told = design with
        {
            File = design.File with
            {
                Brief = design.Brief with
                {
                    Site = design.Brief.Site with
                    {
                        Places =
                        [
                            new(SiteThing.Source, SitePlace.By(90, 20)),
                            new(SiteThing.Tank, SitePlace.By(0, 30)),
                        ],
                    },
                },
            },
        };
        Assert.True(SitePlan.Of(told).Source.IsTold);
        Same(new(20, 0), SitePlan.Of(told).Source.Place);
        Same(new(0, 30), SitePlan.Of(told).Tank!.Place);
    }

    /// <summary>At 22.4 deg south the sun of June stands in the north: shadows fall to the south, those of noon shortest.</summary>
    [Fact]
    public void Shadows_fall_away_from_the_sun()
    {
        var design = Examples.DesignOf("homestead");
        var plan = SitePlan.Of(design);
        var shadows = SolsticeShadow.Of(design.Brief.Site.LatitudeDeg, plan);
        Assert.Equal(6, shadows.Count);
        var noon = shadows.Single(each => each is { Day: "June", SolarH: 12 });
        var corner = plan.Bearing.At(new(0, plan.Field.RackM));
        var deg = 90 - 22.4 - 23.45;
        Assert.Equal(plan.Field.TopM / Math.Tan(deg * Math.PI / 180), corner.NorthM - noon.Corners[3].NorthM, 1e-6);
        var morning = shadows.Single(each => each is { Day: "June", SolarH: 9 });
        Assert.True(morning.Corners[3].EastM < corner.EastM);
    }

    private static void Same(SitePlace expected, SitePlace found)
    {
        Assert.Equal(expected.EastM, found.EastM, 1e-9);
        Assert.Equal(expected.NorthM, found.NorthM, 1e-9);
    }
}
