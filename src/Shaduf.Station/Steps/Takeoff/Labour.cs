using Shaduf.Money;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Man-days of work by the table of labour.</summary>
internal static class Labour
{
    private static readonly IReadOnlyDictionary<string, CsvRow> Table = Csv.Embedded(
            typeof(Labour).Assembly,
            "labour.csv"
        )
        .ToDictionary(row => row["id"]);

    /// <summary>A quantity of labour.</summary>
    /// <param name="id">Row of the table.</param>
    /// <param name="amount">Units of work.</param>
    /// <param name="origin">Where the amount comes from.</param>
    /// <returns>The quantity [man-days].</returns>
    public static QuantityLine Days(string id, double amount, string origin)
    {
        var row = Table[id];
        var perUnit = row.Number("man_days");
        return new(
            "labour-day",
            Enum.Parse<BillSection>(row["section"]),
            $"labour: {row["work"]}",
            "d",
            amount * perUnit,
            Invariant($"{amount:0.##} {row["unit"]} x {perUnit:0.####} man-days ({origin}); {row["source"]}")
        );
    }
}
