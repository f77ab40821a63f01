namespace Shaduf.Trades.Tests;

internal static class Near
{
    public static void Share(double expected, double obtained, double share) =>
        Assert.True(
            Math.Abs(obtained - expected) <= share * Math.Abs(expected),
            $"expected {expected} within {share:G3} of it, obtained {obtained}"
        );
}
