using System.Text.RegularExpressions;

namespace Shaduf.Acceptance;

public sealed class BadInputTests
{
    public static TheoryData<string, string, string> Mistakes { get; } =
        new()
        {
            { "latitude: -2.10 deg", "latitude: 95", "site.latitude" },
            { "elevation: 1240 m\n  utcOffset", "elevation: 1240\n  utcOffset", "site.elevation" },
            { "tankInlet: 1300.4 m", "tankInlet: 1200 m", "lift.tankInlet" },
            { "pumpSetting: choose", "pumpSetting: 140 m", "source.pumpSetting" },
            { "drawdown: 5.9 m", "drawdown: 1.1 m", "source.steps[2].drawdown" },
            { "drawdown: 5.9 m", "drawdown: -5.9 m", "source.steps[2].drawdown" },
            { "    jun: { sun: 4.8 kWh/m2/d, air: 20.6 degC }", "    jun:", "site.months.jun" },
            { "restLevel: 41.5 m", "restLevel: 41,5 m", "source.restLevel" },
            { "module: module-450", "module: module-45", "array.module" },
            { "losses: 15 %", "looses: 15 %", "uses.looses" },
            { "\nrack:", "\nworkshop: { kerf: 30 mm }\nrack:", "workshop.kerf" },
            {
                "\nrack:",
                "\nworkshop: { offcuts: [{ section: SHS61x3, length: 2 m }] }\nrack:",
                "workshop.offcuts[1].section"
            },
            {
                "\nrack:",
                "\nworkshop: { offcuts: [{ section: SHS60x3, length: 2 m, count: 0 }] }\nrack:",
                "workshop.offcuts[1].count"
            },
            { "bearing: 190 deg, distance: 26.5 m", "bearing: 80 deg, distance: 26.5 m", "guard.fenceLine[6]" },
            { "side: 1, at: 75 %", "side: 7, at: 75 %", "guard.gate.side" },
            { "bearing: 348.5 deg, distance: 263 m", "bearing: 96 deg, distance: 263 m", "lift.route[3]" },
            { "depth: 110 m", "depth: [110 m", "file" },
            { "depth: 110 m", "depth: &d 110 m", "file" },
            { "depth: 110 m", "depth: !!str 110 m", "file" },
        };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_one_clear_line_and_nothing_is_written(string from, string to, string field)
    {
        var text = File.ReadAllText(Command.Example("hilltop-village"));
        Assert.Contains(from, text);
        var ran = Designed(text.Replace(from, to, StringComparison.Ordinal));
        Assert.Contains(Lines(ran), line => line.Contains($": {field}: ", StringComparison.Ordinal));
    }

    [Fact]
    public void All_mistakes_come_in_one_go()
    {
        var text = File.ReadAllText(Command.Example("hilltop-village"))
            .Replace("latitude: -2.10 deg", "latitude: 95", StringComparison.Ordinal)
            .Replace("tankInlet: 1300.4 m", "tankInlet: 1200 m", StringComparison.Ordinal)
            .Replace("losses: 15 %", "losses: fifteen", StringComparison.Ordinal);
        var lines = Lines(Designed(text));
        Assert.Equal(3, lines.Length);
    }

    [Theory]
    [InlineData("this is not a brief")]
    [InlineData("- a\n- b\n")]
    [InlineData("")]
    [InlineData("a: &a [x]\nb: &b [*a, *a, *a]\nc: [*b, *b, *b]\n")]
    [InlineData("[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[")]
    [InlineData("\0\u0001\u0002")]
    public void What_is_no_brief_is_refused(string text) => Lines(Designed(text));

    [Fact]
    public void A_file_of_2_GB_is_refused_without_being_read()
    {
        var folder = Command.NewFolder();
        using (var file = File.Create(Path.Combine(folder, "big.yaml")))
        {
            file.SetLength(2L * 1024 * 1024 * 1024);
        }

        var ran = Command.Run(folder, "design", "big.yaml", "--out", "pack");
        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("too large", Assert.Single(Lines(ran)));
        Assert.False(Directory.Exists(Path.Combine(folder, "pack")));
    }

    [Fact]
    public void A_missing_file_or_a_folder_is_refused()
    {
        var folder = Command.NewFolder();
        Assert.Equal(2, Command.Run(folder, "check", "nowhere.yaml").ExitCode);
        Assert.Equal(2, Command.Run(folder, "check", folder).ExitCode);
    }

    private static Ran Designed(string text)
    {
        var folder = Command.NewFolder();
        var examples = Path.Combine(Command.Root, "examples");
        File.WriteAllText(
            Path.Combine(folder, "station.yaml"),
            text.Replace("../cards", $"{examples}/cards", StringComparison.Ordinal)
                .Replace("../prices", $"{examples}/prices", StringComparison.Ordinal)
        );
        var ran = Command.Run(folder, "design", "station.yaml", "--out", "pack");
        Assert.Equal(2, ran.ExitCode);
        Assert.Equal(["station.yaml"], Directory.GetFileSystemEntries(folder).Select(Path.GetFileName)!);
        Assert.Equal("", ran.Output);
        return ran;
    }

    private static string[] Lines(Ran ran)
    {
        var lines = ran.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.NotEmpty(lines);
        Assert.All(lines, line => Assert.Matches(new Regex(@"^[^:]+:\d+:\d+: [^:]+: .+; .+$"), line));
        return lines;
    }
}
