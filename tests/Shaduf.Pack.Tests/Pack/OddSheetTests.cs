using Shaduf.Station;

namespace Shaduf.Pack.Tests;

/// <summary>Sheets of stations that no example has: racks of every kind, tall stands, falling ground, names at their longest.</summary>
public sealed class OddSheetTests
{
    [Theory]
    [InlineData("one module, landscape, one line of columns")]
    [InlineData("rails on two lines, landscape, falling ground")]
    [InlineData("channels of three rows on two lines")]
    [InlineData("a tall stand on eight legs")]
    [InlineData("a low stand on five legs")]
    [InlineData("several racks, long names")]
    public void Nothing_lies_on_a_text_and_nothing_leaves_the_frame(string odd)
    {
        var design = DesignRun.Run(StationFile.Read(Brief(odd)));
        var sheets = DrawingSheets.Of(design, Stamp.Of(design, "0.0.0-test", ExamplePacks.Today));
        Assert.Empty(sheets.SelectMany(sheet => SheetFaults.Of(sheet).Select(fault => $"{sheet.Name}: {fault}")));
        var names = sheets.Select(sheet => sheet.Name).ToList();
        Assert.Equal(odd.Contains("stand", StringComparison.Ordinal), names.Contains("stand"));
        Assert.Contains("parts", names);
    }

    private static string Brief(string odd) =>
        odd switch
        {
            "one module, landscape, one line of columns" => ExamplePacks.Changed(
                "homestead",
                ("array:\n", "rack:\n  orientation: landscape\n  lines: 1\n  rows: 1\n  columns: 1\narray:\n")
            ),
            "rails on two lines, landscape, falling ground" => ExamplePacks.Changed(
                "hilltop-village",
                (
                    "  rows: choose\n",
                    "  orientation: landscape\n  lines: 2\n  groundFall: { back: 8 %, along: 4 % }\n  rows: 3\n"
                )
            ),
            "channels of three rows on two lines" => ExamplePacks.Changed(
                "hilltop-village",
                ("type: clamped-rails", "type: slide-in"),
                ("  rows: choose\n", "  lines: 2\n  rows: 3\n")
            ),
            "a tall stand on eight legs" => ExamplePacks.Changed(
                "plain-school",
                ("card: tank-5", "card: tank-20"),
                ("stand: choose", "stand: 9 m"),
                ("1094.6 m", "1098.6 m"),
                ("legs: choose", "legs: 8")
            ),
            "a low stand on five legs" => ExamplePacks.Changed(
                "plain-school",
                ("stand: choose", "stand: 2 m"),
                ("legs: choose", "legs: 5")
            ),
            _ => ExamplePacks.Changed(
                "hilltop-village",
                ("  rows: choose\n  columns: choose\n", "  rows: 1\n  columns: 5\n"),
                ("name: Hilltop village", $"name: {new string('W', 50)}"),
                ("builder: Kibo and Daughters, Waterworks", $"builder: {new string('W', 80)}")
            ),
        };
}
