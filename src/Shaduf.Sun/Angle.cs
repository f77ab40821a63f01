namespace Shaduf.Sun;

/// <summary>Trigonometry in degrees.</summary>
internal static class Angle
{
    private const double RadPerDeg = Math.PI / 180;

    internal static double ToRad(double deg) => deg * RadPerDeg;

    internal static double ToDeg(double rad) => rad / RadPerDeg;

    internal static double Sin(double deg) => Math.Sin(deg * RadPerDeg);

    internal static double Cos(double deg) => Math.Cos(deg * RadPerDeg);

    internal static double Tan(double deg) => Math.Tan(deg * RadPerDeg);

    /// <summary>Arc cosine [deg] of a cosine that rounding may have carried a little beyond 1.</summary>
    internal static double ArcCos(double cosine) => ToDeg(Math.Acos(Math.Clamp(cosine, -1, 1)));

    /// <summary>The same angle between 0 and 360 [deg].</summary>
    internal static double Turn(double deg) => deg - (360 * Math.Floor(deg / 360));

    /// <summary>The same angle between -180 and 180 [deg].</summary>
    internal static double HalfTurn(double deg) => deg - (360 * Math.Round(deg / 360));
}
