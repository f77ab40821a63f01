using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on open water and the pump beside it.</summary>
internal static class IntakeChapter
{
    private static readonly PaperSize s_section = new(173, 110);

    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <param name="build">What is built beside the water.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design, IntakeBuild build) =>
        [
            new Heading(1, "The intake, as built"),
            new Figure(
                IntakeSection.Of(build, s_section).Trimmed(),
                $"The {build.Intake.Survey.Brief.Name} with its levels, the suction pipe and the pump. The bank is drawn straight from the water to the pump."
            ),
            Months(design, build),
            WellTables.Fittings(
                SourceFitting.OfIntake,
                "The pump and what stands round it, in the direction of the flow"
            ),
            new Heading(2, "Setting the pump"),
            new Bullets([.. Steps(build).Select(RichText.From)], BulletMark.Number),
            new Paragraph(
                "Nobody works alone at the water, and nobody goes in where it is fast or deep: life vest, rope, a second man on the bank. Watch for animals. No cable joint lies in the water."
            ),
        ];

    private static Table Months(Design design, IntakeBuild build) =>
        new(
            [
                new("month", 1.2),
                new("water, m", 1, HorizontalAnchor.Right),
                new("degC", 0.7, HorizontalAnchor.Right),
                new("lift, m", 0.8, HorizontalAnchor.Right),
                new("lost, m", 0.8, HorizontalAnchor.Right),
                new("offered, m", 1, HorizontalAnchor.Right),
                new("needed, m", 1, HorizontalAnchor.Right),
                new("may take, m3/d", 1.2, HorizontalAnchor.Right),
            ],
            [
                .. build
                    .Months(design.Choice.Pump)
                    .Select(month =>
                        TableRow.Of(
                            YearCalendarNames.Months[month.Month],
                            Invariant($"{build.Intake.Survey.LevelM(month.Month):0.00}"),
                            Invariant($"{month.WaterDegC:0}"),
                            Invariant($"{month.LiftM:0.00}"),
                            Invariant($"{month.LossM:0.00}"),
                            Invariant($"{month.AvailableM:0.00}"),
                            Invariant($"{month.NeededM:0.00}"),
                            double.IsFinite(build.Intake.Limits.DayM3[month.Month])
                                ? Invariant($"{build.Intake.Limits.DayM3[month.Month]:0.#}")
                                : "-"
                        )
                    ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = Invariant(
                $"Suction head (NPSH) at {build.FlowM3PerH:0.0} m3/h: what the place offers and what the pump needs with its margin"
            ),
        };

    private static IEnumerable<string> Steps(IntakeBuild build)
    {
        var survey = build.Intake.Survey;
        yield return Invariant(
            $"Hang the foot valve with its strainer in a basket, {build.Intake.StrainerM - survey.BedM:0.0} m over the bottom, where the current keeps it clean."
        );
        yield return Invariant(
            $"Lay {build.Pipe.SuctionM:0.#} m of {build.Pipe.Card.Name} so that it rises all the way to the pump: no hump, no loop, every joint airtight."
        );
        yield return survey.Stand == PumpStand.Bank
            ? Invariant(
                $"Cast the plinth {build.Plinth.SideM:0.0} x {build.Plinth.SideM:0.0} x {build.Plinth.ThickM:0.0} m with its anchor bolts; the shaft at {survey.PumpM:0.00} m, {survey.PumpM - survey.FloodM:0.0} m over the highest flood. Roof and rails keep sun, rain and hands off."
            )
            : Invariant(
                $"Moor the raft upstream and downstream; {build.Pipe.HoseM:0.#} m of hose follow the water over {survey.FloodM - survey.LowestM:0.0} m without a kink, the cable beside it with slack."
            );
        yield return "Fill suction pipe and pump through the priming tee until water stands still in the funnel; look for drops and for falling water: that is air going in.";
        yield return Invariant(
            $"Set the float switch to stop the pump at {build.StopM:0.00} m; a pump that runs dry ruins its seal."
        );
        yield return "Start against the shut gate valve, open it slowly, write down both gauges: the vacuum on that day tells later of a blocked strainer.";
    }
}
