using Shaduf.Station;
using Shaduf.Station.Tests;
using static System.FormattableString;

namespace Shaduf.Bench.Station;

/// <summary>Logs of a month, a year and five years by the minute, compared with the design of hilltop village.</summary>
internal static class LogTimes
{
    /// <summary>Writes the times and the memory that comparing holds.</summary>
    /// <param name="folder">Where the logs are written; they stay there.</param>
    public static void Write(string folder)
    {
        Directory.CreateDirectory(folder);
        var design = DesignRun.Run(StationFile.Read("examples/hilltop-village/station.yaml"));
        foreach (var days in new[] { 30, 365, 1825 })
        {
            var path = Path.Combine(folder, Invariant($"log-{days}.csv"));
            File.WriteAllLines(path, new SyntheticLog(design, 1) { Days = days, Clean = Dust }.Lines());
            var (least, largest) = (0L, 0L);
            var (first, best) = ProcessorTime.Of(() => LogReport.Read(design, path));
            using (var watch = new Timer(_ => largest = Math.Max(largest, GC.GetTotalMemory(false)), null, 0, 5))
            {
                GC.Collect();
                least = GC.GetTotalMemory(true);
                var before = GC.GetAllocatedBytesForCurrentThread();
                LogReport.Read(design, path);
                var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
                Console.WriteLine(
                    Invariant(
                        $"{days * 1440:#,0} rows, {new FileInfo(path).Length / 1e6:0} MB: first {first / 1000:0.00} s, least {best / 1000:0.00} s; allocated in all {allocated / 1e6:0.0} MB, largest above the start {Math.Max(0, largest - least) / 1e6:0.0} MB"
                    )
                );
            }
        }
    }

    private static double Dust(int day) => 1 - (0.0008 * (day % 120));
}
