using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>Strength of a soil as a test gives it; characteristic values.</summary>
/// <param name="FrictionDeg">Angle of friction [deg].</param>
/// <param name="CohesionKPa">Cohesion [kPa].</param>
/// <param name="WeightKNPerM3">Weight, moist [kN/m3].</param>
public sealed record SoilStrength(double FrictionDeg, double CohesionKPa, double WeightKNPerM3)
{
    /// <summary>Weight of water [kN/m3].</summary>
    public const double WaterKNPerM3 = 9.81;

    /// <summary>The strength that is left in loose sand, which gives way below its edges before it fails as a whole.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside 0 to 45 deg or 0 to 500 kPa, or NaN.</exception>
    /// <source>Terzaghi 1943, local shear: two thirds of tan φ and of c</source>
    public SoilStrength Local => Weakened(1.5);

    /// <summary>The strength divided by a factor, which falls on tan φ and c; the weight stays.</summary>
    /// <param name="softeningFactor">The factor, 1 to 3.</param>
    /// <returns>The design strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1997-1:2004, 2.4.6.2 and table A.4</source>
    public SoilStrength Weakened(double softeningFactor)
    {
        Within.Require(softeningFactor, 1, 3, "");
        Within.Require(FrictionDeg, 0, 45, "deg");
        Within.Require(CohesionKPa, 0, 500, "kPa");
        return this with
        {
            FrictionDeg = Math.Atan(Math.Tan(FrictionDeg * Math.PI / 180) / softeningFactor) * 180 / Math.PI,
            CohesionKPa = CohesionKPa / softeningFactor,
        };
    }
}
