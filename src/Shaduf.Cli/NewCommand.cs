using System.Text;
using Shaduf.Station;

namespace Shaduf.Cli;

/// <summary><c>shaduf new NAME</c>.</summary>
internal static class NewCommand
{
    /// <summary>Writes the starter brief into a new folder.</summary>
    /// <param name="name">Name of the station and of the folder.</param>
    /// <param name="output">Where to report.</param>
    /// <returns>Exit code.</returns>
    /// <exception cref="BadInputException">The name cannot be a folder, or the brief is there already.</exception>
    public static int Run(string name, TextWriter output)
    {
        // What the brief takes as the name of a station, of characters that every file system takes.
        if (
            name.Length is 0 or > 50
            || name != name.Trim()
            || name.Any(c => !char.IsLetterOrDigit(c) && c is not ('-' or '_' or ' '))
        )
        {
            throw Bad(
                name,
                $"'{name}' cannot be the name of a folder",
                "1 to 50 letters, digits, '-' and '_', with spaces between them, are accepted"
            );
        }

        var path = Path.Combine(name, "station.yaml");
        if (File.Exists(path))
        {
            throw Bad(path, "the file is there already", "a new name is accepted");
        }

        Directory.CreateDirectory(name);
        File.WriteAllText(path, Starter().Replace("STATION NAME", name, StringComparison.Ordinal));
        output.WriteLine($"Wrote {path}. Fill it in, then: shaduf check {Quoted(path)}");
        return ExitCode.Done;
    }

    /// <summary>The starter brief.</summary>
    /// <returns>Its text.</returns>
    internal static string Starter()
    {
        using var reader = new StreamReader(
            typeof(NewCommand).Assembly.GetManifestResourceStream("starter.yaml")!,
            Encoding.UTF8
        );
        return reader.ReadToEnd();
    }

    private static string Quoted(string path) => path.Contains(' ', StringComparison.Ordinal) ? $"\"{path}\"" : path;

    private static BadInputException Bad(string file, string problem, string accepted) =>
        new([new(file, 1, 1, "NAME", problem, accepted)]);
}
