using System.Globalization;
using System.Text.RegularExpressions;
using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>How the published figures of trends in logs are computed.</summary>
internal static partial class LogChecks
{
    public static IEnumerable<PublishedCheck> All() =>
        [
            new("water/sen-slope", "change", row => Trend(row).ChangeRatio),
            new("water/sen-slope", "score", row => Trend(row).ScoreNumber),
            new("water/sen-slope", "chance", row => Trend(row).ChanceShare),
        ];

    private static SenSlope Trend(PublishedCase row)
    {
        var points = row
            .Inputs.Select(input => (Year: Year().Match(input.Key).Groups[1].Value, input.Value))
            .Select(point => (Year: double.Parse(point.Year, CultureInfo.InvariantCulture), point.Value))
            .OrderBy(point => point.Year)
            .ToList();
        return SenSlope.Of([.. points.Select(point => point.Year)], [.. points.Select(point => point.Value)]);
    }

    [GeneratedRegex("^year([0-9]+)Flow$")]
    private static partial Regex Year();
}
