using static System.FormattableString;

namespace Shaduf.Bench.Station;

/// <summary>The racks of the examples in one go and without a harness, as a table.</summary>
internal static class RackTable
{
    private static readonly string[] Examples =
    [
        "homestead",
        "market-garden",
        "hilltop-village",
        "river-terrace",
        "plain-school",
    ];

    /// <summary>Measures and writes to the console.</summary>
    /// <param name="briefs">Briefs; none for the examples.</param>
    public static void Write(IReadOnlyList<string> briefs)
    {
        foreach (var brief in briefs.Count > 0 ? briefs : [.. Examples.Select(RackStrengthBench.PathOf)])
        {
            var bench = new RackStrengthBench();
            var example = Path.GetFileName(Path.GetDirectoryName(Path.GetFullPath(brief)))!;
            bench.Prepare(brief);
            var frame = bench.AnalysedAndChecked()!;
            var (once, chosen, footed) = (
                ProcessorTime.Of(() => bench.AnalysedAndChecked()),
                ProcessorTime.Of(() => bench.Chosen()),
                ProcessorTime.Of(() => bench.Footed())
            );
            Console.WriteLine(
                Invariant(
                    $"| {(briefs.Count > 0 ? Path.GetFileNameWithoutExtension(brief) : example)} | {frame.Cases.Frame.Model.Members.Count} x {frame.Combinations.Strength.Count} | {once.LeastMs:0.0} ms | {chosen.FirstMs:0} ms, {chosen.LeastMs:0} ms | {footed.FirstMs:0} ms, {footed.LeastMs:0} ms |"
                )
            );
        }
    }
}
