using System.Text.Json.Nodes;
using CsCheck;

namespace Shaduf.Station.Tests;

public sealed class QuickRunTests
{
    private static readonly IReadOnlyList<SchemaField> s_brief = SchemaField.Of(StationFile.Schema());

    private static readonly Gen<(int Field, int Value)> s_change = Gen.Select(Gen.Int[0, 9999], Gen.Int[0, 99]);

    [Theory]
    [InlineData("homestead")]
    [InlineData("hilltop-village")]
    [InlineData("plain-school")]
    public void A_held_choice_gives_the_water_and_the_price_that_the_search_gave(string example)
    {
        var file = StationFile.Read(Examples.PathOf(example));
        var chosen = DesignRun.Run(file);
        var held = DesignRun.Run(file, new Quick(Pin.Of(chosen), new()), null);
        Assert.Equal(chosen.Choice.Pump, held.Choice.Pump);
        Assert.Equal(chosen.Choice.Facing, held.Choice.Facing);
        Assert.Equal(chosen.Choice.ModuleCount, held.Choice.ModuleCount);
        foreach (var (was, now) in chosen.Months.Zip(held.Months))
        {
            // The cable to the racks is reckoned from the customary rack before the racks are chosen.
            Assert.Equal(was.SupplyM3PerDay, now.SupplyM3PerDay, 1e-4);
            Assert.Equal(was.PumpableM3PerDay, now.PumpableM3PerDay, 1e-3);
        }

        Assert.Equal(chosen.Offer.Total, held.Offer.Total);
        Assert.Equal(chosen.Works.Rack.MassKg, held.Works.Rack.MassKg);
    }

    [Fact]
    public void What_the_brief_says_goes_before_what_is_held()
    {
        using var scratch = new Scratch();
        var open = SmallStation.OfFreeChoice();
        var chosen = DesignRun.Run(scratch.Read(open.ToJsonString()));
        open["array"]!["tilt"] = "21 deg";
        open["tank"] = new JsonObject { ["card"] = "tank-5", ["stand"] = "0.5 m" };
        var held = DesignRun.Run(scratch.Read(open.ToJsonString()), new Quick(Pin.Of(chosen), new()), null);
        Assert.Equal(21, held.Choice.Facing.TiltDeg);
        Assert.Equal("tank-5", held.Choice.Tank.Name);
        Assert.Equal(chosen.Choice.Pump.Name, held.Choice.Pump.Name);
    }

    [Fact]
    public void A_remembered_step_never_gives_yesterdays_answer() =>
        s_change
            .Array[6]
            .Sampled(
                changes =>
                {
                    using var scratch = new Scratch();
                    var brief = SmallStation.Brief();
                    var pin = Pin.Of(DesignRun.Run(scratch.Read(brief.ToJsonString())));
                    var memory = new StepMemory();
                    foreach (var (fieldIndex, valueIndex) in changes)
                    {
                        var field = s_brief[fieldIndex % s_brief.Count];
                        var changed = brief.DeepClone();
                        field.Put(changed, field.Values[valueIndex % field.Values.Count]);
                        StationFile file;
                        try
                        {
                            file = scratch.Read(changed.ToJsonString());
                        }
                        catch (BadInputException)
                        {
                            continue;
                        }

                        brief = changed;
                        var remembered = DesignRun.Run(file, new Quick(pin, memory), null);
                        Assert.Equal(
                            DesignText.Of(DesignRun.Run(file, new Quick(pin, new()), null)),
                            DesignText.Of(remembered)
                        );
                    }
                },
                count: 6,
                huntShare: 1 / 25.0
            );
}
