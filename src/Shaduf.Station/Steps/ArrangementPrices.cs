using Shaduf.Money;

namespace Shaduf.Station;

/// <summary>
/// What an arrangement costs as far as arrangements differ: pump, drive, modules, pipes, tanks, and the steel, concrete
/// and labour of the racks. Cables, wellhead, fence and taps are the same or nearly so and are left out.
/// </summary>
/// <param name="brief">The brief.</param>
/// <param name="shelf">The cards.</param>
/// <param name="book">The price book.</param>
/// <param name="tiltDeg">Tilt of the modules [deg].</param>
public sealed class ArrangementPrices(Brief brief, CardShelf shelf, PriceBook book, double tiltDeg)
{
    private readonly Dictionary<(string Module, RackGrid Grid), double?> racks = [];

    /// <summary>Cost of an arrangement in the price book's currency.</summary>
    /// <param name="choice">The arrangement.</param>
    /// <returns>The cost; null when a rate is missing or no rack can be made.</returns>
    public double? Of(Choice choice) =>
        Rate(choice.Pump.Name)
        + Rate(choice.Drive.Name)
        + (choice.ModuleCount * Rate(choice.Module.Name))
        + (choice.Lift.RiserM * Rate(choice.Lift.Riser.Name))
        + (choice.Lift.MainM * Rate(choice.Lift.Main.Name))
        + (brief.Tank.IsExisting ? 0 : choice.TankCount * Rate(choice.Tank.Name))
        + RackCost(choice);

    private double? Rate(string item) => book.Rates.TryGetValue(item, out var rate) ? (double)rate.Amount : null;

    private double? RackCost(Choice choice)
    {
        var key = (choice.Module.Name, choice.Grid);
        if (!racks.TryGetValue(key, out var cost))
        {
            cost = Rack.Of(brief.Rack, choice.Module, choice.Grid, tiltDeg, shelf) is { } rack ? CostOf(rack) : null;
            racks.Add(key, cost);
        }

        return cost;
    }

    // A missing rate of steel or concrete is the same for every array: it is listed in the bill, not here.
    private double CostOf(Rack rack) =>
        (double)Bill.Price(RackTakeoff.Of(rack, Footings.Of(brief.Rack, rack)), book).Direct;
}
