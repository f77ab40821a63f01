namespace Shaduf.Station;

/// <summary>What is placed on the site plan.</summary>
public enum SiteThing
{
    /// <summary>The borehole, or the pump at open water.</summary>
    Source,

    /// <summary>The tank.</summary>
    Tank,
}

/// <summary>A place by compass and tape, from the middle of the front rack's low edge.</summary>
/// <param name="Thing">What stands there.</param>
/// <param name="Place">Where.</param>
public sealed record PlaceBrief(SiteThing Thing, SitePlace Place);

/// <summary>Reads where source and tank lie on the site.</summary>
internal static class PlacesReader
{
    public static IReadOnlyList<PlaceBrief> Read(FieldMap site)
    {
        var places = site.Items(
            "places",
            0,
            2,
            "Where source and tank lie, for the site plan; left out: the plan says that it does not know.",
            Place
        );
        if (places.Count > 1 && places[0].Thing == places[1].Thing && site.AreSound("places"))
        {
            site.Complain("places[2].name", "stands twice", "each name once is accepted");
        }

        return places;
    }

    private static PlaceBrief Place(FieldMap fields)
    {
        var place = new PlaceBrief(
            fields.OneOf("name", [("source", SiteThing.Source), ("tank", SiteThing.Tank)], "What stands there."),
            SitePlace.By(
                fields.Quantity(
                    "bearing",
                    Measure.AngleDeg,
                    0,
                    360,
                    "Direction to its middle, clockwise from true north."
                ),
                fields.Quantity(
                    "distance",
                    Measure.LengthM,
                    1,
                    5000,
                    "To its middle, from the middle of the front rack's low edge."
                )
            )
        );
        fields.Done();
        return place;
    }
}
