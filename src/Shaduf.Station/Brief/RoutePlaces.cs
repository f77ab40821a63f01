using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Where the main lies on the site.</summary>
public static class RoutePlaces
{
    // Paced or taped on a map: judgement.
    private const double SlackM = 1;

    /// <summary>Places of all points of the route, its ends from the places of source and tank where not told themselves.</summary>
    /// <param name="brief">The brief.</param>
    /// <returns>One for each point; none when one of them is not known.</returns>
    public static IReadOnlyList<SitePlace> Of(Brief brief) => Of(brief.Lift.Route, brief.Site.Places);

    /// <summary>Notes points that lie farther apart than the pipe between them is long, and ends that are told twice.</summary>
    internal static void Check(FieldMap top, Brief brief)
    {
        var (route, told) = (brief.Lift.Route, brief.Site.Places);
        foreach (var (thing, index) in new[] { (SiteThing.Source, 0), (SiteThing.Tank, route.Count - 1) })
        {
            if (route[index].Place is not null && told.Any(place => place.Thing == thing))
            {
                top.Complain(
                    Invariant($"lift.route[{index + 1}].bearing"),
                    "this end of the main stands in site.places already",
                    "one of them is accepted"
                );
                return;
            }
        }

        var places = Of(route, told);
        for (var i = 1; i < places.Count; i++)
        {
            var (apartM, pipeM) = (
                double.Hypot(places[i].EastM - places[i - 1].EastM, places[i].NorthM - places[i - 1].NorthM),
                route[i].ChainageM - route[i - 1].ChainageM
            );
            if (apartM > pipeM + SlackM)
            {
                top.Complain(
                    Invariant($"lift.route[{i + 1}]"),
                    Invariant(
                        $"it lies {apartM:0.0} m from the point before it, and the pipe between them is {pipeM:0.0} m long"
                    ),
                    "points no farther apart than the pipe is long are accepted: correct chainage, bearing or distance"
                );
                return;
            }
        }
    }

    private static IReadOnlyList<SitePlace> Of(IReadOnlyList<RoutePoint> route, IReadOnlyList<PlaceBrief> told)
    {
        SitePlace? End(SiteThing thing) => told.FirstOrDefault(place => place.Thing == thing)?.Place;
        SitePlace?[] places =
        [
            route[0].Place ?? End(SiteThing.Source),
            .. route.Skip(1).SkipLast(1).Select(point => point.Place),
            route[^1].Place ?? End(SiteThing.Tank),
        ];
        return places.All(place => place is not null) ? [.. places.Select(place => place!.Value)] : [];
    }
}
