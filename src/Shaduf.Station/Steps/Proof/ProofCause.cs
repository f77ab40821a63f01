using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>Something that makes readings miss.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Says">What it is.</param>
/// <param name="Look">Where to look.</param>
/// <param name="ExplainedCount">Kinds of reading that missed the way it makes them miss.</param>
/// <param name="AgainstCount">Kinds of reading that speak against it.</param>
public sealed record ProofCause(string Id, string Says, string Look, int ExplainedCount, int AgainstCount)
{
    private static readonly IReadOnlyList<CsvRow> s_rows = Csv.Embedded(typeof(ProofCause).Assembly, "causes.csv");

    /// <summary>
    /// Likely causes of what missed: each that explains at least one kind of reading, those first that explain more kinds,
    /// then those that fewer speak against, then in the order of the table.
    /// </summary>
    /// <param name="items">All readings.</param>
    /// <returns>The causes; none when nothing missed.</returns>
    public static IReadOnlyList<ProofCause> Of(IReadOnlyList<ProofItem> items) =>
        [
            .. s_rows
                .Select(row => Judged(row, items))
                .Where(cause => cause.ExplainedCount > 0)
                .OrderByDescending(cause => cause.ExplainedCount)
                .ThenBy(cause => cause.AgainstCount),
        ];

    private static ProofCause Judged(CsvRow row, IReadOnlyList<ProofItem> items)
    {
        var (explained, against) = (0, 0);
        foreach (var kind in Enum.GetValues<ProofKind>())
        {
            var read = items.Where(item => item.Kind == kind).ToList();
            var told = row[Proof.KeyOf(kind).Replace('-', '_')];
            if (read.Count == 0 || told.Length == 0)
            {
                continue;
            }

            var way = told switch
            {
                "-" => -1,
                "+" => 1,
                _ => 0,
            };
            var isSo = way == 0 ? read.All(item => item.Way == 0) : IsSo(row["strings"], read, way);
            explained += isSo && way != 0 ? 1 : 0;
            against += isSo ? 0 : 1;
        }

        return new(row["id"], row["cause"], row["look"], explained, against);
    }

    // One string off while others are well, or all of them; a single string may be either.
    private static bool IsSo(string strings, List<ProofItem> read, int way) =>
        strings switch
        {
            "one" when read.Count > 1 => read.Any(item => item.Way == way) && read.Any(item => item.Way != way),
            "all" => read.All(item => item.Way == way),
            _ => read.Any(item => item.Way == way),
        };
}
