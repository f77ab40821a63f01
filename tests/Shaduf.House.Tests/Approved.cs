namespace Shaduf.House.Tests;

/// <summary>Compares written text with its accepted file; the difference is reviewed as text.</summary>
internal static class Approved
{
    /// <summary>
    /// Fails when the text is not that of the accepted file, and leaves it beside as *.received.*.
    /// With SHADUF_ACCEPT=1 the accepted file is rewritten instead.
    /// </summary>
    public static void Same(string acceptedPath, string text)
    {
        var receivedPath = ReceivedPath(acceptedPath);
        Directory.CreateDirectory(Path.GetDirectoryName(acceptedPath)!);
        File.Delete(receivedPath);
        if (File.Exists(acceptedPath) && File.ReadAllText(acceptedPath).ReplaceLineEndings("\n") == text)
        {
            return;
        }

        if (Environment.GetEnvironmentVariable("SHADUF_ACCEPT") == "1")
        {
            File.WriteAllText(acceptedPath, text);
            return;
        }

        File.WriteAllText(receivedPath, text);
        Assert.Fail(
            $"{House.Relative(acceptedPath)} is not what the code gives now. Read the change: "
                + $"git diff --no-index {House.Relative(acceptedPath)} {House.Relative(receivedPath)}; "
                + "accept it by running these tests with SHADUF_ACCEPT=1 in the environment, and commit the file."
        );
    }

    // index.md -> index.received.md; Shaduf.Water.approved.txt -> Shaduf.Water.received.txt
    private static string ReceivedPath(string acceptedPath)
    {
        var stem = Path.GetFileNameWithoutExtension(acceptedPath);
        var name = stem.EndsWith(".approved", StringComparison.Ordinal) ? stem[..^".approved".Length] : stem;
        return Path.Combine(Path.GetDirectoryName(acceptedPath)!, $"{name}.received{Path.GetExtension(acceptedPath)}");
    }
}
