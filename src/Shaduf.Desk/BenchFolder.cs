using Shaduf.Store;

namespace Shaduf.Desk;

/// <summary>The folder in which an open brief lies for its runs, with the files that it names.</summary>
internal sealed class BenchFolder : IDisposable
{
    /// <summary>Where it is.</summary>
    public string Path { get; } = Directory.CreateTempSubdirectory("shaduf-desk-").FullName;

    /// <summary>Puts a file into it.</summary>
    public Task WriteAsync(StationAttachment file) => File.WriteAllBytesAsync(Of(file.Name), file.Bytes);

    /// <summary>The text of a file in it; null when none is named or it is not there.</summary>
    public async Task<string?> TextOfAsync(string? name) =>
        name is not null && System.IO.Path.GetFileName(name) == name && File.Exists(Of(name))
            ? await File.ReadAllTextAsync(Of(name))
            : null;

    public void Dispose() => Directory.Delete(Path, recursive: true);

    private string Of(string name) => System.IO.Path.Combine(Path, name);
}
