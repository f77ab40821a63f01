using Shaduf.Money;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Working;

public sealed class CsvTests
{
    [Fact]
    public void Cells_are_read_by_the_name_of_their_column()
    {
        var row = Assert.Single(Csv.Rows("size, factor\n 1.5 , -2e-3 "));
        Assert.Equal("1.5", row["size"]);
        Assert.Equal(-0.002, row.Number("factor"));
    }

    [Fact]
    public void Remarks_and_empty_lines_are_passed_over_but_counted()
    {
        var rows = Csv.Rows("# where it comes from\r\nname,n\r\n\r\na,1\r\n# more\r\nb,2\r\n");
        Assert.Equal([("a", 4), ("b", 6)], rows.Select(row => (row["name"], row.LineNumber)));
        Assert.Equal([1, 2], rows.Select(row => row.Number("n")));
    }

    [Fact]
    public void A_quoted_cell_may_hold_commas_and_quotes()
    {
        var row = Assert.Single(Csv.Rows("source,n\n\"Book, table 2, \"\"note\"\"\",3"));
        Assert.Equal("Book, table 2, \"note\"", row["source"]);
        Assert.Equal(3, row.Number("n"));
    }

    [Theory]
    [InlineData("a,b\n1,2\n1", "line 3: 1 cells under 2 headings")]
    [InlineData("a,b\n1,2,3", "line 2: 3 cells under 2 headings")]
    public void A_row_of_another_length_is_refused_by_its_line(string text, string says) =>
        Assert.Equal(says, Assert.Throws<FormatException>(() => Csv.Rows(text)).Message);

    [Theory]
    [InlineData("")]
    [InlineData("much")]
    [InlineData("1 2")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    public void What_is_no_finite_number_is_refused_by_line_and_column(string cell)
    {
        var row = Assert.Single(Csv.Rows($"name,size\nx,{cell}"));
        Assert.Equal(
            $"line 2, column size: '{cell}' is not a number",
            Assert.Throws<FormatException>(() => row.Number("size")).Message
        );
    }

    [Fact]
    public void A_column_that_is_not_there_is_refused_by_its_name()
    {
        var row = Assert.Single(Csv.Rows("name\nx"));
        Assert.Equal(
            "line 2: there is no column 'size'",
            Assert.Throws<FormatException>(() => row.Number("size")).Message
        );
    }

    [Fact]
    public void A_table_beside_the_code_is_found_by_its_whole_name()
    {
        Assert.NotEmpty(Csv.Embedded(typeof(Bill).Assembly, "BillUnit.csv"));
        Assert.Throws<FileNotFoundException>(() => Csv.Embedded(typeof(Bill).Assembly, "Unit.csv"));
    }
}
