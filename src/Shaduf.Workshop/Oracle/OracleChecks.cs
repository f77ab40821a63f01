using System.Text.Json;
using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>Which shipped kernel computes each quantity of the trade's files of independent figures.</summary>
public static class OracleChecks
{
    private const string File = "cutting_stock.json";
    private static readonly Margin Same = new(0, "");

    /// <summary>One check for each quantity that is compared.</summary>
    public static IReadOnlyList<OracleCheck> All { get; } =
    [
        new(File, "least price, proved by its bound", Same, () => Orders().SelectMany(Proved)),
        new(
            File,
            "first_fit_decreasing_bars",
            Same,
            () =>
                Orders()
                    .Where(order => order.GetProperty("stock").GetArrayLength() == 1)
                    .Select(order =>
                        (Figure(order, "first_fit_decreasing_bars"), (double)CutPlan.FirstFit(Order(order)).BarCount)
                    )
        ),
    ];

    private static IEnumerable<JsonElement> Orders() =>
        JsonDocument
            .Parse(Csv.EmbeddedText(typeof(OracleChecks).Assembly, File))
            .RootElement.EnumerateArray()
            .Where(order => order.GetProperty("optimum").GetProperty("proven").GetBoolean());

    private static double Figure(JsonElement order, string name) =>
        order.GetProperty("optimum").GetProperty(name).GetDouble();

    private static IEnumerable<(double Expected, double Obtained)> Proved(JsonElement order)
    {
        var plan = CutPlan.Cheapest(Order(order));
        return
        [
            (Figure(order, "total_price"), (double)plan.Cost),
            (Figure(order, "total_price"), (double)plan.BoundCost),
        ];
    }

    private static CutOrder Order(JsonElement order) =>
        new(
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
            [
                .. order
                    .GetProperty("stock")
                    .EnumerateArray()
                    .Select(bar => new BarStock(
                        bar.GetProperty("length_mm").GetDouble(),
                        bar.GetProperty("price").GetDecimal()
                    )),
            ],
            order.GetProperty("kerf_mm").GetDouble(),
            EndTrimMm: 0
        );
}
