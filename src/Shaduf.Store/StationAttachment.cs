using System.Buffers;

namespace Shaduf.Store;

/// <summary>A file that lies beside a station's brief.</summary>
public sealed record StationAttachment
{
    /// <summary>Largest file that is kept [bytes].</summary>
    public const int LargestBytes = 16 * 1024 * 1024;

    private const int LongestName = 80;

    private static readonly SearchValues<char> Plain = SearchValues.Create(
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789._- "
    );

    /// <summary>A file.</summary>
    /// <param name="name">Its plain name: latin letters, digits, dot, dash, underline and blank; 1 to 80 characters.</param>
    /// <param name="bytes">What is in it.</param>
    /// <exception cref="ArgumentException">The name leads elsewhere or the file is too large; the message says it plainly.</exception>
    public StationAttachment(string name, byte[] bytes)
    {
        if (Fault(name, bytes.LongLength) is { } fault)
        {
            throw new ArgumentException(fault, nameof(name));
        }

        (Name, Bytes) = (name, bytes);
    }

    /// <summary>Its plain name, without a folder.</summary>
    public string Name { get; }

    /// <summary>What is in it.</summary>
    public byte[] Bytes { get; }

    // Names of devices, under which Windows writes no file.
    private static readonly string[] s_taken =
    [
        "con",
        "prn",
        "aux",
        "nul",
        .. Enumerable.Range(1, 9).SelectMany(n => new[] { $"com{n}", $"lpt{n}" }),
    ];

    /// <summary>What is wrong with a file before its bytes are taken.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="size">Its size [bytes].</param>
    /// <returns>One sentence; null when nothing is wrong.</returns>
    public static string? Fault(string name, long size) =>
        name.Length is 0 or > LongestName ? $"A file's name has 1 to {LongestName} characters."
        : name.AsSpan().ContainsAnyExcept(Plain) || name.StartsWith('.') || name.EndsWith('.') || name.Trim() != name
            ? "A file's name is made of latin letters, digits, dots, dashes, underlines and blanks, without a folder."
        : s_taken.Contains(name.Split('.')[0].TrimEnd(), StringComparer.OrdinalIgnoreCase)
        || name.Equals("station.yaml", StringComparison.OrdinalIgnoreCase)
            ? $"'{name}' is a name of its own: the brief's, or one that some computers keep for themselves. Take another."
        : size > LargestBytes ? $"A file has at most {LargestBytes / 1024 / 1024} MB."
        : null;

    internal FileRow Row(Guid station, long atTicks) =>
        new()
        {
            StationId = station,
            Name = Name,
            Bytes = Bytes,
            AtTicks = atTicks,
        };
}
