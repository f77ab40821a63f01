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
        var (well, survey) = (design.Well, design.Survey);
        yield return new Heading(1, "Source, pipe and pump");
        yield return new Figure(
            LongSection.Of(design, PicturePaper.Tall).Trimmed(),
            "Long section. The borehole and the tank are drawn wider than to scale."
        );
        yield return new Table(
            [new("figure", 2), new("value", 1, HorizontalAnchor.Right), new("remark", 2)],
            [
                TableRow.Of(
                    "water at rest, end of dry season",
                    Invariant($"{well.RestDryM:0.0} m"),
                    "below ground at the wellhead"
                ),
                TableRow.Of(
                    "largest flow that may be drawn",
                    Invariant($"{well.YieldM3PerH:0.00} m3/h"),
                    Invariant($"{survey["yield-share"] * 100:0} % of {survey.TestedYieldM3PerH:0.##} m3/h tested")
                ),
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
                TableRow.Of(
                    "pump intake",
                    Invariant($"{well.PumpSettingM:0.0} m"),
                    Invariant($"{survey.DepthM - well.PumpSettingM:0.0} m above the bottom")
                ),
                TableRow.Of("riser", Invariant($"{design.Choice.Lift.RiserM:0.0} m"), design.Choice.Lift.Riser.About),
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
            "The pump, the head that well and pipes ask for at the end of the dry season, and where the pump works through the year."
        );
    }
}
