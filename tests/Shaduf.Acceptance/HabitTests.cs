using System.Text.RegularExpressions;

namespace Shaduf.Acceptance;

/// <summary>What a user may rely on in every command: where things are said, and what is left behind.</summary>
public sealed class HabitTests
{
    private static readonly IReadOnlyDictionary<string, string> Odd = new Dictionary<string, string>
    {
        ["LC_ALL"] = "tr_TR.UTF-8",
        ["LANG"] = "de_DE.UTF-8",
        ["TZ"] = "Pacific/Chatham",
    };

    [Fact]
    public void A_brief_may_lie_under_any_name_and_the_pack_anywhere_and_only_the_answer_is_output()
    {
        var folder = Command.NewFolder();
        var brief = Path.Combine(folder, "Brunnen für Ñandú", "die Station №1.yaml");
        Directory.CreateDirectory(Path.GetDirectoryName(brief)!);
        File.WriteAllText(brief, Homestead());
        var ran = Command.Run(folder, "design", brief, "--out", Path.Combine("für später", "水", "pack/"));
        Assert.Equal(0, ran.ExitCode);
        var parent = Path.Combine(folder, "für später", "水");
        Assert.Equal(["pack"], Directory.GetFileSystemEntries(parent).Select(Path.GetFileName)!);
        DesignTests.Whole(Path.Combine(parent, "pack"));

        Assert.StartsWith("Homestead: ", ran.Output);
        Assert.Contains("für später", ran.Output);
        var progress = new Regex(@"^  \d+\.\d s  [a-z].*$");
        Assert.All(Lines(ran.Error), line => Assert.Matches(progress, line));
        Assert.All(Lines(ran.Output), line => Assert.DoesNotMatch(progress, line));
    }

    [Theory]
    [InlineData("pack")]
    [InlineData("pack/")]
    [InlineData("deep/er/pack")]
    public void Bad_input_leaves_no_folder_behind(string output)
    {
        var folder = Command.NewFolder();
        File.WriteAllText(
            Path.Combine(folder, "a.yaml"),
            Homestead().Replace("-22.40 deg", "95 deg", StringComparison.Ordinal)
        );
        var ran = Command.Run(folder, "design", "a.yaml", "--out", output);
        Assert.Equal(2, ran.ExitCode);
        Assert.Equal(["a.yaml"], Directory.GetFileSystemEntries(folder).Select(Path.GetFileName)!);
    }

    [Fact]
    public void A_pack_below_a_file_is_refused_in_one_line()
    {
        var folder = Command.NewFolder();
        File.WriteAllText(Path.Combine(folder, "notes"), "mine");
        var ran = Command.Run(folder, "design", Command.Example("homestead"), "--out", "notes/pack");
        Assert.Equal(2, ran.ExitCode);
        Assert.Equal("", ran.Output);
        Assert.Single(Lines(ran.Error), line => !line.StartsWith("  ", StringComparison.Ordinal));
        Assert.DoesNotContain("defect of shaduf", ran.Error);
        Assert.Equal(["notes"], Directory.GetFileSystemEntries(folder).Select(Path.GetFileName)!);
    }

    [Fact]
    public void Check_lists_every_mistake_and_says_nothing_else()
    {
        var folder = Command.NewFolder();
        File.WriteAllText(
            Path.Combine(folder, "a b.yaml"),
            Homestead()
                .Replace("-22.40 deg", "95 deg", StringComparison.Ordinal)
                .Replace("depth: 86 m", "depth: -86 m", StringComparison.Ordinal)
                .Replace("module: module-200", "modul: module-200", StringComparison.Ordinal)
        );
        var ran = Command.Run(folder, "check", "a b.yaml");
        Assert.Equal(2, ran.ExitCode);
        Assert.Equal("", ran.Output);
        var lines = Lines(ran.Error);
        Assert.All(lines, line => Assert.Matches(@"^a b\.yaml:\d+:\d+: .+: .+; .+$", line));
        Assert.All(
            new[] { "site.latitude", "source.depth", "array.modul" },
            field => Assert.Contains(lines, line => line.Contains($": {field}: ", StringComparison.Ordinal))
        );
    }

    [Theory]
    [InlineData("..")]
    [InlineData(".")]
    [InlineData("a/b")]
    [InlineData(@"a\b")]
    [InlineData("a:b")]
    [InlineData("a\nb")]
    [InlineData("   ")]
    [InlineData("a'b\"c")]
    [InlineData("0123456789012345678901234567890123456789012345678901234567890123456789")]
    public void New_refuses_a_name_that_is_no_plain_folder(string name)
    {
        var folder = Command.NewFolder();
        var ran = Command.Run(folder, "new", name);
        Assert.Equal(2, ran.ExitCode);
        Assert.NotEqual("", ran.Error);
        Assert.DoesNotContain("defect of shaduf", ran.Error);
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }

    [Theory]
    [InlineData("Brunnen Überlingen")]
    [InlineData("井戸")]
    [InlineData("42")]
    [InlineData("1e3")]
    [InlineData("yes")]
    [InlineData("unknown")]
    [InlineData("a name of just the length that a station may have - 50")]
    public void A_new_brief_passes_its_check_whatever_the_name(string name)
    {
        var folder = Command.NewFolder();
        var made = Command.Run(folder, "new", name);
        if (made.ExitCode == 2)
        {
            // A name that the brief would refuse is refused at once.
            Assert.Empty(Directory.GetFileSystemEntries(folder));
            return;
        }

        var check = Command.Run(folder, "check", Path.Combine(name, "station.yaml"));
        Assert.Equal("", check.Error);
        Assert.Equal(0, check.ExitCode);
        Assert.Contains($"the brief of {name} can be designed", check.Output);
    }

    [Fact]
    public void Answers_do_not_follow_language_or_time_zone()
    {
        var folder = Command.NewFolder();
        string[][] commands =
        [
            ["check", Command.Example("homestead")],
            ["verify"],
            ["schema"],
            ["design", "--help"],
        ];
        foreach (var args in commands)
        {
            Assert.Equal(Command.Run(folder, args), Command.Run(folder, Odd, args));
        }
    }

    [Fact]
    public void Help_names_every_command_and_each_command_its_options()
    {
        var folder = Command.NewFolder();
        var root = Command.Run(folder, "--help");
        Assert.Equal(0, root.ExitCode);
        foreach (var command in new[] { "new", "check", "design", "verify", "schema" })
        {
            Assert.Matches($@"(?m)^  {command}\b", root.Output);
            var help = Command.Run(folder, command, "--help");
            Assert.Equal(0, help.ExitCode);
            Assert.Equal("", help.Error);
            Assert.Contains("--help", help.Output);
        }
    }

    [Theory]
    [InlineData("verify", "--everything")]
    [InlineData("design", "a.yaml")]
    [InlineData("design", "a.yaml", "--out")]
    [InlineData("new")]
    [InlineData()]
    public void A_command_line_that_is_not_understood_says_why(params string[] args)
    {
        var folder = Command.NewFolder();
        var ran = Command.Run(folder, args);
        Assert.Equal(2, ran.ExitCode);
        Assert.NotEmpty(Lines(ran.Error));
        Assert.DoesNotMatch(@"(?m)^\s+at ", ran.Error + ran.Output);
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }

    private static string Homestead()
    {
        var examples = Path.Combine(Command.Root, "examples");
        return File.ReadAllText(Command.Example("homestead"))
            .Replace("../cards", Path.Combine(examples, "cards"), StringComparison.Ordinal)
            .Replace("../prices", Path.Combine(examples, "prices"), StringComparison.Ordinal);
    }

    private static string[] Lines(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
