using System.Collections.Immutable;
using System.Text.Json.Nodes;
using CsCheck;
using Shaduf.Power;
using Shaduf.Water;

namespace Shaduf.Station.Tests;

public sealed class SizingTests
{
    private static readonly Gen<(int People, double Target, string Over, double Restart, double Dearer)> s_any =
        Gen.Select(
            Gen.Int[20, 700],
            Gen.Double[0.4, 1],
            Gen.Bool.Select(isYear => isYear ? "year" : "worst month"),
            Gen.Double[0.5, 1],
            Gen.Double[0.2, 5]
        );

    /// <summary>
    /// The search passes most arrangements over by bounds. On small shelves every arrangement is run, one by one, and
    /// the front, the choice and each pump's cheapest come out the same.
    /// </summary>
    [Fact]
    public void The_search_finds_what_running_every_arrangement_finds() =>
        s_any.Sample(
            each =>
            {
                var ground = GroundOf(
                    brief =>
                    {
                        brief["uses"]!["people"]!["count"] = each.People;
                        brief["uses"]!["target"] = FormattableString.Invariant($"{each.Target * 100:0.###} %");
                        brief["uses"]!["targetOver"] = each.Over;
                        brief["tank"] = new JsonObject
                        {
                            ["restart"] = FormattableString.Invariant($"{each.Restart * 100:0.###} %"),
                        };
                        brief["rack"] = null;
                        brief["array"]!.AsObject().Remove("tilt");
                    },
                    each.Dearer
                );
                Agrees(ground, Sizing.Of(ground));
            },
            iter: 12,
            threads: 1
        );

    private static void Agrees(SizingGround ground, Sizing sizing)
    {
        var all = Arrangements(ground).ToList();
        Assert.Equal(all.Count, sizing.Tally.CandidateCount);
        Assert.InRange(sizing.Tally.RunCount, 0, all.Count);
        var serving = all.Where(each => each.Share >= ground.Survey["target"] - 1e-9).ToList();
        Assert.Equal(serving.Count > 0, sizing.Limit is null);
        foreach (var verdict in sizing.Verdicts)
        {
            var own = serving.Where(each => each.Choice.Pump == verdict.Pump).ToList();
            Assert.Equal(own.Count > 0, verdict.Cost is not null);
            Assert.Equal(own.Count > 0 ? own.Min(each => each.Cost) : 0, verdict.Cost ?? 0, 5e-7);
        }

        if (serving.Count == 0)
        {
            return;
        }

        Assert.Equal(serving.Min(each => each.Cost), ground.Prices.Of(sizing.Choice)!.Value, 5e-7);

        // The front of the pumps that serve, from the cheapest to the one that meets most.
        var pumps = sizing.Verdicts.Where(each => each.Cost is not null).Select(each => each.Pump).ToHashSet();
        var front = new List<(double Cost, double Share)>();
        foreach (
            var each in all.Where(each => pumps.Contains(each.Choice.Pump))
                .OrderBy(each => each.Cost)
                .ThenByDescending(each => each.Share)
        )
        {
            if (front.Count == 0 || each.Share > front[^1].Share + 1e-12)
            {
                front.Add((each.Cost, each.Share));
            }
        }

        Assert.Equal(front.Count, sizing.Front.Count);
        Assert.All(
            front.Zip(sizing.Front),
            pair =>
            {
                Assert.Equal(pair.First.Cost, pair.Second.Cost, 5e-7);
                Assert.Equal(pair.First.Share, pair.Second.Share, 5e-10);
            }
        );
    }

    [Fact]
    public void Every_pump_that_lost_has_a_reason()
    {
        using var scratch = new Scratch();
        var design = DesignRun.Run(scratch.Read(Specimen.Brief));
        Assert.Null(design.Sizing.Limit);
        Assert.Equal(
            design.File.Shelf.All<PumpCard>().Where(design.Source.Takes),
            design.Sizing.Verdicts.Select(verdict => verdict.Pump)
        );
        foreach (var verdict in design.Sizing.Verdicts)
        {
            Assert.Equal(
                verdict.Pump == design.Choice.Pump,
                verdict.Outcome.StartsWith("chosen", StringComparison.Ordinal)
            );
            Assert.True(verdict.Outcome.Length > 20, verdict.Outcome);
        }
    }

    // The settled ground of the small station with changes, its tanks dearer by a factor.
    private static SizingGround GroundOf(Action<JsonNode> change, double tankFactor)
    {
        var file = SmallDesign.File(change);
        var (brief, survey) = (file.Brief, Survey.Of(file.Brief));
        var demand = DemandYear.Of(brief, survey);
        var prices = file.Prices with
        {
            Rates = file.Prices.Rates.ToDictionary(
                rate => rate.Key,
                rate =>
                    file.Shelf.Find<TankCard>(rate.Key) is null
                        ? rate.Value
                        : rate.Value with
                        {
                            Amount = Math.Round(rate.Value.Amount * (decimal)tankFactor, 2),
                        }
            ),
        };
        return new(
            brief,
            survey,
            Sky.Of(brief, survey, demand),
            demand,
            Source.Of(brief, survey, demand),
            file.Shelf,
            new(brief, file.Shelf, prices)
        );
    }

    private static IEnumerable<(Choice Choice, double Cost, double Share)> Arrangements(SizingGround ground)
    {
        var shelf = ground.Shelf;
        var (riser, main) = (
            shelf.Find<PipeCard>(ground.Brief.Lift.Riser!)!,
            shelf.Find<PipeCard>(ground.Brief.Lift.Main!)!
        );
        var foot = new Riser(riser, ((Well)ground.Source).PumpSettingM);
        var lift = Lift.Of(ground.Brief, ground.Survey, ground.Source, foot, MainLay.Of(ground.Brief.Lift, main));
        var module = shelf.Find<ModuleCard>(ground.Brief.Array.Module!)!;
        var years = ground.Sky.Planes.ToDictionary(
            plane => plane.Facing,
            plane => Sizing.ModuleYearW(module, ground.Sky.Year, plane.Light)
        );
        var derated = DriveDerating.Share(ground.Brief.Site.ElevationM, ground.Survey["record-high"]);
        foreach (var pump in shelf.All<PumpCard>().Where(ground.Source.Takes))
        {
            foreach (
                var drive in shelf
                    .All<DriveCard>()
                    .Where(drive =>
                        drive.Sheet.Drives == pump.Motor.Kind
                        && drive.LowestMotorV <= pump.Motor.RatedV
                        && pump.Motor.RatedV <= drive.HighestMotorV
                        && drive.Sheet.LargestMotorA * derated >= pump.Motor.RatedA
                    )
            )
            {
                var hydraulics = new Hydraulics(
                    pump,
                    pump.Curve,
                    drive,
                    lift,
                    MotorFeed.Of(pump, drive, lift, ground.Survey, ground.Shelf)
                );
                if (!hydraulics.Feed.Serves)
                {
                    continue;
                }

                var range = StringSizing.InWindow(
                    module.Sheet,
                    drive.Sheet,
                    ground.Survey["record-low"],
                    ground.HotCellDegC,
                    ground.AgeYears
                );
                for (var series = range.Fewest; series <= range.Most; series++)
                {
                    var speed =
                        Math.Floor(
                            hydraulics.SpeedByVoltageRatio(module.Sheet, series, ground.HotCellDegC, ground.AgeYears)
                                * 100
                        ) / 100;
                    var table = hydraulics.Table(speed, ground.Source.YieldM3PerH);
                    var mostStrings = Math.Min(
                        StringSizing.MostStrings(module.Sheet, drive.Sheet),
                        (int)(drive.Sheet.LargestInputA / module.Sheet.MaximumPowerA)
                    );
                    var mostW = 4 * Math.Max(table.FullPowerW, hydraulics.InputW(pump.Motor.ShaftKW * 1000) / 2);
                    for (var strings = 1; strings <= mostStrings; strings++)
                    {
                        if (strings > 1 && series * strings * module.Sheet.RatedW > mostW)
                        {
                            break;
                        }

                        if (RackGrid.For(series * strings, ground.Brief.Rack, module.Body) is not { } grid)
                        {
                            continue;
                        }

                        foreach (var (facing, moduleW) in years)
                        {
                            foreach (var (tank, count) in ground.Tanks)
                            {
                                var choice = new Choice(
                                    pump,
                                    drive,
                                    module,
                                    series,
                                    strings,
                                    grid,
                                    facing,
                                    lift,
                                    tank,
                                    count
                                );
                                yield return (
                                    choice,
                                    ground.Prices.Of(choice)!.Value,
                                    ShareOf(ground, choice, moduleW, table)
                                );
                            }
                        }
                    }
                }
            }
        }
    }

    private static double ShareOf(SizingGround ground, Choice choice, ImmutableArray<double> moduleW, PumpTable table)
    {
        if (ground.Survey["casing"] - choice.Pump.InWater.DiameterMm < 10)
        {
            return 0;
        }

        var run = YearRun.Run(
            new(moduleW, choice.ModuleCount * ground.Losses.KeptShare, table, ground.Demand.HourM3, choice.UsefulM3)
            {
                Stops = ground.Stops,
            }
        );
        return ground.Span == TargetSpan.Year ? run.YearShare : run.WorstShare;
    }
}
