using System.CommandLine;
using System.CommandLine.Parsing;
using System.Reflection;
using Shaduf.Station;

namespace Shaduf.Cli;

/// <summary>The command <c>shaduf</c>.</summary>
internal static class Commands
{
    /// <summary>Version of the program.</summary>
    public static string Version { get; } =
        typeof(Commands).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

    /// <summary>The command with all its parts.</summary>
    /// <returns>The root command.</returns>
    public static RootCommand Root()
    {
        var root = new RootCommand(
            """
            Designs solar water-pumping stations: from one brief to pump, pipe, tank, array, rack, quantities and cost.

            A first station in three steps:
              shaduf new my-station          writes my-station/station.yaml, with remarks at every field
              shaduf check my-station/station.yaml
              shaduf design my-station/station.yaml --out my-station/pack

            Exit codes: 0 done, 2 bad input, 3 designed but with a stop finding, 1 our fault.
            """
        )
        {
            New(),
            Check(),
            Design(),
            Logs(),
            Verify(),
            Schema(),
        };
        return root;
    }

    private static Command New()
    {
        var name = new Argument<string>("NAME")
        {
            Description = "Name of the station; becomes the folder NAME with station.yaml in it.",
        };
        var command = new Command("new", "Writes a starter brief with a remark at every field.") { name };
        command.SetAction(parsed => Guarded(() => NewCommand.Run(parsed.GetValue(name)!, Console.Out)));
        return command;
    }

    private static Command Check()
    {
        var file = File();
        var command = new Command(
            "check",
            "Reads a brief with its cards and prices and lists every error, or what will be assumed."
        )
        {
            file,
        };
        command.SetAction(parsed => Guarded(() => CheckCommand.Run(parsed.GetValue(file)!, Console.Out)));
        return command;
    }

    private static Command Design()
    {
        var file = File();
        var folder = Out("Folder for the pack; made when it is missing.");
        var command = new Command(
            "design",
            "Designs the station and writes the pack: design.json, the books of engineer, crew and client, offer.pdf, quantities.xlsx, year.csv, programme.ics, site-book.html, sheets.pdf and each sheet as SVG and DXF."
        )
        {
            file,
            folder,
        };
        command.SetAction(
            async (parsed, _) =>
                await GuardedAsync(() =>
                    DesignCommand.RunAsync(parsed.GetValue(file)!, parsed.GetValue(folder)!, Console.Out)
                )
        );
        return command;
    }

    private static Command Logs()
    {
        var file = File();
        var log = new Argument<string>("LOG")
        {
            Description = "The log, a CSV file with a heading as 'time,flow m3/h,power W,level m,tank m,light W/m2'.",
        };
        var folder = Out("Folder of the report; made when it is missing.");
        var command = new Command(
            "logs",
            "Holds the log of a running station against its design, week by week, and writes log-report.pdf, log-weeks.csv and log.json: water, dust, leaks at night, a wearing pump, and what is wrong in the log with its place."
        )
        {
            file,
            log,
            folder,
        };
        command.SetAction(
            async (parsed, _) =>
                await GuardedAsync(() =>
                    LogsCommand.RunAsync(
                        parsed.GetValue(file)!,
                        parsed.GetValue(log)!,
                        parsed.GetValue(folder)!,
                        Console.Out
                    )
                )
        );
        return command;
    }

    private static Option<string> Out(string about) =>
        new("--out", "-o")
        {
            Description = about,
            Required = true,
            HelpName = "DIR",
        };

    private static Command Verify()
    {
        var all = new Option<bool>("--all", "-a") { Description = "List the published cases that agree too." };
        var command = new Command(
            "verify",
            "Computes every published case and prints the figure expected, the figure obtained and the deviation; "
                + "then every quantity of the independent figures and prints the largest deviation."
        )
        {
            all,
        };
        command.SetAction(parsed => Guarded(() => VerifyCommand.Run(parsed.GetValue(all), Console.Out)));
        return command;
    }

    private static Command Schema()
    {
        var command = new Command("schema", "Prints the JSON Schema of the brief, for editors that complete fields.");
        command.SetAction(_ =>
            Guarded(() =>
            {
                Console.Out.Write(StationFile.Schema());
                return ExitCode.Done;
            })
        );
        return command;
    }

    private static Argument<string> File() => new("FILE") { Description = "The brief, a station.yaml." };

    private static int Guarded(Func<int> run) => GuardedAsync(() => Task.FromResult(run())).GetAwaiter().GetResult();

    // Three voices: what the user can mend goes out as one line each; anything else is our fault and says so.
    private static async Task<int> GuardedAsync(Func<Task<int>> run)
    {
        try
        {
            return await run();
        }
        catch (BadInputException bad)
        {
            foreach (var error in bad.Errors)
            {
                await Console.Error.WriteLineAsync(error.ToString());
            }

            return ExitCode.BadInput;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            await Console.Error.WriteLineAsync(trouble.Message);
            return ExitCode.BadInput;
        }
#pragma warning disable CA1031 // The last line of defence: a person sees one sentence, not a stack trace.
        catch (Exception trouble)
#pragma warning restore CA1031
        {
            await Console.Error.WriteLineAsync(
                $"This is a defect of shaduf {Version}, not of your brief. Please report it with the brief: {trouble.GetType().Name}: {trouble.Message}"
            );
            if (Environment.GetEnvironmentVariable("SHADUF_TRACE") is { Length: > 0 })
            {
                await Console.Error.WriteLineAsync(trouble.ToString());
            }

            return ExitCode.OurFault;
        }
    }
}
