using MiniExcelLibs;

namespace Shaduf.Station.Tests;

/// <summary>The price book in its three forms, and what is wrong in each told at its place.</summary>
public sealed class PriceBookTests
{
    private const string Yaml = """
        name: test prices
        currency: Tavo
        minorDigits: 2
        date: 2026-02-01
        exchange:
          - { currency: Lirel, rate: 4, date: 2026-01-28 }
        rates:
          - { item: mason-day, unit: d, rate: 150 }
          - { item: cement-50kg, unit: nr, rate: 95, supplier: Quarry }
          - { item: pe-50-pn16, unit: m, rate: 19.7, supplier: "Pipes, Orelo", date: 2026-01-15, sold: 100 }
          - { item: float-valve, unit: set, rate: 187.5, currency: Lirel }
          - item: earth-pit
            unit: nr
            sundries: 10 %
            labour: [{ item: mason-day, quantity: 0.5 }]
            material: [{ item: cement-50kg, quantity: 2 }]
        """;

    private const string Csv = """
        # the same as a table
        name,test prices
        currency,Tavo
        minorDigits,2
        date,2026-02-01
        exchange,Lirel,4,2026-01-28
        item,unit,rate,supplier,date,sold,currency,sundries,of,kind,quantity
        mason-day,d,150
        cement-50kg,nr,95,Quarry
        pe-50-pn16,m,19.7,"Pipes, Orelo",2026-01-15,100
        float-valve,set,187.5,,,,Lirel
        earth-pit,nr,,,,,,10 %
        mason-day,,,,,,,,earth-pit,labour,0.5
        cement-50kg,,,,,,,,earth-pit,material,2
        """;

    [Theory]
    [InlineData("yaml")]
    [InlineData("csv")]
    [InlineData("xlsx")]
    public void The_same_book_is_read_from_each_form(string form)
    {
        using var scratch = new Scratch();
        var book = PriceBookReader.ReadFile(Write(scratch, form), $"prices.{form}", null);
        Assert.Equal(("test prices", "Tavo", 2, "2026-02-01"), (book.Name, book.Currency, book.MinorDigits, book.Date));
        Assert.Equal(5, book.Rates.Count);
        Assert.Equal(("Quarry", 95m), (book.Rates["cement-50kg"].Supplier, book.Rates["cement-50kg"].Amount));
        var pipe = book.Rates["pe-50-pn16"];
        Assert.Equal(("Pipes, Orelo", "2026-01-15", 100m), (pipe.Supplier, pipe.Date, pipe.SoldUnits));
        Assert.Equal(750m, book.Rates["float-valve"].Amount);
        Assert.Equal(
            (187.5m, "Lirel"),
            (book.Rates["float-valve"].Quoted!.Amount, book.Rates["float-valve"].Quoted!.Currency)
        );

        // (0.5 x 150 + 2 x 95) x 1.1
        Assert.Equal(291.5m, book.Rates["earth-pit"].Amount);
        Assert.Equal(2, book.Rates["earth-pit"].BuildUp!.Lines.Count);
    }

    [Theory]
    [InlineData("rate: 95, supplier: Quarry", "rate: -95", "9", "rates[2].rate: -95 is out of range")]
    [InlineData("rate: 95, supplier: Quarry", "rate: 0", "9", "'cement-50kg' costs nothing")]
    [InlineData(
        "rate: 95, supplier: Quarry",
        "rate: unknown",
        "16",
        "'cement-50kg', which waits for it or has no rate itself"
    )]
    [InlineData("currency: Lirel }\n", "currency: Drin }\n", "11", "'float-valve' is priced in Drin, the book in Tavo")]
    [InlineData("rate: 4, date: 2026-01-28", "rate: 4", "6", "the exchange has no date")]
    [InlineData("item: mason-day, quantity", "item: masons, quantity", "15", "the book has no rate for 'masons'")]
    [InlineData("item: mason-day, quantity", "item: earth-pit, quantity", "15", "which waits for it")]
    [InlineData("sundries: 10 %", "rate: 5", "14", "'earth-pit' has a rate and a build-up")]
    [InlineData("item: cement-50kg, unit", "item: mason-day, unit", "9", "'mason-day' has a rate already")]
    public void What_is_wrong_is_told_at_its_place(string from, string to, string line, string says)
    {
        using var scratch = new Scratch();
        var path = scratch.PathOf("prices.yaml");
        File.WriteAllText(path, Yaml.ReplaceLineEndings("\n").Replace(from, to, StringComparison.Ordinal));
        var bad = Assert.Throws<BadInputException>(() => PriceBookReader.ReadFile(path, "prices.yaml", null));
        var error = Assert.Single(bad.Errors);
        Assert.Contains(says, error.ToString(), StringComparison.Ordinal);
        Assert.InRange(error.Line, int.Parse(line, null), int.Parse(line, null) + 1);
    }

    [Theory]
    [InlineData("float-valve,set,187.5,,,,Lirel", "float-valve,set,187.5,,,,Drin", 11, 26)]
    [InlineData("cement-50kg,nr,95,Quarry", "cement-50kg,nr,-95,Quarry", 9, 16)]
    [InlineData("mason-day,d,150", "mason-day,d,\"1,5\"", 8, 13)]
    [InlineData("earth-pit,labour", "tower,labour", 13, 1)]
    [InlineData("currency,Tavo", "money,Tavo", 3, 1)]
    public void A_table_tells_line_and_column(string from, string to, int line, int column)
    {
        using var scratch = new Scratch();
        var path = scratch.PathOf("prices.csv");
        File.WriteAllText(path, Csv.ReplaceLineEndings("\n").Replace(from, to, StringComparison.Ordinal));
        var bad = Assert.Throws<BadInputException>(() => PriceBookReader.ReadFile(path, "prices.csv", null));
        Assert.Contains(bad.Errors, error => (error.Line, error.Column) == (line, column));
    }

    [Theory]
    [InlineData("prices.xlsx", "not a spreadsheet")]
    [InlineData("prices.csv", "no heading at all;\n1;2;3")]
    public void What_is_no_table_is_refused(string name, string text)
    {
        using var scratch = new Scratch();
        var path = scratch.PathOf(name);
        File.WriteAllText(path, text);
        Assert.Throws<BadInputException>(() => PriceBookReader.ReadFile(path, name, null));
    }

    private static string Write(Scratch scratch, string form)
    {
        var path = scratch.PathOf($"prices.{form}");
        if (form != "xlsx")
        {
            File.WriteAllText(path, form == "csv" ? Csv : Yaml);
            return path;
        }

        var rows = Csv.Split('\n')
            .Skip(1)
            .Select(line => Working.Csv.Cells(line.TrimEnd('\r')))
            .Select(cells =>
                Enumerable
                    .Range(0, 11)
                    .ToDictionary(i => $"c{i}", object? (i) => i < cells.Count ? Typed(cells[i]) : null)
            );
        MiniExcel.SaveAs(path, rows, printHeader: false);
        return path;
    }

    // Numbers and dates as a spreadsheet holds them.
    private static object? Typed(string cell) =>
        cell.Length == 0 ? null
        : double.TryParse(cell, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number
        : DateTime.TryParseExact(
            cell,
            "yyyy-MM-dd",
            System.Globalization.CultureInfo.InvariantCulture,
            System.Globalization.DateTimeStyles.None,
            out var date
        )
            ? date
        : cell;
}
