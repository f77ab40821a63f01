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

    /// <summary>The truck carries what is bought: the masses of stand, fence, cement, pipes and tanks, to the gram.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void What_is_loaded_weighs_what_was_taken_off(string example)
    {
        var design = Examples.DesignOf(example);
        var (works, choice) = (design.Works, design.Choice);
        var items = LoadingList.Of(design).Items;
        double Kg(Func<LoadItem, bool> isOne) => items.Where(isOne).Sum(item => item.MassKg);
        bool IsCement(LoadItem item) => item.What.StartsWith("cement", StringComparison.Ordinal);
        Assert.Equal(works.Stand?.MassKg ?? 0, Kg(item => item.IsOfStand && !IsCement(item)), 1e-6);
        Assert.Equal(works.Guard.Fence?.Steel.MassKg ?? 0, Kg(item => item.What.StartsWith('N')), 1e-6);
        Assert.Equal(
            50 * design.Takeoff.Lines.Where(line => line.Item == "cement-50kg").Sum(line => line.Quantity),
            Kg(IsCement),
            1e-6
        );
        Assert.Equal(
            choice.TankCount * StandTank.Of(choice.Tank).EmptyKg,
            Kg(item => item.What.Contains($"tank {choice.Tank.Name}", StringComparison.Ordinal)),
            1e-6
        );
        foreach (var pipe in choice.Lift.Lay.Reaches.Select(reach => reach.Pipe).Distinct())
        {
            var metres = design
                .Takeoff.Lines.Where(line => line.Item == pipe.Name && line.Section != Money.BillSection.SourceAndPump)
                .Sum(line => line.Quantity);
            Assert.Equal(
                metres * pipe.MassKgPerM,
                Kg(item => item.What.StartsWith($"pipe {pipe.Name},", StringComparison.Ordinal)),
                1e-6
            );
        }

        Assert.Single(items, item => item.What.StartsWith("pump", StringComparison.Ordinal));
        Assert.All(items.Where(item => item.IsAlone), tank => Assert.Single(items, item => item.Trip == tank.Trip));
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
