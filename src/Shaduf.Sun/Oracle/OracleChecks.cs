using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Which shipped kernel computes each quantity of the trade's files of independent figures.</summary>
public static class OracleChecks
{
    /// <summary>Irradiance within 0.1 %: at most 0.5 W/m2, and 0.001 W/m2 where there is next to nothing.</summary>
    internal static Margin Irradiance { get; } = new(0.1, "%", Least: 1, Greatest: 500);

    /// <summary>One check for each quantity that is compared.</summary>
    public static IReadOnlyList<OracleCheck> All { get; } =
    [.. OracleSun.All, .. OracleSky.All, .. OraclePlane.All, .. OracleCell.All, OracleYear.Totals];

    internal static OracleTable Table(string file, Func<CsvRow, bool>? isTaken = null) =>
        new(typeof(OracleChecks).Assembly, file, isTaken);
}
