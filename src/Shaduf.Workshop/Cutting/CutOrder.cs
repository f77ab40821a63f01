using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Workshop;

/// <summary>Equal parts to be cut.</summary>
/// <param name="Mark">The short name painted on the part.</param>
/// <param name="LengthMm">Length, long point to long point [mm], 1 to the longest bar less its end trim.</param>
/// <param name="Count">How many, 1 to 100000.</param>
public sealed record CutPart(string Mark, double LengthMm, int Count)
{
    /// <summary>Saw angle at the start, from a square cut [deg].</summary>
    public double StartDeg { get; init; }

    /// <summary>Saw angle at the end, from a square cut [deg].</summary>
    public double EndDeg { get; init; }

    /// <summary>Whether both cuts lean towards each other, so that one side is the longest; else one leans after the other.</summary>
    public bool IsTrapezoid { get; init; } = true;

    /// <summary>Width of the section in the plane of the mitres, for parts that nest; 0 when they must not [mm].</summary>
    public double NestWidthMm { get; init; }
}

/// <summary>Bars of one length, as sold or as they lie in the yard.</summary>
/// <param name="LengthMm">Length [mm], 100 to 20000.</param>
/// <param name="Price">Price of one, above 0; an offcut of the yard may cost nothing.</param>
/// <param name="Count">How many there are, 1 to 100000; null for as many as are wanted.</param>
public sealed record BarStock(double LengthMm, decimal Price, int? Count = null)
{
    /// <summary>Whether it lies in the yard and is not bought.</summary>
    public bool IsOffcut => Count is not null;
}

/// <summary>What is to be cut, from what, with which saw.</summary>
/// <param name="Parts">The parts; marks differ.</param>
/// <param name="Stock">The bars; one length at least is to be had in any number.</param>
/// <param name="KerfMm">What a cut eats [mm], 0 to 20.</param>
/// <param name="EndTrimMm">What is cut off both ends of a bar together [mm], 0 to 500.</param>
public sealed record CutOrder(
    IReadOnlyList<CutPart> Parts,
    IReadOnlyList<BarStock> Stock,
    double KerfMm,
    double EndTrimMm
)
{
    /// <summary>Most parts of an order; beyond that it is several orders.</summary>
    public const int MostParts = 100_000;

    /// <summary>Longest part that a bar in any number gives [mm]; 0 when there is none.</summary>
    public double LongestMm =>
        Stock.Where(bar => bar.Count is null).Select(bar => bar.LengthMm).DefaultIfEmpty(EndTrimMm).Max() - EndTrimMm;

    /// <summary>What makes the order impossible to cut, a sentence each; none when it can be cut.</summary>
    /// <returns>The sentences.</returns>
    public IEnumerable<string> Troubles()
    {
        if (Stock.All(bar => bar.Count is not null))
        {
            yield return "no length of bar is to be had in any number: name what the merchant sells.";
            yield break;
        }

        foreach (var part in Parts)
        {
            if (part.Count == 0)
            {
                yield return $"part {part.Mark} is asked for no times: leave it out.";
            }
            else if (part.LengthMm > LongestMm + 1e-6)
            {
                yield return Invariant(
                    $"part {part.Mark} is {part.LengthMm:0.#} mm long and the longest bar less its end trim {LongestMm:0.#} mm: splice it or buy a longer bar."
                );
            }
            else if (part.LengthMm < KerfMm)
            {
                yield return Invariant(
                    $"part {part.Mark} is {part.LengthMm:0.#} mm long and the saw eats {KerfMm:0.#} mm: nothing would be left of it to hold."
                );
            }
        }

        foreach (var twice in Parts.CountBy(part => part.Mark).Where(mark => mark.Value > 1))
        {
            yield return $"mark {twice.Key} stands for {twice.Value} parts: marks must differ.";
        }

        if (Parts.Sum(part => (long)part.Count) > MostParts)
        {
            yield return Invariant($"more than {MostParts} parts: make several orders of it.");
        }
    }

    /// <summary>Refuses an order with figures out of range, or one that cannot be cut.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range, or NaN.</exception>
    /// <exception cref="ArgumentException">The order cannot be cut; the message says why.</exception>
    internal void Require()
    {
        Within.Require(KerfMm, 0, 20, "mm");
        Within.Require(EndTrimMm, 0, 500, "mm");
        foreach (var bar in Stock)
        {
            Within.Require(bar.LengthMm, 100, 20_000, "mm");
            Within.RequireCount(bar.Count ?? 1, 1, 100_000);
            Within.Require((double)bar.Price, bar.IsOffcut ? 0 : 1e-4, 1e9, "");
        }

        foreach (var part in Parts)
        {
            Within.RequireCount(part.Count, 0, 100_000);
            Within.Require(part.LengthMm, 1, 1e6, "mm");
            Within.Require(part.StartDeg, 0, 80, "deg");
            Within.Require(part.EndDeg, 0, 80, "deg");
        }

        if (Troubles().FirstOrDefault() is { } trouble)
        {
            throw new ArgumentException(trouble, nameof(Parts));
        }
    }
}
