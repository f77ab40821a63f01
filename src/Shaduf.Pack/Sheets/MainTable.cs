using Shaduf.Station;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The main point by point: where it bends, where its pipe changes, where its fittings stand, how deep it lies.</summary>
internal static class MainTable
{
    /// <summary>The table.</summary>
    /// <param name="design">The design.</param>
    /// <param name="heightMm">Greatest height of a piece [mm], 30 or more.</param>
    public static IEnumerable<Scene> Of(Design design, double heightMm) =>
        SheetTexts.Table(
            "Along the main: chainage and levels above sea, metres",
            ["chainage", "what", "ground", "crown of pipe", "bottom of pipe"],
            [.. Rows(design)],
            heightMm
        );

    /// <summary>Name of a fitting along the main.</summary>
    public static string Says(RouteFitting fitting) =>
        fitting switch
        {
            RouteFitting.AirValve => "air valve",
            RouteFitting.Washout => "washout",
            _ => "line valve",
        };

    private static IEnumerable<IReadOnlyList<string>> Rows(Design design)
    {
        var (route, reaches) = (design.Brief.Lift.Route, design.Choice.Lift.Lay.Reaches);
        var things = route
            .Select(
                (point, i) =>
                    (
                        AtM: point.ChainageM,
                        What: i == 0 ? design.Source.Head
                        : i == route.Count - 1 ? "foot of the rise into the tank"
                        : "point of the route"
                    )
            )
            .Concat(
                reaches
                    .Where(reach => reach.FromM < route[^1].ChainageM)
                    .Select(reach => (AtM: reach.FromM, What: $"{reach.Pipe.Name} begins"))
            )
            .Concat(design.Works.Main.Marks.Select(mark => (AtM: mark.At.ChainageM, What: Says(mark.Fitting))));
        foreach (var place in things.GroupBy(each => Math.Round(each.AtM, 1)).OrderBy(each => each.Key))
        {
            var pipe = reaches.Last(reach => reach.FromM <= place.Key + 0.05).Pipe;
            var groundM = GroundM(route, place.Key);
            var crownM = groundM - design.Works.CoverM;
            yield return
            [
                Invariant($"{place.Key:0.0}"),
                string.Join(", ", place.Select(each => each.What).Distinct()),
                GroundSheets.Metres(groundM, 2),
                GroundSheets.Metres(crownM, 2),
                GroundSheets.Metres(crownM - (pipe.OuterMm / 1000), 2),
            ];
        }
    }

    private static double GroundM(IReadOnlyList<RoutePoint> route, double chainageM)
    {
        var next = route.Skip(1).FirstOrDefault(point => point.ChainageM >= chainageM) ?? route[^1];
        var last = route[route.ToList().IndexOf(next) - 1];
        var share = (chainageM - last.ChainageM) / (next.ChainageM - last.ChainageM);
        return last.ElevationM + (Math.Clamp(share, 0, 1) * (next.ElevationM - last.ElevationM));
    }
}
