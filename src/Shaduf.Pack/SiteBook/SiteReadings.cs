using System.Text.Json;
using Shaduf.Power;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The test sheets of the site book: a field for each reading, and beside it what is promised for the light of the day.</summary>
internal static class SiteReadings
{
    // Sheets for the pump: a few minutes apart, about noon.
    private const int PumpSheets = 3;
    private const int PowerSteps = 24;

    private static readonly double[] s_lights =
    [
        50,
        100,
        200,
        300,
        400,
        500,
        600,
        700,
        800,
        900,
        1000,
        1100,
        1200,
        1500,
    ];
    private static readonly double[] s_cells = [-40, -10, 10, 25, 40, 55, 70, 90, 110];

    /// <summary>The sheets.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The piece of a page.</returns>
    public static Html Sheets(Design design) =>
        Html.Join([
            Html.Of(
                $"<fieldset><legend>Who and when</legend><label class=\"field\">Day<input type=\"date\" data-text=\"on\"></label><p>The name stands at the head of this book.</p></fieldset>\n"
            ),
            .. Enumerable
                .Range(1, design.Choice.StringCount)
                .Select(i => Sheet("strings", Invariant($"String {i}"), i, ReadingSheet.OfString)),
            Sheet("station", "Earth, motor, water", 1, InThe(design, ReadingSheet.OfStation)),
            .. Enumerable
                .Range(1, PumpSheets)
                .Select(i =>
                    Sheet("pump", Invariant($"Pump in steady sun, reading {i}"), i, InThe(design, ReadingSheet.OfPump))
                ),
            Sheet("tank", "Tank filling", 1, ReadingSheet.OfTank),
        ]);

    // No water stands deeper than the bottom; the brief refuses it too.
    private static ReadingSheet InThe(Design design, ReadingSheet sheet) =>
        design.Source is Well well
            ? new([
                .. sheet.Fields.Select(field =>
                    field.Name is "rest" or "level" ? field with { Highest = well.BottomM } : field
                ),
            ])
            : sheet;

    private static Html Sheet(string group, string title, int number, ReadingSheet sheet) =>
        Html.Of(
            $"<fieldset data-sheet=\"{group}\" data-number=\"{number}\"><legend>{title}</legend>{Html.Join(sheet.Fields.Select(Field))}<p class=\"promise\" role=\"status\"></p></fieldset>\n"
        );

    private static Html Field(ReadingField field) =>
        Html.Of(
            $"<label class=\"field\">{field.About}<span><input inputmode=\"decimal\" autocomplete=\"off\" maxlength=\"12\" data-reading=\"{field.Name}\" data-unit=\"{field.Unit}\" data-lowest=\"{field.Lowest}\" data-highest=\"{field.Highest}\" data-needed=\"{(field.IsNeeded ? "yes" : "no")}\"> {field.Unit}</span><small class=\"fault\"></small></label>"
        );

    /// <summary>What the page needs to tell the promise: tables between which it draws straight lines.</summary>
    /// <param name="design">The design.</param>
    /// <returns>JSON that may stand in a page.</returns>
    public static string Promise(Design design)
    {
        var (sheet, count) = (design.Choice.Module.Sheet, design.Choice.SeriesCount);
        var idealityV = DeSotoFit.Of(sheet).Module.Reference.IdealityV;
        var table = design.Sizing.Table;
        double[] powers =
        [
            .. Enumerable
                .Range(0, PowerSteps + 1)
                .Select(i => table.StartPowerW + ((table.FullPowerW - table.StartPowerW) * i / PowerSteps)),
        ];
        double[][] Grid(Func<double, double, double> of) =>
            [.. s_cells.Select(cell => s_lights.Select(light => Math.Round(of(light, cell), 3)).ToArray())];
        return JsonSerializer.Serialize(
            new
            {
                lights = s_lights,
                cells = s_cells,
                open = Grid((light, cell) => StringOfTheDay.OpenCircuitV(sheet, idealityV, count, light, cell)),
                @short = Grid((light, cell) => StringOfTheDay.ShortCircuitA(sheet, light, cell)),
                powers = powers.Select(power => Math.Round(power, 1)),
                flows = powers.Select(power => Math.Round(table.FlowM3PerH(power), 3)),
                least = new
                {
                    insulation = InsulationTest.LeastMohm(1.25 * count * sheet.OpenCircuitV),
                    motor = ProofTolerance.MotorMohm,
                },
                most = new { earth = Math.Round(design.Works.Guard.Earth.AimOhm, 1) },
                shares = new
                {
                    open = ProofTolerance.VoltageShare,
                    @short = ProofTolerance.CurrentShare,
                    flow = ProofTolerance.Pump.FlowLowShare,
                },
                shortLight = StringOfTheDay.LeastWPerM2,
            }
        );
    }
}
