using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The tanks on a site plan.</summary>
internal static class SiteTanks
{
    /// <summary>Draws them, each with its number where there are several.</summary>
    /// <param name="view">The plan.</param>
    /// <param name="texts">Its texts.</param>
    /// <param name="design">The design.</param>
    /// <param name="plan">The station from above.</param>
    public static void Draw(SiteView view, FreeTexts texts, Design design, SitePlan plan)
    {
        var (card, places) = (design.Choice.Tank, TankPlaces.Of(design, plan).Middles);
        foreach (var (i, place) in places.Index())
        {
            var half = card.DiameterM / 2;
            _ =
                card.Shape == TankShape.Round
                    ? view.Circle(
                        Layer.Outline,
                        SitePoint.Metres(place.EastM, place.NorthM),
                        half * 1000,
                        Palette.Water.Tint(0.12)
                    )
                    : view.Rectangle(
                        Layer.Outline,
                        SitePoint.Metres(place.EastM - half, place.NorthM - half),
                        SitePoint.Metres(place.EastM + half, place.NorthM + half),
                        Palette.Water.Tint(0.12)
                    );
            texts.On(
                view.At(SitePoint.Metres(place.EastM, place.NorthM)),
                places.Count == 1 ? "tank" : Invariant($"tank {i + 1}")
            );
        }
    }
}
