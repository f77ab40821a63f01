namespace Shaduf.Sun;

/// <summary>Twelve long-term monthly means, January first.</summary>
/// <param name="GlobalKWhPerM2Day">Mean daily global irradiation on the horizontal [kWh/m2 a day], above 0 to 14.</param>
/// <param name="AirDegC">Mean air temperature [degC], -50 to 50.</param>
public sealed record MonthlyClimate(IReadOnlyList<double> GlobalKWhPerM2Day, IReadOnlyList<double> AirDegC)
{
    /// <summary>
    /// Mean daily highest less mean daily lowest air temperature [K], 0 to 30; null in a month where it is not known and
    /// follows from the clearness.
    /// </summary>
    public IReadOnlyList<double?> SwingK { get; init; } = new double?[12];
}
