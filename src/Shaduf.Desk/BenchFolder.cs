using System.Security.Cryptography;
using Shaduf.Store;

namespace Shaduf.Desk;

/// <summary>The folder in which an open brief lies for its runs, with the files that it names.</summary>
internal sealed class BenchFolder : IDisposable
{
    private readonly Dictionary<string, string> laid = [];

    /// <summary>Where it is.</summary>
    public string Path { get; } = Directory.CreateTempSubdirectory("shaduf-desk-").FullName;

    /// <summary>Lays the files of the station into it, and takes away those that it no longer has.</summary>
    public async Task LayAsync(IReadOnlyList<StationAttachment> files)
    {
        foreach (var gone in laid.Keys.Except(files.Select(file => file.Name)).ToList())
        {
            File.Delete(Of(gone));
            laid.Remove(gone);
        }

        foreach (var file in files.Where(file => !laid.TryGetValue(file.Name, out var hash) || hash != Hash(file)))
        {
            await File.WriteAllBytesAsync(Of(file.Name), file.Bytes);
            laid[file.Name] = Hash(file);
        }
    }

    /// <summary>The text of a file in it; null when none is named or it is not there.</summary>
    public async Task<string?> TextOfAsync(string? name) =>
        name is not null && System.IO.Path.GetFileName(name) == name && File.Exists(Of(name))
            ? await File.ReadAllTextAsync(Of(name))
            : null;

    public void Dispose() => Directory.Delete(Path, recursive: true);

    private string Of(string name) => System.IO.Path.Combine(Path, name);

    private static string Hash(StationAttachment file) => Convert.ToHexString(SHA256.HashData(file.Bytes));
}
