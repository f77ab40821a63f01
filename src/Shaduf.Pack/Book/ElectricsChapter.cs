using System.Globalization;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on strings, drive and cables.</summary>
internal static class ElectricsChapter
{
    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
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

    private static string Percent(double share) => (share * 100).ToString("0.0", CultureInfo.InvariantCulture);
}
