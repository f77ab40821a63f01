using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Fuel of a diesel generator set: a part that goes with the power given, and a part that only turns the set.</summary>
public static class GeneratorFuel
{
    private const double LPerKWh = 0.246;
    private const double IdleLPerKWh = 0.08145;

    /// <summary>Fuel burnt in an hour.</summary>
    /// <param name="outputKW">Electrical power given [kW], 0 to 2000, not above the rated one.</param>
    /// <param name="ratedKW">Rated electrical power of the set [kW], 0.5 to 2000.</param>
    /// <returns>Fuel [L/h].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>Skarstein and Uhlen 1989: F = 0.246 P + 0.08145 P_rated; from memory (the second figure is also met as 0.08415)</source>
    public static double LPerH(double outputKW, double ratedKW)
    {
        Within.Require(ratedKW, 0.5, 2000, "kW");
        Within.Require(outputKW, 0, ratedKW, "kW");
        return (LPerKWh * outputKW) + (IdleLPerKWh * ratedKW);
    }
}
