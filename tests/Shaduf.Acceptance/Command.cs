using System.Diagnostics;

namespace Shaduf.Acceptance;

/// <summary>What a run of the command came to.</summary>
public sealed record Ran(int ExitCode, string Output, string Error);

/// <summary>Runs the built command as its own process, as a user would.</summary>
public static class Command
{
    // One folder for the whole run, taken away at its end.
    private static readonly Lazy<string> Scratch = new(() =>
    {
        var folder = Directory.CreateTempSubdirectory("shaduf test é ").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        return folder;
    });

    public static string Root
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(folder.FullName, "Shaduf.slnx")))
            {
                folder = folder.Parent!;
            }

            return folder.FullName;
        }
    }

    public static string Example(string name) => Path.Combine(Root, "examples", name, "station.yaml");

    public static string NewFolder() =>
        Directory.CreateDirectory(Path.Combine(Scratch.Value, Path.GetRandomFileName())).FullName;

    public static Ran Run(string folder, params string[] args) => Run(folder, new Dictionary<string, string>(), args);

    public static Ran Run(string folder, IReadOnlyDictionary<string, string> environment, params string[] args)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            UseShellExecute = false,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "shaduf.dll"));
        foreach (var arg in args)
        {
            start.ArgumentList.Add(arg);
        }

        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        process.StandardInput.Close();
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        Assert.True(process.WaitForExit(TimeSpan.FromMinutes(15)), "the command did not end");
        return new(process.ExitCode, output.Result, error.Result);
    }
}
