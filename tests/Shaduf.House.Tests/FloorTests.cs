using Microsoft.CodeAnalysis;

namespace Shaduf.House.Tests;

/// <summary>The floor stays small and knows no trade, so that it does not become the dumping ground.</summary>
public sealed class FloorTests
{
    private const int MostTypes = 15;

    [Fact]
    public void Floor_stays_small_and_carries_no_trade_word() =>
        Rule.Holds(
            "floor",
            House.FloorProjects.SelectMany(project => TooMany(project.Assembly).Concat(TradeWords(project.Assembly)))
        );

    internal static IEnumerable<Offence> TooMany(IAssemblySymbol floor)
    {
        var count = floor.PublicTypes().Count();
        if (count > MostTypes)
        {
            yield return new(
                floor.Name,
                $"has {count} public types, at most {MostTypes} are accepted: move what only one trade uses to that trade."
            );
        }
    }

    internal static IEnumerable<Offence> TradeWords(IAssemblySymbol floor)
    {
        var refused = File.ReadLines(Path.Combine(House.Home, "trade-words.txt"))
            .Where(line => !line.StartsWith('#'))
            .ToHashSet();
        return from type in floor.PublicTypes()
            from word in Words.Of(type.Name).Select(word => word.ToLowerInvariant())
            where refused.Contains(word) || refused.Contains(word.TrimEnd('s'))
            select new Offence(
                type.Subject(),
                $"carries the trade word '{word}': give it a floor name, or move it to its trade."
            );
    }
}
