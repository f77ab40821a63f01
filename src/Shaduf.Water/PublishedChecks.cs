using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>How each quantity of this trade's published rows is computed.</summary>
public static class PublishedChecks
{
    /// <summary>One check for each quantity named in a published file of this trade.</summary>
    public static IReadOnlyList<PublishedCheck> All => [];
}
