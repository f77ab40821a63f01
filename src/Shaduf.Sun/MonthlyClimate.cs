namespace Shaduf.Sun;

/// <summary>Twelve long-term monthly means, January first.</summary>
/// <param name="GlobalKWhPerM2Day">Mean daily global irradiation on the horizontal [kWh/m2 a day], above 0 to 14.</param>
/// <param name="AirDegC">Mean air temperature [degC], -50 to 50.</param>
public sealed record MonthlyClimate(IReadOnlyList<double> GlobalKWhPerM2Day, IReadOnlyList<double> AirDegC);
