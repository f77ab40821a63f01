using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>
/// Most power of a module over light and cell temperature, solved once on a grid and read hour by hour. The power for
/// each W/m² is smooth in the logarithm of the light and nearly straight in the temperature: a cubic through the four
/// nearest nodes each way misses the solved figure by less than a part in 50,000 between 10 and 1500 W/m² and -40 and
/// 100 °C, and elsewhere by less than a ten-thousandth of what the module's rated efficiency makes of that light.
/// </summary>
/// <source>DeSoto.MaximumPowerW on the nodes, cubic interpolation of Lagrange between; this project's own, no source</source>
public sealed class ModuleTable
{
    private const int LightCells = 40;
    private const int WarmthCells = 24;
    private const double WarmthStepK = (DeSoto.HottestDegC - DeSoto.ColdestDegC) / WarmthCells;
    private static readonly double s_lightStep = Math.Log(DeSoto.MostWPerM2 / DeSoto.LeastWPerM2) / LightCells;

    // Power over light [W/(W/m²)], temperature running fastest.
    private readonly double[] powerPerLight;

    private ModuleTable(double[] powerPerLight) => this.powerPerLight = powerPerLight;

    /// <summary>Solves the grid of a module.</summary>
    /// <param name="module">The module.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number of the module is outside its range.</exception>
    /// <source>De Soto, Klein, Beckman, Solar Energy 80, 2006</source>
    public static ModuleTable Build(DeSotoModule module)
    {
        var nodes = new double[(LightCells + 1) * (WarmthCells + 1)];
        for (var i = 0; i <= LightCells; i++)
        {
            var light = Math.Min(DeSoto.LeastWPerM2 * Math.Exp(i * s_lightStep), DeSoto.MostWPerM2);
            for (var j = 0; j <= WarmthCells; j++)
            {
                var cellDegC = DeSoto.ColdestDegC + (j * WarmthStepK);
                nodes[(i * (WarmthCells + 1)) + j] = DeSoto.MaximumPowerW(module, light, cellDegC) / light;
            }
        }

        return new(nodes);
    }

    /// <summary>Most power at a light and a cell temperature.</summary>
    /// <param name="irradianceWPerM2">Light that reaches the cells [W/m²], 0 to 2000.</param>
    /// <param name="cellDegC">Cell temperature [°C], -60 to 180.</param>
    /// <returns>Power [W]; 0 below 1 W/m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>cubic interpolation of Lagrange in the logarithm of the light and in the temperature</source>
    public double PowerW(double irradianceWPerM2, double cellDegC)
    {
        Within.Require(irradianceWPerM2, 0, DeSoto.MostWPerM2, "W/m²");
        Within.Require(cellDegC, DeSoto.ColdestDegC, DeSoto.HottestDegC, "°C");
        if (irradianceWPerM2 < DeSoto.LeastWPerM2)
        {
            return 0;
        }

        var light = Stencil.At(Math.Log(irradianceWPerM2 / DeSoto.LeastWPerM2) / s_lightStep, LightCells);
        var warmth = Stencil.At((cellDegC - DeSoto.ColdestDegC) / WarmthStepK, WarmthCells);
        var from = (light.First * (WarmthCells + 1)) + warmth.First;
        var nodes = powerPerLight.AsSpan(from, (3 * (WarmthCells + 1)) + 4);
        return irradianceWPerM2
            * (
                (light.A * warmth.Sum(nodes))
                + (light.B * warmth.Sum(nodes[(WarmthCells + 1)..]))
                + (light.C * warmth.Sum(nodes[(2 * (WarmthCells + 1))..]))
                + (light.D * warmth.Sum(nodes[(3 * (WarmthCells + 1))..]))
            );
    }

    /// <summary>Most power hour by hour.</summary>
    /// <param name="irradianceWPerM2">Light that reaches the cells, one figure an hour [W/m²], 0 to 2000 each.</param>
    /// <param name="cellDegC">Cell temperature of the same hours [°C], -60 to 180 each.</param>
    /// <returns>Power of the same hours [W].</returns>
    /// <exception cref="ArgumentException">The two series do not have the same number of hours.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range.</exception>
    /// <source>As <see cref="PowerW"/></source>
    public ImmutableArray<double> YearW(ImmutableArray<double> irradianceWPerM2, ImmutableArray<double> cellDegC)
    {
        if (irradianceWPerM2.IsDefault || cellDegC.IsDefault || irradianceWPerM2.Length != cellDegC.Length)
        {
            throw new ArgumentException(
                "Irradiance and cell temperature must have the same number of hours.",
                nameof(cellDegC)
            );
        }

        var powerW = new double[irradianceWPerM2.Length];
        for (var hour = 0; hour < powerW.Length; hour++)
        {
            powerW[hour] = PowerW(irradianceWPerM2[hour], cellDegC[hour]);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(powerW);
    }

    // The four nodes around a place, counted in cells, and their weights.
    private readonly record struct Stencil(int First, double A, double B, double C, double D)
    {
        public static Stencil At(double place, int cells)
        {
            var first = Math.Clamp((int)place - 1, 0, cells - 3);
            var t = place - first;
            var (t1, t2, t3) = (t - 1, t - 2, t - 3);
            return new(first, -t1 * t2 * t3 / 6, t * t2 * t3 / 2, -t * t1 * t3 / 2, t * t1 * t2 / 6);
        }

        public double Sum(ReadOnlySpan<double> nodes) =>
            (A * nodes[0]) + (B * nodes[1]) + (C * nodes[2]) + (D * nodes[3]);
    }
}
