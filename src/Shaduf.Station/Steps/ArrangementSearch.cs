using System.Collections.Immutable;
using Shaduf.Power;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Searches the arrangements of one pump from the cheapest upwards.</summary>
/// <param name="ground">All that is settled before the choice.</param>
/// <param name="isLoose">
/// Whether drives too small, strings outside the window, uneven racks and missing rates are let pass, to find what comes
/// nearest when nothing else can be arranged at all; what is found then never serves.
/// </param>
internal sealed class ArrangementSearch(SizingGround ground, bool isLoose)
{
    // More array than this many times the pump's full power only spills.
    private const double MostArrayFactor = 4;

    // What the kernels take: the pump's slowest speed, modules in a string, strings side by side.
    private const double LeastSpeedRatio = 0.1;
    private const int MostInSeries = 100;
    private const int MostStrings = 200;
    private readonly Dictionary<string, ImmutableArray<double>> moduleYears = [];

    /// <summary>Year runs made so far.</summary>
    public int RunCount { get; private set; }

    /// <summary>The best arrangement of a pump, and why it fails when it does.</summary>
    public PumpSearch Best(PumpCard pump)
    {
        var curve = PumpCurve.Fit(pump.Points);
        var fits = ground.Survey["casing"] - pump.DiameterMm >= WellFindings.LeastCasingRoomMm;
        var all = Arrangements(pump, curve).OrderBy(each => each.Cost).ToList();
        if (all.Count == 0)
        {
            var (kind, why) = NoArrangement(pump);
            return new(pump, null, null, false, kind, why);
        }

        if (isLoose)
        {
            var ((kind, why), (loose, met)) = (NoArrangement(pump), Nearest(all));
            return new(pump, loose, met, false, kind, why);
        }

        var arrays = new Dictionary<(PumpTable Table, string Module, int Count), YearRun>();
        if (fits)
        {
            foreach (var each in all.Where(each => each.Table.FullFlowM3PerH > 0 && MayServe(each, arrays)))
            {
                var share = Run(each).WorstShare;
                if (share >= ground.Survey["target"])
                {
                    return new(pump, each, share, true, "", "");
                }
            }
        }

        var (nearest, best) = Nearest(all);
        var (limit, says) = PumpReasons.Of(ground, nearest, Run(nearest), fits);
        return new(pump, nearest, best, false, limit, says);
    }

    // A month can never receive more than it pumps and a full tank left over from the month before. What an array can
    // pump does not depend on the tank, so one run an array rules out most tanks.
    private bool MayServe(
        Arrangement arrangement,
        Dictionary<(PumpTable Table, string Module, int Count), YearRun> arrays
    )
    {
        var key = (arrangement.Table, arrangement.Choice.Module.Name, arrangement.Choice.ModuleCount);
        if (!arrays.TryGetValue(key, out var run))
        {
            run = Run(arrangement);
            arrays.Add(key, run);
        }

        var target = ground.Survey["target"];
        return Enumerable
            .Range(0, 12)
            .All(month => run.PumpableM3[month] + arrangement.Choice.UsefulM3 >= target * run.DemandM3[month]);
    }

    // More tank never delivers less: the largest tank of each array is enough to find what comes nearest.
    private (Arrangement Arrangement, double Share) Nearest(IReadOnlyList<Arrangement> all) =>
        all.GroupBy(each => (each.Table, each.Choice.Module.Name, each.Choice.ModuleCount))
            .Select(array => array.MaxBy(each => each.Choice.UsefulM3)!)
            .Select(each => (each, Share: Run(each).WorstShare))
            .OrderByDescending(pair => pair.Share)
            .ThenBy(pair => pair.each.Cost)
            .First();

    private YearRun Run(Arrangement arrangement)
    {
        RunCount++;
        return YearRun.Run(
            new(
                arrangement.ModuleW,
                arrangement.Choice.ModuleCount * ground.Losses.KeptShare,
                arrangement.Table,
                ground.Demand.HourM3,
                arrangement.Choice.UsefulM3
            )
        );
    }

    private IEnumerable<Arrangement> Arrangements(PumpCard pump, PumpCurve curve)
    {
        var bestM3PerH = Math.Min(curve.BestFlowM3PerS * 3600, ground.Well.YieldM3PerH);
        var pipes =
            from riser in Pipes.Risers(ground, bestM3PerH, curve.ShutOffHeadM)
            from main in Pipes.Mains(ground, bestM3PerH, curve.ShutOffHeadM)
            select (riser, main);
        foreach (var drive in Drives(pump, isLoose))
        {
            foreach (var (riser, main) in pipes)
            {
                var hydraulics = new Hydraulics(
                    pump,
                    curve,
                    drive,
                    Lift.Of(ground.Brief, ground.Survey, ground.Well, riser, main)
                );
                foreach (
                    var arrangement in ground.Modules.Where(HasRack).SelectMany(module => Arrays(hydraulics, module))
                )
                {
                    yield return arrangement;
                }
            }
        }
    }

    private IEnumerable<Arrangement> Arrays(Hydraulics hydraulics, ModuleCard module)
    {
        var range = SeriesOf(module, hydraulics.Drive);
        if (isLoose && !range.Exists)
        {
            range = range with { Fewest = Math.Max(1, range.Most), Most = Math.Max(1, range.Most) };
        }

        var tables = new Dictionary<double, PumpTable>();
        for (var series = range.Fewest; series <= range.Most; series++)
        {
            // Down to the next hundredth, so that strings of nearly the same voltage share a table.
            var speed =
                Math.Floor(hydraulics.SpeedByVoltageRatio(module.Sheet, series, ground.HotCellDegC) * 100) / 100;
            if (!(speed >= LeastSpeedRatio))
            {
                continue;
            }

            if (!tables.TryGetValue(speed, out var table))
            {
                table = hydraulics.Table(speed, ground.Well.YieldM3PerH);
                tables.Add(speed, table);
            }

            var mostW =
                MostArrayFactor
                * Math.Max(table.FullPowerW, hydraulics.InputW(hydraulics.Pump.Motor.ShaftKW * 1000) / 2);
            var mostStrings = Math.Max(StringsOf(module, hydraulics.Drive), isLoose ? 1 : 0);
            for (var strings = 1; strings <= mostStrings; strings++)
            {
                if (strings > 1 && series * strings * module.Sheet.RatedW > mostW)
                {
                    break;
                }

                foreach (var arrangement in WithTanks(hydraulics, module, (series, strings), table))
                {
                    yield return arrangement;
                }
            }
        }
    }

    private IEnumerable<Arrangement> WithTanks(
        Hydraulics hydraulics,
        ModuleCard module,
        (int Series, int Strings) array,
        PumpTable table
    )
    {
        var count = array.Series * array.Strings;
        var grid = RackGrid.For(count, ground.Brief.Rack, module.Body) ?? (isLoose ? new(1, count, 1) : null);
        if (grid is null)
        {
            yield break;
        }

        foreach (var (tank, tankCount) in ground.Tanks)
        {
            var choice = new Choice(
                hydraulics.Pump,
                hydraulics.Drive,
                module,
                array.Series,
                array.Strings,
                grid,
                hydraulics.Lift,
                tank,
                tankCount
            );
            if ((ground.Prices.Of(choice) ?? (isLoose ? 0 : null)) is { } cost)
            {
                yield return new(choice, hydraulics, table, ModuleYear(module), cost);
            }
        }
    }

    private bool HasRack(ModuleCard module) => RackSections.Of(ground.Brief.Rack, module, ground.Shelf) is not null;

    private IEnumerable<DriveCard> Drives(PumpCard pump, bool isAnySize)
    {
        var share = Electrics.DeratingShareOf(ground.Brief, ground.Survey);
        return ground
            .Shelf.All<DriveCard>()
            .Where(drive => drive.Fits(pump.Motor, share) || (isAnySize && drive.Sheet.Drives == pump.Motor.Kind));
    }

    private ImmutableArray<double> ModuleYear(ModuleCard module)
    {
        if (!moduleYears.TryGetValue(module.Name, out var year))
        {
            year = Sizing.ModuleYearW(module, ground.Sky.Year, ground.Sky.PlaneWPerM2);
            moduleYears.Add(module.Name, year);
        }

        return year;
    }

    private (string Kind, string Says) NoArrangement(PumpCard pump)
    {
        if (!Drives(pump, isAnySize: false).Any())
        {
            return (
                "drive",
                Invariant(
                    $"no drive card suits its motor of {pump.Motor.RatedV:0} V and {pump.Motor.RatedA:0.0} A after derating for height and heat"
                )
            );
        }

        var ranges = Drives(pump, isAnySize: false)
            .SelectMany(drive => ground.Modules.Select(module => (module, drive, Range: SeriesOf(module, drive))))
            .Where(each => each.Range.Exists)
            .ToList();
        if (ranges.Count == 0)
        {
            return ("drive", "no string of the modules fits the window of its drive");
        }

        var hasRack = ranges.Exists(each => HasEqualRacks(each.module, each.drive, each.Range));
        return hasRack
            ? ("price", "the price book lacks a rate for it, its drive, its modules, pipes or tank")
            : ("rack", "no equal racks of these rows and columns hold its strings");
    }

    private bool HasEqualRacks(ModuleCard module, DriveCard drive, StringRange range) =>
        Enumerable
            .Range(range.Fewest, range.Most - range.Fewest + 1)
            .SelectMany(series => Enumerable.Range(1, StringsOf(module, drive)).Select(strings => series * strings))
            .Any(count => RackGrid.For(count, ground.Brief.Rack, module.Body) is not null);

    private StringRange SeriesOf(ModuleCard module, DriveCard drive)
    {
        var range = StringSizing.InWindow(module.Sheet, drive.Sheet, ground.Survey["record-low"], ground.HotCellDegC);
        return range with { Most = Math.Min(range.Most, MostInSeries) };
    }

    // By the drive's input: short-circuit current with its margin, and working current.
    private int StringsOf(ModuleCard module, DriveCard drive)
    {
        var most = Math.Min(
            Math.Min(StringSizing.MostStrings(module.Sheet, drive.Sheet), MostStrings),
            (int)(drive.Sheet.LargestInputA / module.Sheet.MaximumPowerA)
        );
        return isLoose ? Math.Max(1, most) : most;
    }
}
