using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>One tap with the head left at it.</summary>
/// <param name="Name">The tap.</param>
/// <param name="ResidualM">Head left with all taps open and the tank nearly empty [m].</param>
/// <param name="StaticM">Head with all taps shut and the tank full [m].</param>
public sealed record TapHead(string Name, double ResidualM, double StaticM);

/// <summary>The taps by gravity: one main, then a branch to each.</summary>
/// <param name="Heads">Head at each tap.</param>
public sealed record TapLine(IReadOnlyList<TapHead> Heads)
{
    // Head at an open tap: 5 m at least, 10 m wished (Jordan 1984); above 56 m a break-pressure tank.
    private const double LeastM = 5;
    private const double MostM = 56;

    /// <summary>Heads at the taps of a brief.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="tankHeightM">Height of the tank's water when full [m].</param>
    /// <param name="shelf">The cards.</param>
    /// <returns>The taps; none when the brief has none.</returns>
    public static TapLine Of(Brief brief, Survey survey, double tankHeightM, CardShelf shelf)
    {
        if (brief.Taps is not { } taps)
        {
            return new([]);
        }

        var floorM = brief.Lift.Route[^1].ElevationM + brief.Tank.StandM;
        var nu = WaterState.At(survey["water-temperature"]).KinematicViscosityM2PerS;
        var all = taps.Taps.Sum(tap => tap.FlowM3PerH) / 3600;
        var mainM = Loss(shelf.Find<PipeCard>(taps.MainPipe)!, taps.MainM, all, nu);
        return new([
            .. taps.Taps.Select(tap => new TapHead(
                tap.Name,
                floorM
                    - mainM
                    - Loss(shelf.Find<PipeCard>(tap.Pipe)!, tap.BranchM, tap.FlowM3PerH / 3600, nu)
                    - tap.ElevationM,
                floorM + tankHeightM - tap.ElevationM
            )),
        ]);
    }

    /// <summary>Findings of the taps.</summary>
    /// <returns>The findings.</returns>
    public IEnumerable<Finding> Findings()
    {
        foreach (var (tap, i) in Heads.Select((tap, i) => (tap, i + 1)))
        {
            yield return Finding.AtLeast(
                Invariant($"taps/{i}-open"),
                tap.ResidualM,
                LeastM,
                "m",
                $"head left at '{tap.Name}' with all taps open and the tank nearly empty",
                "Jordan 1984: 5 m at least, 10 m wished"
            );
            yield return new(
                Invariant($"taps/{i}-shut"),
                tap.StaticM <= MostM ? FindingStatus.Holds : FindingStatus.Look,
                tap.StaticM <= MostM
                    ? $"head at '{tap.Name}' at rest"
                    : $"head at '{tap.Name}' at rest: a break-pressure tank or a pressure reducer is needed",
                tap.StaticM,
                MostM,
                "m",
                "56 to 60 m, from memory"
            );
        }
    }

    // Valves and bends as 10 % of the pipe's friction: common practice, no source.
    private static double Loss(PipeCard pipe, double lengthM, double flowM3PerS, double nu) =>
        lengthM > 0
            ? 1.1
                * DarcyWeisbach
                    .Loss(new(pipe.BoreMm / 1000, pipe.RoughnessMm / 1000, lengthM, 0), flowM3PerS, nu)
                    .TotalM
            : 0;
}
