namespace Shaduf.Station;

/// <summary>What the brief says that the array loses; a loss left out is unknown.</summary>
/// <param name="SoilingShare">By dust and droppings.</param>
/// <param name="MismatchShare">By unequal modules in a string.</param>
/// <param name="FirstLightShare">In the first days in the sun.</param>
/// <param name="WiringShare">In the direct-current cables.</param>
/// <param name="TrackingShare">By the drive's search for maximum power.</param>
/// <param name="AgeingPerYearShare">By age, of what is left, in each year after the first.</param>
public sealed record LossesBrief(
    double? SoilingShare,
    double? MismatchShare,
    double? FirstLightShare,
    double? WiringShare,
    double? TrackingShare,
    double? AgeingPerYearShare
)
{
    /// <summary>The losses by their names in the table of defaults.</summary>
    public IReadOnlyList<(string Id, double? Given)> ById =>
        [
            ("array-soiling", SoilingShare),
            ("array-mismatch", MismatchShare),
            ("array-first-light", FirstLightShare),
            ("array-wiring", WiringShare),
            ("array-tracking", TrackingShare),
            ("array-ageing", AgeingPerYearShare),
        ];
}

/// <summary>Reads what the array loses.</summary>
internal static class LossesReader
{
    /// <summary>Reads the losses.</summary>
    /// <param name="fields">The mapping <c>losses</c>; null when there is none.</param>
    /// <returns>The losses.</returns>
    public static LossesBrief Read(FieldMap? fields)
    {
        double? Lost(string name, string about) => fields?.Known(name, Measure.Share, 0, 0.5, about);
        var losses = new LossesBrief(
            Lost("soiling", "Lost to dust and droppings, over the year."),
            Lost("mismatch", "Lost to unequal modules in a string."),
            Lost("firstLight", "Lost in the first days in the sun."),
            Lost("wiring", "Lost in the direct-current cables."),
            Lost("tracking", "Lost by the drive's search for maximum power."),
            fields?.Known("ageing", Measure.SharePerYear, 0, 0.03, "Lost by age in each year after the first.")
        );
        fields?.Done();
        return losses;
    }
}
