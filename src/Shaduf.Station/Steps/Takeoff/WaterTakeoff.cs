using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Pumped main, tank and taps.</summary>
internal static class WaterTakeoff
{
    // Bought beyond the net quantity: common practice, no source.
    private const double PipeWasteShare = 0.03;

    /// <summary>Pumped main and tank.</summary>
    public static IEnumerable<QuantityLine> PipesAndTank(Brief brief, Choice choice)
    {
        yield return new(
            choice.Lift.Main.Name,
            BillSection.PipesAndTank,
            $"pumped main: {choice.Lift.Main.About}",
            "m",
            choice.Lift.MainM * (1 + PipeWasteShare),
            Invariant($"route and rise to the inlet {choice.Lift.MainM:0.#} m + 3 %")
        );
        yield return new(
            "pipe-fittings",
            BillSection.PipesAndTank,
            "fittings, bends and valves of the main",
            "set",
            1,
            "fittings of the brief"
        );
        if (!brief.Tank.IsExisting)
        {
            yield return new(
                choice.Tank.Name,
                BillSection.PipesAndTank,
                choice.Tank.About,
                "nr",
                choice.TankCount,
                "choice of tank"
            );
            yield return Labour.Days("tank", choice.TankCount, "choice of tank");
        }

        yield return new(
            "float-valve",
            BillSection.PipesAndTank,
            "float switch or float valve with overflow and screen",
            "set",
            choice.TankCount,
            "one a tank"
        );
        yield return Labour.Days("trench", choice.Lift.MainM, "route of the main");
        yield return Labour.Days("pipe", choice.Lift.MainM, "route of the main");
    }

    /// <summary>Pipes and stands of the taps.</summary>
    public static IEnumerable<QuantityLine> Taps(Brief brief)
    {
        if (brief.Taps is not { } taps)
        {
            yield break;
        }

        var pipes = taps
            .Taps.Select(tap => (tap.Pipe, Metres: tap.BranchM))
            .Append((Pipe: taps.MainPipe, Metres: taps.MainM))
            .GroupBy(run => run.Pipe)
            .OrderBy(group => group.Key, StringComparer.Ordinal);
        foreach (var pipe in pipes)
        {
            yield return new(
                pipe.Key,
                BillSection.TapsAndDrainage,
                $"pipe to the taps: {pipe.Key}",
                "m",
                pipe.Sum(run => run.Metres) * (1 + PipeWasteShare),
                "taps of the brief + 3 %"
            );
        }

        yield return new(
            "tap-stand",
            BillSection.TapsAndDrainage,
            "tap stand with apron and soakaway",
            "nr",
            taps.Taps.Count,
            "taps of the brief"
        );
        var metres = taps.MainM + taps.Taps.Sum(tap => tap.BranchM);
        yield return Labour.Days("tap-trench", metres, "pipes to the taps");
        yield return Labour.Days("tap-pipe", metres, "pipes to the taps");
        yield return Labour.Days("tap", taps.Taps.Count, "taps of the brief");
    }
}
