namespace Shaduf.Station.Tests;

/// <summary>What goes on the truck.</summary>
public sealed class LoadingListTests
{
    public static TheoryData<string> Names { get; } = [.. Examples.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void All_steel_and_all_modules_are_on_it_and_no_trip_is_too_heavy(string example)
    {
        var design = Examples.DesignOf(example);
        var list = LoadingList.Of(design);
        var rack = design.Works.Rack;
        var steel = list
            .Items.Where(item =>
                rack.Steel.Groups.Any(part => item.What.StartsWith($"{part.Mark} ", StringComparison.Ordinal))
            )
            .Sum(item => item.MassKg);

        // Cap plates come on top of the bars.
        Assert.InRange(steel, rack.MassKg - 0.01, rack.MassKg * 1.05);
        Assert.Equal(
            design.Choice.ModuleCount,
            list.Items.Where(item => item.What.StartsWith("modules", StringComparison.Ordinal)).Sum(item => item.Count)
        );
        Assert.All(
            list.Items.GroupBy(item => item.Trip),
            trip => Assert.True(trip.Sum(item => item.MassKg) <= list.PayloadKg + 1e-6 || trip.Count() == 1)
        );
        Assert.Equal(Enumerable.Range(1, list.TripCount), list.Items.Select(item => item.Trip).Distinct());
    }

    [Fact]
    public void A_small_truck_goes_more_often_and_carries_the_same()
    {
        var design = Examples.DesignOf("hilltop-village");
        var crew = design.Brief.Rack.Crew with { PayloadKg = 800 };
        var small = LoadingList.Of(
            design with
            {
                File = design.File with { Brief = design.Brief with { Rack = design.Brief.Rack with { Crew = crew } } },
            }
        );
        var usual = LoadingList.Of(design);
        Assert.True(small.TripCount > usual.TripCount);
        Assert.Equal(usual.Items.Sum(item => item.MassKg), small.Items.Sum(item => item.MassKg), 1e-6);
        Assert.True(small.IsPayloadTold);
    }
}
