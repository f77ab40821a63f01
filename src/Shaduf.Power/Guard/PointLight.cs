using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Light on level ground from one small lamp; lamps add. Light thrown back by the surroundings is not counted.</summary>
public static class PointLight
{
    /// <summary>Illuminance from the intensity towards the place.</summary>
    /// <param name="intensityCd">Intensity in the direction of the place [cd], 0 to 1000000.</param>
    /// <param name="heightM">Lamp above the place [m], 0.1 to 100.</param>
    /// <param name="asideM">From the foot of the lamp to the place, level [m], 0 to 100000.</param>
    /// <returns>Illuminance of the level plane [lx].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Inverse-square and cosine law: E = I cos³γ/H².</source>
    public static double Lux(double intensityCd, double heightM, double asideM)
    {
        Within.Require(intensityCd, 0, 1_000_000, "cd");
        Within.Require(heightM, 0.1, 100, "m");
        Within.Require(asideM, 0, 100_000, "m");
        var awayM2 = (heightM * heightM) + (asideM * asideM);
        return intensityCd * heightM / (awayM2 * Math.Sqrt(awayM2));
    }

    /// <summary>Intensity of a flat lamp that shines downwards and looks equally bright from everywhere below.</summary>
    /// <param name="fluxLm">Light of the lamp [lm], 0 to 1000000.</param>
    /// <param name="angleDeg">From straight down [deg], 0 to 90.</param>
    /// <returns>Intensity [cd].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Lambert's law: I = Φ/π cos γ, which gives back Φ over the half sphere.</source>
    public static double LambertianCd(double fluxLm, double angleDeg)
    {
        Within.Require(fluxLm, 0, 1_000_000, "lm");
        Within.Require(angleDeg, 0, 90, "deg");
        return fluxLm / Math.PI * Math.Cos(angleDeg * Math.PI / 180);
    }

    /// <summary>Mean illuminance of an area by the lumen method.</summary>
    /// <param name="fluxLm">Light of all lamps [lm], 0 to 1000000.</param>
    /// <param name="usedShare">Part of the light that falls on the area, 0 to 1; outdoor floodlight 0.3 to 0.5.</param>
    /// <param name="keptShare">Part left by dirt and age, 0 to 1; 0.7 to 0.8.</param>
    /// <param name="areaM2">The area [m²], 0.1 to 1e6.</param>
    /// <returns>Illuminance [lx].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Definition of utilisation and maintenance factor.</source>
    public static double MeanLux(double fluxLm, double usedShare, double keptShare, double areaM2)
    {
        Within.Require(fluxLm, 0, 1_000_000, "lm");
        Within.Require(usedShare, 0, 1, "");
        Within.Require(keptShare, 0, 1, "");
        Within.Require(areaM2, 0.1, 1e6, "m²");
        return fluxLm * usedShare * keptShare / areaM2;
    }
}
