using System.Globalization;
using System.Text.RegularExpressions;
using Shaduf.Station;

namespace Shaduf.Pack.Tests;

/// <summary>
/// Whoever has only the sheets rebuilds the saw list, the pits and the columns from what is written on them; what comes out is
/// the model.
/// </summary>
public sealed partial class OnlyTheSheetsTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    private sealed record Sawn(string Mark, string Section, int Count, double LongMm, double ShortMm, string Degrees)
    {
        public required IReadOnlyList<(string Mark, double Mm)> Pieces { get; init; }
    }

    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void The_saw_list_is_on_the_parts_sheets(string example)
    {
        var design = packs[example].Design;
        var lots = design.Works.SawnLots.Where(lot =>
            lot.Steel != design.Works.Stand?.Stand.Steel || !StandRelease.IsWithheld(design)
        );
        var expected = lots.SelectMany(lot =>
                lot.Steel.Groups.Select(part => (Part: part, Count: part.Count * lot.Count))
            )
            .ToDictionary(each => each.Part.Mark);
        var read = Sheets(example, "parts").SelectMany(Sketches).ToDictionary(sawn => sawn.Mark);
        Assert.Equal(expected.Keys.Order(), read.Keys.Order());
        foreach (var (mark, sawn) in read)
        {
            var (part, count) = expected[mark];
            Assert.Equal((part.Section.Name, count), (sawn.Section, sawn.Count));
            Assert.InRange(sawn.LongMm - part.Shape.LongPointMm, -1e-6, 1);
            Assert.InRange(sawn.ShortMm - part.Shape.ShortPointMm, -1e-6, 1);
            Assert.Equal(Degrees(part.Shape.StartDeg) + " " + Degrees(part.Shape.EndDeg), sawn.Degrees);
        }

        // Plates with their marks, numbers and sizes.
        var texts = Sheets(example, "parts").SelectMany(sheet => sheet.All).Select(each => each.Text).ToList();
        foreach (var (plate, number) in lots.SelectMany(lot => lot.Steel.Plates.Select(plate => (plate, lot.Count))))
        {
            Assert.Contains(plate.Mark, texts);
            Assert.Contains(
                texts,
                text => text.StartsWith($"{plate.Count * number} plates, {plate.Role}", StringComparison.Ordinal)
            );
            Assert.Contains(texts, text => text.Contains(plate.Sizes, StringComparison.Ordinal));
        }

        // The pieces to be cut are those of the cut plans, with their marks, as often.
        var cut = design
            .Takeoff.BarPlans.SelectMany(plan =>
                plan.Plan.Bars.SelectMany(bar => bar.Pieces).Select(piece => (piece.Mark, piece.LengthMm))
            )
            .Where(piece => read.ContainsKey(piece.Mark.TrimEnd('a', 'b', 'c', 'd', 'e')))
            .CountBy(piece => piece)
            .ToDictionary();
        var asked = read
            .Values.SelectMany(sawn => sawn.Pieces.SelectMany(piece => Enumerable.Repeat(piece, sawn.Count)))
            .CountBy(piece => piece)
            .ToDictionary();
        Assert.Equal(
            cut.OrderBy(each => each.Key).Select(each => $"{each.Key} {each.Value}"),
            asked.OrderBy(each => each.Key).Select(each => $"{each.Key} {each.Value}")
        );
    }

    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void Pits_are_pegged_from_two_tapes(string example)
    {
        var plan = packs[example].Design.Works.Pits;
        var sheets = Sheets(example, "setting-out").ToList();
        var rows = sheets
            .SelectMany(sheet =>
                sheet.All.Any(each => each.Text == PitTable)
                    ? sheet.Table(
                        PitTable,
                        "pit",
                        "along",
                        "off A-B",
                        "from A",
                        "from B",
                        "from the last",
                        "ground",
                        "bottom"
                    )
                    : []
            )
            .ToList();
        var notes = string.Join(' ', sheets[0].All.Select(each => each.Text));
        var baseM = M(BaseLine().Match(notes).Groups[1].Value);
        var size = PitSize().Match(notes).Groups;
        Assert.Equal(plan.BaseM, baseM, 5e-4);
        Assert.Equal(
            (Math.Round(plan.Block.LengthMm), Math.Round(plan.Block.WidthMm), Math.Round(plan.Block.DepthMm)),
            (M(size[1].Value), M(size[2].Value), M(size[3].Value))
        );
        Assert.Equal(plan.Pits.Select(pit => pit.Name), rows.Select(row => row[0]));
        foreach (var (row, pit) in rows.Zip(plan.Pits))
        {
            var (fromA, fromB) = (M(row[3]), M(row[4]));
            var along = ((baseM * baseM) + (fromA * fromA) - (fromB * fromB)) / (2 * baseM);
            var off = Math.Sqrt((fromA * fromA) - (along * along));
            var (isAlong, isOff) = (pit.Middle.XM - plan.A.XM, pit.Middle.YM - plan.A.YM);

            // Tapes read to the millimetre at the angle at which they cross.
            var toleranceM = 0.001 / Math.Sin(pit.CrossingDeg * Math.PI / 180);
            Assert.Equal(isAlong, along, toleranceM);
            Assert.Equal(isOff, off, toleranceM);
            Assert.Equal(isAlong, M(row[1]), 5.1e-4);
            Assert.Equal(isOff, M(row[2]), 5.1e-4);
            Assert.Equal(pit.GroundM, M(row[6]), 5.1e-4);
            Assert.Equal(pit.BottomM, M(row[7]), 5.1e-4);
        }
    }

    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void Columns_are_as_long_as_from_their_feet_to_their_heads(string example)
    {
        var rack = packs[example].Design.Works.Rack;
        var sheets = Sheets(example, "columns").ToList();
        var parts = Tables(
                sheets,
                "Columns and struts of all racks, millimetres",
                ["mark", "part", "section", "off", "from the bar", "long edge", "short edge", "saw angles", "kg each"]
            )
            .ToDictionary(row => row[0]);
        var places = Tables(
                sheets,
                "Columns under the cross tubes of a rack, from its left end and its low edge",
                ["cross tube at", "column", "from the low edge", "foot below ground", "head above ground"]
            )
            .ToList();
        var columns = rack.Steel.Parts.Where(part => part.Mark[0] == 'C').ToList();
        Assert.Equal(columns.Count, places.Count);
        foreach (var group in rack.Steel.Groups.Where(part => part.Mark[0] is 'B' or 'C' or 'D' or 'K'))
        {
            var row = parts[group.Mark];
            Assert.Equal(group.Count * rack.Grid.RackCount, M(row[3]));
            Assert.Equal(group.Section.Name, row[2]);
            Assert.Equal(Shaduf.Parts.Part.WholeMm(group.AlongBarMm), M(row[4]));
        }

        foreach (var place in places)
        {
            // Along the axis, which lies midway between long and short point.
            var part = parts[place[1]];
            var axisMm = M(place[3]) + M(place[4]);
            Assert.Equal((M(part[5]) + M(part[6])) / 2, axisMm, 2.0);
            Assert.Contains(
                columns,
                column =>
                    column.Mark == place[1]
                    && Math.Abs(column.Shape.Start.XMm - M(place[0])) <= 0.5
                    && Math.Abs(column.Shape.Start.YMm - M(place[2])) <= 0.5
                    && Math.Abs((column.Shape.End - column.Shape.Start).LengthMm - axisMm) <= 1
            );
        }
    }

    /// <summary>A mark is painted on one kind of piece only, whatever it belongs to, and no pit bears it.</summary>
    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void A_mark_means_one_thing(string example)
    {
        var works = packs[example].Design.Works;
        var marks = works.SawnLots.SelectMany(lot => lot.Steel.Groups.Select(part => part.Mark)).ToList();
        Assert.Equal(marks.Count, marks.Distinct().Count());
        Assert.Empty(marks.Intersect(works.Pits.Pits.Select(pit => pit.Name)));
    }

    private const string PitTable = "Middles of the pits: tapes held level, metres";

    private static IEnumerable<IReadOnlyList<string>> Tables(
        IEnumerable<SheetReading> sheets,
        string title,
        string[] heads
    ) =>
        sheets
            .Where(sheet => sheet.All.Any(each => each.Text == title || each.Text == $"{title}, on"))
            .SelectMany(sheet => sheet.Table(title, heads));

    // One cell of a sheet of single parts begins where its mark stands.
    private static IEnumerable<Sawn> Sketches(SheetReading sheet)
    {
        foreach (var (x, y, text) in sheet.All.Where(each => NumberOff().IsMatch(each.Text)).ToList())
        {
            string At(double fromY, double toY) =>
                string.Join(
                    ' ',
                    sheet.Within(x - 12, y + fromY, 86, toY - fromY).OrderBy(each => each.X).Select(each => each.Text)
                );
            var mark = sheet.Within(x - 12, y - 1, 11.9, 4).Single().Text;
            var sizes = Sizes().Match(At(20, 22)).Groups;
            var (longMm, last) = (M(sizes[1].Value), At(23, 26));
            yield return new(
                mark,
                At(3, 5).Split(", ")[0],
                (int)M(NumberOff().Match(text).Groups[1].Value),
                longMm,
                sizes[2].Success ? M(sizes[2].Value) : longMm,
                At(12, 16)
            )
            {
                Pieces = PiecesOf(mark, longMm, last).ToList(),
            };
        }
    }

    private static IEnumerable<(string Mark, double Mm)> PiecesOf(string mark, double longMm, string last)
    {
        var along = Along().Match(last) is { Success: true } found ? M(found.Groups[1].Value) : (double?)null;
        var named = Piece().Matches(last).Select(piece => (piece.Groups[1].Value, M(piece.Groups[2].Value))).ToList();
        if (named.Count == 0)
        {
            return [(mark, along ?? longMm)];
        }

        return named.Select((piece, i) => i == named.Count - 1 && along is { } mm ? (piece.Value, mm) : piece);
    }

    private IEnumerable<SheetReading> Sheets(string example, string name) =>
        packs[example]
            .Files.Where(file => Regex.IsMatch(file.Key, $"^sheet-{name}(-[0-9]+)?[.]svg$"))
            .OrderBy(file => file.Key.Length)
            .ThenBy(file => file.Key, StringComparer.Ordinal)
            .Select(file => SheetReading.OfSvg(System.Text.Encoding.UTF8.GetString(file.Value)));

    private static string Degrees(double deg) => deg < 0.05 ? "0" : deg.ToString("0.0", CultureInfo.InvariantCulture);

    private static double M(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex("^([0-9]+) off, ")]
    private static partial Regex NumberOff();

    [GeneratedRegex("^([0-9]+)(?: [(]([0-9]+)[)])?$")]
    private static partial Regex Sizes();

    [GeneratedRegex("([0-9]+) along the bar")]
    private static partial Regex Along();

    [GeneratedRegex("([A-Z][0-9]+[a-z]) ([0-9]+)")]
    private static partial Regex Piece();

    [GeneratedRegex("Peg A to peg B: ([0-9.]+) m")]
    private static partial Regex BaseLine();

    [GeneratedRegex("Pits ([0-9]+) along the row x ([0-9]+) across, ([0-9]+) deep")]
    private static partial Regex PitSize();
}
