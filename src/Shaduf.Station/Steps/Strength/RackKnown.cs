using System.Collections.Concurrent;

namespace Shaduf.Station;

/// <summary>Racks that were checked already, whichever search asked for them: briefs that leave more open look at the same racks again.</summary>
internal sealed class RackKnown
{
    private readonly ConcurrentDictionary<
        (RackBrief Others, RackGrid Grid, double TiltDeg, RackForm Form),
        RackTried?
    > known = [];

    /// <summary>A rack, checked now if it was not before.</summary>
    /// <param name="brief">The brief of the search; what a form says instead of it does not count.</param>
    /// <param name="at">Grid, tilt [deg] and form.</param>
    /// <param name="check">Checks it; null where it cannot be made.</param>
    /// <returns>The rack; null where it cannot be made.</returns>
    public RackTried? Of(RackBrief brief, (RackGrid Grid, double TiltDeg, RackForm Form) at, Func<RackTried?> check)
    {
        var rest = brief with { Lines = null, Tubes = null, Tube = null, Column = null, Angle = null, Rail = null };
        var key = (rest, at.Grid, at.TiltDeg, at.Form);
        return known.TryGetValue(key, out var tried) ? tried : known.GetOrAdd(key, check());
    }
}
