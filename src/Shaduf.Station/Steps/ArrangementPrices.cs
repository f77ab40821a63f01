using System.Collections.Concurrent;
using Shaduf.Money;

namespace Shaduf.Station;

/// <summary>
/// What an arrangement costs as far as arrangements differ: pump, drive, modules, pipes, tanks, and the steel, concrete
/// and labour of the racks. Cables, wellhead, fence and taps are the same or nearly so and are left out; so are the stands of tanks, which are sized after the choice.
/// </summary>
/// <param name="brief">The brief.</param>
/// <param name="shelf">The cards.</param>
/// <param name="book">The price book.</param>
public sealed class ArrangementPrices(Brief brief, CardShelf shelf, PriceBook book)
{
    /// <summary>The price book.</summary>
    internal PriceBook Book => book;

    private readonly ConcurrentDictionary<(string Module, RackGrid Grid, double TiltDeg), double?> racks = [];

    /// <summary>Cost of an arrangement in the price book's currency.</summary>
    /// <param name="choice">The arrangement.</param>
    /// <returns>The cost; null when a rate is missing or no rack can be made.</returns>
    public double? Of(Choice choice) =>
        Machines(choice.Pump, choice.Drive)
        + Pipes(choice.Lift)
        + Modules(choice.Module, choice.ModuleCount)
        + Racks(choice.Module, choice.Grid, choice.Facing.TiltDeg)
        + Tanks(choice.Tank, choice.TankCount);

    /// <summary>Cost of pump and drive; null when a rate is missing.</summary>
    internal double? Machines(PumpCard pump, DriveCard drive) => Rate(pump.Name) + Rate(drive.Name);

    /// <summary>Cost of the pipes from the source to the tank; null when a rate is missing.</summary>
    internal double? Pipes(Lift lift) => (lift.Foot.LengthM * Rate(lift.Foot.Card.Name)) + OfMain(lift.Lay);

    /// <summary>Cost of a main; null when a rate is missing.</summary>
    internal double? OfMain(MainLay main) =>
        main.Reaches.Aggregate((double?)0, (sum, reach) => sum + (reach.LengthM * Rate(reach.Pipe.Name)));

    /// <summary>Cost of the modules alone; null when their rate is missing.</summary>
    internal double? Modules(ModuleCard module, int count) => count * Rate(module.Name);

    /// <summary>Cost of the tanks, none for a tank that stands already; null when the rate is missing.</summary>
    internal double? Tanks(TankCard tank, int count) => brief.Tank.IsExisting ? 0 : count * Rate(tank.Name);

    /// <summary>Steel, concrete and labour of the racks; null when no rack can be made.</summary>
    internal double? Racks(ModuleCard module, RackGrid grid, double tiltDeg) =>
        racks.GetOrAdd(
            (module.Name, grid, tiltDeg),
            _ => Made(module, grid, tiltDeg) is { } rack ? CostOf(rack, Footings.Of(brief.Rack, rack)) : null
        );

    // A search for any array at all tries other numbers of rows than the brief's: such a plane may lie too near to the
    // ground for its struts, and is then no rack to be had.
    private Rack? Made(ModuleCard module, RackGrid grid, double tiltDeg)
    {
        try
        {
            return Rack.Of(brief.Rack, module, grid, tiltDeg, shelf);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private double? Rate(string item) => book.Rates.TryGetValue(item, out var rate) ? (double)rate.Amount : null;

    // A missing rate of steel or concrete is the same for every array: it is listed in the bill, not here.
    internal double CostOf(Rack rack, Footings footings) =>
        (double)Bill.Price(RackTakeoff.Of(rack, footings, brief.Rack.Workshop), book).Direct;
}
