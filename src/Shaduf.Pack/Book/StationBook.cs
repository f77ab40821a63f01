using System.Globalization;
using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The station book: the design on paper, for builder, engineer and client.</summary>
public static class StationBook
{
    private static readonly PaperSize FullPicture = new(173, 118);
    private static readonly PaperSize HalfPicture = new(173, 60);
    private static readonly PaperSize LowPicture = new(173, 40);

    /// <summary>Lays the book out.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">What every page bears.</param>
    /// <returns>The pages in order.</returns>
    public static IReadOnlyList<Scene> Pages(Design design, Stamp stamp)
    {
        var style = new PageStyle(
            PaperSize.A4Upright,
            PageMargins.House,
            design.Brief.Head.Name,
            "station book",
            stamp.Mark
        );
        return Flow.Lay(
            [
                .. FrontPage.Blocks(design, style),
                new PageBreak(),
                .. Water(design),
                new PageBreak(),
                .. Source(design),
                new PageBreak(),
                .. Electrics(design),
                new PageBreak(),
                .. Rack(design),
                .. Parts(design),
                new PageBreak(),
                .. BillTables.Quantities(design),
                new PageBreak(),
                .. BookTables.Findings(design),
                new PageBreak(),
                .. BookTables.Workings(design),
                new PageBreak(),
                .. BookTables.Assumptions(design),
                .. Cautions.Blocks(),
            ],
            style
        );
    }

    private static IEnumerable<Block> Water(Design design)
    {
        yield return new Heading(1, "Water: who needs it, and when it comes");
        yield return new Paragraph(
            Invariant(
                $"The design year is {design.Survey["design-years"]:0} years ahead. Losses of {design.Survey["losses"] * 100:0} % of the water produced are in the figures of the demand, and the supply is held against them."
            )
        );
        yield return new Table(
            [new("use"), new("how it was counted", 2.2), new("most in a month, m3/d", 0.9, HorizontalAnchor.Right)],
            [
                .. design.Demand.Uses.Select(use =>
                    TableRow.Of(use.Name, use.Says, Invariant($"{use.M3PerDay.Max():0.00}"))
                ),
            ]
        )
        {
            Caption = "Uses, at the place of use",
        };
        yield return new Figure(Charts.Demand(design, LowPicture), "Demand by month and use, at the place of use.");
        yield return BookTables.Months(design);
        yield return new Figure(
            Charts.Tank(design, LowPicture),
            "Water in the tank through the fortnight in which it stands lowest."
        );
    }

    private static IEnumerable<Block> Source(Design design)
    {
        var (well, survey) = (design.Well, design.Survey);
        yield return new Heading(1, "Source, pipe and pump");
        yield return new Figure(
            LongSection.Of(design, FullPicture).Trimmed(),
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
                TableRow.Of(
                    "pumped main",
                    Invariant($"{design.Choice.Lift.MainM:0.0} m"),
                    design.Choice.Lift.Main.About
                ),
                TableRow.Of(
                    "tank",
                    Invariant($"{design.Choice.TankM3:0.#} m3"),
                    Invariant($"{design.Choice.TankCount} x {design.Choice.Tank.About}")
                ),
            ]
        );
        yield return new Figure(
            Charts.Pump(design, HalfPicture),
            "The pump and the head that well and pipes ask for at the end of the dry season."
        );
        yield return BookTables.Verdicts(design);
        if (design.Works.Taps.Heads.Count > 0)
        {
            yield return BookTables.Taps(design);
        }
    }

    private static IEnumerable<Block> Electrics(Design design)
    {
        var electrics = design.Works.Electrics;
        yield return new Heading(1, "Electrics");
        yield return new Figure(StringDiagram.Of(design, 173).Trimmed(), "Strings, drive and motor.");
        yield return new Table(
            [
                new("cable", 1.4),
                new("card"),
                new("way, m", 0.7, HorizontalAnchor.Right),
                new("current, A", 0.8, HorizontalAnchor.Right),
                new("drop, %", 0.7, HorizontalAnchor.Right),
                new("limit, %", 0.7, HorizontalAnchor.Right),
                new("buy, m", 0.7, HorizontalAnchor.Right),
            ],
            [
                .. electrics.Cables.Select(cable =>
                    TableRow.Of(
                        cable.Name,
                        cable.Card?.Name ?? "none fits",
                        Invariant($"{cable.Duty.LengthM:0.0}"),
                        Invariant($"{cable.Duty.CurrentA:0.0}"),
                        cable.Choice.Fit is { } fit ? Invariant($"{fit.DropShare * 100:0.00}") : "-",
                        Invariant($"{cable.Duty.LargestDropShare * 100:0.0}"),
                        Invariant($"{cable.BoughtM:0.0}")
                    )
                ),
            ]
        )
        {
            Caption = "Cables",
        };
        foreach (var cable in electrics.Cables.Where(cable => cable.Choice.Rejected.Length > 0))
        {
            yield return new Paragraph(
                $"Smaller cables that do not serve, {cable.Name}: {string.Join("; ", cable.Choice.Rejected.Select(each => $"{each.Option.Name}: {each.Why}"))}."
            )
            {
                SizeMm = Lettering.SmallMm,
            };
        }

        yield return new Table(
            [new("loss of the array", 2), new("share kept, %", 1, HorizontalAnchor.Right)],
            [
                TableRow.Of("soiling", Percent(design.Sizing.Losses.SoilingShare)),
                TableRow.Of("mismatch", Percent(design.Sizing.Losses.MismatchShare)),
                TableRow.Of("first light", Percent(design.Sizing.Losses.LightInducedShare)),
                TableRow.Of("wiring", Percent(design.Sizing.Losses.WiringShare)),
                TableRow.Of("maximum-power tracking", Percent(design.Sizing.Losses.TrackingShare)),
                TableRow.Of("age", Percent(design.Sizing.Losses.AgeShare)),
                TableRow.Total("all together", Percent(design.Sizing.Losses.KeptShare)),
            ]
        )
        {
            Caption = "Planning values, from memory",
        };
    }

    private static IEnumerable<Block> Rack(Design design)
    {
        var rack = design.Works.Rack;
        yield return new Heading(1, $"Rack: {RackTables.RacksText(rack.Grid)}");
        yield return new Notice(
            FindingStatus.Unchecked,
            "The strength of this rack and of its footings is not checked in this version. Do not build from these pages before an engineer has checked them for the wind of the place."
        );
        yield return new Figure(
            RackPlane.Of(rack, design.Choice.Module, FullPicture).Trimmed(),
            "General arrangement. F frame of angle channels (F3 is bolted so that the modules slide in), T cross tubes, S stubs, circles: columns."
        );
        yield return new Figure(
            RackSide.Of(rack, design.Works.Footings, FullPicture).Trimmed(),
            "The rack from its end, with column C1, struts B1 and B2, footing and plinth."
        );
        yield return RackTables.PlacesOf(rack);
        var channel = rack.Sections.Channel;
        yield return new Paragraph(
            Invariant(
                $"Channel: two {rack.Sections.Angle.Name}, inside depth {channel.InsideDepthMm:0.#} mm for a module of {design.Choice.Module.Body.ThicknessMm:0.#} mm, lap {channel.LapMm:0.#} mm, outside {channel.OuterDepthMm:0.#} mm; the angle whose upright leg stands outside goes on the sun's side, where its lip covers {channel.LipCoverMm:0.#} mm of the module's rim. F2, F3 and F4 run to the web of the member that they meet: at their ends cut the flat legs back by {channel.LegMm - channel.ThicknessMm + 2:0.#} mm, so that only the upright legs pass its lips. Prime the lapped faces before welding; drill drain holes at the low edge; bond the module frames."
            )
        );
    }

    private static IEnumerable<Block> Parts(Design design)
    {
        yield return new Heading(1, "Parts and bars");
        yield return BookTables.PartsOf(design);
        foreach (var block in BookTables.Bars(design))
        {
            yield return block;
        }
    }

    private static string Percent(double share) => (share * 100).ToString("0.0", CultureInfo.InvariantCulture);
}
