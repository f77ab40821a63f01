using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>How the station is run and kept: for those who live with it.</summary>
internal static class CareChapter
{
    /// <summary>The blocks.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design) =>
        [.. Running(design), .. Calendar(design), .. Chlorine(design), new PageBreak(), .. WhoToCall(design)];

    private static IEnumerable<Block> Running(Design design)
    {
        var electrics = design.Works.Electrics;
        yield return new Heading(1, "Running the station");
        yield return new Heading(2, "On an ordinary day");
        yield return new Bullets([
            "The pump starts by itself when the sun is high enough and stops when the tank is full or the water in the source is low. Clouds make it slower; that is no fault.",
            Invariant(
                $"In full sun it gives up to {design.Sizing.Table.FullFlowM3PerH:0.0} m3 an hour. Write the meter down each week, with the days of sun: a figure that falls in good weather is the first sign of a fault."
            ),
            Invariant(
                $"The tank holds {design.Choice.UsefulM3:0.#} m3 that can be used. When it is full the pump is stopped by: {design.Works.Main.TankFull.Name}."
            ),
        ]);
        yield return new Heading(2, "Switching off and on");
        yield return new Bullets(
            [
                "Stop at the drive's own switch; then the isolator. Never pull a connector apart in the light: the arc does not go out.",
                Invariant(
                    $"Modules and their cables stay live, up to {electrics.ColdV:0} V, whenever there is light. The drive keeps its voltage for five minutes."
                ),
                "On again: isolator first, then the drive. Wait a quarter of an hour before the third try.",
            ],
            BulletMark.Number
        );
        yield return new Heading(2, "When it does not pump");
        yield return new Bullets(
            [
                "Is there sun on all modules, and is the tank full? Then nothing is wrong.",
                "Is a light of the drive red? Write down what it says. 'Dry' means low water: wait; it starts again by itself.",
                "Are all valves open, is water running out along the pipe or beside the tank?",
                "Switch off, wait five minutes, switch on. If it does not run, call. Open no box.",
            ],
            BulletMark.Number
        );
    }

    private static IEnumerable<Block> Calendar(Design design)
    {
        var care = Care.Of(design);
        yield return new Heading(1, "Care");
        yield return new Table(
            [new("every", 1.1), new("who", 0.8), new("what", 5), new("done", 0.8)],
            [.. care.Calendar.Select(row => TableRow.Of(row.Every, row.Who, row.What, ""))]
        )
        {
            Caption = "What is done how often",
        };
        yield return new Table(
            [new("what", 4), new("number", 1, HorizontalAnchor.Right), new("there", 0.8)],
            [.. care.Spares.Select(spare => TableRow.Of(spare.What, spare.Count, ""))]
        )
        {
            Caption = "Spares and tools that stay in the store",
        };
    }

    private static IEnumerable<Block> Chlorine(Design design)
    {
        yield return new Heading(2, "Clean water");
        yield return new Paragraph(
            "Only a laboratory says whether water may be drunk; have it tested before use, then twice a year, and after every flood. Chlorine takes no salt, fluoride, arsenic or nitrate away and helps little in cloudy water."
        );
        yield return new Table(
            [
                new("part", 3),
                new("water, L", 1, HorizontalAnchor.Right),
                new("chlorine, mg/L", 1.1, HorizontalAnchor.Right),
                new("product, g", 1, HorizontalAnchor.Right),
                new("stays, h", 0.8, HorizontalAnchor.Right),
            ],
            [
                .. Disinfection
                    .Of(design)
                    .Select(dose =>
                        TableRow.Of(
                            dose.What,
                            Invariant($"{dose.VolumeL:0}"),
                            Invariant($"{dose.DoseMgPerL:0}"),
                            Invariant($"{dose.ProductG:0}"),
                            Invariant($"{dose.Hours:0}")
                        )
                    ),
            ]
        )
        {
            Caption = "Disinfection after building or repair; product: hypochlorite of 65 %, fresh",
        };
        yield return new Paragraph(Disinfection.Caution);
    }

    private static IEnumerable<Block> WhoToCall(Design design)
    {
        var head = design.Brief.Head;
        yield return new Heading(1, "Whom to call");
        yield return new Table(
            [new("who", 2), new("name", 2), new("telephone", 2), new("for", 2.6)],
            [
                TableRow.Of("builder", head.Builder, "", "pump, drive, pipes, steel, guarantees"),
                TableRow.Of("operator", "", "", "every day's running, keys, log"),
                TableRow.Of("committee or owner", head.Client, "", "money for repairs, who draws when"),
                TableRow.Of("electrician with a licence", "", "", "anything inside a box"),
                TableRow.Of("health office, laboratory", "", "", "water test, sickness"),
                TableRow.Of(
                    "clinic, ambulance",
                    "",
                    "",
                    "an accident: switch off first, touch nobody who hangs on a cable"
                ),
                TableRow.Of("police", "", "", "theft, damage"),
            ]
        )
        {
            Caption = "Fill in with ink and hang it in the pump house",
        };
        yield return new Paragraph(
            Invariant(
                $"Say when you call: station {head.Name}, {head.Place}; pump {design.Choice.Pump.Name}, drive {design.Choice.Drive.Name}; what the drive shows; the meter today and a week ago."
            )
        );
    }
}
