using System.Text.Json.Nodes;

namespace Shaduf.Station.Tests;

public sealed class OwnCardsTests
{
    [Fact]
    public void A_card_beside_the_brief_stands_on_the_shelf_and_changes_nothing_in_the_folder()
    {
        var file = Read("mine.yaml", Specimen.Cards["tank-5"].Replace("tank-5", "tank-mine", StringComparison.Ordinal));
        Assert.NotNull(file.Shelf.Find<TankCard>("tank-mine"));
        Assert.NotNull(file.Shelf.Find<TankCard>("tank-5"));
    }

    [Theory]
    [InlineData("mine.yaml", "tank-5", "name", "already the name of another card")]
    [InlineData("other.yaml", "tank-mine", "ownCards[1].file", "there is no file 'other.yaml'")]
    public void A_name_that_is_taken_and_a_file_that_is_not_there_are_told(
        string named,
        string name,
        string field,
        string says
    )
    {
        var bad = Assert.Throws<BadInputException>(() =>
            Read("mine.yaml", Specimen.Cards["tank-5"].Replace("tank-5", name, StringComparison.Ordinal), named)
        );
        Assert.Contains(
            bad.Errors,
            error => error.Field == field && error.Problem.Contains(says, StringComparison.Ordinal)
        );
    }

    private static StationFile Read(string file, string card, string? named = null)
    {
        using var scratch = new Scratch();
        scratch.Write(file, card);
        var brief = SmallStation.Brief();
        brief["ownCards"] = new JsonArray(new JsonObject { ["file"] = named ?? file });
        return scratch.Read(brief.ToJsonString());
    }
}
