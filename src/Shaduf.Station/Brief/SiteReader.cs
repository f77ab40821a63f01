using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the part of the brief about place, climate and ground.</summary>
internal static class SiteReader
{
    // Beyond the steepest autumns of the continents.
    private const double LargestLeapK = 25;

    public static SiteBrief Read(FieldMap fields)
    {
        var low = fields.Known("recordLow", Measure.TemperatureDegC, -50, 40, "Lowest air temperature on record.");
        var high = fields.Known("recordHigh", Measure.TemperatureDegC, 0, 60, "Highest air temperature on record.");
        if (low > high)
        {
            fields.Complain("recordLow", "above the record high", "a figure below recordHigh is accepted");
        }

        SoilKind? soil;
        var site = new SiteBrief(
            fields.Quantity("latitude", Measure.PositionDeg, -65, 65, "Latitude, north positive."),
            fields.Quantity("longitude", Measure.PositionDeg, -180, 180, "Longitude, east positive."),
            fields.Quantity("elevation", Measure.LengthM, -430, 4000, "Height of the wellhead above sea level."),
            fields.Quantity("utcOffset", Measure.TimeH, -12, 14, "Local standard time less UTC."),
            soil = fields.OptionalOneOf("soil", SoilReader.Kinds, "Kind of soil at the footings."),
            fields.Known("soilResistivity", Measure.ResistivityOhmM, 1, 20_000, "Soil resistivity in the dry season."),
            fields.OptionalMap("wind", "Basic wind speed of the place.") is { } wind ? Wind(wind) : null,
            low,
            high,
            fields.OptionalText("sunFrom", "Where the monthly figures come from.", 120),
            MonthReader.List(
                fields.OptionalMap("months", "Climate of the twelve months; left out with a weather file.")
            )
        )
        {
            WeatherFile = MonthReader.WeatherFile(fields),
            GroundwaterM = Groundwater(fields),
            FrostM = Frost(fields),
            EdgeM = Edge(fields),
            SoilTest = SoilReader.Read(fields, soil),
            Terrain = TerrainOf(fields),
            HillSlopeShare = Hill(fields),
            Earthquake = EarthquakeReader.Read(
                fields.OptionalMap("earthquake", "How the ground may shake; asked for a tank on a stand.")
            ),
            SnowKNPerM2 =
                fields.Known("snow", Measure.PressurePa, 0, 20_000, "Snow on the ground, once in 50 years.") / 1000,
            National = NationalReader.Read(
                fields.OptionalMap(
                    "national",
                    "Figures that the country's annex to the Eurocodes sets; left out: the recommended ones."
                )
            ),
            IsOnCoast = fields.OptionalOneOf("coast", BriefReader.YesNo, "Whether the sea is near.") ?? false,
            Surrounds = SurroundsReader.Read(fields),
            Places = PlacesReader.Read(fields),
            Field = FieldReader.Read(
                fields.OptionalMap("field", "Climate over watered fields: what crops need beside sun and air.")
            ),
        };
        CheckSky(fields, site);
        CheckAir(fields, site);
        fields.Done();
        return site;
    }

    private static double? Groundwater(FieldMap fields) =>
        fields.Known(
            "groundwater",
            Measure.LengthM,
            0,
            100,
            "Depth of the highest water of the year below the ground at the racks; 0 where it stands at the surface."
        );

    private static double? Frost(FieldMap fields) =>
        fields.Known(
            "frostDepth",
            Measure.LengthM,
            0,
            2,
            "How deep the ground freezes; 0 m where it never does. Left out: judged by the record low and the coldest month."
        );

    private static double? Edge(FieldMap fields) =>
        fields.Known(
            "nearestEdge",
            Measure.LengthM,
            0,
            1000,
            "From the nearest footing to a ditch, bank or edge deeper than half a metre."
        );

    private static string? TerrainOf(FieldMap fields) =>
        fields.OptionalOneOf(
            "terrain",
            [.. Steel.Terrain.All.Select((each, i) => (each.Name, i))],
            "Ground over which the wind comes, by the categories of EN 1991-1-4: II is farm land with few obstacles."
        )
            is { } terrain
            ? Steel.Terrain.All[terrain].Name
            : null;

    // No month is colder or hotter on average than the records, and none leaps from the one before.
    private static void CheckAir(FieldMap fields, SiteBrief site)
    {
        for (var month = 0; month < site.Months.Count && fields.AreSound("recordLow", "recordHigh"); month++)
        {
            var air = site.Months[month].MeanDegC;
            var before = site.Months[(month + 11) % 12].MeanDegC;
            var (low, high) = (site.Months[month].LowDegC ?? air, site.Months[month].HighDegC ?? air);
            var problem =
                low < site.RecordLowDegC || high > site.RecordHighDegC ? "is not between the records"
                : Math.Abs((air - before) ?? 0) > LargestLeapK
                    ? Invariant($"leaps from {before:0.#} degC the month before")
                : null;
            if (problem is not null)
            {
                fields.Complain(
                    $"months.{BriefReader.Months[month]}.{(site.Months[month].AirDegC is null ? "low" : "air")}",
                    Invariant($"{air:0.#} degC {problem}"),
                    Invariant($"a mean between the records, within {LargestLeapK} K of the month before, is accepted")
                );
            }
        }
    }

    // What no sky on Earth gives: more than 79 % of the sun above the air over a whole month, or less than 5.5 %. Far
    // from the equator no air is as clear, and the sun above it changes so fast that its mean is known to 4 % only.
    private static void CheckSky(FieldMap fields, SiteBrief site)
    {
        if (
            fields.AreSound("utcOffset", "longitude")
            && Math.Abs(Math.IEEERemainder(site.UtcOffsetH - (site.LongitudeDeg / 15), 24)) > 4
        )
        {
            fields.Complain(
                "utcOffset",
                Invariant($"{site.UtcOffsetH:0.##} h does not belong to longitude {site.LongitudeDeg:0.##} deg"),
                Invariant($"an offset within 4 h of {site.LongitudeDeg / 15:0.#} h is accepted")
            );
        }

        if (!fields.AreSound("latitude"))
        {
            return;
        }

        CheckSunshine(fields, site);
        var above = Sky.AboveTheAirKWhPerM2Day(site.LatitudeDeg);
        var (dullest, brightest) = (0.055, Math.Abs(site.LatitudeDeg) <= 50 ? 0.79 : 0.76);
        for (var month = 0; month < site.Months.Count; month++)
        {
            if (
                site.Months[month].SunKWhPerM2Day is { } sun
                && !(sun >= dullest * above[month] && sun <= brightest * above[month])
            )
            {
                fields.Complain(
                    $"months.{BriefReader.Months[month]}.sun",
                    Invariant($"{sun:0.##} kWh/m2/d cannot be (the sun above the air gives {above[month]:0.##})"),
                    Invariant(
                        $"{dullest * above[month]:0.##} to {brightest * above[month]:0.##} kWh/m2/d is accepted there"
                    )
                );
            }
        }
    }

    private static void CheckSunshine(FieldMap fields, SiteBrief site)
    {
        for (var month = 0; month < site.Months.Count; month++)
        {
            var daylightH = MonthSky.DaylightH(site.LatitudeDeg, month);
            if (site.Months[month].SunshineH > daylightH + 0.1)
            {
                fields.Complain(
                    $"months.{BriefReader.Months[month]}.sunshine",
                    Invariant($"{site.Months[month].SunshineH:0.##} h is longer than the day"),
                    Invariant($"at most {daylightH:0.0} h is accepted there")
                );
            }
        }
    }

    private static double? Hill(FieldMap fields) =>
        fields.Known(
            "hillSlope",
            Measure.Share,
            0,
            2,
            "Steepest slope of hill or escarpment up which the wind comes to the racks: rise over run."
        );

    private static WindBrief Wind(FieldMap fields)
    {
        var wind = new WindBrief(
            fields.Quantity("speed", Measure.SpeedMPerS, 0, 90, "Wind speed 10 m above open flat country."),
            fields.Quantity(
                "averaging",
                Measure.TimeS,
                1,
                3600,
                "Averaging time: 3 s for a gust, 10 min for the mean of the Eurocodes."
            ),
            fields.Quantity("returnPeriod", Measure.TimeYears, 2, 2000, "Return period."),
            fields.OptionalText("from", "Where the figure comes from.", 120) ?? "not said"
        );
        fields.Done();
        return wind;
    }
}
