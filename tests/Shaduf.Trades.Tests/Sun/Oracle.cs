using Shaduf.Working;

namespace Shaduf.Trades.Tests.Sun;

/// <summary>Figures made by a general-purpose open-source library from invented cases.</summary>
internal static class Oracle
{
    internal static IReadOnlyList<CsvRow> Rows(string fileName) =>
        Csv.Rows(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Oracle", fileName)));

    /// <summary>Irradiance agrees within 0.5 W/m2 or 0.1 %, whichever is tighter for small figures.</summary>
    internal static void AssertIrradiance(CsvRow row, string column, double obtainedWPerM2)
    {
        var expectedWPerM2 = row.Number(column);
        var allowedWPerM2 = Math.Min(0.5, Math.Max(0.001, 0.001 * Math.Abs(expectedWPerM2)));
        Assert.True(
            Math.Abs(obtainedWPerM2 - expectedWPerM2) <= allowedWPerM2,
            $"{row["id"]} {column}: expected {expectedWPerM2}, obtained {obtainedWPerM2} W/m2"
        );
    }
}
