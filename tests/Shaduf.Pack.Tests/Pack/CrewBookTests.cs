using System.Globalization;
using CsCheck;
using Shaduf.Station;

namespace Shaduf.Pack.Tests;

/// <summary>Nothing that the crew must know is lost on the way to its dozen sheets.</summary>
public sealed class CrewBookTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    private static readonly PageStyle s_style = new(
        PaperSize.A4Upright,
        PageMargins.House,
        "left",
        "right",
        new("status", "A", "0")
    );

    public static TheoryData<string> Names => ExamplePacks.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void All_of_the_method_stands_in_the_book(string name) => HasAll(packs[name].Design, packs[name].Stamp);

    [Fact]
    public void A_station_four_times_as_large_with_small_modules_goes_on_a_dozen_sheets_too()
    {
        var pack = ExamplePacks.Make(
            ExamplePacks.Changed(
                "market-garden",
                ("weather: weather.csv", $"weather: {ExamplePacks.Root}/examples/market-garden/weather.csv"),
                ("module: module-550", "module: module-200"),
                ("area: 0.8 ha", "area: 3.2 ha"),
                ("area: 0.35 ha", "area: 1.4 ha"),
                ("area: 0.25 ha", "area: 1 ha"),
                ("flow: 12 m3/h", "flow: 48 m3/h"),
                ("flow: 22 m3/h", "flow: 88 m3/h"),
                ("flow: 34 m3/h", "flow: 136 m3/h"),
                ("testedYield: 34 m3/h", "testedYield: 136 m3/h")
            )
        );
        Assert.InRange(pack.Design.Works.Pits.Pits.Count, 20, 200);
        Assert.InRange(CrewBook.Pages(pack.Design, pack.Stamp).Count, 8, CrewBook.MostSheets);
        HasAll(pack.Design, pack.Stamp);
    }

    [Fact]
    public void Many_racks_of_one_module_each_go_on_a_dozen_sheets_too()
    {
        var pack = ExamplePacks.Make(
            ExamplePacks.Changed("hilltop-village", ("rows: choose", "rows: 1"), ("columns: choose", "columns: 1"))
        );
        Assert.True(pack.Design.Works.Rack.Grid.RackCount > 20);
        Assert.InRange(CrewBook.Pages(pack.Design, pack.Stamp).Count, 8, CrewBook.MostSheets);
        HasAll(pack.Design, pack.Stamp);
    }

    [Fact]
    public void No_word_of_any_sheets_is_lost_and_no_order_is_changed() =>
        Gen.Select(Gen.Int[1, 14], Gen.Int[0, 40], Gen.Int[0, 40], Gen.Int[0, 200])
            .Sample(
                (count, points, rows, letters) =>
                {
                    var sheets = Enumerable
                        .Range(1, count)
                        .Select(sheet =>
                            (IReadOnlyList<Block>)
                                [
                                    new Heading(1, $"H{sheet}."),
                                    new Bullets([
                                        .. Enumerable
                                            .Range(1, points)
                                            .Select(i => RichText.From($"b{sheet}.{i}{new string('x', letters)}.")),
                                    ]),
                                    new Table(
                                        [new("c"), new("d")],
                                        [.. Enumerable.Range(1, rows).Select(i => TableRow.Of($"t{sheet}.{i}", "."))]
                                    ),
                                    new Paragraph($"p{sheet}."),
                                ]
                        )
                        .ToList();
                    var pages = CrewSheets.Lay(sheets, s_style, 12);
                    if (pages is null)
                    {
                        return true;
                    }

                    var text = TextOf(pages);
                    var at = 0;
                    foreach (var i in Enumerable.Range(1, count))
                    {
                        foreach (
                            var word in new[] { $"H{i}." }
                                .Concat(Enumerable.Range(1, points).Select(n => $"b{i}.{n}x".TrimEnd('x')))
                                .Concat(Enumerable.Range(1, rows).Select(n => $"t{i}.{n}."))
                                .Append($"p{i}.")
                        )
                        {
                            at = text.IndexOf(word, at, StringComparison.Ordinal);
                            if (at < 0)
                            {
                                return false;
                            }
                        }
                    }

                    return pages.Count <= 12;
                },
                iter: Math.Max(8, Check.Iter / 20)
            );

    private static void HasAll(Design design, Stamp stamp)
    {
        var text = TextOf(CrewBook.Pages(design, stamp));
        var method = MethodStatement.Of(design);
        var stand = StandRelease.IsWithheld(design) ? null : design.Works.StandErection;
        IEnumerable<string> told =
        [
            .. method.Steps.SelectMany(step => step.Hold is null ? step.Do : step.Do.Append(step.Hold)),
            .. method.Hazards.SelectMany(hazard => new[] { hazard.What, hazard.Controls }),
            .. method.Tools.Select(tool => tool.Tools),
            .. method.Lifts.Select(lift => lift.What),
            .. design.Works.Erection?.Work ?? [],
            .. stand?.Work ?? [],
            .. ErectionChapter
                .Blocks(design)
                .OfType<Paragraph>()
                .Select(each => string.Concat(each.Text.Spans.Select(span => span.Text))),
            .. design.Office.Purchases.Select(bought => bought.Item),
            .. design.Works.Pits.Pits.Select(pit =>
                string.Create(CultureInfo.InvariantCulture, $"{pit.Name}{pit.FromAM:0.000}{pit.FromBM:0.000}")
            ),
            .. design
                .Takeoff.BarPlans.SelectMany(plan => plan.Plan.Alike)
                .SelectMany(alike => alike.Bar.Pieces)
                .Select(piece => piece.Mark),
            .. Disinfection.Of(design).Select(dose => dose.Says),
        ];
        Assert.All(told, each => Assert.Contains(Bare(each), text, StringComparison.Ordinal));
    }

    // The words of all pages in order, without what stands at the head and the foot of each.
    private static string TextOf(IEnumerable<Scene> pages) =>
        Bare(string.Concat(pages.SelectMany(page => page.Items.OfType<TextItem>().Skip(4).Select(item => item.Text))));

    private static string Bare(string text) => string.Concat(text.Where(each => !char.IsWhiteSpace(each)));
}
