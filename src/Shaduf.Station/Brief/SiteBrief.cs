using Shaduf.Sun;

namespace Shaduf.Station;

/// <summary>One month of climate.</summary>
/// <param name="SunKWhPerM2Day">Sun on the level [kWh/m²/d].</param>
/// <param name="AirDegC">Mean air temperature [°C].</param>
public sealed record MonthBrief(double? SunKWhPerM2Day, double? AirDegC)
{
    /// <summary>A month of which nothing is known.</summary>
    public static MonthBrief Unknown { get; } = new(null, null);

    /// <summary>Hours of bright sunshine a day [h].</summary>
    public double? SunshineH { get; init; }

    /// <summary>Mean of the days' lowest air temperatures [°C].</summary>
    public double? LowDegC { get; init; }

    /// <summary>Mean of the days' highest air temperatures [°C].</summary>
    public double? HighDegC { get; init; }

    /// <summary>Mean air temperature [°C], midway between low and high where it is not given itself.</summary>
    public double? MeanDegC => AirDegC ?? ((LowDegC + HighDegC) / 2);
}

/// <summary>A wind speed with what it means.</summary>
/// <param name="SpeedMPerS">Speed [m/s].</param>
/// <param name="AveragingS">Averaging time [s].</param>
/// <param name="ReturnYears">Return period [years].</param>
/// <param name="From">Where the figure comes from.</param>
public sealed record WindBrief(double SpeedMPerS, double AveragingS, double ReturnYears, string From);

/// <summary>Kind of soil at the footings.</summary>
public enum SoilKind
{
    /// <summary>Rock.</summary>
    Rock,

    /// <summary>Gravel or sandy gravel.</summary>
    Gravel,

    /// <summary>Sand.</summary>
    Sand,

    /// <summary>Clay that does not swell.</summary>
    Clay,

    /// <summary>Clay that swells and cracks.</summary>
    ExpansiveClay,

    /// <summary>Loose fill or made ground.</summary>
    Fill,

    /// <summary>Peat or other organic soil.</summary>
    Peat,

    /// <summary>Loess, which collapses when it is wetted.</summary>
    Loess,
}

/// <summary>Place, climate, ground.</summary>
public sealed record SiteBrief(
    double LatitudeDeg,
    double LongitudeDeg,
    double ElevationM,
    double UtcOffsetH,
    SoilKind? Soil,
    double? SoilResistivityOhmM,
    WindBrief? Wind,
    double? RecordLowDegC,
    double? RecordHighDegC,
    string? SunFrom,
    IReadOnlyList<MonthBrief> Months
)
{
    /// <summary>Weather file that takes the place of the months, as the brief names it; null when there is none.</summary>
    public string? WeatherFile { get; init; }

    /// <summary>Depth of the highest water of the year below the ground [m]; null when unknown.</summary>
    public double? GroundwaterM { get; init; }

    /// <summary>How deep the ground freezes [m]; null when unknown.</summary>
    public double? FrostM { get; init; }

    /// <summary>From the nearest footing to a ditch, bank or edge deeper than half a metre [m]; null when not said.</summary>
    public double? EdgeM { get; init; }

    /// <summary>What was tested of the soil at the footings; null when nothing was.</summary>
    public SoilTestBrief? SoilTest { get; init; }

    /// <summary>Category of the ground over which the wind comes; null when not said.</summary>
    public string? Terrain { get; init; }

    /// <summary>Steepest slope up which the wind comes to the racks: rise over run; null when not said.</summary>
    public double? HillSlopeShare { get; init; }

    /// <summary>What an earthquake may do; null when unknown.</summary>
    public EarthquakeBrief? Earthquake { get; init; }

    /// <summary>Snow on the ground, once in 50 years [kN/m2]; null when not said.</summary>
    public double? SnowKNPerM2 { get; init; }

    /// <summary>What the country's annex to the Eurocodes sets.</summary>
    public Steel.NationalChoices National { get; init; } = Steel.NationalChoices.Recommended;

    /// <summary>Whether the sea is near, which narrows the days' temperature range.</summary>
    public bool IsOnCoast { get; init; }

    /// <summary>Climate over watered fields.</summary>
    public required FieldBrief Field { get; init; }

    /// <summary>What was read from the weather file; null when there is none.</summary>
    public WeatherRecord? Record { get; init; }

    /// <summary>The skyline and what stands near the array.</summary>
    public SurroundsBrief Surrounds { get; init; } = new([], []);

    /// <summary>Where source and tank lie; none when not told.</summary>
    public IReadOnlyList<PlaceBrief> Places { get; init; } = [];

    /// <summary>The place as the sun sees it.</summary>
    public Place Place => new(LatitudeDeg, LongitudeDeg, ElevationM, UtcOffsetH);

    /// <summary>The site with its weather from a record: the months are those of the year it is sized on.</summary>
    /// <param name="record">The record.</param>
    /// <returns>The site.</returns>
    public SiteBrief With(WeatherRecord record) => this with { Record = record, Months = record.Months };
}
