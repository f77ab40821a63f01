using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The one reason why a pump cannot serve.</summary>
internal static class PumpReasons
{
    /// <summary>The reason, from the arrangement that comes nearest.</summary>
    /// <param name="ground">All that is settled before the choice.</param>
    /// <param name="nearest">The arrangement.</param>
    /// <param name="run">Its year.</param>
    /// <returns>Kind of the limit, and the reason in words.</returns>
    public static (string Kind, string Says) Of(SizingGround ground, Arrangement nearest, YearRun run)
    {
        var (pump, table, staticM) = (nearest.Hydraulics, nearest.Table, nearest.Hydraulics.Lift.System.StaticHeadM);
        if (table.FullFlowM3PerH <= 0)
        {
            var choice = nearest.Choice;
            var speed = pump.SpeedByVoltageRatio(
                choice.Module.Sheet,
                choice.SeriesCount,
                ground.HotCellDegC,
                ground.AgeYears
            );
            var ratio = pump.Curve.SpeedRatio(0, Math.Max(0, staticM));
            if (ratio < 1 && speed <= ratio)
            {
                return (
                    "power",
                    Invariant(
                        $"the voltage of {choice.SeriesCount} modules on the hottest day turns it at {speed * 100:0} % of its speed, and water flows from {ratio * 100:0} % on"
                    )
                );
            }

            return pump.Curve.ReachM <= staticM
                ? ("head", Invariant($"lifts {pump.Curve.ReachM:0} m at most, and water flows from {staticM:0} m on"))
                : (
                    "curve",
                    "even at its lowest speed it runs beyond the last point of its curve: the head is too small for it"
                );
        }

        var when = ground.Span == TargetSpan.Year ? "over the year" : $"in {YearCalendarNames.Months[run.WorstMonth]}";
        var met = Invariant(
            $"meets at most {nearest.Share * 100:0} % {when} with {nearest.Choice.ModuleCount} modules"
        );
        return table.CappedByFlow
            ? ("yield", Invariant($"{met}: the source allows {ground.Source.YieldM3PerH:0.##} m3/h"))
            : ("power", $"{met}: more array does not help, the pump gives too little");
    }

    /// <summary>Why a pump cannot be arranged at all.</summary>
    /// <param name="ground">All that is settled before the choice.</param>
    /// <param name="lines">The lines of the search.</param>
    /// <param name="pump">The pump.</param>
    /// <returns>Kind of the limit, and the reason in words.</returns>
    public static (string Kind, string Says) NoArrangement(SizingGround ground, PumpLines lines, PumpCard pump)
    {
        var drives = lines.Drives(pump, isAnySize: false).ToList();
        if (drives.Count == 0)
        {
            return (
                "drive",
                Invariant(
                    $"no drive card suits its motor of {pump.Motor.RatedV:0} V and {pump.Motor.RatedA:0.0} A after derating for height and heat"
                )
            );
        }

        if (lines.LacksFeed(pump))
        {
            return (
                "cable",
                Invariant(
                    $"no cable card feeds its motor of {pump.Motor.RatedV:0} V and {pump.Motor.RatedA:0.0} A so far off within its drop, or no drive and filter card bears so long a cable"
                )
            );
        }

        var tried = drives
            .SelectMany(drive => ground.Modules.Select(module => (module, drive, Range: lines.SeriesOf(module, drive))))
            .ToList();
        var ranges = tried.Where(each => each.Range.Exists).ToList();
        if (ranges.Count == 0)
        {
            var (module, drive, range) = tried.MinBy(each => each.Range.Fewest - each.Range.Most);
            return (
                "drive",
                $"no string of {module.Name} fits the window of {drive.Name}: {range.WhyMost}; but {range.WhyFewest}"
            );
        }

        if (lines.Forbidden is { } cavitates)
        {
            return ("cavitation", cavitates);
        }

        if (TooManyStrings(ground, lines, [.. ranges.Select(each => (each.module, each.drive))]) is { } why)
        {
            return ("drive", why);
        }

        var hasRack = ranges.Exists(each =>
            (
                from series in Enumerable.Range(each.Range.Fewest, each.Range.Most - each.Range.Fewest + 1)
                from strings in ground.Brief.Array.StringCount is { } only
                    ? [only]
                    : Enumerable.Range(1, lines.StringsOf(each.module, each.drive))
                select RackGrid.For(series * strings, ground.Brief.Rack, each.module.Body)
            ).Any(grid => grid is not null)
        );
        return hasRack
            ? ("price", "the price book lacks a rate for it, its drive, its modules, pipes or tank")
            : ("rack", "no equal racks of these rows and columns hold its strings");
    }

    private static string? TooManyStrings(
        SizingGround ground,
        PumpLines lines,
        IReadOnlyList<(ModuleCard Module, DriveCard Drive)> pairs
    )
    {
        var (module, drive) = pairs.MaxBy(each => lines.StringsOf(each.Module, each.Drive));
        var most = lines.StringsOf(module, drive);
        return ground.Brief.Array.StringCount is { } asked && asked > most
            ? Invariant(
                $"the input of {drive.Name} takes {most} strings of {module.Name} at most; the brief asks for {asked}"
            )
            : null;
    }
}
