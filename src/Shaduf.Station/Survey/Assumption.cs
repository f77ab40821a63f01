using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>What the design took because the brief does not say.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Field">The brief's field.</param>
/// <param name="Taken">What was taken, with its unit.</param>
/// <param name="Best">The best status that a finding leaning on it can have.</param>
/// <param name="HowToFind">How to find it out in the field with simple means.</param>
/// <param name="Source">Where the default comes from.</param>
/// <param name="LeanedOnBy">Beginnings of the names of the findings that lean on it.</param>
public sealed record Assumption(
    string Id,
    string Field,
    string Taken,
    FindingStatus Best,
    string HowToFind,
    string Source,
    IReadOnlyList<string> LeanedOnBy
)
{
    private static IReadOnlyDictionary<string, CsvRow> Defaults { get; } =
        Csv.Embedded(typeof(Assumption).Assembly, "defaults.csv").ToDictionary(row => row["id"]);

    /// <summary>The value in the table of defaults, in the unit the table shows.</summary>
    /// <param name="id">Short name.</param>
    /// <returns>The value.</returns>
    /// <exception cref="KeyNotFoundException">The table has no such row.</exception>
    public static double DefaultOf(string id) => Defaults[id].Number("value");

    /// <summary>Whether a finding leans on this.</summary>
    /// <param name="findingId">The finding's name.</param>
    /// <returns>True when it does.</returns>
    public bool IsLeanedOnBy(string findingId) =>
        LeanedOnBy.Any(start => findingId.StartsWith(start, StringComparison.Ordinal));

    /// <summary>An assumption from the table of defaults.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="taken">What was taken; null to show the table's value.</param>
    /// <returns>The assumption.</returns>
    internal static Assumption Of(string id, string? taken = null)
    {
        var row = Defaults[id];
        return new(
            id,
            row["field"],
            taken ?? Shown(row),
            row["status"] switch
            {
                "holds" => FindingStatus.Holds,
                "look" => FindingStatus.Look,
                _ => FindingStatus.Unchecked,
            },
            row["find"],
            row["source"],
            row["leans"].Split(';', StringSplitOptions.RemoveEmptyEntries)
        );
    }

    /// <summary>Takes a value, and lists it.</summary>
    /// <param name="taken">Where assumptions are listed.</param>
    /// <param name="id">Short name.</param>
    /// <param name="value">The value.</param>
    /// <param name="unit">Its unit.</param>
    /// <returns>The value.</returns>
    internal static double Take(List<Assumption> taken, string id, double value, string unit)
    {
        taken.Add(Of(id, string.Create(CultureInfo.InvariantCulture, $"{value:0.##} {unit}")));
        return value;
    }

    private static string Shown(CsvRow row)
    {
        var value = row.Number("value");
        var unit = row["unit"];
        return unit is "share" or "per year"
            ? string.Create(CultureInfo.InvariantCulture, $"{value * 100:0.##} %{(unit == "share" ? "" : " a year")}")
            : string.Create(CultureInfo.InvariantCulture, $"{value:0.##} {unit}");
    }
}
