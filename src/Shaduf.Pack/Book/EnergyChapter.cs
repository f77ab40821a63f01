using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on the modules' facing and on the way from light to water.</summary>
internal static class EnergyChapter
{
    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        var (ledger, facing) = (design.Ledger, design.Facing);
        yield return new Heading(1, "From light to water");
        yield return new Paragraph(
            Invariant(
                $"Of the light that falls on level ground of the modules' size in the design year {ledger.WholeShare * 100:0.00} % becomes water lifted into the tank. Each bar is what is left after a step, hatched what the step takes. Light, electricity and water are drawn to a scale each."
            )
        )
        {
            KeepsWithNext = true,
        };
        yield return new Figure(
            LedgerBars.Of(ledger, 173),
            "Energy of the design year, kWh, and the share that each step keeps of what the step before left. All shares multiplied are the share of the whole way. Soiling to tracking are the brief's losses, or assumed ones."
        );
        yield return ByMonth(ledger);
        yield return new Heading(2, "Tilt and direction of the modules");
        yield return new Paragraph(
            Invariant(
                $"Chosen: {facing.Chosen.Facing.TiltDeg:0} deg from the level, towards {FacingTable.Towards(facing.Chosen.Facing.AzimuthDeg)}. By the rule of thumb, {facing.ByThumb.Facing.TiltDeg:0} deg towards {FacingTable.Towards(facing.ByThumb.Facing.AzimuthDeg)}, this array would meet {facing.ByThumb.MetShare * 100:0.0} % of the demand in the worst month; as chosen it meets {facing.Chosen.MetShare * 100:0.0} %."
            ) + (design.Brief.Array.TiltDeg is null ? LeastTilt : "")
        )
        {
            KeepsWithNext = true,
        };
        yield return new Figure(
            FacingChart.Of(facing, PicturePaper.Half),
            "The chosen array at other tilts in the chosen direction, in the month that is worst off then."
        );
    }

    private static string LeastTilt =>
        Invariant($" Not below {FacingTable.LeastTiltDeg:0} deg, so that rain washes the glass.");

    // The steps between which most happens.
    private static Table ByMonth(EnergyLedger ledger)
    {
        (string Id, string Name)[] shown =
        [
            ("level", "light on level ground"),
            ("reflection", "light used"),
            ("tracking", "offered to the drive"),
            ("full", "taken by the drive"),
            ("drawdown", "could be lifted"),
            ("tank-full", "lifted into the tank"),
        ];
        var rows = shown.Select(each => ledger.Rows.Single(row => row.Id == each.Id)).ToList();
        return new(
            [new("kWh"), .. shown.Select(each => new TableColumn(each.Name, 1, HorizontalAnchor.Right))],
            [
                .. YearCalendarNames.Months.Select(
                    (name, month) =>
                        TableRow.Of([name, .. rows.Select(row => Invariant($"{row.KWhByMonth[month]:#,0}"))])
                ),
                TableRow.Total(["year", .. rows.Select(row => Invariant($"{row.KWh:#,0}"))]),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = "The same by month; every step stands in design.json",
        };
    }
}
