using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on well, pipes and pump.</summary>
internal static class SourceChapter
{
    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        yield return new Heading(1, "Source, pipe and pump");
        yield return new Figure(
            LongSection.Of(design, PicturePaper.Tall).Trimmed(),
            "Long section. What stands at the source, and the tank, are drawn wider than to scale."
        );
        yield return new Table(
            [new("figure", 2), new("value", 1, HorizontalAnchor.Right), new("remark", 2)],
            [
                .. Levels(design),
                TableRow.Of(
                    "largest flow of the year",
                    Invariant($"{design.Sizing.Table.FullFlowM3PerH:0.00} m3/h"),
                    design.Choice.Pump.Name
                ),
                TableRow.Of(
                    "total dynamic head at that flow",
                    Invariant($"{design.Choice.Lift.System.HeadM(design.ShownFlowM3PerH / 3600):0.0} m"),
                    "end of dry season"
                ),
                .. Place(design.Source),
                TableRow.Of(
                    design.Choice.Lift.Foot.Name,
                    Invariant($"{design.Choice.Lift.Foot.LengthM:0.0} m"),
                    design.Choice.Lift.Foot.Card.About
                ),
                TableRow.Of("pumped main", Invariant($"{design.Choice.Lift.MainM:0.0} m"), design.Choice.Lift.Lay.Name),
                TableRow.Of(
                    "tank",
                    Invariant($"{design.Choice.TankM3:0.#} m3"),
                    Invariant($"{design.Choice.TankCount} x {design.Choice.Tank.About}")
                ),
            ]
        );
        yield return new Figure(
            PumpChart.Of(design, PicturePaper.Half),
            "The pump, and the head that source and pipes ask for at the end of the dry season. The whole year is run with that water: its hours lie on the line."
        );
    }

    private static IEnumerable<TableRow> Levels(Design design) =>
        design.Source switch
        {
            Well well =>
            [
                TableRow.Of(
                    "water at rest, end of dry season",
                    Invariant($"{well.RestDryM:0.0} m"),
                    "below ground at the wellhead"
                ),
                TableRow.Of(
                    "largest flow that may be drawn",
                    Invariant($"{well.YieldM3PerH:0.00} m3/h"),
                    Invariant(
                        $"{design.Survey["yield-share"] * 100:0} % of {well.Survey.Tested.YieldM3PerH:0.##} m3/h tested"
                    )
                ),
            ],
            Intake intake =>
            [
                TableRow.Of(
                    $"lowest water of the {intake.Survey.Brief.Name}",
                    Invariant($"{intake.Survey.LowestM:0.00} m"),
                    Invariant(
                        $"above sea; usually {intake.Survey.Brief.NormalM:0.00} m, flood {intake.Survey.FloodM:0.00} m"
                    )
                ),
                TableRow.Of(
                    "largest flow that may be drawn",
                    Invariant($"{intake.YieldM3PerH:0.00} m3/h"),
                    "by the brief"
                ),
            ],
            _ => [],
        };

    private static IEnumerable<TableRow> Place(Source source) =>
        source switch
        {
            Well well =>
            [
                TableRow.Of(
                    "pump intake",
                    Invariant($"{well.PumpSettingM:0.0} m"),
                    Invariant($"{well.BottomM - well.PumpSettingM:0.0} m above the bottom")
                ),
            ],
            Intake intake =>
            [
                TableRow.Of(
                    "pump's shaft",
                    Invariant($"{intake.Survey.PumpM:0.00} m"),
                    intake.Survey.Stand == PumpStand.Bank
                        ? "above sea, on the bank"
                        : "above sea, on a raft at the lowest water"
                ),
            ],
            _ => [],
        };
}
