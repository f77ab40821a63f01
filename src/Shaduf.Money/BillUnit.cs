using System.Reflection;
using Shaduf.Working;

namespace Shaduf.Money;

/// <summary>A unit in which the bill measures, and the place to which its quantities are rounded.</summary>
/// <param name="Name">The unit's name in the bill.</param>
/// <param name="DecimalsCount">Decimals kept.</param>
/// <param name="Whole">Whether a fraction is refused instead of rounded.</param>
internal sealed record BillUnit(string Name, int DecimalsCount, bool Whole)
{
    private const double LargestQuantity = 1e9;

    private static IReadOnlyList<BillUnit> Table { get; } =
    [
        .. Csv.Embedded(Assembly.GetExecutingAssembly(), "BillUnit.csv")
            .Select(row => new BillUnit(row["unit"], (int)row.Number("decimals"), row["whole"] == "yes")),
    ];

    /// <summary>Rounds the quantity of a line to its unit's place, half away from zero; what is there stays at least one place.</summary>
    public static decimal Rounded(QuantityLine line)
    {
        var unit = Of(line);
        var exact = Exact(line);
        var rounded = Math.Round(exact, unit.DecimalsCount, MidpointRounding.AwayFromZero);
        if (unit.Whole && rounded != exact)
        {
            throw new ArgumentException(
                FormattableString.Invariant(
                    $"Item {line.Item}: {line.Quantity} {line.Unit} is not a whole number; round it up where it is measured."
                ),
                nameof(line)
            );
        }

        var place = new decimal(1, 0, 0, false, (byte)unit.DecimalsCount);
        return line.Quantity > 0 ? Math.Max(rounded, place) : rounded;
    }

    /// <summary>Whether a line's unit is bought in whole numbers only.</summary>
    public static bool IsWhole(QuantityLine line) => Of(line).Whole;

    private static BillUnit Of(QuantityLine line) =>
        Table.FirstOrDefault(unit => unit.Name == line.Unit)
        ?? throw new ArgumentException(
            $"Item {line.Item}: the bill has no unit '{line.Unit}'; accepted: {string.Join(", ", Table.Select(unit => unit.Name))}.",
            nameof(line)
        );

    // A decimal holds the fifteen digits of a double that can be relied on.
    private static decimal Exact(QuantityLine line) =>
        line.Quantity is >= 0 and <= LargestQuantity
            ? (decimal)line.Quantity
            : throw new ArgumentException(
                FormattableString.Invariant(
                    $"Item {line.Item}: the quantity is {line.Quantity} {line.Unit}; accepted: 0 to {LargestQuantity}."
                ),
                nameof(line)
            );
}
