using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>Something on the site plan.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="IsTold">Whether the brief says where; else it is drawn where it may be.</param>
public sealed record PlacedThing(string Name, SitePlace Place, bool IsTold);

/// <summary>The station from above: metres to the east and north of the middle of the front rack's low edge.</summary>
/// <param name="Bearing">How the racks lie.</param>
/// <param name="Field">The racks on the ground.</param>
/// <param name="Source">The wellhead or the pump at open water.</param>
/// <param name="Tank">The tank; null when nobody told where it is.</param>
/// <param name="Near">What else stands near.</param>
/// <param name="Fence">Corners of the fence; none without one.</param>
/// <param name="Gate">The gate in it; null without one.</param>
public sealed record SitePlan(
    RackBearing Bearing,
    GuardField Field,
    PlacedThing Source,
    PlacedThing? Tank,
    IReadOnlyList<PlacedThing> Near,
    IReadOnlyList<SitePlace> Fence,
    (SitePlace From, SitePlace To)? Gate
)
{
    /// <summary>Where the drive hangs: at the left end of the front rack, to which the strings lead.</summary>
    public SitePlace Drive => Bearing.At(new(0, Field.RackM / 2));

    /// <summary>Draws the station up.</summary>
    /// <param name="design">The design.</param>
    public static SitePlan Of(Design design)
    {
        var (guard, site) = (design.Works.Guard, design.Brief.Site);
        var bearing = new RackBearing(design.Choice.Facing.AzimuthDeg, guard.Field.LengthM);
        var told = site.Places.ToDictionary(each => each.Thing, each => each.Place);
        var near = site.Surrounds.Near.Select(thing => new PlacedThing(
            thing.Name,
            SitePlace.By(thing.BearingDeg, thing.DistanceM),
            true
        ));
        var tank = told.TryGetValue(SiteThing.Tank, out var at)
            ? new("tank", at, true)
            : near.FirstOrDefault(thing => thing.Name == SurroundsReader.TankWord);
        var source = told.TryGetValue(SiteThing.Source, out var head)
            ? new PlacedThing(design.Source.Head, head, true)
            : new(design.Source.Head, bearing.At(new(-guard.WellheadM, guard.Field.RackM / 2)), false);
        var fence = FenceOf(guard, bearing);
        return new(
            bearing,
            guard.Field,
            source,
            tank,
            [.. near.Where(thing => thing.Name != SurroundsReader.TankWord)],
            fence,
            fence.Count == 0 ? null : GateOf(fence)
        );
    }

    private static IReadOnlyList<SitePlace> FenceOf(Guard guard, RackBearing bearing)
    {
        if (guard.Fence is null)
        {
            return [];
        }

        var nearM = -(guard.FenceLengthM - guard.Field.LengthM) / 2;
        GroundPlace[] corners =
        [
            new(nearM, nearM),
            new(nearM + guard.FenceLengthM, nearM),
            new(nearM + guard.FenceLengthM, nearM + guard.FenceDepthM),
            new(nearM, nearM + guard.FenceDepthM),
        ];
        return [.. corners.Select(bearing.At)];
    }

    // In the middle of the first side, which lies before the low edge.
    private static (SitePlace From, SitePlace To) GateOf(IReadOnlyList<SitePlace> fence)
    {
        var (a, b) = (fence[0], fence[1]);
        var lengthM = double.Hypot(b.EastM - a.EastM, b.NorthM - a.NorthM);
        SitePlace At(double m) =>
            new(a.EastM + ((b.EastM - a.EastM) * m / lengthM), a.NorthM + ((b.NorthM - a.NorthM) * m / lengthM));
        return (At((lengthM - Guard.GateM) / 2), At((lengthM + Guard.GateM) / 2));
    }
}
