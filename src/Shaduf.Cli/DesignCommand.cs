using System.Diagnostics;
using Shaduf.Pack;
using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Cli;

/// <summary><c>shaduf design FILE --out DIR</c>.</summary>
internal static class DesignCommand
{
    // Steps are named once the run has gone on for this long.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    // As many as a line or two hold.
    private const int NamedUnchecked = 6;

    /// <summary>Designs a station and writes its pack.</summary>
    /// <param name="path">The brief.</param>
    /// <param name="folder">Folder of the pack.</param>
    /// <param name="output">Where to report.</param>
    /// <returns>Exit code.</returns>
    /// <exception cref="BadInputException">The brief, a card or the price book is wrong.</exception>
    public static async Task<int> RunAsync(string path, string folder, TextWriter output)
    {
        RequireFolder(folder);
        var watch = Stopwatch.StartNew();
        void Progress(string step)
        {
            if (watch.Elapsed > Patience)
            {
                Console.Error.WriteLine(Invariant($"  {watch.Elapsed.TotalSeconds:0.0} s  {step}"));
            }
        }

        var file = StationFile.Read(path);
        var design = PackWriter.Legible(DesignRun.Run(file, Progress));
        var stamp = StampOf(design);
        Progress("drawing and writing the pack");
        await WriteAsync(design, stamp, folder);
        Report(design, stamp, folder, output);
        return design.Worst == FindingStatus.Stop ? ExitCode.Stop : ExitCode.Done;
    }

    /// <summary>What the documents of a design bear today.</summary>
    internal static Stamp StampOf(Design design) =>
        Stamp.Of(design, Commands.Version, DateOnly.FromDateTime(DateTime.Today));

    /// <summary>Refuses a folder that is a file.</summary>
    internal static void RequireFolder(string folder)
    {
        if (File.Exists(folder))
        {
            throw new BadInputException([new(folder, 1, 1, "--out", "this is a file", "a folder is accepted")]);
        }
    }

    private static async Task WriteAsync(Design design, Stamp stamp, string folder)
    {
        try
        {
            await PackWriter.WriteAsync(design, stamp, folder);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException([
                new(
                    folder,
                    1,
                    1,
                    "--out",
                    "the folder cannot be written",
                    "a folder that you may write to is accepted"
                ),
            ]);
        }
    }

    private static void Report(Design design, Stamp stamp, string folder, TextWriter output)
    {
        var choice = design.Choice;
        output.WriteLine(Invariant($"{design.Brief.Head.Name}: {stamp.Status}"));
        output.WriteLine(
            Invariant(
                $"  {choice.Pump.Name} on {choice.Drive.Name}, {choice.ModuleCount} x {choice.Module.Name} ({choice.SeriesCount} in series, {choice.StringCount} strings), tank {choice.TankM3:0.#} m3"
            )
        );
        output.WriteLine(
            Invariant(
                $"  worst month {YearCalendarNames.Months[design.Year.WorstMonth]}: {design.Year.WorstShare * 100:0.0} % of {design.Months[design.Year.WorstMonth].DemandM3PerDay:0.0} m3/d"
            )
        );
        output.WriteLine(
            Invariant(
                $"  offer {design.Offer.Total:#,0.00} {design.Offer.Currency}{(design.Offer.Complete ? "" : ", incomplete")}"
            )
        );
        foreach (var finding in design.Findings.Where(finding => finding.Status == FindingStatus.Stop))
        {
            output.WriteLine($"  STOP {finding.Id}: {finding.Says}");
        }

        foreach (var finding in design.Findings.Where(finding => finding.IsHandedOver))
        {
            output.WriteLine($"  ENGINEER {finding.Id}: {finding.Says}");
        }

        List<string> open =
        [
            .. design
                .Findings.Where(finding => finding is { Status: FindingStatus.Unchecked, IsHandedOver: false })
                .Select(finding => finding.Id),
        ];
        if (open.Count > 0)
        {
            var more = open.Count > NamedUnchecked ? Invariant($" and {open.Count - NamedUnchecked} more") : "";
            output.WriteLine(
                Invariant($"  UNCHECKED, see the first page: {string.Join(", ", open.Take(NamedUnchecked))}{more}")
            );
        }

        output.WriteLine($"Wrote {string.Join(", ", PackWriter.FileNames)} and each sheet as SVG and DXF to {folder}");
    }
}
