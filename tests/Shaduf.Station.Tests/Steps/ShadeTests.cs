using Shaduf.Sun;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>What stands near costs light, month by month, and the design says so and sizes for it.</summary>
public sealed class ShadeTests
{
    [Fact]
    public void A_high_thing_near_is_looked_at_and_costs_the_promise()
    {
        using var scratch = new Scratch();
        var free = DesignRun.Run(scratch.Read(SurroundsTests.With("horizon: [{ azimuth: 0 deg, elevation: 0 deg }]")));
        var shaded = DesignRun.Run(
            scratch.Read(
                SurroundsTests.With(
                    "near: [{ name: house, bearing: 350 deg, distance: 6 m, height: 15 m, width: 20 m }]"
                )
            )
        );
        Assert.Equal(FindingStatus.Look, Shade(shaded).Status);
        Assert.Equal(0, SkyMonth.Of(free.Sky).Max(month => month.HorizonLostShare));
        Assert.True(Shade(free).Value < 2, "fence and racks alone take little");
        Assert.True(Shade(shaded).Value > 5);
        Assert.Contains(shaded.Layout.Things, thing => thing.Name == "house");

        // The same array would give less: the choice takes more modules, or gives less water.
        Assert.True(
            shaded.Choice.ModuleCount > free.Choice.ModuleCount || shaded.Year.WorstShare < free.Year.WorstShare
        );
        Assert.True(shaded.Sizing.Limit is not null || shaded.Year.WorstShare >= shaded.Survey["target"]);
    }

    [Fact]
    public void What_is_lost_by_month_makes_up_the_way_of_the_light()
    {
        using var scratch = new Scratch();
        var design = DesignRun.Run(
            scratch.Read(SurroundsTests.With("near: [{ name: tank, bearing: 300 deg, distance: 8 m }]"))
        );
        foreach (var month in SkyMonth.Of(design.Sky))
        {
            Assert.Equal(month.OpenKWhPerM2Day * (1 - month.ShadedShare), month.PlaneKWhPerM2Day, 1e-9);
            Assert.Equal(month.PlaneKWhPerM2Day * (1 - month.ReflectedShare), month.EffectiveKWhPerM2Day, 1e-9);
            Assert.InRange(month.ReflectedShare, 0.01, 0.06);
        }

        // The tank as designed: its shell above its stand, as wide as it is.
        var screen = Assert.Single(design.Layout.Things.Single(thing => thing.Name == "tank").Screens);
        Assert.Equal(design.Choice.Tank.HeightM, screen.Upwards.UpM, 1e-9);
        Assert.Equal(
            design.Choice.Tank.DiameterM,
            Math.Sqrt(Square(screen.Along.EastM) + Square(screen.Along.NorthM)),
            1e-9
        );
    }

    [Fact]
    public void Clear_sky_months_lie_above_the_months_given()
    {
        var clear = SkyMonth.ClearKWhPerM2Day(new(-2.1, 34.8, 1240, 3), 4);
        Assert.All(clear, month => Assert.InRange(month, 6, 9));
    }

    private static double Square(double value) => value * value;

    private static Finding Shade(Design design) => design.Findings.Single(finding => finding.Id == "sky/shade");
}
