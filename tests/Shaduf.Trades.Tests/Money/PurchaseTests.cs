using Shaduf.Money;

namespace Shaduf.Trades.Tests.Money;

public sealed class PurchaseTests
{
    // 71.1 and 45.2 m of pipe in coils of 100 m: two coils for 116.3 m; 2.5 bags are three.
    [Fact]
    public void Lines_of_one_item_are_bought_together_in_whole_pieces()
    {
        QuantityLine Line(string item, string unit, double quantity) =>
            new(item, BillSection.PipesAndTank, item, unit, quantity, "test");
        var book = new PriceBook(
            "test",
            "Tavo",
            2,
            "2026-02-01",
            new[]
            {
                new Rate("pipe", "m", 13.2m, "") { SoldUnits = 100, Supplier = "Pipes" },
                new Rate("valve", "nr", 90, ""),
            }.ToDictionary(rate => rate.Item)
        );
        var bill = Bill.Price(
            [Line("valve", "nr", 3), Line("pipe", "m", 71.1), Line("pipe", "m", 45.2), Line("unknown", "kg", 4)],
            book
        );
        var bought = Purchase.Of(bill, book, _ => true);
        Assert.Equal(["pipe", "valve", "unknown"], bought.Select(each => each.Item));
        Assert.Equal((2, 83.7m, 2640m), (bought[0].PieceCount, bought[0].LeftUnits, bought[0].Cost));
        Assert.Equal(["C2", "C3"], bought[0].Codes);
        Assert.Equal((3, 270m), (bought[1].PieceCount, bought[1].Cost));
        Assert.Null(bought[2].Cost);
    }
}
