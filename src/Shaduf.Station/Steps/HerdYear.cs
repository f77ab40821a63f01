using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Water of a herd through the year, with its working.</summary>
internal static class HerdYear
{
    /// <summary>The use of a herd.</summary>
    /// <param name="herd">The herd.</param>
    /// <param name="airDegC">Mean air temperature of the months [°C].</param>
    /// <param name="pattern">Hours of draw.</param>
    /// <returns>The use.</returns>
    public static UseYear Of(HerdBrief herd, IReadOnlyList<double> airDegC, DrawPattern pattern)
    {
        if (herd.EachLPerDay is { } each)
        {
            return new(
                herd.Animal,
                Invariant($"{herd.Count} head, {each:0.#} L/d each, no growth"),
                [.. Enumerable.Repeat(herd.Count * each / 1000, 12)],
                pattern,
                true
            );
        }

        var litres = LitresOf(herd.Animal, airDegC);
        return new(
            herd.Animal,
            Invariant($"{herd.Count} head, {Span(litres)} each by the heat, no growth"),
            [.. litres.Select(month => herd.Count * month / 1000)],
            pattern,
            true
        )
        {
            Working = new(
                $"Water of the {herd.Animal}",
                [
                    .. Enumerable
                        .Range(0, 12)
                        .Select(month => new Line(
                            YearCalendarNames.Months[month][..3],
                            "head x litres / 1000",
                            Invariant($"{herd.Count} x {litres[month]:0.0} L at {airDegC[month]:0.0} degC"),
                            herd.Count * litres[month] / 1000,
                            "m3/d",
                            "water/livestock",
                            Livestock.Named(herd.Animal).Source
                        )),
                ]
            ),
        };
    }

    /// <summary>Water for one head in each month [L/d].</summary>
    /// <param name="animal">Kind of animal in the table.</param>
    /// <param name="airDegC">Mean air temperature of the months [°C].</param>
    /// <returns>Twelve figures [L/d].</returns>
    public static IReadOnlyList<double> LitresOf(string animal, IReadOnlyList<double> airDegC) =>
        [.. airDegC.Select(Livestock.Named(animal).LitresAt)];

    /// <summary>The least and the most of a year's figures, in words.</summary>
    /// <param name="litres">Figures [L/d].</param>
    /// <returns>As '16 to 25 L/d'.</returns>
    public static string Span(IReadOnlyList<double> litres) =>
        litres.Max() - litres.Min() < 0.05
            ? Invariant($"{litres[0]:0.##} L/d")
            : Invariant($"{litres.Min():0.#} to {litres.Max():0.#} L/d");
}
