namespace Shaduf.Desk.Tests;

public sealed class DeskSettingTests
{
    [Fact]
    public void The_usual_port_is_taken_when_none_is_named()
    {
        Assert.Equal(DeskSetting.UsualPort, DeskSetting.Of([], null).Port);
        Assert.Equal(8080, DeskSetting.Of(["--port", "8080"], null).Port);
    }

    [Theory]
    [InlineData("--port")]
    [InlineData("--port", "70000")]
    [InlineData("--port", "-1")]
    [InlineData("--port", "a")]
    [InlineData("--urls", "http://0.0.0.0:80")]
    public void What_is_not_known_is_refused(params string[] args) =>
        Assert.Contains(
            "this computer only",
            Assert.Throws<ArgumentException>(() => DeskSetting.Of(args, null)).Message,
            StringComparison.Ordinal
        );
}
