using Shaduf.Money;
using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>The items that a takeoff may name, with the unit that each is measured in.</summary>
internal static class PriceItems
{
    /// <summary>Units of the items that are no cards, by item.</summary>
    public static IReadOnlyDictionary<string, string> General { get; } =
        Csv.Embedded(typeof(PriceItems).Assembly, "items.csv").ToDictionary(row => row["item"], row => row["unit"]);

    /// <summary>The unit that an item is measured in; null for an item that no takeoff names.</summary>
    public static string? UnitOf(string item, CardShelf shelf) =>
        shelf.Cards.FirstOrDefault(card => card.Name == item) switch
        {
            null => General.GetValueOrDefault(item),
            PipeCard or CableCard => "m",
            _ => "nr",
        };

    /// <summary>Notes each rate whose unit is not the one that its item is measured in.</summary>
    public static void Check(FieldMap book, IReadOnlyList<GivenRate> given, CardShelf shelf)
    {
        foreach (var (i, rate) in given.Index())
        {
            if (UnitOf(rate.Item, shelf) is { } unit && unit != rate.Unit)
            {
                book.Complain(
                    $"rates[{i + 1}].unit",
                    $"'{rate.Item}' is measured in {unit}, not in {rate.Unit}",
                    $"{unit} is accepted"
                );
            }
        }
    }
}
