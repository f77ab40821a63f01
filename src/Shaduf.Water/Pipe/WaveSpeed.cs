using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Speed at which a blow of pressure runs along a pipe.</summary>
public static class WaveSpeed
{
    /// <summary>Wave speed in a thin-walled elastic pipe (bore over wall above about 25; below that, an approximation).</summary>
    /// <param name="boreM">Inside diameter [m], 0.005 to 2.</param>
    /// <param name="wallM">Wall thickness [m], 0.0005 to 0.2.</param>
    /// <param name="modulusPa">Short-term modulus of the wall [Pa], 1e8 to infinity (rigid).</param>
    /// <param name="supportFactor">c1: 1 with expansion joints, else by the anchoring, 0.5 to 1.25.</param>
    /// <param name="water">Density 500 to 1500 [kg/m3] and bulk modulus 1e8 to 1e10 [Pa] of the liquid.</param>
    /// <returns>Wave speed [m/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Wylie and Streeter, Fluid Transients: a = sqrt(K/rho)/sqrt(1 + c1 K D/(E e))</source>
    public static double MPerS(double boreM, double wallM, double modulusPa, double supportFactor, WaterState water)
    {
        Within.Require(boreM, 0.005, 2, "m");
        Within.Require(wallM, 0.0005, 0.2, "m");
        Within.Require(modulusPa, 1e8, double.PositiveInfinity, "Pa");
        Within.Require(supportFactor, 0.5, 1.25, "(c1)");
        Within.Require(water.DensityKgPerM3, 500, 1500, "kg/m3");
        Within.Require(water.BulkModulusPa, 1e8, 1e10, "Pa");
        var yieldingRatio = supportFactor * water.BulkModulusPa * boreM / (modulusPa * wallM);
        return Math.Sqrt(water.BulkModulusPa / water.DensityKgPerM3 / (1 + yieldingRatio));
    }

    /// <summary>Support factor c1 of a pipe anchored at its upstream end only.</summary>
    /// <param name="poissonRatio">Poisson's ratio of the wall, 0 to 0.5.</param>
    /// <returns>c1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>Wylie and Streeter, Fluid Transients, thin wall: 1 - mu/2</source>
    public static double AnchoredUpstreamFactor(double poissonRatio)
    {
        Within.Require(poissonRatio, 0, 0.5, "(Poisson)");
        return 1 - (poissonRatio / 2);
    }

    /// <summary>Support factor c1 of a pipe anchored along its whole length, as a buried main is.</summary>
    /// <param name="poissonRatio">Poisson's ratio of the wall, 0 to 0.5.</param>
    /// <returns>c1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>Wylie and Streeter, Fluid Transients, thin wall: 1 - mu2</source>
    public static double AnchoredThroughoutFactor(double poissonRatio)
    {
        Within.Require(poissonRatio, 0, 0.5, "(Poisson)");
        return 1 - (poissonRatio * poissonRatio);
    }
}
