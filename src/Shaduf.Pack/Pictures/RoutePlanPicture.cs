using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The whole way of the main from above, north up, with chainages.</summary>
internal static class RoutePlanPicture
{
    private const double RoomMm = 90;

    /// <summary>Composes the picture.</summary>
    /// <param name="route">The points of the way.</param>
    /// <param name="places">Where they lie, one for each.</param>
    public static Scene Of(IReadOnlyList<RoutePoint> route, IReadOnlyList<SitePlace> places)
    {
        var (west, south) = (places.Min(place => place.EastM), places.Min(place => place.NorthM));
        var extentM = Math.Max(
            1,
            Math.Max(places.Max(place => place.EastM) - west, places.Max(place => place.NorthM) - south)
        );
        var scale = BookScale.FittingOneToFactor(extentM * 1000, RoomMm);
        var view = new SceneBuilder(new(400, 400)).View(new(scale, SitePoint.Metres(west, south), new(100, 250)));
        var texts = new FreeTexts(view.Builder);
        SitePoint[] way = [.. places.Select(place => SitePoint.Metres(place.EastM, place.NorthM))];
        view.Polyline(Layer.Pipe, way);
        view.Builder.Circle(Layer.Outline, view.At(SitePoint.Metres(0, 0)), 1, Palette.Ink);
        texts.Beside(view.At(SitePoint.Metres(0, 0)), "racks");
        foreach (var (i, point) in way.Index())
        {
            view.Builder.Circle(Layer.Pipe, view.At(point), 0.8, Palette.White);
            var name =
                i == 0 ? "source, 0"
                : i == way.Length - 1 ? Invariant($"tank, {route[i].ChainageM:0}")
                : Invariant($"{route[i].ChainageM:0}");
            texts.Beside(view.At(point), name);
        }

        texts.Write();
        NorthArrow.Draw(view);
        return view.Under(
                view.Builder.Build().Bounds()!.Value.LeftMm,
                [
                    Invariant($"way of the main, 1:{scale:0.##}, north up; chainages in metres from the source"),
                    .. Winds(route, places)
                        ? ["where the chainage grows by more than a leg is long, the pipe winds between its ends"]
                        : Array.Empty<string>(),
                ]
            )
            .Builder.Build("way of the main")
            .Trimmed();
    }

    // Whether some leg's pipe is longer by a twentieth than the ground between its ends.
    private static bool Winds(IReadOnlyList<RoutePoint> route, IReadOnlyList<SitePlace> places) =>
        Enumerable
            .Range(1, route.Count - 1)
            .Any(i =>
            {
                var planM = double.Hypot(
                    places[i].EastM - places[i - 1].EastM,
                    places[i].NorthM - places[i - 1].NorthM
                );
                var groundM = double.Hypot(planM, route[i].ElevationM - route[i - 1].ElevationM);
                return route[i].ChainageM - route[i - 1].ChainageM > groundM * 1.05;
            });
}
