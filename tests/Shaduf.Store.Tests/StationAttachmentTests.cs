namespace Shaduf.Store.Tests;

public sealed class StationAttachmentTests
{
    [Theory]
    [InlineData("weather.csv")]
    [InlineData("lift-12x90.yaml")]
    [InlineData("Test of 3 May.xlsx")]
    public void Plain_names_are_taken(string name) => Assert.Equal(name, new StationAttachment(name, [1]).Name);

    [Theory]
    [InlineData("")]
    [InlineData(".")]
    [InlineData("..")]
    [InlineData("../station.yaml")]
    [InlineData("/etc/hosts")]
    [InlineData("a\\b.csv")]
    [InlineData("c:b.csv")]
    [InlineData("a\nb.csv")]
    [InlineData("a\0.csv")]
    [InlineData(" a.csv")]
    [InlineData("a.csv.")]
    [InlineData("<script>.csv")]
    [InlineData("a\u202Evsc.exe")]
    public void Names_that_lead_elsewhere_or_hide_something_are_refused(string name) =>
        Assert.NotNull(Assert.Throws<ArgumentException>(() => new StationAttachment(name, [1])).Message);

    [Fact]
    public void A_file_larger_than_is_kept_is_refused_by_its_size_alone()
    {
        Assert.Contains("16 MB", StationAttachment.Fault("a.csv", 50_000_000)!, StringComparison.Ordinal);
        Assert.NotNull(StationAttachment.Fault(new string('a', 81), 1));
    }
}
