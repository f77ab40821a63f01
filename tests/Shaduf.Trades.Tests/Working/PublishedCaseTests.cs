using Shaduf.Working;

namespace Shaduf.Trades.Tests.Working;

public sealed class PublishedCaseTests
{
    private const string Heading = "id,quantity,inputs,expected,tolerance,unit,source,confirmed\n";

    [Fact]
    public void A_row_is_read_whole()
    {
        var row = Assert.Single(
            PublishedCase.Read(
                "water/head",
                Heading + "W-1,loss,boreM=0.05; flowM3PerS = 1e-3,-2.5,0.1,m,\"Book, 3rd edition, table 2\",looked up"
            )
        );
        Assert.Equal(("water/head", "W-1", "loss", "m"), (row.Method, row.Id, row.Quantity, row.Unit));
        Assert.Equal((-2.5, 0.1), (row.Expected, row.Tolerance));
        Assert.Equal(("Book, 3rd edition, table 2", "looked up"), (row.Source, row.Confirmed));
        Assert.Equal((2, 0.05, 0.001), (row.Inputs.Count, row["boreM"], row["flowM3PerS"]));
    }

    [Theory]
    [InlineData("200", "1%", 2)]
    [InlineData("-200", "0.5 %", 1)]
    [InlineData("200", "1", 1)]
    [InlineData("0", "5%", 0)]
    public void A_tolerance_in_percent_is_of_the_figure(string expected, string tolerance, double allowed) =>
        Assert.Equal(allowed, Assert.Single(Rows("", expected, tolerance)).Tolerance, 1e-12);

    [Fact]
    public void An_input_may_be_infinite() =>
        Assert.Equal(double.PositiveInfinity, Assert.Single(Rows("modulusGPa=Infinity", "1", "0"))["modulusGPa"]);

    [Fact]
    public void A_row_may_have_no_inputs() => Assert.Empty(Assert.Single(Rows("", "1", "0")).Inputs);

    [Theory]
    [InlineData("a=1", "", "0", "'' is not a number")]
    [InlineData("a=1", "NaN", "0", "'NaN' is not a number")]
    [InlineData("a=1", "1", "a little", "'a little' is not a number")]
    [InlineData("a=1", "1", "Infinity", "'Infinity' is not finite")]
    [InlineData("a=1", "1", "much%", "'much' is not a number")]
    [InlineData("a=one", "1", "0", "'one' is not a number")]
    [InlineData("a=1", "-Infinity", "0", "'-Infinity' is not finite")]
    [InlineData("a=NaN", "1", "0", "'NaN' is not a number")]
    [InlineData("a=", "1", "0", "'' is not a number")]
    [InlineData("1.5", "1", "0", "'1.5' is not a new 'name=number'")]
    [InlineData("=1.5", "1", "0", "'=1.5' is not a new 'name=number'")]
    [InlineData("a=1=2", "1", "0", "'a=1=2' is not a new 'name=number'")]
    [InlineData("a=1;a=2", "1", "0", "'a=2' is not a new 'name=number'")]
    public void A_row_of_another_form_is_refused_by_its_line(
        string inputs,
        string expected,
        string tolerance,
        string says
    ) =>
        Assert.Equal(
            $"line 2: {says}",
            Assert.Throws<FormatException>(() => Rows(inputs, expected, tolerance)).Message
        );

    [Fact]
    public void A_comma_without_quotes_is_refused() =>
        Assert.Throws<FormatException>(() =>
            PublishedCase.Read("m", Heading + "W-1,loss,a=1,2.5,0.1,m,Book, table 2,looked up")
        );

    [Fact]
    public void A_column_that_is_missing_is_refused() =>
        Assert.Throws<FormatException>(() => PublishedCase.Read("m", "id,quantity,inputs,expected\nW-1,loss,a=1,2.5"));

    [Fact]
    public void An_input_that_is_missing_is_named() =>
        Assert.Equal(
            "Published case W-1 has no input 'boreM'.",
            Assert.Throws<KeyNotFoundException>(() => Assert.Single(Rows("a=1", "1", "0"))["boreM"]).Message
        );

    private static IReadOnlyList<PublishedCase> Rows(string inputs, string expected, string tolerance) =>
        PublishedCase.Read("m", $"{Heading}W-1,loss,{inputs},{expected},{tolerance},m,Book,looked up");
}
