using Shaduf.Money;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Man-days of work by the table of labour.</summary>
public static class Labour
{
    /// <summary>Item of the price book.</summary>
    public const string Item = "labour-day";

    private const string Prefix = "labour: ";

    private static readonly IReadOnlyDictionary<string, CsvRow> Table = Csv.Embedded(
            typeof(Labour).Assembly,
            "labour.csv"
        )
        .ToDictionary(row => row["id"]);

    private static readonly IReadOnlyDictionary<string, string> IdByWork = Table.Values.ToDictionary(
        row => row["work"],
        row => row["id"]
    );

    /// <summary>Rows of the table.</summary>
    public static IEnumerable<string> Ids => Table.Keys;

    /// <summary>The row that a quantity of labour was taken from.</summary>
    /// <param name="line">The quantity.</param>
    /// <returns>Row of the table.</returns>
    public static string IdOf(QuantityLine line) => IdByWork[line.Description[Prefix.Length..]];

    /// <summary>A quantity of labour.</summary>
    /// <param name="id">Row of the table.</param>
    /// <param name="amount">Units of work.</param>
    /// <param name="origin">Where the amount comes from.</param>
    /// <returns>The quantity [man-days].</returns>
    internal static QuantityLine Days(string id, double amount, string origin)
    {
        var row = Table[id];
        var perUnit = row.Number("man_days");
        return new(
            Item,
            Enum.Parse<BillSection>(row["section"]),
            Prefix + row["work"],
            "d",
            amount * perUnit,
            Invariant($"{amount:0.##} {row["unit"]} x {perUnit:0.####} man-days ({origin}); {row["source"]}")
        );
    }
}
