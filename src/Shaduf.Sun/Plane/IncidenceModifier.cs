using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>The pane over the cells.</summary>
/// <param name="GlassIndex">Refractive index of the glass, 1.3 to 2.</param>
/// <param name="ExtinctionPerM">Extinction in the glass [1/m], 0 to 60.</param>
/// <param name="ThicknessM">Thickness [m], 0 to 0.02.</param>
/// <param name="CoatingIndex">Refractive index of an anti-reflective coating, above 1; null for bare glass.</param>
public sealed record Glass(double GlassIndex, double ExtinctionPerM, double ThicknessM, double? CoatingIndex = null)
{
    /// <summary>Clear low-iron glass of 2 mm.</summary>
    /// <source>De Soto, Klein, Beckman, Solar Energy 80, 2006</source>
    public static Glass Usual { get; } = new(1.526, 4, 0.002);

    internal void Require()
    {
        Within.Require(GlassIndex, 1.3, 2, "");
        Within.Require(ExtinctionPerM, 0, 60, "1/m");
        Within.Require(ThicknessM, 0, 0.02, "m");
        Within.Require(CoatingIndex ?? 1.3, 1, 2, "");
    }

    /// <summary>Share of light that reaches the cells at the cosine of an angle of incidence.</summary>
    internal double PassedShare(double cosine)
    {
        var sine2 = 1 - (cosine * cosine);
        var coating = CoatingIndex ?? GlassIndex;
        var cosCoating = Math.Sqrt(1 - (sine2 / (coating * coating)));
        var cosGlass = Math.Sqrt(1 - (sine2 / (GlassIndex * GlassIndex)));
        var across = Passed(Share(cosine, coating * cosCoating), Share(coating * cosCoating, GlassIndex * cosGlass));
        var along = Passed(Share(cosCoating, coating * cosine), Share(coating * cosGlass, GlassIndex * cosCoating));
        return (across + along) / 2 * Math.Exp(-ExtinctionPerM * ThicknessM / cosGlass);
    }

    // Fresnel's reflected share, from the two sides' terms.
    private static double Share(double one, double other)
    {
        var ratio = (one - other) / (one + other);
        return ratio * ratio;
    }

    // Through two faces, the light thrown to and fro between them counted.
    private static double Passed(double first, double second) => (1 - first) * (1 - second) / (1 - (first * second));
}

/// <summary>Share of light that a module takes in at a slant, against light that falls straight on it.</summary>
public static class IncidenceModifier
{
    /// <summary>One constant, for glass; not for angles above 80 deg.</summary>
    /// <param name="incidenceDeg">Angle of incidence [deg], 0 to 180.</param>
    /// <param name="slantFactor">The constant b0, 0 to 1; 0.05 for glass.</param>
    /// <returns>Share, 0 to 1; 0 where the formula falls below it, and behind the plane.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Souka, Safwat 1966, ASHRAE 93-1977</source>
    public static double AshraeShare(double incidenceDeg, double slantFactor)
    {
        Within.Require(incidenceDeg, 0, 180, "deg");
        Within.Require(slantFactor, 0, 1, "");
        return incidenceDeg >= 90 ? 0 : Math.Max(0, 1 - (slantFactor * ((1 / Angle.Cos(incidenceDeg)) - 1)));
    }

    /// <summary>By reflection at the faces of the glass and absorption in it.</summary>
    /// <param name="incidenceDeg">Angle of incidence [deg], 0 to 180.</param>
    /// <param name="glass">The pane.</param>
    /// <returns>Share, 0 to 1; 0 behind the plane.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Fresnel, Snell, Bouguer; De Soto, Klein, Beckman, Solar Energy 80, 2006, equations 14 to 18</source>
    public static double PhysicalShare(double incidenceDeg, Glass glass)
    {
        Within.Require(incidenceDeg, 0, 180, "deg");
        glass.Require();
        return incidenceDeg >= 90 ? 0 : glass.PassedShare(Angle.Cos(incidenceDeg)) / glass.PassedShare(1);
    }

    /// <summary>By one constant fitted to measured modules.</summary>
    /// <param name="incidenceDeg">Angle of incidence [deg], 0 to 180.</param>
    /// <param name="angularFactor">The constant a_r, 0.01 to 1; 0.16 for clean glass.</param>
    /// <returns>Share, 0 to 1; 0 behind the plane.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Martin, Ruiz, Solar Energy Materials and Solar Cells 70, 2001</source>
    public static double MartinRuizShare(double incidenceDeg, double angularFactor)
    {
        Within.Require(incidenceDeg, 0, 180, "deg");
        Within.Require(angularFactor, 0.01, 1, "");
        return incidenceDeg >= 90
            ? 0
            : (1 - Math.Exp(-Angle.Cos(incidenceDeg) / angularFactor)) / (1 - Math.Exp(-1 / angularFactor));
    }

    /// <summary>Slant at which light from the whole sky may be taken to fall on a plane.</summary>
    /// <param name="tiltDeg">Slope of the plane [deg], 0 to 90.</param>
    /// <returns>Angle of incidence [deg], 56 to 60.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The slope is outside its range.</exception>
    /// <source>
    /// Brandemuehl, Beckman, Solar Energy 24, 1980, in Duffie, Beckman, Solar Engineering of Thermal Processes, equation
    /// 5.4.2 (from memory)
    /// </source>
    public static double SkyDeg(double tiltDeg)
    {
        Within.Require(tiltDeg, 0, 90, "deg");
        return 59.7 - (0.1388 * tiltDeg) + (0.001497 * tiltDeg * tiltDeg);
    }

    /// <summary>Slant at which light from the ground may be taken to fall on a plane.</summary>
    /// <param name="tiltDeg">Slope of the plane [deg], 0 to 90.</param>
    /// <returns>Angle of incidence [deg], 58 to 90.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The slope is outside its range.</exception>
    /// <source>
    /// Brandemuehl, Beckman, Solar Energy 24, 1980, in Duffie, Beckman, Solar Engineering of Thermal Processes, equation
    /// 5.4.1 (from memory)
    /// </source>
    public static double GroundDeg(double tiltDeg)
    {
        Within.Require(tiltDeg, 0, 90, "deg");
        return 90 - (0.5788 * tiltDeg) + (0.002693 * tiltDeg * tiltDeg);
    }
}
