using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>The worst of what racks find.</summary>
internal static class WorstUse
{
    /// <summary>The use that is worst in any of some racks, with its rack.</summary>
    /// <typeparam name="T">What is used.</typeparam>
    /// <param name="racks">The racks, such as one at two depths of its columns.</param>
    /// <param name="uses">Its uses.</param>
    /// <param name="share">How far something is used; null where that is not known, which is left out.</param>
    /// <returns>Rack and use; null when nothing is used.</returns>
    public static (RackStrength Rack, T Use)? Worst<T>(
        this IEnumerable<RackStrength> racks,
        Func<RackStrength, IReadOnlyList<T>> uses,
        Func<T, double?> share
    )
    {
        var all = racks
            .SelectMany(rack => uses(rack).Select(use => (Rack: rack, Use: use, Share: share(use))))
            .Where(each => each.Share is not null)
            .ToList();
        return all.Count > 0 && all.MaxBy(each => each.Share) is var worst ? (worst.Rack, worst.Use) : null;
    }

    /// <summary>How far something is used, in words.</summary>
    /// <param name="result">What its check came to.</param>
    /// <returns>The words.</returns>
    public static string UsedSays(this CheckResult result) =>
        result.FiniteShare is not null
            ? $"{result.ShareText} of what it carries"
            : "its wall is too thin to be reckoned with, choose a thicker one";
}
