using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>
/// The energy ledger as bars: what each step leaves is solid, what it takes is hatched. Light, electricity and water have a
/// scale each, so that the last kilowatt-hours are still seen.
/// </summary>
public static class LedgerBars
{
    private const double RowMm = 4.6;
    private const double TitleMm = 8;
    private const double NameMm = 71;
    private const double FiguresMm = 31;

    private static readonly IReadOnlyList<(LedgerStage Stage, string Title, Colour Colour)> Stages =
    [
        (LedgerStage.Light, "light", Palette.Sun),
        (LedgerStage.Electricity, "electricity", Palette.Steel),
        (LedgerStage.Water, "water", Palette.Water),
    ];

    /// <summary>Composes the picture.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="widthMm">Width of the picture [mm], at least 150.</param>
    /// <returns>The picture.</returns>
    public static Scene Of(EnergyLedger ledger, double widthMm)
    {
        var heightMm = (ledger.Rows.Count * RowMm) + (Stages.Count * TitleMm);
        var builder = new SceneBuilder(new(widthMm, heightMm));
        var top = 0.0;
        foreach (var (stage, title, colour) in Stages)
        {
            var rows = ledger.Rows.Index().Where(row => row.Item.Stage == stage).ToList();

            // What comes into the stage is its full width, or the most that a step makes of it.
            var fullKWh = rows.Max(row => Math.Max(row.Item.KWh, BeforeKWh(ledger, row.Index, stage)));
            builder.Text(new(0, top + 5.5), title, TextStyle.Small with { Weight = FontWeight.Bold });
            builder.Text(
                new(widthMm, top + 5.5),
                "kWh left; kept, %",
                TextStyle.Small with
                {
                    Horizontal = HorizontalAnchor.Right,
                }
            );
            top += TitleMm;
            foreach (var (index, row) in rows)
            {
                var perKWh = fullKWh > 0 ? (widthMm - NameMm - FiguresMm) / fullKWh : 0;
                Row(builder, row, top, (BeforeKWh(ledger, index, stage) * perKWh, row.KWh * perKWh), colour);
                Figures(builder, new(widthMm, top), row.KWh, index == 0 ? null : ledger.KeptShare(index));
                top += RowMm;
            }
        }

        return builder.Build("energy from light on the ground to water in the tank");
    }

    // What the step before left, if it is of the same stage: light is not drawn to the scale of electricity.
    private static double BeforeKWh(EnergyLedger ledger, int index, LedgerStage stage) =>
        index > 0 && ledger.Rows[index - 1].Stage == stage ? ledger.Rows[index - 1].KWh : ledger.Rows[index].KWh;

    private static void Row(
        SceneBuilder builder,
        LedgerRow row,
        double top,
        (double BeforeMm, double LeftMm) bar,
        Colour colour
    )
    {
        PaperBox Box(double from, double to) => new(NameMm + from, top + 0.6, NameMm + to, top + RowMm - 0.6);
        builder.Text(new(0, top + (RowMm / 2)), row.Says, TextStyle.Small with { Vertical = VerticalAnchor.Middle });
        if (bar.LeftMm > 0)
        {
            builder.Rectangle(Layer.Thin, Box(0, bar.LeftMm), colour.Tint(0.55));
        }

        // Narrower than two pen widths nothing is seen.
        if (bar.BeforeMm - bar.LeftMm > 0.4)
        {
            var lost = Box(bar.LeftMm, bar.BeforeMm);
            builder.Hatch(HatchPattern.Steel, lost.Corners, spacingMm: 1).Rectangle(Layer.Thin, lost);
        }
    }

    private static void Figures(SceneBuilder builder, PaperPoint right, double kWh, double? keptShare)
    {
        var style = TextStyle.Small with { Horizontal = HorizontalAnchor.Right, Vertical = VerticalAnchor.Middle };
        var middle = right.Moved(0, RowMm / 2);
        builder.Text(middle.Moved(-13, 0), Invariant($"{kWh:#,0}"), style);
        builder.Text(middle, keptShare is { } share ? Invariant($"{share * 100:0.0}") : "", style);
    }
}
