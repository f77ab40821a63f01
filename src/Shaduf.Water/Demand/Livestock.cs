using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>What one animal of a kind drinks, by the heat.</summary>
/// <param name="Animal">Its kind.</param>
/// <param name="AirDegC">Mean air temperatures of the table, rising [degC]; one when the kind drinks the same all year.</param>
/// <param name="LitresPerDay">Water at each of them [L/d].</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record Livestock(
    string Animal,
    IReadOnlyList<double> AirDegC,
    IReadOnlyList<double> LitresPerDay,
    string Source
)
{
    private static readonly IReadOnlyList<CsvRow> Table = Csv.Embedded(typeof(Livestock).Assembly, "Livestock.csv");

    /// <summary>Kinds of animal in the table, in its order.</summary>
    public static IReadOnlyList<string> Animals { get; } = [.. Table.Select(row => row["animal"]).Distinct()];

    /// <summary>A kind of the table.</summary>
    /// <param name="animal">One of <see cref="Animals"/>.</param>
    /// <returns>What it drinks.</returns>
    /// <exception cref="ArgumentException">The table has no such kind.</exception>
    public static Livestock Named(string animal)
    {
        CsvRow[] rows = [.. Table.Where(row => row["animal"] == animal)];
        return rows.Length > 0
            ? new(
                animal,
                [.. rows.Select(row => row.Number("air_degC"))],
                [.. rows.Select(row => row.Number("litres_per_day"))],
                rows[^1]["source"]
            )
            : throw new ArgumentException($"there is no animal '{animal}' in the table", nameof(animal));
    }

    /// <summary>
    /// Water for one head at a mean air temperature: straight lines between the figures of the table; never less than the
    /// coldest of them; beyond the hottest the last line goes on.
    /// </summary>
    /// <param name="airDegC">Mean air temperature of the month [degC], -50 to 50.</param>
    /// <returns>Water [L/d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>the table's sources; holding and going on beyond their ends is judgement, no source</source>
    public double LitresAt(double airDegC)
    {
        Within.Require(airDegC, -50, 50, "degC");
        if (AirDegC.Count == 1 || airDegC <= AirDegC[0])
        {
            return LitresPerDay[0];
        }

        var upper = 1;
        while (upper < AirDegC.Count - 1 && airDegC > AirDegC[upper])
        {
            upper++;
        }

        var share = (airDegC - AirDegC[upper - 1]) / (AirDegC[upper] - AirDegC[upper - 1]);
        return LitresPerDay[upper - 1] + (share * (LitresPerDay[upper] - LitresPerDay[upper - 1]));
    }
}
