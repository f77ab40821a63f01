using System.Collections.Concurrent;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What was read from files, remembered until one of them changes: cards, prices, weather.</summary>
public sealed class FileMemory
{
    private readonly ConcurrentDictionary<string, (string Stamp, object? With, object Read)> known = new();

    /// <summary>What a file or folder holds: remembered, or read now.</summary>
    /// <typeparam name="T">What it is read as.</typeparam>
    /// <param name="path">The file, or the folder with all files in it.</param>
    /// <param name="with">What the reading leans on besides; null for nothing.</param>
    /// <param name="read">Reads it; what it throws is not remembered.</param>
    /// <returns>What was read.</returns>
    public T Of<T>(string path, object? with, Func<T> read)
        where T : class
    {
        var stamp = StampOf(path);
        if (known.TryGetValue(path, out var last) && last.Stamp == stamp && Equals(last.With, with))
        {
            return (T)last.Read;
        }

        var now = read();
        known[path] = (stamp, with, now);
        return now;
    }

    // Name, length and time of each file.
    private static string StampOf(string path)
    {
        var folder = new DirectoryInfo(path);
        IReadOnlyList<FileInfo> files = folder.Exists
            ? [.. folder.EnumerateFiles().OrderBy(file => file.Name, StringComparer.Ordinal)]
            : [new(path)];
        return string.Join(
            '|',
            files.Select(file =>
                Invariant($"{file.Name} {(file.Exists ? file.Length : -1)} {file.LastWriteTimeUtc.Ticks}")
            )
        );
    }
}
