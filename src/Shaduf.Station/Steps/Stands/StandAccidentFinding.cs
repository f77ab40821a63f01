using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>Finding on what a full stand outlasts beyond its loads.</summary>
internal static class StandAccidentFinding
{
    /// <summary>The finding.</summary>
    /// <param name="accidents">What accidents do to the stand.</param>
    /// <param name="advice">What would hold where something does not; begins with a full stop.</param>
    public static Finding Of(IReadOnlyList<StandAccident> accidents, string advice)
    {
        var worst = accidents.MaxBy(each => each.Use.UtilisationShare)!;
        return Finding.AtMost(
            "stand/accident",
            worst.Use.UtilisationShare,
            1,
            "",
            string.Join(
                "; ",
                accidents.Select(each =>
                    $"{each.What}: {each.Role} {each.Mark} is then used most: {each.Use.UsedSays()} ({each.Combination})"
                )
            )
                + ". Vehicles are kept off: bollards or stones wherever a track passes within 3 m"
                + (worst.Use.Holds ? "" : advice),
            "EN 1990:2002, 6.4.3.3, factors 1.0; which accidents: judgement, no source; " + worst.Use.Clause
        ) with
        {
            Value = worst.Use.FiniteShare,
        };
    }
}
