using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>A crystalline silicon module as one diode whose numbers are known at 1000 W/m² and 25 °C.</summary>
/// <param name="Reference">The five numbers there.</param>
/// <param name="CurrentAPerK">Change of the light's current with temperature [A/K], 0 to a hundredth of that current.</param>
public sealed record DeSotoModule(DiodeState Reference, double CurrentAPerK);

/// <summary>How a module's single diode moves with light and temperature.</summary>
public static class DeSoto
{
    /// <summary>Temperature of standard test conditions [K].</summary>
    public const double ReferenceK = 298.15;

    /// <summary>Below this light a module is taken to give nothing [W/m²].</summary>
    public const double LeastWPerM2 = 1;

    /// <summary>Most light that is taken [W/m²].</summary>
    public const double MostWPerM2 = 2000;

    /// <summary>Coldest cell that is taken [°C].</summary>
    public const double ColdestDegC = -60;

    /// <summary>Hottest cell that is taken [°C].</summary>
    public const double HottestDegC = 180;

    private const double BoltzmannEvPerK = 8.617333262e-5;
    private const double SiliconEv = 1.121;
    private const double SiliconPerK = -0.0002677;

    /// <summary>The module's five numbers at a light and a cell temperature.</summary>
    /// <param name="module">The module.</param>
    /// <param name="irradianceWPerM2">Light that reaches the cells [W/m²], 0 to 2000.</param>
    /// <param name="cellDegC">Cell temperature [°C], -60 to 180.</param>
    /// <returns>The five numbers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a number of the module, is outside its range.</exception>
    /// <source>De Soto, Klein, Beckman, Solar Energy 80, 2006, equations 2 to 12, band gap of silicon 1.121 eV.</source>
    public static DiodeState At(DeSotoModule module, double irradianceWPerM2, double cellDegC)
    {
        SingleDiode.Require(module.Reference);
        Within.Require(module.CurrentAPerK, 0, module.Reference.LightA / 100, "A/K");
        Within.Require(irradianceWPerM2, 0, MostWPerM2, "W/m²");
        Within.Require(cellDegC, ColdestDegC, HottestDegC, "°C");
        return Moved(module, irradianceWPerM2 / 1000, cellDegC - 25);
    }

    /// <summary>Most power that a module gives at a light and a cell temperature, solved.</summary>
    /// <param name="module">The module.</param>
    /// <param name="irradianceWPerM2">Light that reaches the cells [W/m²], 0 to 2000.</param>
    /// <param name="cellDegC">Cell temperature [°C], -60 to 180.</param>
    /// <returns>Power [W]; 0 below 1 W/m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a number of the module, is outside its range.</exception>
    /// <source>As <see cref="At"/>; that nothing comes below 1 W/m² is a rule of this project, no source.</source>
    public static double MaximumPowerW(DeSotoModule module, double irradianceWPerM2, double cellDegC)
    {
        var diode = At(module, irradianceWPerM2, cellDegC);
        return irradianceWPerM2 < LeastWPerM2 ? 0 : SingleDiode.Peak(diode).PowerW;
    }

    internal static DiodeState Moved(DeSotoModule module, double suns, double warmerK)
    {
        var reference = module.Reference;
        var temperatureRatio = (ReferenceK + warmerK) / ReferenceK;
        return new(
            suns * (reference.LightA + (module.CurrentAPerK * warmerK)),
            reference.SaturationA * SaturationGrowthRatio(warmerK),
            reference.SeriesOhm,
            suns * reference.ShuntPerOhm,
            reference.IdealityV * temperatureRatio
        );
    }

    internal static double SaturationGrowthRatio(double warmerK)
    {
        var temperatureRatio = (ReferenceK + warmerK) / ReferenceK;
        var gapRatio = 1 + (SiliconPerK * warmerK);
        var exponent = SiliconEv / (BoltzmannEvPerK * ReferenceK) * (1 - (gapRatio / temperatureRatio));
        return temperatureRatio * temperatureRatio * temperatureRatio * Math.Exp(exponent);
    }

    // The saturation current's relative growth for a kelvin at 25 °C.
    internal static double SaturationGrowthPerK =>
        (3 / ReferenceK) + (SiliconEv / (BoltzmannEvPerK * ReferenceK) * ((1 / ReferenceK) - SiliconPerK));
}
