using Shaduf.Power;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>The hilltop village with its modules wired otherwise, in one row.</summary>
internal static class ManyStrings
{
    public static Design Design { get; } = Examples.DesignOf("hilltop-village");

    public static Choice Choice(int series, int strings) =>
        Design.Choice with
        {
            SeriesCount = series,
            StringCount = strings,
            Grid = new(1, series * strings, 1),
        };

    public static Electrics Rewired(int series, int strings, LightningAsk? lightning = null, CardShelf? shelf = null)
    {
        var choice = Choice(series, strings);
        var ground = new SizingGround(
            Design.Brief,
            Design.Survey,
            Design.Sky,
            Design.Demand,
            Design.Source,
            shelf ?? Design.File.Shelf,
            new(Design.Brief, Design.File.Shelf, Design.File.Prices)
        );
        var rack = Rack.Of(Design.Brief.Rack, choice.Module, choice.Grid, 15, Design.File.Shelf)!;
        return Electrics.Of(
            Design.Sizing with
            {
                Choice = choice,
            },
            ground,
            rack,
            lightning ?? new LightningAsk(LightningRod.Bonded, 12.5)
        );
    }

    public static IEnumerable<Finding> Findings(Electrics electrics, Choice choice) =>
        ElectricFindings.Of(electrics, choice, (9, 1240), 1);

    public static IReadOnlyList<Money.QuantityLine> TakeoffOf(Choice choice, Electrics electrics) =>
        [.. ElectricTakeoff.Cables(choice, electrics), .. ElectricTakeoff.Devices(choice, electrics)];
}
