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

    // Rows of lists that a crew's dozen sheets hold; what a very large station has more of stands elsewhere, and is said so.
    private static readonly int[] s_mostRows = [int.MaxValue, 240, 120, 60];

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
        var pages = s_mostRows
            .Select(mostRows => CrewSheets.Lay(Sheets(design, mostRows), style, MostSheets))
            .FirstOrDefault(laid => laid is not null);
        return
        [
            .. (pages ?? Flow.Lay([.. Sheets(design, s_mostRows[^1]).SelectMany(sheet => sheet)], style)).Select(
                GreyScene.Of
            ),
        ];
    }

    private static IReadOnlyList<IReadOnlyList<Block>> Sheets(Design design, int mostRows)
    {
        var method = MethodStatement.Of(design);
        return
        [
            [.. First(design, method)],
            [new Heading(1, "Loading the lorry"), .. CrewLists.Loading(design, mostRows), MethodChapter.Tools(method)],
            [.. SettingOut(design, method)],
            [.. Pits(design, method, mostRows)],
            [.. Bars(design, mostRows)],
            [.. Frame(design, method)],
            [.. LiftAndProp(design, method)],
            [.. CrewConcrete.Blocks(design, method.Steps.Single(step => step.Key == "concrete"))],
            [.. AtTheSource(design, method)],
            [.. MainAndTank(design, method)],
            .. Stand(design, method),
            [.. Wiring(design, method)],
            [.. StartUp(design, method)],
        ];
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
                "Sheets in the order of use: loading the lorry, setting out, pits, bars and pieces, frame, lift and prop, concrete, the source, main and tank, modules and wiring, start-up."
            ),
            MethodChapter.Lifts(method),
            Hazards(method),
        ];

    // What is done about them; how they were ranked stands in the engineer's book.
    private static Table Hazards(MethodStatement method) =>
        new(
            [new("hazard", 1.6), new("what is done about it", 4)],
            [.. method.Hazards.Select(hazard => TableRow.Of(hazard.What, hazard.Controls))]
        )
        {
            SizeMm = Lettering.SmallMm,
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

    private static IEnumerable<Block> Pits(Design design, MethodStatement method, int mostRows) =>
        [
            new Heading(1, "Pits"),
            .. CrewPictures.Of(design, "pits"),
            .. Steps(method, "pits"),
            .. CrewLists.Pits(design, mostRows),
        ];

    private static IEnumerable<Block> Bars(Design design, int mostRows)
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

        foreach (var block in CrewLists.Cuts(design, mostRows))
        {
            yield return block;
        }
    }

    private static IEnumerable<Block> Frame(Design design, MethodStatement method) =>
        [
            new Heading(1, $"Frame: {RackTables.RacksText(design.Works.Rack.Grid)}"),
            .. CrewPictures.Of(design, "steel"),
            .. Steps(method, "steel"),
        ];

    // Beyond the limits of the method the step itself says whose word counts.
    private static IEnumerable<Block> LiftAndProp(Design design, MethodStatement method) =>
        [
            new Heading(1, "Lift and prop"),
            .. design.Works.Erection is null
                ? Steps(method, "concrete")
                : ErectionChapter.Blocks(design).Where(block => block is not Heading { Level: 1 } and not Table),
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
            .. StandRelease.IsWithheld(design) ? Steps(method, "stand") : [],
            .. Steps(method, "tank"),
            .. Steps(method, "taps"),
        ];

    // A sheet of its own where it may be built; what is withheld takes a line.
    private static IEnumerable<IReadOnlyList<Block>> Stand(Design design, MethodStatement method) =>
        design.Works.StandErection is { } stand && !StandRelease.IsWithheld(design)
            ?
            [
                [
                    new Heading(1, "Stand of the tank"),
                    .. Steps(method, "stand"),
                    ErectionChapter.Days(stand.Steps, stand.AirDegC),
                ],
            ]
            : [];

    private static IEnumerable<Block> Wiring(Design design, MethodStatement method) =>
        [
            new Heading(1, "Modules and wiring"),
            .. Steps(method, "modules"),
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
