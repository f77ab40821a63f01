using Shaduf.Power;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A pump on its pipes with an array on a plane: an arrangement that lacks only its tank.</summary>
/// <param name="Hydraulics">The pump on its pipes.</param>
/// <param name="Table">Its flow by power.</param>
/// <param name="Module">The module.</param>
/// <param name="Array">Modules in a string, and strings.</param>
/// <param name="Grid">How the modules stand.</param>
/// <param name="Plane">The plane they face.</param>
/// <param name="BareCost">Cost without racks and tank.</param>
internal sealed record PumpLine(
    Hydraulics Hydraulics,
    PumpTable Table,
    ModuleCard Module,
    (int Series, int Strings) Array,
    RackGrid Grid,
    SkyPlane Plane,
    double BareCost
)
{
    public int ModuleCount => Array.Series * Array.Strings;

    /// <summary>The arrangement with a tank.</summary>
    public Choice With(TankCard tank, int count) =>
        new(
            Hydraulics.Pump,
            Hydraulics.Drive,
            Module,
            Array.Series,
            Array.Strings,
            Grid,
            Plane.Facing,
            Hydraulics.Lift,
            tank,
            count
        );
}

/// <summary>All lines of a pump: with every drive, riser, main, module, number of modules and plane that fit it.</summary>
/// <param name="ground">All that is settled before the choice.</param>
/// <param name="isLoose">
/// Whether drives too small, strings outside the window, uneven racks and missing rates are let pass, to find what comes
/// nearest when nothing else can be arranged at all.
/// </param>
internal sealed class PumpLines(SizingGround ground, bool isLoose)
{
    // More array than this many times the pump's full power only spills.
    private const double MostArrayFactor = 4;

    // What the kernels take: the pump's slowest speed, modules in a string, strings side by side.
    private const double LeastSpeedRatio = 0.1;
    private const int MostInSeries = 100;
    private const int MostStrings = 200;

    /// <summary>Why the source forbids some line that was looked at; null when it forbids none.</summary>
    public string? Forbidden { get; private set; }

    /// <summary>The lines of a pump, one at a time.</summary>
    public IEnumerable<PumpLine> Of(PumpCard pump) =>
        from hydraulics in OnPipes(pump)
        where isLoose || hydraulics.Feed.Serves
        from module in ground.Modules
        where HasRack(module)
        from line in Arrays(hydraulics, module)
        select line;

    /// <summary>Drives that turn the pump's motor.</summary>
    public IEnumerable<DriveCard> Drives(PumpCard pump, bool isAnySize)
    {
        var share = Electrics.DeratingShareOf(ground.Brief, ground.Survey);
        return ground
            .Shelf.All<DriveCard>()
            .Where(drive => (ground.Brief.Lift.Drive ?? drive.Name) == drive.Name)
            .Where(drive => drive.Fits(pump.Motor, share) || (isAnySize && drive.Sheet.Drives == pump.Motor.Kind));
    }

    /// <summary>Modules in a string that fit a drive's window.</summary>
    public StringRange SeriesOf(ModuleCard module, DriveCard drive)
    {
        var range = StringSizing.InWindow(
            module.Sheet,
            drive.Sheet,
            ground.Survey["record-low"],
            ground.HotCellDegC,
            ground.AgeYears
        );
        range = range with { Most = Math.Min(range.Most, MostInSeries) };
        if (ground.Brief.Array.SeriesCount is not { } given)
        {
            return range;
        }

        var asked = Invariant($"the brief asks for {given} in a string");
        return given < range.Fewest ? range with { Most = given, WhyMost = asked }
            : given > range.Most ? range with { Fewest = given, WhyFewest = asked }
            : range with { Fewest = given, Most = given };
    }

    /// <summary>Most strings by the drive's input: short-circuit current with its margin, and working current.</summary>
    public int StringsOf(ModuleCard module, DriveCard drive)
    {
        var most = Math.Min(
            Math.Min(StringSizing.MostStrings(module.Sheet, drive.Sheet), MostStrings),
            (int)(drive.Sheet.LargestInputA / module.Sheet.MaximumPowerA)
        );
        return isLoose ? Math.Max(1, most) : most;
    }

    /// <summary>Highest speed by the string's voltage, down to the next hundredth, so that strings of nearly the same voltage share a table.</summary>
    public static double SpeedRatio(Hydraulics hydraulics, ModuleCard module, int series, SizingGround ground) =>
        Math.Floor(hydraulics.SpeedByVoltageRatio(module.Sheet, series, ground.HotCellDegC, ground.AgeYears) * 100)
        / 100;

    /// <summary>Whether there are pipes for a pump, but for none of them a cable and a filter to its motor.</summary>
    public bool LacksFeed(PumpCard pump) =>
        OnPipes(pump).ToList() is { Count: > 0 } all && !all.Exists(each => each.Feed.Serves);

    private bool HasRack(ModuleCard module) => RackSections.Of(ground.Brief.Rack, module, ground.Shelf) is not null;

    private IEnumerable<Hydraulics> OnPipes(PumpCard pump)
    {
        var curve = pump.Curve;
        var bestM3PerH = Math.Min(curve.BestFlowM3PerS * 3600, ground.Source.YieldM3PerH);
        return from drive in Drives(pump, isLoose)
            from foot in ground.Source.Pipes(ground, pump, bestM3PerH, curve.ShutOffHeadM)
            from main in Pipes.Mains(ground, bestM3PerH, curve.ShutOffHeadM)
            let lift = Lift.Of(ground.Brief, ground.Survey, ground.Source, foot, main)
            let feed = MotorFeed.Of(pump, drive, lift, ground.Survey, ground.Shelf)
            select new Hydraulics(pump, curve, drive, lift, feed);
    }

    private IEnumerable<PumpLine> Arrays(Hydraulics hydraulics, ModuleCard module)
    {
        var range = SeriesOf(module, hydraulics.Drive);
        if (isLoose && !range.Exists)
        {
            var nearest = Math.Max(1, range.Most) == ground.Brief.Array.SeriesCount ? range.Fewest : range.Most;
            nearest = Math.Clamp(nearest, 1, MostInSeries);
            range = range with { Fewest = nearest, Most = nearest };
        }

        var tables = new Dictionary<double, PumpTable>();
        for (var series = range.Fewest; series <= range.Most; series++)
        {
            var speed = SpeedRatio(hydraulics, module, series, ground);
            if (!(speed >= LeastSpeedRatio))
            {
                continue;
            }

            if (!tables.TryGetValue(speed, out var table))
            {
                table = hydraulics.Table(speed, ground.Source.YieldM3PerH);
                tables.Add(speed, table);
            }

            if (ground.Source.Forbids(hydraulics, table.FullFlowM3PerH) is { } why)
            {
                Forbidden ??= why;
                if (!isLoose)
                {
                    continue;
                }
            }

            foreach (var line in Strings(hydraulics, module, series, table))
            {
                yield return line;
            }
        }
    }

    private IEnumerable<PumpLine> Strings(Hydraulics hydraulics, ModuleCard module, int series, PumpTable table)
    {
        var mostW =
            MostArrayFactor * Math.Max(table.FullPowerW, hydraulics.InputW(hydraulics.Pump.Motor.ShaftKW * 1000) / 2);
        var mostStrings = Math.Max(StringsOf(module, hydraulics.Drive), isLoose ? 1 : 0);
        var given = ground.Brief.Array.StringCount;
        var fewest = isLoose ? Math.Min(given ?? 1, mostStrings) : given ?? 1;
        for (var strings = fewest; strings <= Math.Min(given ?? mostStrings, mostStrings); strings++)
        {
            var count = series * strings;
            if (strings > 1 && given is null && count * module.Sheet.RatedW > mostW)
            {
                yield break;
            }

            var grid = RackGrid.For(count, ground.Brief.Rack, module.Body) ?? (isLoose ? new(1, count, 1) : null);
            var cost =
                ground.Prices.Machines(hydraulics.Pump, hydraulics.Drive)
                + ground.Prices.Pipes(hydraulics.Lift)
                + ground.Prices.Modules(module, count);
            if (grid is null || (cost ?? (isLoose ? 0 : null)) is not { } bare)
            {
                continue;
            }

            foreach (var plane in ground.Sky.Planes)
            {
                yield return new(hydraulics, table, module, (series, strings), grid, plane, bare);
            }
        }
    }
}
