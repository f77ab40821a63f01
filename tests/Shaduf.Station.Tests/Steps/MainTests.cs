using System.Text.Json.Nodes;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>The pumped main: classes by reach, the closed float valve, what is laid and billed.</summary>
public sealed class MainTests
{
    private static readonly Design s_hilly = SmallDesign.Of(Hilly);

    [Fact]
    public void The_class_changes_along_the_way_and_holds_everywhere()
    {
        var ground = new SizingGround(
            s_hilly.Brief,
            s_hilly.Survey,
            s_hilly.Sky,
            s_hilly.Demand,
            s_hilly.Source,
            s_hilly.File.Shelf,
            new(s_hilly.Brief, s_hilly.File.Shelf, s_hilly.File.Prices)
        );
        var duty = MainDuty.Of(s_hilly.Brief, s_hilly.Survey, 3, 110);
        var lays = Pipes.Holding(ground, 3, 110);
        Assert.Contains(lays, lay => lay.Reaches.Count > 1);
        Assert.All(
            lays,
            lay =>
            {
                Assert.True(MainProfile.Of(duty, lay).Holds);
                Assert.Equal(Lift.LengthM(s_hilly.Brief.Lift), lay.LengthM, 5e-7);
                Assert.All(
                    lay.Reaches.Zip(lay.Reaches.Skip(1)),
                    pair =>
                    {
                        Assert.Equal(pair.First.ToM, pair.Second.FromM);
                        Assert.NotEqual(pair.First.Pipe, pair.Second.Pipe);
                        Assert.Equal(pair.First.Pipe.OuterMm, pair.Second.Pipe.OuterMm);
                    }
                );
            }
        );
    }

    [Fact]
    public void The_weaker_class_would_not_hold_where_the_stronger_lies()
    {
        var duty = MainDuty.Of(s_hilly.Brief, s_hilly.Survey, 3, 130);
        var classes = s_hilly.File.Shelf.All<PipeCard>().Where(card => card.OuterMm == 63).ToList();
        var graded = MainClasses.Graded(duty, classes)!;
        var strong = graded.Reaches.Where(reach => reach.Pipe.Name == "pe-63-pn16").ToList();
        var weakest = MainLay.Of(s_hilly.Brief.Lift, classes.MinBy(card => card.PressureBar)!);
        var failing = MainProfile.Of(duty, weakest).Points.Where(point => point.NeededBar > point.AllowedBar).ToList();
        Assert.NotEmpty(failing);
        Assert.All(
            failing,
            point => Assert.Contains(strong, reach => point.ChainageM >= reach.FromM && point.ChainageM <= reach.ToM)
        );
    }

    [Fact]
    public void A_float_valve_asks_more_of_the_pipe_than_a_signal_cable()
    {
        MainProfile With(TankFullStop way) =>
            MainProfile.Of(
                MainDuty.Of(
                    s_hilly.Brief with
                    {
                        Lift = s_hilly.Brief.Lift with { TankFull = way },
                    },
                    s_hilly.Survey,
                    3,
                    110
                ),
                s_hilly.Choice.Lift.Lay
            );
        var (cable, valve) = (With(TankFullStop.SignalCable), With(TankFullStop.PressureStop));
        Assert.All(
            cable.Points.Zip(valve.Points),
            pair =>
                Assert.Equal(
                    pair.First.ClosedBar
                        + Shaduf.Water.PressureClass.PressureBar(cable.RiseM, s_hilly.Choice.Lift.Water.DensityKgPerM3),
                    pair.Second.ClosedBar,
                    5e-10
                )
        );
    }

    [Fact]
    public void What_is_laid_is_billed()
    {
        var (main, lines) = (s_hilly.Works.Main, s_hilly.Takeoff.Lines);
        double Billed(string item) => lines.Where(line => line.Item == item).Sum(line => line.Quantity);
        Assert.Equal(2, Billed("line-air-valve"));
        Assert.Equal(1, Billed("washout"));
        Assert.Equal(2, Billed("line-valve"));
        Assert.Contains(main.Blocks, block => block.What == "a bend of 30 deg" && block.ChainageM == 200);
        Assert.Equal(1, Billed("pressure-switch"));
        Assert.Equal(0, Billed("signal-cable"));
        Assert.True(main.Trench.DigM3 > main.Trench.FillM3 && main.Trench.SandM3 == 0);
        Assert.Equal(1.03 * s_hilly.Choice.Lift.MainM, Billed("pe-63-pn16") - (1.03 * 100), 5e-7);
        Assert.Contains(s_hilly.Workings, sheet => sheet.Title.Contains("by the old rule", StringComparison.Ordinal));
    }

    [Fact]
    public void The_named_main_is_the_only_one_priced_and_a_choice_is_priced_beside_others()
    {
        Assert.Equal("pe-63-pn16", Assert.Single(s_hilly.Works.EconomicMain.Mains).Main.Name);
        var free = SmallDesign.Of(brief => brief["lift"]!["main"] = "choose");
        Assert.True(free.Works.EconomicMain.Mains.Count > 1);
        Assert.Equal(
            free.Works.EconomicMain.Mains.Where(each => each.Cost is not null).Min(each => each.Cost),
            free.Works.EconomicMain.Mains.Single(each => each.Main.Name == free.Choice.Lift.Lay.Name).Cost
        );
    }

    [Fact]
    public void The_test_presses_no_part_beyond_its_limit_and_every_figure_is_a_number()
    {
        var test = s_hilly.Works.Main.Test;
        Assert.All(
            new[] { test.TestBar, test.VolumeL, test.AddedL, test.MostReleasedL, test.FlushLPerS, test.ChlorineKg },
            value => Assert.True(double.IsFinite(value) && value > 0)
        );
        Assert.True(test.TestBar >= test.DesignBar);
        Assert.NotEqual(
            FindingStatus.Stop,
            s_hilly.Findings.Single(finding => finding.Id == "pipe/test-pressure").Status
        );
    }

    // Down into a dip and up to the tank: 1600 m with a high point, a low one, and a bend.
    private static void Hilly(JsonNode brief)
    {
        brief["lift"]!["route"] = JsonNode.Parse(
            """
            [ { "chainage": "0 m", "elevation": "400 m" }, { "chainage": "200 m", "elevation": "404 m", "bend": "30 deg" },
              { "chainage": "600 m", "elevation": "393 m" }, { "chainage": "1600 m", "elevation": "436 m" } ]
            """
        );
        brief["lift"]!["tankInlet"] = "439 m";
    }
}
