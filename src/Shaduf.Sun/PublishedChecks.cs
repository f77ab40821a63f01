using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>How each published figure of this trade is computed.</summary>
public static class PublishedChecks
{
    /// <summary>One check for every quantity named in the trade's published files.</summary>
    public static IReadOnlyList<PublishedCheck> All { get; } = [];
}
