using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings of the taps and their pipes.</summary>
internal static class TapFindings
{
    /// <summary>Head at an open tap at least [m]; 10 m wished (Jordan 1984).</summary>
    public const double LeastM = 5;

    // Above this an open tap splashes and the others starve; from memory.
    private const double ThrottleM = 30;

    /// <summary>The findings.</summary>
    /// <param name="network">The taps.</param>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="demand">The demand.</param>
    /// <returns>The findings; none without taps.</returns>
    public static IEnumerable<Finding> Of(TapNetwork network, Brief brief, Survey survey, DemandYear demand)
    {
        if (brief.Taps is not { } taps)
        {
            return [];
        }

        var heads = network.Taps.ToDictionary(head => head.Name);
        return
        [
            .. taps.Taps.SelectMany((tap, i) => AtTap(heads[tap.Name], i + 1)),
            .. AlongPipes(network, survey["pipe-temperature"]),
            .. Junctions(network),
            .. Throttles(network),
            PeakHour(taps, brief, demand),
        ];
    }

    private static IEnumerable<Finding> AtTap(TapHead tap, int number)
    {
        yield return Finding.AtLeast(
            Invariant($"taps/{number}-open"),
            tap.ResidualM,
            tap.Point.NeedM ?? LeastM,
            "m",
            $"head left at '{tap.Name}' with all taps open and the tank nearly empty",
            tap.Point.Kind == TapPointKind.Manifold
                ? "head that the brief asks for at the manifold"
                : "Jordan 1984: 5 m at least, 10 m wished"
        );
        yield return new(
            Invariant($"taps/{number}-shut"),
            tap.StaticM <= BreakPressure.MostTapM ? FindingStatus.Holds : FindingStatus.Look,
            tap.StaticM <= BreakPressure.MostTapM
                ? $"head at '{tap.Name}' at rest"
                : $"head at '{tap.Name}' at rest: the pipe to it has no place for a break-pressure tank; fit a pressure reducer",
            tap.StaticM,
            BreakPressure.MostTapM,
            "m",
            "56 to 60 m, from memory"
        );
    }

    private static IEnumerable<Finding> AlongPipes(TapNetwork network, double degC)
    {
        double Bar(TapHead head) => PressureClass.PressureBar(Math.Max(0, head.MostRestM), 1000);
        var worst = network.Heads.MaxBy(head => Bar(head) / Lift.AllowedBar(head.Pipe, degC))!;
        yield return Finding.AtMost(
            "taps/pipe-pressure",
            Bar(worst),
            Lift.AllowedBar(worst.Pipe, degC),
            "bar",
            $"the pipe with least to spare at rest, {worst.Pipe.Name} to '{worst.Name}'",
            "pressure class by temperature, EN 12201-1 (from memory)"
        );
        var fastest = network.Heads.MaxBy(head => head.SpeedMPerS)!;
        yield return Finding.AtMost(
            "taps/pipe-speed",
            fastest.SpeedMPerS,
            TapSizing.FastestMPerS,
            "m/s",
            $"fastest water with all open, in the pipe to '{fastest.Name}'",
            "Jordan 1984, gravity mains 0.7 to 3 m/s"
        );
    }

    private static IEnumerable<Finding> Junctions(TapNetwork network)
    {
        var judged = network.Heads.Where(head => !head.IsTap && head.Point.NeedM is not null).ToList();
        if (judged.MinBy(head => head.ResidualM - head.Point.NeedM!.Value) is { } least)
        {
            yield return Finding.AtLeast(
                "taps/junction-head",
                least.ResidualM,
                least.Point.NeedM!.Value,
                "m",
                $"least head where pipes meet, at '{least.Name}', with all taps open: below the air outside dirt is drawn in",
                "Jordan 1984: never negative, 10 m wished"
            );
        }
    }

    private static IEnumerable<Finding> Throttles(TapNetwork network)
    {
        var strong = network.Taps.Where(head => head.ResidualM > ThrottleM).ToList();
        if (strong.MaxBy(head => head.ResidualM) is { } strongest)
        {
            yield return new(
                "taps/throttle",
                FindingStatus.Look,
                $"fit a throttle plate, or the tap takes more than its share: {string.Join(", ", strong.Select(head => head.Name))}",
                strongest.ResidualM,
                ThrottleM,
                "m",
                "from memory"
            );
        }
    }

    // Plots are left out when they have no manifold here: their water goes another way.
    private static Finding PeakHour(TapsBrief taps, Brief brief, DemandYear demand)
    {
        var flowM3PerH = taps.Taps.Sum(tap => tap.FlowM3PerH);
        var goesElsewhere = brief.Uses.Plots.Count > 0 && !taps.Taps.Any(tap => tap.IsManifold);
        var peakM3PerH = goesElsewhere ? (double?)null : demand.HourM3.Max();
        var holds = peakM3PerH is not { } peak || flowM3PerH >= peak;
        return new(
            "taps/peak-hour",
            holds ? FindingStatus.Holds : FindingStatus.Look,
            goesElsewhere ? "flow of all taps open; how much of the demand they serve the brief does not say"
                : holds ? "flow of all taps open against the largest hour's draw of the year"
                : "all taps open give less than the largest hour's draw of the year: people wait; add taps",
            flowM3PerH,
            peakM3PerH,
            "m3/h",
            "draw patterns and taps of the brief"
        );
    }
}
