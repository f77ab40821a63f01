namespace Shaduf.Pack.Tests;

/// <summary>A pack appears whole or not at all.</summary>
public sealed class PackWriterTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    private readonly ExamplePacks.Made pack = packs["homestead"];

    [Fact]
    public async Task A_new_folder_receives_all_files()
    {
        var folder = Path.Combine(Parent(), "a b", "pack");
        await PackWriter.WriteAsync(pack.Design, pack.Stamp, folder);
        Assert.Equal(pack.Files.Keys.Order(), Directory.GetFiles(folder).Select(Path.GetFileName).Order()!);
        Assert.Single(Directory.GetFileSystemEntries(Path.GetDirectoryName(folder)!));
    }

    [Fact]
    public async Task An_old_pack_is_replaced_and_other_files_stay()
    {
        var folder = Parent();
        File.WriteAllText(Path.Combine(folder, "design.json"), "old");
        File.WriteAllText(Path.Combine(folder, "notes.txt"), "mine");
        File.WriteAllText(Path.Combine(folder, "sheet-gone.dxf"), "a sheet that this station has no more");
        await PackWriter.WriteAsync(pack.Design, pack.Stamp, folder);
        Assert.Equal(pack.Files["design.json"], File.ReadAllBytes(Path.Combine(folder, "design.json")));
        Assert.Equal("mine", File.ReadAllText(Path.Combine(folder, "notes.txt")));
        Assert.Equal(pack.Files.Count + 1, Directory.GetFileSystemEntries(folder).Length);
    }

    [Theory]
    [InlineData("design.json")]
    [InlineData("year.csv")]
    [InlineData("programme.ics")]
    public async Task A_failure_in_the_middle_leaves_the_old_pack_whole(string blocked)
    {
        var folder = Parent();
        foreach (var name in PackWriter.FileNames.Where(name => name != blocked))
        {
            File.WriteAllText(Path.Combine(folder, name), "old");
        }

        // A folder with the file's name cannot be replaced by a file.
        Directory.CreateDirectory(Path.Combine(folder, blocked, "inside"));
        await Assert.ThrowsAnyAsync<Exception>(() => PackWriter.WriteAsync(pack.Design, pack.Stamp, folder));
        Assert.All(
            PackWriter.FileNames.Where(name => name != blocked),
            name => Assert.Equal("old", File.ReadAllText(Path.Combine(folder, name)))
        );
        Assert.Equal(PackWriter.FileNames.Count, Directory.GetFileSystemEntries(folder).Length);
        Assert.DoesNotContain(
            Directory.GetFileSystemEntries(Path.GetDirectoryName(folder)!),
            path =>
                path.Contains(".draft", StringComparison.Ordinal)
                && path.Contains(Path.GetFileName(folder), StringComparison.Ordinal)
        );
    }

    private static string Parent() => ExamplePacks.NewFolder();
}
