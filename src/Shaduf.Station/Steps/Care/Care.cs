using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>How the station is kept.</summary>
/// <param name="Calendar">What is done how often by whom.</param>
/// <param name="Spares">What lies in the store.</param>
public sealed record Care(
    IReadOnlyList<(string Every, string Who, string What)> Calendar,
    IReadOnlyList<(string What, string Count)> Spares
)
{
    private const double ModuleShare = 0.02;
    private const double BoltShare = 0.05;

    /// <summary>Care of a design.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The care.</returns>
    public static Care Of(Design design) =>
        new(
            [
                .. Csv.Embedded(typeof(Care).Assembly, "care.csv")
                    .Where(row => IsThere(row["when"], design))
                    .Select(row => (row["every"], row["who"], row["what"])),
            ],
            [.. SparesOf(design)]
        );

    private static bool IsThere(string when, Design design) =>
        when switch
        {
            "light" => design.Works.Guard.Light is not null,
            "stand" => design.Works.Stand is not null,
            _ => true,
        };

    // What is left on site: judgement, no source.
    private static IEnumerable<(string, string)> SparesOf(Design design)
    {
        var (choice, works) = (design.Choice, design.Works);
        yield return (
            $"module {choice.Module.Name}",
            Invariant($"{Math.Max(1, Math.Ceiling(ModuleShare * choice.ModuleCount)):0}")
        );
        yield return ("pairs of connectors of the same make", "2");
        if (works.Electrics.Protection.Fuse is { } fuse)
        {
            yield return ($"string fuse {fuse.Name}", Invariant($"{2 * choice.StringCount}"));
        }

        if (works.Electrics.Protection.DirectArrester is { } arrester)
        {
            yield return ($"cartridges of {arrester.Name}", "1 set");
        }

        yield return ("float or level switch, and a dry-run probe", "1 each");
        yield return ("kit for a cable splice under water", "1");
        if (works.TapStands is { } stands)
        {
            yield return ("taps with washers", Invariant($"{2 * Math.Max(1, (stands.Count + 4) / 5)}"));
        }

        foreach (var pipe in choice.Lift.Lay.Reaches.Select(reach => reach.Pipe.Name).Distinct())
        {
            yield return ($"{pipe} with two couplings", "1 m");
        }

        var bolts = design.Takeoff.Lines.Where(line => line.Item == "frame-bolt").Sum(line => line.Quantity);
        if (bolts > 0)
        {
            yield return ("frame bolts", Invariant($"{Math.Ceiling(BoltShare * bolts):0}"));
        }

        yield return ("primer and finish with a brush", "0.5 L each");
        if (works.Guard.Light is not null)
        {
            yield return ("fuses of the night light", "2");
        }

        yield return ("multimeter for 1000 V direct, spanners for every bolt, bucket, soft brush, log book", "1 each");
    }
}
