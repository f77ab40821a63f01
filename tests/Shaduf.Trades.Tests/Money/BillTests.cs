using CsCheck;
using Shaduf.Money;

namespace Shaduf.Trades.Tests.Money;

public sealed class BillTests
{
    [Fact]
    public void Lines_stand_by_section_and_are_numbered_in_it()
    {
        var bill = Bill.Price(
            [
                Line("tap", BillSection.TapsAndDrainage, "nr", 4),
                Steel(10),
                Line("bolt", BillSection.Steelwork, "nr", 8),
            ],
            Book(2, ("tap", "nr", 12m), ("steel", "kg", 1.5m), ("bolt", "nr", 0.25m))
        );
        Assert.Equal(["E1 steel", "E2 bolt", "J1 tap"], bill.Lines.Select(line => $"{line.Code} {line.Quantity.Item}"));
        Assert.Equal(15m + 2m + 48m, bill.Direct);
        Assert.True(bill.Complete);
    }

    [Fact]
    public void A_missing_price_is_listed_once_and_is_not_zero()
    {
        var bill = Bill.Price(
            [Steel(10), Line("bolt", BillSection.Steelwork, "nr", 8), Line("bolt", BillSection.Ground, "nr", 2)],
            Book(2, ("steel", "kg", 1.5m))
        );
        Assert.False(bill.Complete);
        Assert.Equal(["bolt"], bill.Unpriced);
        Assert.Null(bill.Lines[1].Amount);
        Assert.Null(bill.Lines[1].UnitRate);
        Assert.Equal(15m, bill.Direct);
    }

    [Theory]
    [InlineData("m3", 0.125, 0.13)]
    [InlineData("m", 12.25, 12.3)]
    [InlineData("kg", 4.2449, 4.2)]
    [InlineData("m3", 0.001, 0.01)]
    [InlineData("m3", 0, 0)]
    [InlineData("nr", 7, 7)]
    public void Quantities_are_rounded_before_they_are_priced(string unit, double measured, double billed)
    {
        var bill = Bill.Price([Line("item", BillSection.Ground, unit, measured)], Book(2, ("item", unit, 1000m)));
        Assert.Equal(billed, bill.Lines[0].Quantity.Quantity);
        Assert.Equal((decimal)billed * 1000m, bill.Direct);
    }

    [Theory]
    [InlineData(2, 0.125, 0.13)]
    [InlineData(0, 2.5, 3)]
    [InlineData(0, 1.49, 1)]
    public void Amounts_are_rounded_to_the_smallest_coin_away_from_zero(int digits, double rate, double amount)
    {
        var bill = Bill.Price([Line("item", BillSection.Ground, "nr", 1)], Book(digits, ("item", "nr", (decimal)rate)));
        Assert.Equal((decimal)amount, bill.Lines[0].Amount);
    }

    [Fact]
    public void The_sum_is_the_sum_of_the_printed_lines() =>
        Gen.Select(Gen.Double[0, 5000], Gen.Int[0, 100_000])
            .Array[1, 40]
            .Sample(lines =>
            {
                var takeoff = lines.Select((line, at) => Line($"i{at}", BillSection.Ground, "kg", line.Item1)).ToList();
                var rates = lines.Select((line, at) => ($"i{at}", "kg", line.Item2 / 1000m)).ToArray();
                var bill = Bill.Price(takeoff, Book(2, rates));
                var cents = bill.Lines.Sum(line => (long)(line.Amount!.Value * 100));
                Assert.All(bill.Lines, line => Assert.Equal(line.Amount, Math.Round(line.Amount!.Value, 2)));
                Assert.Equal(cents, bill.Direct * 100);
            });

    [Fact]
    public void Refusals_name_the_item()
    {
        Refused("steel", Steel(double.NaN), ("steel", "kg", 1m));
        Refused("steel", Steel(-1), ("steel", "kg", 1m));
        Refused("steel", Steel(double.PositiveInfinity), ("steel", "kg", 1m));
        Refused("steel", Steel(10), ("steel", "t", 1m));
        Refused("steel", Steel(10), ("steel", "kg", -1m));
        Refused("bolt", Line("bolt", BillSection.Steelwork, "nr", 2.5), ("bolt", "nr", 1m));
        Refused("rope", Line("rope", BillSection.Steelwork, "ell", 2), ("rope", "ell", 1m));
        Refused("rope", Line("rope", (BillSection)'I', "m", 2), ("rope", "m", 1m));
    }

    private static void Refused(string item, QuantityLine line, (string, string, decimal) rate)
    {
        var trouble = Assert.Throws<ArgumentException>(() => Bill.Price([line], Book(2, rate)));
        Assert.Contains(item, trouble.Message, StringComparison.Ordinal);
    }

    private static QuantityLine Steel(double massKg) => Line("steel", BillSection.Steelwork, "kg", massKg);

    private static QuantityLine Line(string item, BillSection section, string unit, double quantity) =>
        new(item, section, item, unit, quantity, "test");

    private static PriceBook Book(int digits, params (string Item, string Unit, decimal Amount)[] rates) =>
        new(
            "test",
            "XTS",
            digits,
            "2026-01-01",
            rates.ToDictionary(rate => rate.Item, rate => new Rate(rate.Item, rate.Unit, rate.Amount, ""))
        );
}
