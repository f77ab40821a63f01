using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>The wind that a rack is checked for.</summary>
/// <param name="BasicMPerS">Basic speed: ten-minute mean, 10 m above open country, 50 years [m/s].</param>
/// <param name="IsKnown">Whether the brief gives it.</param>
/// <param name="Terrain">The ground over which it comes.</param>
/// <param name="HeightM">Height of the top edge, for which the gust is taken [m].</param>
/// <param name="PeakKNPerM2">Pressure of the gust q_p [kN/m2].</param>
/// <param name="From">Where the speed comes from.</param>
public sealed record RackWind(
    double BasicMPerS,
    bool IsKnown,
    Terrain Terrain,
    double HeightM,
    double PeakKNPerM2,
    string From
)
{
    /// <summary>Slope up which it comes: rise over run; null when unknown, and flat ground is taken.</summary>
    public double? HillShare { get; init; }

    /// <summary>What a hill makes of its speed, c_0.</summary>
    public double HillFactor => WindPressure.LargestHillFactor(HillShare ?? 0);

    /// <summary>Density of the air [kg/m3].</summary>
    public double AirKgPerM3 { get; init; } = WindPressure.CodeAirKgPerM3;

    /// <summary>Strongest basic speed that is looked at [m/s].</summary>
    public const double MostMPerS = 90;

    /// <summary>The wind of a site at a rack.</summary>
    /// <param name="site">The site.</param>
    /// <param name="survey">The survey: the speed that is taken where none is known.</param>
    /// <param name="topEdgeMm">Height of the top edge [mm].</param>
    /// <returns>The wind.</returns>
    public static RackWind Of(SiteBrief site, Survey survey, double topEdgeMm)
    {
        var terrain = Terrain.Of(site.Terrain ?? "II");
        var basic = site.Wind is { } given
            ? Math.Min(MostMPerS, WindAveraging.BasicMPerS(given.SpeedMPerS, given.AveragingS, given.ReturnYears))
            : survey["wind"];
        var heightM = topEdgeMm / 1000;
        return new(
            basic,
            site.Wind is not null,
            terrain,
            heightM,
            WindPressure.PeakNPerM2(
                basic,
                terrain,
                heightM,
                WindPressure.LargestHillFactor(site.HillSlopeShare ?? 0),
                site.National.AirKgPerM3
            ) / 1000,
            site.Wind is { } wind
                ? FormattableString.Invariant(
                    $"{wind.SpeedMPerS:0.#} m/s averaged over {wind.AveragingS:0.#} s, once in {wind.ReturnYears:0} years ({wind.From})"
                )
                : "not known: a planning speed is taken so that sections can be chosen"
        )
        {
            HillShare = site.HillSlopeShare,
            AirKgPerM3 = site.National.AirKgPerM3,
        };
    }

    /// <summary>Basic speed of a gust at this place and height.</summary>
    /// <param name="peakKNPerM2">Pressure of the gust [kN/m2].</param>
    /// <returns>Speed [m/s].</returns>
    public double SpeedAtMPerS(double peakKNPerM2) =>
        WindPressure.BasicMPerS(peakKNPerM2 * 1000, Terrain, HeightM, HillFactor, AirKgPerM3);

    /// <summary>Strongest gust, up to <see cref="MostMPerS"/>, at which something still holds.</summary>
    /// <param name="holds">Whether it holds in a gust [kN/m2].</param>
    /// <returns>Basic speed [m/s]; 0 when it does not even hold in a calm.</returns>
    public double StopsAtMPerS(Func<double, bool> holds)
    {
        var (low, high) = (0.0, WindPressure.PeakNPerM2(MostMPerS, Terrain, HeightM, HillFactor, AirKgPerM3) / 1000);
        if (holds(high))
        {
            return MostMPerS;
        }

        if (!holds(0))
        {
            return 0;
        }

        // What holds the wind that is checked must not be told to stop a step of the halving below it.
        (low, high) = holds(PeakKNPerM2) ? (PeakKNPerM2, high) : (low, PeakKNPerM2);
        while (SpeedAtMPerS(high) - SpeedAtMPerS(low) > 0.05)
        {
            var middle = (low + high) / 2;
            (low, high) = holds(middle) ? (middle, high) : (low, middle);
        }

        return low == PeakKNPerM2 ? BasicMPerS : SpeedAtMPerS(low);
    }
}
