using System.Globalization;
using System.Text.RegularExpressions;

namespace Shaduf.Acceptance;

public sealed class CommandLineTests
{
    [Fact]
    public void A_new_brief_can_be_checked_and_designed_as_it_stands()
    {
        var folder = Command.NewFolder();
        Assert.Equal(0, Command.Run(folder, "new", "Well of Ayo").ExitCode);
        var brief = Path.Combine("Well of Ayo", "station.yaml");
        Assert.Contains("name: Well of Ayo", File.ReadAllText(Path.Combine(folder, brief)));
        var check = Command.Run(folder, "check", brief);
        Assert.Equal(0, check.ExitCode);
        Assert.Contains("source.seasonalFall: 3 m", check.Output);
        Assert.Equal(0, Command.Run(folder, "design", brief, "--out", "pack").ExitCode);
    }

    [Fact]
    public void New_does_not_overwrite_and_refuses_names_that_are_paths()
    {
        var folder = Command.NewFolder();
        Command.Run(folder, "new", "one");
        File.AppendAllText(Path.Combine(folder, "one", "station.yaml"), "# mine\n");
        Assert.Equal(2, Command.Run(folder, "new", "one").ExitCode);
        Assert.EndsWith("# mine\n", File.ReadAllText(Path.Combine(folder, "one", "station.yaml")));
        Assert.Equal(2, Command.Run(folder, "new", "../two").ExitCode);
        Assert.Equal(2, Command.Run(folder, "new", "").ExitCode);
    }

    [Fact]
    public void Verify_counts_its_checks_on_the_last_line()
    {
        var ran = Command.Run(Command.NewFolder(), "verify");
        Assert.Equal(0, ran.ExitCode);
        var last = Regex.Match(ran.Output.TrimEnd().Split('\n')[^1], @"^(\d+) checks, 0 missed$");
        Assert.True(last.Success, ran.Output);
        Assert.True(int.Parse(last.Groups[1].Value, CultureInfo.InvariantCulture) >= 25);
        Assert.Matches(@"(?m)^agrees  friction_factor.csv  darcy_f: 16 figures, largest deviation .*%$", ran.Output);
    }

    [Fact]
    public void Verify_lists_what_was_expected_and_what_was_obtained()
    {
        var ran = Command.Run(Command.NewFolder(), "verify", "--all");
        Assert.Matches(new Regex(@"agrees  water/friction-factor .* expected .* obtained .* deviation "), ran.Output);
    }

    [Theory]
    [InlineData("new", "NAME")]
    [InlineData("check", "FILE")]
    [InlineData("design", "--out")]
    [InlineData("verify", "--all")]
    public void Each_command_explains_itself(string command, string word)
    {
        var ran = Command.Run(Command.NewFolder(), command, "--help");
        Assert.Equal(0, ran.ExitCode);
        Assert.Contains(word, ran.Output);
    }

    [Theory]
    [InlineData("desing")]
    [InlineData("design")]
    [InlineData("check", "a.yaml", "--fast")]
    public void A_wrong_command_line_is_bad_input(params string[] args)
    {
        var ran = Command.Run(Command.NewFolder(), args);
        Assert.Equal(2, ran.ExitCode);
        Assert.NotEqual("", ran.Error);
    }

    [Fact]
    public void The_schema_is_the_published_one() =>
        Assert.Equal(
            File.ReadAllText(Path.Combine(Command.Root, "docs", "schema", "station.schema.json"))
                .ReplaceLineEndings("\n"),
            Command.Run(Command.NewFolder(), "schema").Output.ReplaceLineEndings("\n")
        );
}
