using System.Text.Json.Nodes;

namespace Shaduf.Acceptance;

public sealed class DesignTests
{
    private static readonly string[] Files =
    [
        "client-book.pdf",
        "crew-book.pdf",
        "design.json",
        "engineer-book.pdf",
        "offer.pdf",
        "programme.ics",
        "quantities.xlsx",
        "sheets.pdf",
        "site-book.html",
        "station.glb",
        "year.csv",
    ];

    // Sheets that every station has.
    private static readonly string[] Sheets =
    [
        "arrangement",
        "columns",
        "earthing",
        "footings",
        "frame",
        "loading",
        "long-section",
        "parts",
        "sections",
        "setting-out",
        "single-line",
        "site",
        "strings",
        "welds",
    ];

    [Theory]
    [InlineData("hilltop-village")]
    [InlineData("market-garden")]
    [InlineData("homestead")]
    public void An_example_gives_a_whole_pack(string name)
    {
        var folder = Command.NewFolder();
        var ran = Command.Run(folder, "design", Command.Example(name), "--out", "the pack");
        Assert.Equal(0, ran.ExitCode);
        Whole(Path.Combine(folder, "the pack"));
        Assert.Contains("UNCHECKED", ran.Output);
        Assert.DoesNotContain("  at ", ran.Output + ran.Error);
    }

    [Fact]
    public void A_stop_is_designed_written_and_told_by_exit_code_3()
    {
        var folder = Command.NewFolder();
        var brief = File.ReadAllText(Command.Example("hilltop-village"))
            .Replace("testedYield: 10.5 m3/h", "testedYield: 2 m3/h", StringComparison.Ordinal)
            .Replace("../cards", Path.Combine(Command.Root, "examples/cards"), StringComparison.Ordinal)
            .Replace("../prices", Path.Combine(Command.Root, "examples/prices"), StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(folder, "station.yaml"), brief);
        var ran = Command.Run(folder, "design", "station.yaml", "--out", "pack");
        Assert.Equal(3, ran.ExitCode);
        Whole(Path.Combine(folder, "pack"));
        var findings = JsonNode.Parse(File.ReadAllText(Path.Combine(folder, "pack", "design.json")))![
            "findings"
        ]!.AsArray();
        var limit = findings.Single(finding => (string)finding!["id"]! == "sizing/limit")!;
        Assert.Equal("stop", (string)limit["status"]!);
        Assert.Contains("yield", (string)limit["says"]!);
        Assert.True((double)limit["value"]! > (double)limit["limit"]!);
        Assert.Contains("STOP sizing/limit", ran.Output);
    }

    [Theory]
    [InlineData("tilt: 60 deg")]
    [InlineData("azimuth: 180 deg")]
    public void The_steepest_plane_and_one_away_from_the_sun_are_drawn_and_told(string plane)
    {
        var folder = Command.NewFolder();
        var brief = File.ReadAllText(Command.Example("homestead"))
            .Replace("module: module-200", $"module: module-200\n  {plane}", StringComparison.Ordinal)
            .Replace("../cards", Path.Combine(Command.Root, "examples/cards"), StringComparison.Ordinal)
            .Replace("../prices", Path.Combine(Command.Root, "examples/prices"), StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(folder, "station.yaml"), brief);
        var ran = Command.Run(folder, "design", "station.yaml", "--out", "pack");
        Assert.True(ran.ExitCode is 0 or 3, ran.Error);
        Whole(Path.Combine(folder, "pack"));
        var findings = JsonNode.Parse(File.ReadAllText(Path.Combine(folder, "pack", "design.json")))![
            "findings"
        ]!.AsArray();
        var facing = findings.Single(finding => (string)finding!["id"]! == "sky/facing")!;
        Assert.Equal("look", (string)facing["status"]!);
        Assert.InRange((double)facing["value"]!, 1, (double)facing["limit"]!);
        Assert.Contains("array.azimuth", (string)facing["says"]!);
    }

    /// <summary>A title block that no font at hand can write is told with its field; Arabic can be written.</summary>
    [Theory]
    [InlineData("गाँव का कुआँ", true)]
    [InlineData("村の井戸", true)]
    [InlineData("بئر القرية", false)]
    public void A_name_that_no_font_has_is_told_with_its_field(string name, bool isTold)
    {
        var (ran, pack) = Designed(brief =>
            brief.Replace("name: Homestead", $"name: {name}", StringComparison.Ordinal)
        );
        Assert.True(ran.ExitCode is 0 or 3, ran.Error);
        var told = Findings(pack).SingleOrDefault(finding => (string)finding!["id"]! == "pack/lettering");
        Assert.Equal(isTold, told is not null);
        Assert.Equal(name, (string)Json(pack)["station"]!["name"]!);
        if (told is not null)
        {
            Assert.Equal("look", (string)told["status"]!);
            Assert.Contains("station.name (line 7)", (string)told["says"]!);
        }
    }

    /// <summary>A fence of forty points in and out over two miles: some thousand posts, struts and holes.</summary>
    [Fact]
    public void Thousands_of_posts_are_cut_drawn_and_counted()
    {
        var points = string.Join(
            ", ",
            Enumerable
                .Range(0, 40)
                .Select(i =>
                    FormattableString.Invariant($"{{ bearing: {i * 9} deg, distance: {(i % 2 == 0 ? 290 : 90)} m }}")
                )
        );
        var (ran, pack) = Designed(brief =>
            brief.Replace("\nmoney:", $"\n  fence: yes\n  fenceLine: [{points}]\n\nmoney:", StringComparison.Ordinal)
        );
        Assert.True(ran.ExitCode is 0 or 3, ran.Error);
        var fence = Json(pack)["guard"]!["fence"]!;
        Assert.True((int)fence["postCount"]! > 3000);
        Assert.Equal(
            (int)fence["postCount"]! + (int)fence["strutCount"]!,
            fence["parts"]!.AsArray().Sum(part => (int)part!["count"]!)
        );
        Assert.True(File.Exists(Path.Combine(pack, "sheet-fence.svg")));
    }

    private static (Ran Ran, string Pack) Designed(Func<string, string> change)
    {
        var folder = Command.NewFolder();
        var brief = File.ReadAllText(Command.Example("homestead"))
            .Replace("../cards", Path.Combine(Command.Root, "examples/cards"), StringComparison.Ordinal)
            .Replace("../prices", Path.Combine(Command.Root, "examples/prices"), StringComparison.Ordinal);
        var changed = change(brief);
        Assert.NotEqual(brief, changed);
        File.WriteAllText(Path.Combine(folder, "station.yaml"), changed);
        return (Command.Run(folder, "design", "station.yaml", "--out", "pack"), Path.Combine(folder, "pack"));
    }

    private static JsonNode Json(string pack) => JsonNode.Parse(File.ReadAllText(Path.Combine(pack, "design.json")))!;

    private static JsonArray Findings(string pack) => Json(pack)["findings"]!.AsArray();

    [Fact]
    public void Many_racks_of_one_module_each_are_drawn()
    {
        var folder = Command.NewFolder();
        var brief = File.ReadAllText(Command.Example("hilltop-village"))
            .Replace("rows: choose", "rows: 1", StringComparison.Ordinal)
            .Replace("columns: choose", "columns: 1", StringComparison.Ordinal)
            .Replace("../cards", Path.Combine(Command.Root, "examples/cards"), StringComparison.Ordinal)
            .Replace("../prices", Path.Combine(Command.Root, "examples/prices"), StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(folder, "station.yaml"), brief);
        var ran = Command.Run(folder, "design", "station.yaml", "--out", "pack");
        Assert.True(ran.ExitCode is 0 or 3, ran.Error);
        Whole(Path.Combine(folder, "pack"));
    }

    [Fact]
    public void The_machine_s_language_and_time_zone_do_not_matter()
    {
        var folder = Command.NewFolder();
        var plain = Command.Run(folder, "design", Command.Example("homestead"), "--out", "a");
        var odd = Command.Run(
            folder,
            new Dictionary<string, string>
            {
                ["LC_ALL"] = "tr_TR.UTF-8",
                ["LANG"] = "ar_SA.UTF-8",
                ["TZ"] = "Asia/Kathmandu",
            },
            "design",
            Command.Example("homestead"),
            "--out",
            "b"
        );
        Assert.Equal(
            plain.Output.Replace(" a\n", "\n", StringComparison.Ordinal),
            odd.Output.Replace(" b\n", "\n", StringComparison.Ordinal)
        );
        Assert.All(
            Files,
            name =>
                Assert.True(
                    File.ReadAllBytes(Path.Combine(folder, "a", name))
                        .AsSpan()
                        .SequenceEqual(File.ReadAllBytes(Path.Combine(folder, "b", name))),
                    name
                )
        );
    }

    [Fact]
    public void A_file_in_the_way_of_the_folder_is_refused()
    {
        var folder = Command.NewFolder();
        File.WriteAllText(Path.Combine(folder, "pack"), "mine");
        var ran = Command.Run(folder, "design", Command.Example("homestead"), "--out", "pack");
        Assert.Equal(2, ran.ExitCode);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(folder, "pack")));
    }

    // The files of every pack, and each sheet both as SVG and as DXF.
    internal static void Whole(string pack)
    {
        var names = Directory.GetFileSystemEntries(pack).Select(path => Path.GetFileName(path)!).ToList();
        var sheets = names.Where(name => name.StartsWith("sheet-", StringComparison.Ordinal)).ToList();
        Assert.Equal(Files, names.Except(sheets).Order(StringComparer.Ordinal));
        Assert.Superset(
            new HashSet<string>(Sheets.SelectMany(name => new[] { $"sheet-{name}.svg", $"sheet-{name}.dxf" })),
            sheets.ToHashSet()
        );
        Assert.All(
            sheets.GroupBy(Path.GetFileNameWithoutExtension),
            sheet => Assert.Equal([".dxf", ".svg"], sheet.Select(name => Path.GetExtension(name)).Order())
        );
    }
}
