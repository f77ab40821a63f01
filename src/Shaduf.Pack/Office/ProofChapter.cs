using Shaduf.Power;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Test sheets with the promise for the light and heat of the day, and the certificate once they are filled in.</summary>
internal static class ProofChapter
{
    private static readonly double[] s_lights = [500, 600, 700, 800, 900, 1000];
    private static readonly double[] s_cells = [25, 40, 55, 70];
    private static readonly double[] s_powers = [0.3, 0.5, 0.75, 1];

    /// <summary>The sheets with empty fields.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Sheets(Design design)
    {
        yield return new Heading(1, "Tests of the last day");
        yield return new Paragraph(
            "Steady sun, about noon. Light in the plane of the modules, temperature behind a module and 3 K more in full sun. Write what the instrument shows; the readings go into the part 'measured' of the brief, or come from the site book's file, and each is then judged with the uncertainty of its instrument."
        );
        yield return Voltages(design);
        yield return Currents(design);
        yield return Flows(design);
        yield return Others(design);
    }

    private static Table Voltages(Design design)
    {
        var sheet = design.Choice.Module.Sheet;
        var idealityV = DeSotoFit.Of(sheet).Module.Reference.IdealityV;
        return Grid(
            Invariant(
                $"Open voltage of a string of {design.Choice.SeriesCount}, V; {Share(ProofTolerance.VoltageShare)} either way; insulation at least {InsulationTest.LeastMohm(1.25 * design.Choice.SeriesCount * sheet.OpenCircuitV):0.#} Mohm at {InsulationTest.TestV(1.25 * design.Choice.SeriesCount * sheet.OpenCircuitV):0} V"
            ),
            (light, cell) => StringOfTheDay.OpenCircuitV(sheet, idealityV, design.Choice.SeriesCount, light, cell),
            "0"
        );
    }

    private static Table Currents(Design design) =>
        Grid(
            $"Short-circuit current of a string, A; {Share(ProofTolerance.CurrentShare)} either way",
            (light, cell) => StringOfTheDay.ShortCircuitA(design.Choice.Module.Sheet, light, cell),
            "0.00"
        );

    private static string Share(double share) => Invariant($"{share * 100:0.#} %");

    private static Table Grid(string caption, Func<double, double, double> of, string format) =>
        new(
            [
                new("light, W/m2", 1.2),
                .. s_lights.Select(light => new TableColumn(Invariant($"{light:0}"), 1, HorizontalAnchor.Right)),
            ],
            [
                .. s_cells.Select(cell =>
                    TableRow.Of([
                        Invariant($"cell at {cell:0} degC"),
                        .. s_lights.Select(light =>
                            of(light, cell).ToString(format, System.Globalization.CultureInfo.InvariantCulture)
                        ),
                    ])
                ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = caption,
        };

    private static Table Flows(Design design)
    {
        var table = design.Sizing.Table;
        return new(
            [
                new("power into the drive, W", 1.4, HorizontalAnchor.Right),
                new("promised flow, m3/h", 1.3, HorizontalAnchor.Right),
                new("fall of the level, m", 1.3, HorizontalAnchor.Right),
                new("volts", 0.8),
                new("amperes", 0.8),
                new("flow", 0.8),
                new("level", 0.8),
                new("gauge", 0.8),
            ],
            [
                .. s_powers.Select(share =>
                {
                    var power = table.StartPowerW + (share * (table.FullPowerW - table.StartPowerW));
                    var flow = table.FlowM3PerH(power);
                    return TableRow.Of(
                        Invariant($"{power:0}"),
                        Invariant($"{flow:0.00}"),
                        design.Source.Drawdown is { } well ? Invariant($"{well.DrawdownM(flow / 3600):0.0}") : "-",
                        "",
                        "",
                        "",
                        "",
                        ""
                    );
                }),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption =
                $"Flow at the measured power, water as low as in the dry season (more when it stands higher); {Share(ProofTolerance.Pump.FlowLowShare)} less is accepted",
        };
    }

    private static Table Others(Design design) =>
        new(
            [new("reading", 3), new("promised", 2), new("measured", 1.4), new("instrument, number", 1.6)],
            [
                TableRow.Of("earth resistance", Invariant($"{design.Works.Guard.Earth.AimOhm:0} ohm at most"), "", ""),
                TableRow.Of(
                    "insulation of motor and cable, 500 V",
                    Invariant($"{ProofTolerance.MotorMohm:0} Mohm at least"),
                    "",
                    ""
                ),
                TableRow.Of("level before pumping", "", "", ""),
                TableRow.Of(
                    "time for 1 m3 into the tank at the measured flow",
                    Invariant(
                        $"{60 / Math.Max(design.ShownFlowM3PerH, 0.01):0} min at {design.ShownFlowM3PerH:0.00} m3/h"
                    ),
                    "",
                    ""
                ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = "Other readings",
        };

    /// <summary>The judged readings and the certificate; nothing before the station is measured.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Certificate(Design design)
    {
        if (design.Proof is not { } proof)
        {
            yield break;
        }

        yield return new Heading(1, "Certificate of acceptance");
        yield return new Paragraph(
            Invariant(
                $"{design.Brief.Head.Name}, {design.Brief.Head.Place}. Measured {(proof.Measured.On is { } on ? Invariant($"on {on:d MMMM yyyy}") : "on a day not told")}{(proof.Measured.By.Length > 0 ? $" by {proof.Measured.By}" : "")}. {Verdict(proof)} A test in the field proves that a station is consistent with its promise, no more."
            )
        );
        foreach (var notice in Standing.Measured(design))
        {
            yield return notice;
        }

        if (proof.Items.Count > 0)
        {
            yield return Readings(proof);
        }

        if (proof.Causes.Count > 0)
        {
            yield return Causes(proof);
        }

        foreach (var told in FromSite(proof))
        {
            yield return told;
        }

        yield return new Table(
            [new("owner"), new("builder"), new("operator")],
            [TableRow.Of("\n\nname, date, signature", "\n\nname, date, signature", "\n\nname, date, signature")]
        );
    }

    private static Table Readings(Proof proof) =>
        new(
            [
                new("reading", 2.2),
                new("where", 1.1),
                new("promised", 0.95, HorizontalAnchor.Right),
                new("measured", 0.95, HorizontalAnchor.Right),
                new("unit", 0.6),
                new("off, %", 0.75, HorizontalAnchor.Right),
                new("accepted, %", 1.25, HorizontalAnchor.Right),
                new("uncertain, %", 1.3, HorizontalAnchor.Right),
                new("verdict", 0.95),
            ],
            [.. proof.Items.Select(Row)]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = "Each reading against the promise for its own conditions",
        };

    // What the site book brought beside the readings: the holds with their ticks, and the crew's notes.
    private static IEnumerable<Block> FromSite(Proof proof)
    {
        if (proof.Holds.Count > 0)
        {
            yield return new Table(
                [new("step", 1.6), new("hold", 4), new("ticked on site", 1.8)],
                [.. proof.Holds.Select(step => TableRow.Of(step.Title, step.Hold!, step.Signed?.Says ?? "OPEN"))]
            )
            {
                SizeMm = Lettering.SmallMm,
                Caption = "Points at which work stopped until they were ticked",
            };
        }

        if (proof.Measured.Notes.Count > 0)
        {
            yield return new Table(
                [new("about", 1), new("note", 4)],
                [.. proof.Measured.Notes.Select(note => TableRow.Of(note.About, note.Text))]
            )
            {
                SizeMm = Lettering.SmallMm,
                Caption = "Notes of the crew",
            };
        }
    }

    private static string Verdict(Proof proof)
    {
        var open =
            (
                proof.NotTested.Count > 0
                    ? $" Not measured yet: {string.Join(", ", proof.NotTested.Select(Proof.NameOf))}."
                    : ""
            )
            + (
                proof.OpenHolds.Count > 0
                    ? $" Not ticked in the site book: {string.Join(", ", proof.OpenHolds.Select(step => step.Title))}."
                    : ""
            );
        return proof.Items.Count == 0 ? $"NOT MEASURED YET: nothing can be accepted.{open}"
            : proof.Items.Any(item => item.Verdict == ProofVerdict.Misses)
                ? $"NOT ACCEPTED: a reading misses its promise.{open}"
            : proof.IsAccepted
                ? "ACCEPTED: every reading meets its promise, or misses it by no more than it is uncertain."
            : $"ACCEPTED WITH OPEN POINTS.{open}";
    }

    private static TableRow Row(ProofItem item) =>
        TableRow.Of(
            Proof.NameOf(item.Kind),
            item.Where,
            Invariant($"{item.Promised:0.##}"),
            Invariant($"{item.Measured:0.##}"),
            item.Unit,
            Invariant($"{item.OffShare * 100:+0.0;-0.0;0.0}"),
            Invariant($"{item.ToleranceShare * 100:0}"),
            Invariant($"{item.UncertainShare * 100:0.0}"),
            item.Verdict switch
            {
                ProofVerdict.Meets => "meets",
                ProofVerdict.Uncertain => "uncertain",
                _ => "MISSES",
            }
        );

    private static Table Causes(Proof proof) =>
        new(
            [
                new("likely cause", 3),
                new("look", 3.4),
                new("explains", 0.8, HorizontalAnchor.Right),
                new("against", 0.8, HorizontalAnchor.Right),
            ],
            [
                .. proof
                    .Causes.Take(6)
                    .Select(cause =>
                        TableRow.Of(
                            cause.Says,
                            cause.Look,
                            Invariant($"{cause.ExplainedCount}"),
                            Invariant($"{cause.AgainstCount}")
                        )
                    ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption =
                "Likely causes: first what explains more kinds of reading, then what fewer speak against, then what is looked at soonest",
        };
}
