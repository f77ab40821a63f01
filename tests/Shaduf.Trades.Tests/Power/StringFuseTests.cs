using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class StringFuseTests
{
    [Theory]
    [InlineData(1, false)]
    [InlineData(2, false)]
    [InlineData(3, true)]
    public void Two_strings_need_none(int strings, bool needed) =>
        Assert.Equal(needed, StringFuse.For(Samples.Module, strings).Needed);

    [Fact]
    public void A_module_that_bears_too_little_leaves_no_rating()
    {
        Assert.True(StringFuse.For(Samples.Module, 3).Exists);
        Assert.False(StringFuse.For(Samples.Module with { SeriesFuseA = 15 }, 3).Exists);
    }

    [Fact]
    public void An_unfused_cable_bears_its_own_current_at_least()
    {
        Assert.Equal(1.25 * 13.95, ArrayCurrent.UnfusedStringCableA(Samples.Module, 1), 5e-10);
        Assert.Equal(1.25 * 13.95, ArrayCurrent.UnfusedStringCableA(Samples.Module, 2), 5e-10);
        Assert.Equal(2.5 * 13.95, ArrayCurrent.UnfusedStringCableA(Samples.Module, 3), 5e-10);
    }

    [Fact]
    public void No_strings_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StringFuse.For(Samples.Module, 0));
}
