namespace Shaduf.Steel;

/// <summary>Figures that the Eurocodes leave to each country. What is not given is the recommended value.</summary>
/// <param name="Name">Whose they are.</param>
/// <param name="PermanentFactor">γ_G,sup, on weights that press, 1.0 to 1.5.</param>
/// <param name="VariableFactor">γ_Q, on wind, snow and people, 1.0 to 2.0.</param>
/// <param name="LeastWeightFactor">γ_G,inf, on weights that hold down a footing, 0.8 to 1.0.</param>
/// <param name="WindBesideFactor">ψ_0 of the wind beside snow, 0 to 1.</param>
/// <param name="SnowBesideFactor">ψ_0 of the snow beside wind, 0 to 1.</param>
/// <param name="AirKgPerM3">Density of the air [kg/m3], 0.8 to 1.4.</param>
/// <source>EN 1990:2002, tables A1.1, A1.2(A), A1.2(B); EN 1997-1:2004, table A.15; EN 1991-1-4:2005, 4.5</source>
public sealed record NationalChoices(
    string Name = "Eurocodes, recommended values",
    double PermanentFactor = 1.35,
    double VariableFactor = 1.5,
    double LeastWeightFactor = 0.9,
    double WindBesideFactor = 0.6,
    double SnowBesideFactor = 0.5,
    double AirKgPerM3 = WindPressure.CodeAirKgPerM3
)
{
    /// <summary>The recommended values.</summary>
    public static NationalChoices Recommended { get; } = new();

    /// <summary>Partial factors of resistances.</summary>
    public SteelFactors Steel { get; init; } = SteelFactors.Recommended;
}
