using static System.FormattableString;

namespace Shaduf.Bench.Station;

/// <summary>The racks of the examples in one go and without a harness, as a table.</summary>
internal static class RackTable
{
    /// <summary>Measures and writes to the console.</summary>
    public static void Write()
    {
        foreach (var example in new[] { "homestead", "market-garden", "hilltop-village", "river-terrace" })
        {
            var bench = new RackStrengthBench { Example = example };
            bench.Prepare();
            var frame = bench.AnalysedAndChecked()!;
            var (once, chosen, footed) = (
                ProcessorTime.Of(() => bench.AnalysedAndChecked()),
                ProcessorTime.Of(() => bench.Chosen()),
                ProcessorTime.Of(() => bench.Footed())
            );
            Console.WriteLine(
                Invariant(
                    $"| {example} | {frame.Cases.Frame.Model.Members.Count} x {frame.Combinations.Strength.Count} | {once.LeastMs:0.0} ms | {chosen.FirstMs:0} ms, {chosen.LeastMs:0} ms | {footed.FirstMs:0} ms, {footed.LeastMs:0} ms |"
                )
            );
        }
    }
}
