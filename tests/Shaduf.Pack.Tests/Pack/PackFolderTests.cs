using System.Text.Json.Nodes;

namespace Shaduf.Pack.Tests;

/// <summary>Folders that cannot take a pack, and writers that meet in one folder.</summary>
public sealed class PackFolderTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    private readonly ExamplePacks.Made pack = packs["homestead"];

    [Fact]
    public async Task A_file_in_the_place_of_the_folder_is_left_alone()
    {
        var parent = Parent();
        var file = Path.Combine(parent, "pack");
        File.WriteAllText(file, "mine");
        await Assert.ThrowsAnyAsync<IOException>(() => PackWriter.WriteAsync(pack.Design, pack.Stamp, file));
        Assert.Equal("mine", File.ReadAllText(file));
        Assert.Equal([file], Directory.GetFileSystemEntries(parent));
    }

    [Fact]
    public async Task A_folder_below_a_file_is_refused()
    {
        var parent = Parent();
        var file = Path.Combine(parent, "notes");
        File.WriteAllText(file, "mine");
        await Assert.ThrowsAnyAsync<IOException>(() =>
            PackWriter.WriteAsync(pack.Design, pack.Stamp, Path.Combine(file, "pack"))
        );
        Assert.Equal([file], Directory.GetFileSystemEntries(parent));
    }

    [Fact]
    public async Task A_folder_that_may_not_be_written_is_left_as_it_was()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("folders are protected in another way there");
            return;
        }

        var parent = Parent();
        var folder = Directory.CreateDirectory(Path.Combine(parent, "pack")).FullName;
        File.WriteAllText(Path.Combine(folder, "design.json"), "old");
        var mode = File.GetUnixFileMode(folder);
        File.SetUnixFileMode(folder, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        try
        {
            Assert.SkipWhen(MayWrite(folder), "this user may write everywhere");
            await Assert.ThrowsAnyAsync<Exception>(() => PackWriter.WriteAsync(pack.Design, pack.Stamp, folder));
            Assert.Equal("old", File.ReadAllText(Path.Combine(folder, "design.json")));
            Assert.Single(Directory.GetFileSystemEntries(folder));
            Assert.Equal([folder], Directory.GetFileSystemEntries(parent));
        }
        finally
        {
            File.SetUnixFileMode(folder, mode);
        }
    }

    [Fact]
    public async Task A_folder_may_end_in_a_slash()
    {
        var parent = Parent();
        var folder = Path.Combine(parent, "pack");
        await PackWriter.WriteAsync(pack.Design, pack.Stamp, folder + Path.DirectorySeparatorChar);
        Assert.Equal(pack.Files.Count, Directory.GetFileSystemEntries(folder).Length);
        Assert.Equal([folder], Directory.GetFileSystemEntries(parent));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Writers_that_meet_in_one_folder_leave_one_whole_pack(bool isThere)
    {
        var parent = Parent();
        var folder = Path.Combine(parent, "pack");
        if (isThere)
        {
            await PackWriter.WriteAsync(pack.Design, pack.Stamp, folder);
        }

        string[] revisions = ["first", "second", "third", "fourth"];
        var outcomes = await Task.WhenAll(
            revisions.Select(revision =>
                Task.Run(async () =>
                {
                    try
                    {
                        await PackWriter.WriteAsync(pack.Design, pack.Stamp with { Revision = revision }, folder);
                        return null;
                    }
                    catch (IOException refused)
                    {
                        return refused;
                    }
                })
            )
        );
        Assert.Contains(outcomes, outcome => outcome is null);
        Assert.Equal([folder], Directory.GetFileSystemEntries(parent));
        Assert.Equal(pack.Files.Keys.Order(), Directory.GetFileSystemEntries(folder).Select(Path.GetFileName).Order()!);
        var json = JsonNode.Parse(File.ReadAllText(Path.Combine(folder, "design.json")))!;
        var kept = pack.Stamp with { Revision = (string)json["stamp"]!["revision"]! };
        foreach (var (name, bytes) in await PackWriter.FilesAsync(pack.Design, kept))
        {
            Assert.True(
                bytes.AsSpan().SequenceEqual(File.ReadAllBytes(Path.Combine(folder, name))),
                $"{name} is not of the same pack as design.json"
            );
        }
    }

    private static bool MayWrite(string folder)
    {
        try
        {
            var probe = Path.Combine(folder, "probe");
            File.WriteAllText(probe, "");
            File.Delete(probe);
            return true;
        }
        catch (UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static string Parent() => ExamplePacks.NewFolder();
}
