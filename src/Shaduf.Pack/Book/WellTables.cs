using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The tables of source and wellhead.</summary>
internal static class WellTables
{
    /// <summary>What the tests say: steps, fitted curve, distances, long test.</summary>
    /// <param name="design">The design.</param>
    /// <param name="well">The borehole.</param>
    /// <returns>The blocks; nothing when there was no step test.</returns>
    public static IEnumerable<Block> Tests(Design design, Well well)
    {
        var (tested, steps) = (well.Survey.Tested, well.Survey.Brief.Steps);
        var fit = tested.Steps;
        if (steps.Count > 0)
        {
            yield return new Table(
                [
                    new("step"),
                    new("flow, m3/h", 1, HorizontalAnchor.Right),
                    new("drawdown read, m", 1, HorizontalAnchor.Right),
                    new("by the curve, m", 1, HorizontalAnchor.Right),
                    new("distance, m", 1, HorizontalAnchor.Right),
                ],
                [
                    .. steps.Select(
                        (step, i) =>
                            TableRow.Of(
                                Invariant($"{i + 1}"),
                                Invariant($"{step.FlowM3PerH:0.00}"),
                                Invariant($"{step.DrawdownM:0.00}"),
                                Invariant($"{step.DrawdownM - fit.ResidualsM[i]:0.00}"),
                                Invariant($"{fit.ResidualsM[i]:+0.00;-0.00;0.00}")
                            )
                    ),
                ]
            )
            {
                SizeMm = Lettering.SmallMm,
                Caption = Invariant(
                    $"Step test: s = B Q + C Q², B {fit.AquiferSPerM2 / 3600:0.###} m per m3/h, C {fit.WellS2PerM5 / 3600 / 3600:0.####} m per (m3/h)²"
                ),
            };
        }

        if (tested.Line is { } line)
        {
            yield return new Paragraph(
                Invariant(
                    $"The long test falls {line.SlopeM:0.00} m for each tenfold of time at {line.FlowM3PerS * 3600:0.0} m3/h (r2 {line.DeterminationCoefficient:0.000}): transmissivity {line.TransmissivityM2PerS * 86400:0.0} m2 a day. A day of {TestedWell.PumpingH:0} h and a season of {design.Survey["dry-days"]:0} days without recharge are added: the season takes {well.SeasonM:0.00} m. In the year run each hour's drawdown follows that hour's flow."
                )
            );
        }
    }

    /// <summary>What hangs, what lifts it, what the slab takes.</summary>
    /// <param name="design">The design.</param>
    /// <param name="build">The equipment of the borehole.</param>
    /// <returns>The table.</returns>
    public static Table Hung(Design design, WellBuild build) =>
        new(
            [new("what hangs, and what lifts it", 1.6), new("value", 0.7, HorizontalAnchor.Right), new("remark", 3)],
            [.. Masses(design, build.Hung), .. Lifting(build), Slab(build.Apron)]
        )
        {
            SizeMm = Lettering.SmallMm,
        };

    private static IEnumerable<TableRow> Masses(Design design, HungMass hung) =>
        [
            TableRow.Of("pump and motor", Invariant($"{hung.PumpKg:0.0} kg"), design.Choice.Pump.Name),
            TableRow.Of(
                "riser",
                Invariant($"{hung.PipeKg:0.0} kg"),
                Invariant($"{design.Choice.Lift.Foot.LengthM:0.0} m of {design.Choice.Lift.Foot.Card.About}")
            ),
            TableRow.Of("water in it", Invariant($"{hung.WaterKg:0.0} kg"), "held by the check valve when it comes up"),
            TableRow.Of("cable and rope", Invariant($"{hung.CableKg + hung.RopeKg:0.0} kg"), "first estimate"),
            TableRow.Total(
                "all, full",
                Invariant($"{hung.TotalKg:0} kg"),
                Invariant($"{hung.EmptyKg:0} kg when lowered empty")
            ),
        ];

    private static IEnumerable<TableRow> Lifting(WellBuild build) =>
        [
            TableRow.Of(
                "hoist",
                build.HoistT is { } tonnes ? Invariant($"{tonnes:0.#} t") : "crane",
                "1.3 times the full riser, next size up; a chain hoist hung in the head"
            ),
            TableRow.Of(
                "legs",
                Invariant($"{build.Tripod.LegM:0.0} m"),
                Invariant(
                    $"three of {build.Tripod.Pipe?.Name ?? "a hired tripod"}, head {build.Tripod.HeightM:0.0} m up; {build.Tripod.LegKN:0.0} kN along a leg, feet tied for {build.Tripod.ThrustKN:0.0} kN"
                )
            ),
            TableRow.Of(
                "safety rope",
                Invariant($"{build.RopeKN:0.0} kN"),
                "least breaking load with knots; hung slack, never used for lifting"
            ),
        ];

    private static TableRow Slab(ApronBuild apron) =>
        TableRow.Of(
            "slab",
            Invariant($"{apron.ConcreteM3:0.00} m3"),
            Invariant(
                $"{apron.SideM:0.0} x {apron.SideM:0.0} x {apron.ThickM:0.00} m, mix {apron.Mix}, fall 1:50 to a drain that leads 10 m away; {Math.Ceiling(apron.Quantities.BagCount):0} bags of cement"
            )
        );

    /// <summary>Fittings between the water and the main, in order.</summary>
    /// <param name="fittings">The fittings.</param>
    /// <param name="caption">What they belong to.</param>
    /// <returns>The table.</returns>
    public static Table Fittings(IReadOnlyList<SourceFitting> fittings, string caption) =>
        new(
            [new("") { WidthMm = 7 }, new("fitting", 2.2), new("what it is for", 2)],
            [.. fittings.Select(fitting => TableRow.Of(Invariant($"{fitting.Order}"), fitting.What, fitting.Why))]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = caption,
        };
}
