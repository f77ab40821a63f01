using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>How much a crop drinks against the reference, from planting to harvest.</summary>
/// <param name="Crop">Its name.</param>
/// <param name="StartCoefficient">Coefficient of the first stage.</param>
/// <param name="FullCoefficient">Coefficient of the stage in full leaf.</param>
/// <param name="EndCoefficient">Coefficient on the last day.</param>
/// <param name="HeightM">Height of the grown plant [m].</param>
/// <param name="StageDays">Lengths of the four stages: start, growth, full leaf, late [days]; empty when they must be given.</param>
/// <source>FAO-56 tables 11 and 12; lengths of one region each</source>
public sealed record CropCurve(
    string Crop,
    double StartCoefficient,
    double FullCoefficient,
    double EndCoefficient,
    double HeightM,
    IReadOnlyList<int> StageDays
)
{
    private static readonly IReadOnlyList<CsvRow> Table = Csv.Embedded(typeof(CropCurve).Assembly, "CropCurve.csv");

    /// <summary>Names of the crops in the table, in its order.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Table.Select(row => row["crop"])];

    /// <summary>Days from planting to the last harvest.</summary>
    public int SeasonDays => StageDays.Sum();

    /// <summary>A crop of the table.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <returns>Its curve for the standard climate (lowest humidity 45 %, wind 2 m/s).</returns>
    /// <exception cref="ArgumentException">The table has no such crop.</exception>
    public static CropCurve Named(string name)
    {
        var row = RowOf(name);
        string[] stages = ["start_d", "growth_d", "full_d", "late_d"];
        return new(
            name,
            row.Number("kc_start"),
            row.Number("kc_full"),
            row.Number("kc_end"),
            row.Number("height_m"),
            row["start_d"].Length > 0 ? [.. stages.Select(stage => (int)row.Number(stage))] : []
        );
    }

    /// <summary>Where a crop's figures come from.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <returns>The table's source column.</returns>
    /// <exception cref="ArgumentException">The table has no such crop.</exception>
    public static string SourceOf(string name) => RowOf(name)["source"];

    /// <summary>The coefficient on a day of the season.</summary>
    /// <param name="dayIndex">Day, 0 on the day of planting, to the last day of the season.</param>
    /// <returns>Crop water over reference [ratio].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The day is outside the season.</exception>
    /// <source>FAO-56 eq. 66: constant at first and in full leaf, straight between and to the end</source>
    public double DayCoefficient(int dayIndex)
    {
        Within.RequireCount(dayIndex, 0, SeasonDays - 1);
        var (start, growth, full, late) = (StageDays[0], StageDays[1], StageDays[2], StageDays[3]);
        if (dayIndex < start)
        {
            return StartCoefficient;
        }

        if (dayIndex < start + growth)
        {
            return StartCoefficient + ((double)(dayIndex - start) / growth * (FullCoefficient - StartCoefficient));
        }

        var past = dayIndex - start - growth - full;
        return past < 0
            ? FullCoefficient
            : FullCoefficient + ((double)past / late * (EndCoefficient - FullCoefficient));
    }

    /// <summary>
    /// The curve in another climate: full leaf and end (where that is 0.45 or more) rise in dry and windy air. The source
    /// states wind 1 to 6 m/s, humidity 20 to 80 %, height 0.1 to 10 m: beyond, the nearest of these is taken.
    /// </summary>
    /// <param name="windMPerS">Wind 2 m above the ground in full leaf [m/s], 0 to 20.</param>
    /// <param name="lowestPercent">Lowest relative humidity of the day in full leaf [%], 0 to 100.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 62 and 65</source>
    public CropCurve ForClimate(double windMPerS, double lowestPercent)
    {
        Within.Require(windMPerS, 0, 20, "m/s");
        Within.Require(lowestPercent, 0, 100, "%");
        var more =
            ((0.04 * (Math.Clamp(windMPerS, 1, 6) - 2)) - (0.004 * (Math.Clamp(lowestPercent, 20, 80) - 45)))
            * Math.Pow(Math.Clamp(HeightM, 0.1, 10) / 3, 0.3);
        return this with
        {
            FullCoefficient = FullCoefficient + more,
            EndCoefficient = EndCoefficient >= 0.45 ? EndCoefficient + more : EndCoefficient,
        };
    }

    private static CsvRow RowOf(string name) =>
        Table.FirstOrDefault(row => row["crop"] == name)
        ?? throw new ArgumentException($"there is no crop '{name}' in the table", nameof(name));
}
