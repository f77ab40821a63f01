using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Least length of the electrodes of a lightning earth where 10 Ω cannot be had.</summary>
public static class ElectrodeLength
{
    /// <summary>Least length of each level electrode, or radius of a ring; an upright electrode needs half of it.</summary>
    /// <param name="protection">Class asked.</param>
    /// <param name="resistivityOhmM">Soil resistivity [Ω·m], 1 to 100000.</param>
    /// <returns>Length [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resistivity is outside its range.</exception>
    /// <source>IEC 62305-3:2010, figure 3 (from memory): 5 m; class I above 500 Ω·m 0.03 ρ − 10, class II above 800 Ω·m 0.02 ρ − 11.</source>
    public static double LeastM(LightningClass protection, double resistivityOhmM)
    {
        Within.Require(resistivityOhmM, 1, 100_000, "Ω·m");
        return protection switch
        {
            LightningClass.I => Math.Max(5, (0.03 * resistivityOhmM) - 10),
            LightningClass.II => Math.Max(5, (0.02 * resistivityOhmM) - 11),
            _ => 5,
        };
    }
}
