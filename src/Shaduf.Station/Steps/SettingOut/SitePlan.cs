using Shaduf.Ground;

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

    /// <summary>Corners of each rack's plane from above, the low edge first.</summary>
    public IReadOnlyList<IReadOnlyList<SitePlace>> RackCorners =>
        [
            .. Enumerable
                .Range(0, Field.RackCount)
                .Select(rack => rack * Field.PitchM)
                .Select(lowM =>
                    (IReadOnlyList<SitePlace>)
                        [
                            Bearing.At(new(0, lowM)),
                            Bearing.At(new(Field.LengthM, lowM)),
                            Bearing.At(new(Field.LengthM, lowM + Field.RackM)),
                            Bearing.At(new(0, lowM + Field.RackM)),
                        ]
                ),
        ];

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
        var route = design.Brief.Lift.Route;
        var tank =
            told.TryGetValue(SiteThing.Tank, out var at) || Is(route[^1].Place, out at)
                ? new("tank", at, true)
                : near.FirstOrDefault(thing => thing.Name == SurroundsReader.TankWord);
        var source =
            told.TryGetValue(SiteThing.Source, out var head) || Is(route[0].Place, out head)
                ? new PlacedThing(design.Source.Head, head, true)
                : new(design.Source.Head, bearing.At(new(-guard.WellheadM, guard.Field.RackM / 2)), false);
        return new(
            bearing,
            guard.Field,
            source,
            tank,
            [.. near.Where(thing => thing.Name != SurroundsReader.TankWord)],
            [.. guard.Fence?.Line.Corners.Select(At) ?? []],
            guard.Fence?.Line.GatePosts is var (from, to) ? (At(from), At(to)) : null
        );
    }

    private static bool Is(SitePlace? told, out SitePlace place)
    {
        place = told ?? default;
        return told is not null;
    }

    private static SitePlace At(FencePoint point) => new(point.EastM, point.NorthM);
}
