namespace Shaduf.Station.Tests;

/// <summary>Compares written text with its accepted file; the difference is reviewed as text.</summary>
internal static class Approved
{
    /// <summary>
    /// Fails when the text is not that of the accepted file. With SHADUF_ACCEPT=1 the accepted file is rewritten instead.
    /// </summary>
    public static void Same(string path, string text)
    {
        var accepted = Path.Combine(Examples.Root, path);
        if (Environment.GetEnvironmentVariable("SHADUF_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(accepted)!);
            File.WriteAllText(accepted, text);
        }

        var found = File.Exists(accepted) ? File.ReadAllText(accepted).ReplaceLineEndings("\n") : "";
        Assert.True(
            found == text,
            $"{path} is not what the code gives now: run these tests with SHADUF_ACCEPT=1 in the environment, read the "
                + "change with git diff, and commit the file."
        );
    }
}
