using System.Text.Json;
using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>Which shipped kernel computes each quantity of the trade's files of independent figures.</summary>
public static class OracleChecks
{
    private const string File = "cutting_stock.json";
    private static readonly Margin Same = new(0, "bars");

    /// <summary>One check for each quantity that is compared.</summary>
    public static IReadOnlyList<OracleCheck> All { get; } =
    [
        new(
            File,
            "first_fit_decreasing_bars",
            Same,
            () => Orders().Select(order => (Bars(order, "first_fit_decreasing_bars"), (double)Plan(order).BarCount))
        ),
        new(File, "proven optimum, not below the bound nor above the plan", Same, () => Orders().Select(Optimum)),
    ];

    // Orders cut from one length of bar.
    private static IEnumerable<JsonElement> Orders() =>
        JsonDocument
            .Parse(Csv.EmbeddedText(typeof(OracleChecks).Assembly, File))
            .RootElement.EnumerateArray()
            .Where(order =>
                order.GetProperty("stock").GetArrayLength() == 1
                && order.GetProperty("optimum").GetProperty("proven").GetBoolean()
            );

    private static double Bars(JsonElement order, string name) =>
        order.GetProperty("optimum").GetProperty(name).GetDouble();

    private static (double Expected, double Obtained) Optimum(JsonElement order)
    {
        var (plan, bars) = (Plan(order), Bars(order, "bars"));
        return (bars, Math.Clamp(bars, plan.LowerBoundCount, plan.BarCount));
    }

    private static BarPlan Plan(JsonElement order) =>
        BarPlan.FirstFitDecreasing(
            [
                .. order
                    .GetProperty("pieces")
                    .EnumerateArray()
                    .Select(
                        (piece, at) =>
                            new CutPart(
                                $"P{at}",
                                piece.GetProperty("length_mm").GetDouble(),
                                piece.GetProperty("count").GetInt32()
                            )
                    ),
            ],
            order.GetProperty("stock")[0].GetProperty("length_mm").GetDouble(),
            order.GetProperty("kerf_mm").GetDouble(),
            endTrimMm: 0
        );
}
