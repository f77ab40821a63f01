using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>How often lightning strikes a thing that stands on level ground.</summary>
public static class StrikeFrequency
{
    /// <summary>Ground from which a box draws the strokes: itself and three times its height all round.</summary>
    /// <param name="lengthM">Length [m], 0 to 10000.</param>
    /// <param name="widthM">Width [m], 0 to 10000.</param>
    /// <param name="heightM">Height [m], 0 to 200.</param>
    /// <returns>Collection area [m²].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>IEC 62305-2:2010, annex A: isolated rectangular structure.</source>
    public static double CollectionM2(double lengthM, double widthM, double heightM)
    {
        Within.Require(lengthM, 0, 10_000, "m");
        Within.Require(widthM, 0, 10_000, "m");
        Within.Require(heightM, 0, 200, "m");
        var aroundM = 3 * heightM;
        return (lengthM * widthM) + (2 * aroundM * (lengthM + widthM)) + (Math.PI * aroundM * aroundM);
    }

    /// <summary>Strikes a year.</summary>
    /// <param name="densityPerKm2Year">Flashes to ground [1/km²/year], 0 to 200.</param>
    /// <param name="collectionM2">Collection area [m²], 0 to 1e9.</param>
    /// <param name="placeFactor">
    /// 0.25 among taller things, 0.5 among things as tall, 1 alone, 2 alone on a hill top (from memory); 0.1 to 2.
    /// </param>
    /// <returns>Strikes [1/year].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>IEC 62305-2:2010, annex A: N = Ng A C 1e-6.</source>
    public static double PerYear(double densityPerKm2Year, double collectionM2, double placeFactor)
    {
        Within.Require(densityPerKm2Year, 0, 200, "1/km²/year");
        Within.Require(collectionM2, 0, 1e9, "m²");
        Within.Require(placeFactor, 0.1, 2, "");
        return densityPerKm2Year * collectionM2 * placeFactor * 1e-6;
    }
}
