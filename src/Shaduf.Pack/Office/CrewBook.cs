using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>
/// The crew's book: at most a dozen sheets in black and white, in the order in which they are used, each with what the day's
/// work needs and no more.
/// </summary>
internal static class CrewBook
{
    /// <summary>Most sheets that a crew carries.</summary>
    public const int MostSheets = 12;

    private const int MostOnList = 44;

    /// <summary>Lays the book out.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">What every sheet bears.</param>
    /// <returns>The sheets in order.</returns>
    public static IReadOnlyList<Scene> Pages(Design design, Stamp stamp)
    {
        var style = new PageStyle(
            PaperSize.A4Upright,
            PageMargins.House,
            design.Brief.Head.Name,
            "crew's book",
            stamp.Mark
        );
        var method = MethodStatement.Of(design);
        IReadOnlyList<IReadOnlyList<Block>> sheets =
        [
            [.. First(design, method)],
            [.. Loading(design)],
            [.. SettingOut(design, method)],
            [.. Pits(design, method)],
            [.. Bars(design)],
            [.. Frame(design)],
            [.. LiftAndProp(design)],
            [.. CrewConcrete.Blocks(design, method.Steps.Single(step => step.Key == "concrete"))],
            [.. AtTheSource(design, method)],
            [.. MainAndTank(design, method)],
            [.. Wiring(design, method)],
            [.. StartUp(design, method)],
        ];
        return [.. Flow.Lay([.. sheets.SelectMany(Sheet)], style).Select(GreyScene.Of)];
        IEnumerable<Block> Sheet(IReadOnlyList<Block> blocks, int index) =>
            [.. OnePage(blocks, style), .. index + 1 < sheets.Count ? [new PageBreak()] : Array.Empty<Block>()];
    }

    // What does not fit on a sheet is left to the engineer's book, from the end, and said so.
    private static IReadOnlyList<Block> OnePage(IReadOnlyList<Block> blocks, PageStyle style)
    {
        for (var kept = blocks.Count; kept > 1; kept--)
        {
            IReadOnlyList<Block> tried =
                kept == blocks.Count
                    ? blocks
                    :
                    [
                        .. blocks.Take(kept),
                        new Paragraph("The rest of this sheet stands in the engineer's book.")
                        {
                            SizeMm = Lettering.SmallMm,
                        },
                    ];
            if (Flow.Lay(tried, style).Count == 1)
            {
                return tried;
            }
        }

        return blocks;
    }

    private static IEnumerable<Block> First(Design design, MethodStatement method) =>
        [
            new Heading(1, $"{design.Brief.Head.Name}: for the crew"),
            .. Standing.Notices(design, isForClient: false),
            .. Standing.Measured(design),
            new Paragraph(
                "Anybody may stop the work. Nobody under a load, alone in a pit, or on steel when thunder is heard. First aid, water and the telephone numbers of clinic and builder are on site before the first spade."
            ),
            new Paragraph(
                "Sheets in the order of use: loading the lorry, setting out, pits, bars and pieces, frame, lift and prop, concrete, the source, main and tank, wiring, start-up."
            ),
            MethodChapter.Lifts(method),
            MethodChapter.Tools(method),
        ];

    private static IEnumerable<Block> Loading(Design design)
    {
        yield return new Heading(1, "Loading the lorry");
        yield return new Paragraph("Pieces as they are sold, for the whole station; what the yard has is struck out.");
        var purchases = design.Office.Purchases;
        var half = (Math.Min(purchases.Count, MostOnList * 2) + 1) / 2;
        yield return new Columns([
            new(1, [List(purchases.Take(half))]),
            new(1, [List(purchases.Skip(half).Take(MostOnList))]),
        ]);
    }

    private static Table List(IEnumerable<Money.Purchase> purchases) =>
        new(
            [new("") { WidthMm = 5 }, new("pieces", 0.7, HorizontalAnchor.Right), new("of", 0.9), new("item", 2)],
            [
                .. purchases.Select(each =>
                    TableRow.Of(
                        "☐",
                        Invariant($"{each.PieceCount}"),
                        Invariant($"{each.SoldUnits:0.##} {each.Unit}"),
                        each.Item
                    )
                ),
            ]
        )
        {
            SizeMm = 2.2,
        };

    private static IEnumerable<Block> Steps(MethodStatement method, string key)
    {
        var step = method.Steps.FirstOrDefault(each => each.Key == key);
        return step is null
            ? []
            : [new Bullets([.. step.Do.Select(RichText.From)], BulletMark.CheckBox), .. MethodChapter.Hold(step)];
    }

    private static IEnumerable<Block> SettingOut(Design design, MethodStatement method) =>
        [new Heading(1, "Setting out"), .. CrewPictures.Of(design, "set-out"), .. Steps(method, "set-out")];

    private static IEnumerable<Block> Pits(Design design, MethodStatement method) =>
        [new Heading(1, "Pits"), .. Steps(method, "pits"), SettingOutTables.Pits(design)];

    private static IEnumerable<Block> Bars(Design design)
    {
        yield return new Heading(1, "Bars and pieces");
        yield return new Paragraph(
            Invariant(
                $"Cut in this order; {design.Brief.Rack.Workshop.KerfMm:0.#} mm are lost at each cut. Measure the first bar and the slot first. Saw angles stand in the engineer's book and on the parts sheet."
            )
        );
        if (StandRelease.Before(design) is { } withheld)
        {
            yield return new Notice(FindingStatus.Unchecked, withheld);
        }

        yield return Cuts(design);
    }

    /// <summary>What is cut from which bar.</summary>
    public static Table Cuts(Design design) =>
        new(
            [
                new("section", 0.8),
                new("bars", 0.4, HorizontalAnchor.Right),
                new("pieces of each: mark and length in mm", 5),
                new("left, mm", 0.6, HorizontalAnchor.Right),
            ],
            [
                .. design.Takeoff.BarPlans.SelectMany(plan =>
                    plan.Plan.Alike.Select(alike =>
                        TableRow.Of(
                            plan.Section.Name,
                            Invariant($"{alike.Count}"),
                            string.Join(
                                ", ",
                                alike.Bar.Pieces.Select(piece =>
                                    Invariant($"{StandRelease.Told(design, piece.Mark)} {piece.LengthMm:0}")
                                )
                            ),
                            Invariant($"{alike.Bar.RemainderMm:0}")
                        )
                    )
                ),
            ]
        )
        {
            SizeMm = design.Takeoff.BarPlans.Sum(plan => plan.Plan.Alike.Count()) > 20 ? 2.1 : 2.8,
        };

    private static IEnumerable<Block> Frame(Design design)
    {
        yield return new Heading(1, $"Frame: {RackTables.RacksText(design.Works.Rack.Grid)}");
        foreach (var picture in CrewPictures.Of(design, "steel"))
        {
            yield return picture;
        }

        yield return new Bullets(
            ["Tack on a flat bed; both diagonals within 5 mm; weld in turns; measure again.", MethodSteelHold],
            BulletMark.CheckBox
        );
    }

    private const string MethodSteelHold =
        "Hold: welds seen before paint. Zinc and paint off 50 mm before welding. Signed: ............";

    private static IEnumerable<Block> LiftAndProp(Design design) =>
        [
            new Heading(1, "Lift and prop"),
            .. ErectionChapter.Blocks(design).Where(block => block is not Heading { Level: 1 } and not Table),
        ];

    private static IEnumerable<Block> AtTheSource(Design design, MethodStatement method)
    {
        var key = design.Works.Source is WellBuild ? "well" : "intake";
        return [new Heading(1, "The source"), .. CrewPictures.Of(design, key), .. Steps(method, key)];
    }

    private static IEnumerable<Block> MainAndTank(Design design, MethodStatement method) =>
        [
            new Heading(1, "Main and tank"),
            .. CrewPictures.Of(design, "main"),
            .. Steps(method, "main"),
            .. Steps(method, "tank"),
            .. Steps(method, "taps"),
        ];

    private static IEnumerable<Block> Wiring(Design design, MethodStatement method) =>
        [
            new Heading(1, "Wiring"),
            .. CrewPictures.Of(design, "electrics"),
            .. Steps(method, "earth"),
            .. Steps(method, "electrics"),
        ];

    private static IEnumerable<Block> StartUp(Design design, MethodStatement method) =>
        [
            new Heading(1, "Start-up"),
            .. Steps(method, "first-run"),
            .. ProofChapter.Sheets(design).OfType<Table>(),
            .. Steps(method, "disinfect"),
            .. Steps(method, "hand-over"),
        ];
}
