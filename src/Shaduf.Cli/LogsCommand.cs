using Shaduf.Pack;
using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Cli;

/// <summary><c>shaduf logs BRIEF LOG --out DIR</c>.</summary>
internal static class LogsCommand
{
    /// <summary>Holds the log of a running station against its design and writes the report.</summary>
    /// <param name="path">The brief.</param>
    /// <param name="log">The log.</param>
    /// <param name="folder">Folder of the report.</param>
    /// <param name="output">Where to report.</param>
    /// <returns>Exit code.</returns>
    /// <exception cref="BadInputException">The brief or the log is wrong.</exception>
    public static async Task<int> RunAsync(string path, string log, string folder, TextWriter output)
    {
        DesignCommand.RequireFolder(folder);
        var design = DesignRun.Run(StationFile.Read(path));
        var report = LogReport.Read(design, log);
        Directory.CreateDirectory(folder);
        foreach (var (name, bytes) in LogFiles.Of(design, DesignCommand.StampOf(design), report))
        {
            await File.WriteAllBytesAsync(Path.Combine(folder, name), bytes);
        }

        output.WriteLine(
            Invariant(
                $"{design.Brief.Head.Name}: {report.RowCount} rows, {report.Weeks.Count} weeks, by {report.Basis}"
            )
        );
        foreach (var fault in report.Faults)
        {
            output.WriteLine(Invariant($"  {log}:{fault.Line}:{Math.Max(fault.Column, 1)}: {fault.Says}"));
        }

        foreach (var finding in report.Findings.Where(finding => finding.Status == FindingStatus.Look))
        {
            output.WriteLine($"  LOOK {finding.Id}: {finding.Says}");
        }

        output.WriteLine($"Wrote {string.Join(", ", LogFiles.FileNames)} to {folder}");
        return ExitCode.Done;
    }
}
