namespace Shaduf.Steel;

/// <summary>
/// Properties of one steel section. For hollow sections y is the axis parallel to the width and z the axis parallel to
/// the height; for an equal angle y and z are parallel to its legs, through the centroid.
/// </summary>
/// <param name="AreaMm2">Cross-section area A [mm2].</param>
/// <param name="MassKgPerM">Mass of a metre [kg/m].</param>
/// <param name="PerimeterMm">Outer perimeter [mm]; a metre has PerimeterMm/1000 m2 to paint.</param>
/// <param name="InertiaYMm4">Second moment of area about y [mm4].</param>
/// <param name="InertiaZMm4">Second moment of area about z [mm4].</param>
/// <param name="ElasticModulusYMm3">Elastic section modulus about y, to the farthest fibre [mm3].</param>
/// <param name="ElasticModulusZMm3">Elastic section modulus about z, to the farthest fibre [mm3].</param>
/// <param name="PlasticModulusYMm3">Plastic section modulus about y [mm3]; null for an angle, which does not bend freely about a leg axis.</param>
/// <param name="PlasticModulusZMm3">Plastic section modulus about z [mm3]; null for an angle.</param>
/// <param name="TorsionConstantMm4">Saint-Venant torsion constant I_t [mm4].</param>
/// <param name="TorsionModulusMm3">Torsion modulus W_t: torque over the largest shear stress [mm3].</param>
public sealed record SectionProperties(
    double AreaMm2,
    double MassKgPerM,
    double PerimeterMm,
    double InertiaYMm4,
    double InertiaZMm4,
    double ElasticModulusYMm3,
    double ElasticModulusZMm3,
    double? PlasticModulusYMm3,
    double? PlasticModulusZMm3,
    double TorsionConstantMm4,
    double TorsionModulusMm3
)
{
    /// <summary>Radius of gyration about y [mm].</summary>
    public double RadiusOfGyrationYMm => Math.Sqrt(InertiaYMm4 / AreaMm2);

    /// <summary>Radius of gyration about z [mm].</summary>
    public double RadiusOfGyrationZMm => Math.Sqrt(InertiaZMm4 / AreaMm2);

    internal static double MassOfKgPerM(double areaMm2) => areaMm2 * 1e-6 * SteelDensity.KgPerM3;
}
