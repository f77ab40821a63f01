using Shaduf.Power;
using Shaduf.Water;

namespace Shaduf.Station.Tests;

public sealed class SizingTests
{
    /// <summary>Every arrangement of a small shelf, run one by one: the choice is the cheapest that meets the target.</summary>
    [Fact]
    public void The_choice_is_the_cheapest_that_meets_the_target()
    {
        var file = SmallDesign.File(brief =>
        {
            brief["tank"]!.AsObject().Remove("card");
            brief["tank"]!.AsObject().Remove("count");
            brief["rack"] = null;
        });
        var design = DesignRun.Run(file);
        var ground = GroundOf(design);
        var serving = Arrangements(ground).Where(each => each.Worst >= ground.Survey["target"]).ToList();
        Assert.NotEmpty(serving);
        var best = serving.MinBy(each => each.Cost);
        Assert.Equal(best.Cost, ground.Prices.Of(design.Choice)!.Value, 6);
        Assert.Equal(best.Choice.Pump.Name, design.Choice.Pump.Name);
        Assert.Equal(best.Choice.ModuleCount, design.Choice.ModuleCount);
        Assert.Equal(best.Choice.UsefulM3, design.Choice.UsefulM3, 9);
        foreach (var verdict in design.Sizing.Verdicts)
        {
            var own = serving.Where(each => each.Choice.Pump == verdict.Pump).ToList();
            Assert.Equal(own.Count > 0 ? own.Min(each => each.Cost) : null, verdict.Cost);
        }
    }

    [Fact]
    public void Every_pump_that_lost_has_a_reason()
    {
        using var scratch = new Scratch();
        var design = DesignRun.Run(scratch.Read(Specimen.Brief));
        Assert.Null(design.Sizing.Limit);
        Assert.Equal(design.File.Shelf.All<PumpCard>(), design.Sizing.Verdicts.Select(verdict => verdict.Pump));
        foreach (var verdict in design.Sizing.Verdicts)
        {
            Assert.Equal(
                verdict.Pump == design.Choice.Pump,
                verdict.Outcome.StartsWith("chosen", StringComparison.Ordinal)
            );
            Assert.True(verdict.Outcome.Length > 20, verdict.Outcome);
        }
    }

    private static SizingGround GroundOf(Design design) =>
        new(
            design.Brief,
            design.Survey,
            design.Sky,
            design.Demand,
            design.Well,
            design.File.Shelf,
            new(design.Brief, design.File.Shelf, design.File.Prices, design.Sky.Facing.TiltDeg)
        );

    private static IEnumerable<(Choice Choice, double Cost, double Worst)> Arrangements(SizingGround ground)
    {
        var shelf = ground.Shelf;
        var (riser, main) = (
            shelf.Find<PipeCard>(ground.Brief.Lift.Riser!)!,
            shelf.Find<PipeCard>(ground.Brief.Lift.Main!)!
        );
        var lift = Lift.Of(ground.Brief, ground.Survey, ground.Well, riser, main);
        var module = shelf.Find<ModuleCard>(ground.Brief.Array.Module!)!;
        var moduleW = Sizing.ModuleYearW(module, ground.Sky.Year, ground.Sky.PlaneWPerM2);
        var derated = DriveDerating.Share(ground.Brief.Site.ElevationM, ground.Survey["record-high"]);
        foreach (var pump in shelf.All<PumpCard>())
        {
            foreach (
                var drive in shelf
                    .All<DriveCard>()
                    .Where(drive =>
                        drive.Sheet.Drives == pump.Motor.Kind
                        && drive.Sheet.LargestMotorA * derated >= pump.Motor.RatedA
                    )
            )
            {
                var hydraulics = new Hydraulics(pump, PumpCurve.Fit(pump.Points), drive, lift);
                var range = StringSizing.InWindow(
                    module.Sheet,
                    drive.Sheet,
                    ground.Survey["record-low"],
                    ground.HotCellDegC
                );
                for (var series = range.Fewest; series <= range.Most; series++)
                {
                    var speed =
                        Math.Floor(hydraulics.SpeedByVoltageRatio(module.Sheet, series, ground.HotCellDegC) * 100)
                        / 100;
                    var table = hydraulics.Table(speed, ground.Well.YieldM3PerH);
                    for (var strings = 1; strings <= StringSizing.MostStrings(module.Sheet, drive.Sheet); strings++)
                    {
                        if (RackGrid.For(series * strings, ground.Brief.Rack, module.Body) is not { } grid)
                        {
                            continue;
                        }

                        foreach (var (tank, count) in ground.Tanks)
                        {
                            var choice = new Choice(pump, drive, module, series, strings, grid, lift, tank, count);
                            var run = YearRun.Run(
                                new(
                                    moduleW,
                                    choice.ModuleCount * ground.Losses.KeptShare,
                                    table,
                                    ground.Demand.HourM3,
                                    choice.UsefulM3
                                )
                            );
                            var fits = ground.Survey["casing"] - pump.DiameterMm >= 10 && table.FullFlowM3PerH > 0;
                            yield return (choice, ground.Prices.Of(choice)!.Value, fits ? run.WorstShare : 0);
                        }
                    }
                }
            }
        }
    }
}
