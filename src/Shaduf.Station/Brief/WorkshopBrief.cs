namespace Shaduf.Station;

/// <summary>Offcuts of one length that lie in the yard.</summary>
/// <param name="Section">Card of their section.</param>
/// <param name="LengthMm">Length of each [mm].</param>
/// <param name="Count">How many.</param>
public sealed record OffcutBrief(string Section, double LengthMm, int Count);

/// <summary>Another length of bar that the merchant sells, besides the one on the card.</summary>
/// <param name="Section">Card of its section.</param>
/// <param name="LengthMm">Length [mm].</param>
public sealed record OtherBarBrief(string Section, double LengthMm)
{
    /// <summary>Key of its rate in the price book: <c>SHS60x3-12m</c>.</summary>
    public string Item => FormattableString.Invariant($"{Section}-{LengthMm / 1000:0.###}m");
}

/// <summary>The saw, the yard, and the merchant.</summary>
/// <param name="GivenKerfMm">What a cut eats [mm]; null when unknown.</param>
/// <param name="GivenEndTrimMm">What is cut off both ends of a bar together [mm]; null when unknown.</param>
/// <param name="Offcuts">Offcuts in the yard.</param>
/// <param name="OtherBars">Other lengths to be had.</param>
public sealed record WorkshopBrief(
    double? GivenKerfMm,
    double? GivenEndTrimMm,
    IReadOnlyList<OffcutBrief> Offcuts,
    IReadOnlyList<OtherBarBrief> OtherBars
)
{
    /// <summary>A workshop of which nothing is known.</summary>
    public static WorkshopBrief Unknown { get; } = new(null, null, [], []);

    /// <summary>Figures by name in the table of defaults; null where unknown.</summary>
    internal IEnumerable<(string Id, double? Given)> Figures => [("kerf", GivenKerfMm), ("end-trim", GivenEndTrimMm)];

    /// <summary>What a cut eats, given or taken [mm].</summary>
    public double KerfMm => GivenKerfMm ?? Assumption.DefaultOf("kerf");

    /// <summary>What is cut off both ends of a bar together, given or taken [mm].</summary>
    public double EndTrimMm => GivenEndTrimMm ?? Assumption.DefaultOf("end-trim");
}
