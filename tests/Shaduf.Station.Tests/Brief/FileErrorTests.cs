using System.Diagnostics;
using System.Runtime.Versioning;
using System.Text;

namespace Shaduf.Station.Tests;

/// <summary>A file that is no brief at all gives one line too, and never more than it is read for.</summary>
public sealed class FileErrorTests
{
    [Theory]
    [InlineData("", "1:1: file: the file is empty; fields such as 'station:' are accepted")]
    [InlineData("# only a comment\n", "1:1: file: the file is empty; fields such as 'station:' are accepted")]
    [InlineData("just a sentence\n", "1:1: file: the file holds no fields; fields such as 'station:' are accepted")]
    [InlineData("- a\n- list\n", "1:1: file: the file holds no fields; fields such as 'station:' are accepted")]
    [InlineData(
        "station: { name: [ }\n",
        "1:20: file: not YAML: While parsing a node, did not find expected node content; indented 'name: value' lines are accepted"
    )]
    [InlineData(
        "station: \"never closed\n",
        "1:10: file: not YAML: While scanning a quoted scalar, found unexpected end of stream; indented 'name: value' lines are accepted"
    )]
    [InlineData("station:\n\tname: with a tab\n", "2:1: file: a tab; spaces before a field's name are accepted")]
    [InlineData(
        "station:\n  name: one\n  \tplace: two\n",
        "3:3: file: a tab; spaces before a field's name are accepted"
    )]
    [InlineData(
        "station:\n  name: one\n---\nstation:\n  name: two\n",
        "3:1: file: a second document begins; one document a file is accepted"
    )]
    [InlineData(
        "station: &who\n  name: one\n",
        "1:10: file: an anchor (&name); values written out in full are accepted"
    )]
    [InlineData("station:\n  name: *who\n", "2:9: file: an alias (*name); values written out in full are accepted")]
    [InlineData("station:\n  name: !secret one\n", "2:9: file: a tag (!name); plain values are accepted")]
    [InlineData("station: !!map { name: one }\n", "1:10: file: a tag (!name); plain values are accepted")]
    [InlineData("? [a, b]\n: c\n", "1:3: file: a field's name is not a word; 'name: value' is accepted")]
    [InlineData(
        "<html><body>Not found</body></html>\n",
        "1:1: file: the file holds no fields; fields such as 'station:' are accepted"
    )]
    [InlineData(
        "%PDF-1.7\n1 0 obj\n",
        "1:1: file: not YAML: While scanning a directive, found unexpected non-alphabetical character; indented 'name: value' lines are accepted"
    )]
    public void Text_that_is_no_brief_gives_one_line(string text, string expected)
    {
        using var scratch = new Scratch();
        var actual = string.Join('\n', scratch.Errors(text));
        Assert.True(actual == expected, actual);
    }

    [Fact]
    public void Deep_nesting_is_refused()
    {
        using var scratch = new Scratch();
        Assert.Equal(
            ["1:22: file: nested too deep; at most 12 levels are accepted"],
            scratch.Errors("station: " + new string('[', 50_000) + new string(']', 50_000) + "\n")
        );
    }

    [Fact]
    public void A_bomb_of_aliases_is_refused_at_its_first_anchor()
    {
        using var scratch = new Scratch();
        var bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (var i = 1; i < 10; i++)
        {
            bomb.Append(
                FormattableString.Invariant($"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 10))}]\n")
            );
        }

        Assert.Equal(
            ["1:5: file: an anchor (&name); values written out in full are accepted"],
            scratch.Errors(bomb.ToString())
        );
    }

    [Fact]
    public void Bytes_that_are_no_text_are_refused()
    {
        using var scratch = new Scratch();
        File.WriteAllBytes(scratch.BriefPath, [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0xFF, 0xFE]);
        Assert.Equal(
            ["1:1: file: this is not UTF-8 text; a YAML text file in UTF-8 is accepted"],
            scratch.Errors(() => StationFile.Read(scratch.BriefPath))
        );
    }

    [Fact]
    public void Zero_bytes_are_refused()
    {
        using var scratch = new Scratch();
        File.WriteAllBytes(scratch.BriefPath, new byte[4096]);
        Assert.Single(scratch.Errors(() => StationFile.Read(scratch.BriefPath)));
    }

    [Fact]
    public void A_file_of_2_GB_is_refused_at_once()
    {
        using var scratch = new Scratch();
        using (var sparse = File.Create(scratch.BriefPath))
        {
            sparse.SetLength(2L * 1024 * 1024 * 1024);
        }

        var watch = Stopwatch.StartNew();
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(
            ["1:1: file: the file is too large; files of at most 256 kB are accepted"],
            scratch.Errors(() => StationFile.Read(scratch.BriefPath))
        );
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 4_000_000);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(2), watch.Elapsed.ToString());
    }

    [Fact]
    public void A_missing_file_is_refused()
    {
        using var scratch = new Scratch();
        Assert.Equal(
            ["1:1: file: there is no such file; the path of a YAML file is accepted"],
            scratch.Errors(() => StationFile.Read(scratch.BriefPath))
        );
    }

    [Fact]
    public void A_folder_is_refused()
    {
        using var scratch = new Scratch();
        Directory.CreateDirectory(scratch.BriefPath);
        Assert.Equal(
            ["1:1: file: this is a folder; the path of a YAML file is accepted"],
            scratch.Errors(() => StationFile.Read(scratch.BriefPath))
        );
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("a\0b")]
    public void A_path_that_cannot_be_is_refused(string path)
    {
        var bad = Assert.Throws<BadInputException>(() => StationFile.Read(path));
        Assert.Equal("there is no such file", Assert.Single(bad.Errors).Problem);
    }

    [Fact]
    public void A_byte_order_mark_and_foreign_line_ends_are_taken()
    {
        using var scratch = new Scratch();
        var text = Specimen.Brief;
        Assert.Equal("Hilltop village", scratch.Read("\uFEFF" + text.ReplaceLineEndings("\r\n")).Brief.Head.Name);
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void A_file_that_may_not_be_read_is_refused()
    {
        Assert.SkipWhen(
            OperatingSystem.IsWindows() || Environment.IsPrivilegedProcess,
            "this user may read everything"
        );
        using var scratch = new Scratch();
        scratch.Write("station.yaml", Specimen.Brief);
        File.SetUnixFileMode(scratch.BriefPath, UnixFileMode.None);
        Assert.Equal(
            ["1:1: file: the file cannot be read; a file that this user may read is accepted"],
            scratch.Errors(() => StationFile.Read(scratch.BriefPath))
        );
    }
}
