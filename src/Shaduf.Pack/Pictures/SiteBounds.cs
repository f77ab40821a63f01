using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>The ground that a site plan shows: a long main is cut where it leaves it, so that it does not make all else small.</summary>
/// <param name="WestM">Its western edge [m].</param>
/// <param name="EastM">Its eastern edge [m].</param>
/// <param name="SouthM">Its southern edge [m].</param>
/// <param name="NorthM">Its northern edge [m].</param>
internal readonly record struct SiteBounds(double WestM, double EastM, double SouthM, double NorthM)
{
    private const double BeyondM = 3;

    /// <summary>Racks, fence, source and what stands near, and a little beyond.</summary>
    /// <param name="plan">The station from above.</param>
    /// <param name="also">What else it must show.</param>
    /// <param name="shown">Where a thing that stands far off is drawn.</param>
    public static SiteBounds Of(SitePlan plan, IEnumerable<SitePlace> also, Func<SitePlace, SitePlace> shown)
    {
        SitePlace[] all =
        [
            .. plan.RackCorners.SelectMany(rack => rack),
            .. plan.Fence,
            shown(plan.Source.Place),
            .. plan.Near.Select(thing => shown(thing.Place)),
            .. also,
        ];
        return new(
            all.Min(place => place.EastM) - BeyondM,
            all.Max(place => place.EastM) + BeyondM,
            all.Min(place => place.NorthM) - BeyondM,
            all.Max(place => place.NorthM) + BeyondM
        );
    }

    /// <summary>Whether a place lies on it.</summary>
    /// <param name="place">The place.</param>
    public bool Holds(SitePlace place) =>
        place.EastM >= WestM && place.EastM <= EastM && place.NorthM >= SouthM && place.NorthM <= NorthM;
}
