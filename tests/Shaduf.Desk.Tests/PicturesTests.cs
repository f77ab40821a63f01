namespace Shaduf.Desk.Tests;

/// <summary>Pictures are at hand as long as a page shows them, and a moment longer.</summary>
public sealed class PicturesTests
{
    [Fact]
    public void A_picture_is_at_hand_until_the_last_page_that_shows_it_has_long_left()
    {
        var pictures = new Pictures();
        var key = pictures.Show("<svg/>");
        Assert.Equal(key, pictures.Show("<svg/>"));
        var other = pictures.Show("<svg></svg>");
        Assert.NotEqual(key, other);

        pictures.Leave(key);
        LeaveMany(pictures);
        Assert.Equal("<svg/>"u8.ToArray(), pictures.Of(key));
        pictures.Leave(key);
        Assert.NotNull(pictures.Of(key));
        LeaveMany(pictures);
        Assert.Null(pictures.Of(key));
        Assert.NotNull(pictures.Of(other));
    }

    private static void LeaveMany(Pictures pictures)
    {
        for (var i = 0; i < 100; i++)
        {
            pictures.Leave(pictures.Show($"<svg id='{i}'/>"));
        }
    }
}
