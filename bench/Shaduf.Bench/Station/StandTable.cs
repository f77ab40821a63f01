using static System.FormattableString;

namespace Shaduf.Bench.Station;

/// <summary>Stands, and the footings of the racks of the examples, in one go and without a harness.</summary>
internal static class StandTable
{
    /// <summary>Measures and writes to the console.</summary>
    public static void Write()
    {
        var stands = new StandStrengthBench();
        stands.Prepare();
        Line("stand, four legs", ProcessorTime.Of(() => stands.FourLegs()));
        Line("stand, eight legs", ProcessorTime.Of(() => stands.EightLegs()));
        Line("stand chosen, with its footings", ProcessorTime.Of(() => stands.Chosen()));
        Line("its footings", ProcessorTime.Of(() => stands.Footed()));
        foreach (var example in new[] { "homestead", "market-garden", "hilltop-village", "river-terrace" })
        {
            var racks = new RackStrengthBench { Example = example };
            racks.Prepare();
            Line($"footings of a rack, {example}", ProcessorTime.Of(() => racks.FootingsChosen()));
        }
    }

    private static void Line(string what, (double FirstMs, double LeastMs) time) =>
        Console.WriteLine(Invariant($"| {what} | {time.FirstMs:0.0} ms | {time.LeastMs:0.0} ms |"));
}
