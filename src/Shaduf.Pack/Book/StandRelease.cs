using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>Whether the stand may be built from what is written, and what its pieces are told by where it may not.</summary>
internal static class StandRelease
{
    /// <summary>Whether it is withheld.</summary>
    /// <param name="design">The design.</param>
    public static bool IsWithheld(Design design) =>
        design.Works.Stand is not null && StandChapter.Withholding(design).Count > 0;

    /// <summary>What follows the heading of a list of a lot's steel; empty where it may be built.</summary>
    /// <param name="design">The design.</param>
    /// <param name="lot">The lot.</param>
    public static string After(Design design, SteelLot lot) =>
        IsWithheld(design) && lot.Steel == design.Works.Stand!.Stand.Steel
            ? ". WITHHELD: for pricing only, not to be cut, welded or put up"
            : "";

    /// <summary>What precedes a list in which the stand's pieces stand beside others; null where it may be built.</summary>
    /// <param name="design">The design.</param>
    public static string? Before(Design design) =>
        IsWithheld(design)
            ? $"The stand is WITHHELD: its pieces {string.Join(", ", Marks(design))} stand here for pricing only. Do not cut them, and do not buy for them, until nothing of the stand stops or is unchecked; then plan again."
            : null;

    /// <summary>A piece's mark, with a word behind it where it belongs to a withheld stand.</summary>
    /// <param name="design">The design.</param>
    /// <param name="mark">The mark.</param>
    public static string Told(Design design, string mark) =>
        IsWithheld(design) && Marks(design).Contains(Whole(mark)) ? $"{mark} (withheld)" : mark;

    private static IEnumerable<string> Marks(Design design) =>
        design.Works.Stand!.Stand.Steel.Groups.Select(part => part.Mark).Distinct();

    // A spliced part's pieces carry a letter: 'G1a'.
    private static string Whole(string mark) => mark.TrimEnd('a', 'b', 'c', 'd', 'e', 'f', 'g', 'h');
}
