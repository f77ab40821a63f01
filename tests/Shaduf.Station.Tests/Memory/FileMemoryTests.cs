namespace Shaduf.Station.Tests;

public sealed class FileMemoryTests
{
    [Fact]
    public void Cards_and_prices_are_read_again_when_a_file_of_them_changes()
    {
        using var scratch = new Scratch();
        scratch.WriteCards();
        scratch.Write("prices.yaml", Specimen.Prices);
        var memory = new FileMemory();
        StationFile Read() => StationFile.Of(SmallStation.Brief().ToJsonString(), scratch.PathOf(""), memory);
        var first = Read();
        var again = Read();
        Assert.Same(first.Shelf, again.Shelf);
        Assert.Same(first.Prices, again.Prices);
        var tank = Specimen.Cards["tank-5"];
        scratch.Write("cards/tank-5b.yaml", tank.Replace("tank-5", "tank-5b", StringComparison.Ordinal));
        Assert.NotNull(Read().Shelf.Find<TankCard>("tank-5b"));
        scratch.Write("prices.yaml", Specimen.Prices + "\n# later\n");
        Assert.NotSame(first.Prices, Read().Prices);
    }

    [Fact]
    public void A_card_that_is_wrong_is_told_each_time()
    {
        using var scratch = new Scratch();
        scratch.WriteCards(("tank-5", "card: tank"));
        scratch.Write("prices.yaml", Specimen.Prices);
        var memory = new FileMemory();
        for (var i = 0; i < 2; i++)
        {
            Assert.Throws<BadInputException>(() =>
                StationFile.Of(SmallStation.Brief().ToJsonString(), scratch.PathOf(""), memory)
            );
        }
    }
}
