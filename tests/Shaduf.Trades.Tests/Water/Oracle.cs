using Shaduf.Working;

namespace Shaduf.Trades.Tests.Water;

// Figures made outside the project by general-purpose root finding; see each table's columns for units.
internal static class Oracle
{
    public static IReadOnlyList<CsvRow> Rows(string name) =>
        Csv.Rows(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Oracle", name + ".csv")));

    public static void Near(double expected, double obtained, double relative) =>
        Assert.True(
            Math.Abs(obtained - expected) <= relative * Math.Abs(expected),
            FormattableString.Invariant($"expected {expected}, obtained {obtained}")
        );
}
