using System.Collections.Frozen;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Power;

/// <summary>One column of a table whose rows are nominal sizes [mm²]; empty cells are left out.</summary>
internal sealed class SizeTable
{
    private readonly FrozenDictionary<double, double> figureBySize;
    private readonly string what;

    internal SizeTable(string fileName, string column, string what)
    {
        this.what = what;
        figureBySize = Csv.Embedded(typeof(SizeTable).Assembly, fileName)
            .Where(row => row[column].Length > 0)
            .ToFrozenDictionary(row => row.Number("mm2"), row => row.Number(column));
    }

    internal IEnumerable<double> SizesMm2 => figureBySize.Keys.Order();

    internal bool Holds(double sizeMm2) => figureBySize.ContainsKey(sizeMm2);

    internal double At(double sizeMm2) =>
        figureBySize.TryGetValue(sizeMm2, out var figure)
            ? figure
            : throw new ArgumentOutOfRangeException(
                nameof(sizeMm2),
                sizeMm2,
                Invariant($"{what} has no size {sizeMm2} mm²; sizes: ")
                    + string.Join(", ", SizesMm2.Select(size => Invariant($"{size}")))
            );
}
