namespace Shaduf.Store;

/// <summary>What an edit does to a file beside the brief.</summary>
/// <param name="Name">The file's plain name.</param>
/// <param name="File">The file as it shall be; null to take it away.</param>
public sealed record FileChange(string Name, StationAttachment? File)
{
    /// <summary>Puts a file beside the brief, in place of one of the same name.</summary>
    /// <param name="file">The file.</param>
    /// <returns>The change.</returns>
    public static FileChange Put(StationAttachment file) => new(file.Name, file);
}
