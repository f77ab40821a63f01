using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>
/// Searches the arrangements of one pump. An arrangement is passed over without a year run only when a bound proves
/// that one already found is as cheap and meets as much; what remains is run. Nothing is kept but the front.
/// </summary>
/// <param name="ground">All that is settled before the choice.</param>
/// <param name="isLoose">Whether what cannot be built is let pass, to find what comes nearest; it then never serves.</param>
internal sealed class ArrangementSearch(SizingGround ground, bool isLoose)
{
    private readonly YearRoom room = new();
    private readonly double[] mostM3 = new double[12];
    private readonly double[] demandM3 = ground.Demand.MonthM3();
    private readonly TankOffer[] tanks = [.. TankOffers(ground, isLoose)];
    private readonly PumpLines lines = new(ground, isLoose);
    private SearchTally tally;

    /// <summary>Whether the cheapest that serves is all that is asked for: what can only serve less, or as much for more, is passed over.</summary>
    public bool IsForCheapest { get; init; }

    private readonly record struct TankOffer(TankCard Card, int Count, double UsefulM3, double Cost);

    /// <summary>The best arrangement of a pump, its front, and why it fails when it does.</summary>
    public PumpSearch Best(PumpCard pump)
    {
        tally = default;
        var front = new CostFront();
        foreach (var line in lines.Of(pump))
        {
            Try(line, front);
        }

        if (front.Points.Count == 0)
        {
            var (kind, why) = PumpReasons.NoArrangement(ground, lines, pump);
            return new(pump, [], null, false, kind, why, tally);
        }

        var refused = ground.Source.Refuses(pump, ground.Survey);
        if (!isLoose && refused is null && front.Cheapest(ground.AskedShare) is { } best)
        {
            return new(pump, front.Points, best, true, "", "", tally);
        }

        var nearest = front.Points[^1];
        var (limit, says) = isLoose
            ? PumpReasons.NoArrangement(ground, lines, pump)
            : refused ?? PumpReasons.Of(ground, nearest, YearRun.Run(nearest.Inputs(ground)));
        return new(pump, [], nearest, false, limit, says, tally);
    }

    private static IEnumerable<TankOffer> TankOffers(SizingGround ground, bool isLoose) =>
        from tank in ground.Tanks
        let cost = ground.Prices.Tanks(tank.Card, tank.Count) ?? (isLoose ? 0 : null)
        where cost is not null
        select new TankOffer(tank.Card, tank.Count, tank.Card.UsefulM3 * tank.Count, cost.Value);

    // From the bound that costs least to the year run itself.
    private void Try(PumpLine line, CostFront front)
    {
        tally = tally with { CandidateCount = tally.CandidateCount + tanks.Length };
        var year = ground.ModuleYearOf(line.Module, line.Plane);
        var kept = line.ModuleCount * ground.Losses.KeptShare;
        year.MostPumpableM3(kept, line.Table, mostM3);
        if (
            tanks.All(tank => IsBeaten(front, line.BareCost + tank.Cost, mostM3, tank.UsefulM3))
            || ground.Prices.Racks(line.Module, line.Grid, line.Plane.Facing.TiltDeg) is not { } racks
            || tanks.All(tank => IsBeaten(front, line.BareCost + racks + tank.Cost, mostM3, tank.UsefulM3))
        )
        {
            return;
        }

        room.Pump(year.PowerW, kept, line.Table, ground.Source.Limits);
        foreach (var tank in tanks)
        {
            var cost = line.BareCost + racks + tank.Cost;
            if (IsBeaten(front, cost, room.PumpableM3, tank.UsefulM3))
            {
                continue;
            }

            var share = line.Table.FullFlowM3PerH > 0 ? Run(tank) : 0;
            if (front.Takes(cost, share))
            {
                front.Add(new(line.With(tank.Card, tank.Count), line.Hydraulics, line.Table, year, cost, share));
            }
        }
    }

    private double Run(TankOffer tank)
    {
        tally = tally with { RunCount = tally.RunCount + 1 };
        room.Hold(ground.Demand.HourM3, tank.UsefulM3, ground.Stops, ground.Source.Limits);
        return Reliability.Share(ground.Span, demandM3, room.DeliveredM3);
    }

    // Whether something as cheap is known to meet as much as this could at best.
    private bool IsBeaten(CostFront front, double cost, ReadOnlySpan<double> pumpableM3, double usefulM3)
    {
        var (had, most) = (front.ShareAt(cost), Reliability.Bound(ground.Span, demandM3, pumpableM3, usefulM3));
        return had >= most || (IsForCheapest && (most < ground.AskedShare || had >= ground.AskedShare));
    }
}
