using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>What lies between metal and lightning.</summary>
public enum SeparatedBy
{
    /// <summary>Air.</summary>
    Air,

    /// <summary>Concrete or brick.</summary>
    Masonry,
}

/// <summary>How far metal keeps from a lightning conductor so that the flash does not jump over.</summary>
public static class SeparationDistance
{
    /// <summary>Least distance.</summary>
    /// <param name="protection">Class asked.</param>
    /// <param name="downConductorCount">Conductors that share the current, 1 to 100.</param>
    /// <param name="alongM">Along the conductor from the place looked at to the next bond [m], 0 to 200.</param>
    /// <param name="between">What lies between.</param>
    /// <returns>Distance [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>IEC 62305-3:2010, 6.3: s = (ki/km) kc l (factors from memory).</source>
    public static double LeastM(LightningClass protection, int downConductorCount, double alongM, SeparatedBy between)
    {
        Within.RequireCount(downConductorCount, 1, 100);
        Within.Require(alongM, 0, 200, "m");
        var induced = protection switch
        {
            LightningClass.I => 0.08,
            LightningClass.II => 0.06,
            _ => 0.04,
        };
        var shared = downConductorCount switch
        {
            1 => 1,
            2 => 0.66,
            _ => 0.44,
        };
        return induced / (between == SeparatedBy.Air ? 1 : 0.5) * shared * alongM;
    }
}
