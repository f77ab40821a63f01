namespace Shaduf.Station;

/// <summary>Reads the part of the brief about earthquakes.</summary>
internal static class EarthquakeReader
{
    /// <summary>Reads the earthquake.</summary>
    /// <param name="fields">The mapping <c>site.earthquake</c>; null when it is left out or unknown.</param>
    /// <returns>The earthquake; null when unknown.</returns>
    public static EarthquakeBrief? Read(FieldMap? fields)
    {
        if (fields is null)
        {
            return null;
        }

        var quake = new EarthquakeBrief(
            fields.Quantity(
                "acceleration",
                Measure.Share,
                0,
                0.8,
                "Acceleration of rock once in 475 years, as a share of gravity; 0 % where the ground never shakes."
            ),
            fields
                .OptionalOneOf(
                    "ground",
                    [("A", 'A'), ("B", 'B'), ("C", 'C'), ("D", 'D'), ("E", 'E')],
                    "Ground by the types of EN 1998-1: A rock, B dense, C medium, D loose or soft, E soft over rock."
                )
                ?.ToString(),
            fields.OptionalCount(
                "spectrum",
                1,
                2,
                "1 for magnitudes above 5.5, 2 below; left out: 1.",
                FieldMap.UnknownWord
            ) ?? 1,
            fields.OptionalOneOf(
                "importance",
                [("minor", 0.8), ("ordinary", 1.0), ("village", EarthquakeBrief.VillageFactor), ("hospital", 1.6)],
                "What hangs on the tank after a quake; left out: village."
            ) ?? EarthquakeBrief.VillageFactor,
            fields.OptionalText("from", "Where the figure comes from.", 120) ?? "not said"
        );
        fields.Done();
        return quake;
    }
}
