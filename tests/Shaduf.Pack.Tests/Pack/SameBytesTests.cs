using System.Globalization;

namespace Shaduf.Pack.Tests;

/// <summary>The same brief gives the same bytes, whatever the machine's habits.</summary>
public sealed class SameBytesTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    [Theory]
    [InlineData(",", "")]
    [InlineData(",", ".")]
    [InlineData("٫", "٬")]
    public void The_pack_does_not_follow_the_culture(string decimalMark, string groupMark)
    {
        var before = CultureInfo.CurrentCulture;
        var odd = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        odd.NumberFormat.NumberDecimalSeparator = decimalMark;
        odd.NumberFormat.NumberGroupSeparator = groupMark;
        odd.NumberFormat.NegativeSign = "−";
        odd.DateTimeFormat.DateSeparator = "?";
        try
        {
            CultureInfo.CurrentCulture = odd;
            var again = ExamplePacks.Make(ExamplePacks.BriefOf("homestead"));
            CultureInfo.CurrentCulture = before;
            foreach (var (file, bytes) in packs["homestead"].Files)
            {
                Assert.True(
                    bytes.AsSpan().SequenceEqual(again.Files[file]),
                    $"{file} differs with '{decimalMark}' as decimal mark"
                );
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Another_brief_gives_another_hash()
    {
        var other = ExamplePacks.Make(ExamplePacks.Changed("homestead", ("count: 11", "count: 12")));
        Assert.NotEqual(packs["homestead"].Stamp.BriefHash, other.Stamp.BriefHash);
        Assert.NotEqual(packs["homestead"].Files["design.json"], other.Files["design.json"]);
    }
}
