using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Flow that uses up a given head in a run of pipe.</summary>
public static class PipeFlow
{
    // Flow of the kernel's own range [m3/s].
    private const double MostM3PerS = 10;

    /// <summary>The flow whose loss by <see cref="DarcyWeisbach"/> is the head, to rounding.</summary>
    /// <param name="run">Bore, roughness, length and fittings as <see cref="DarcyWeisbach.Loss"/> takes them; length or fittings above 0.</param>
    /// <param name="headM">Head at hand [m], 1e-6 to 1000.</param>
    /// <param name="kinematicViscosityM2PerS">Kinematic viscosity [m2/s], 1e-7 to 1e-3.</param>
    /// <returns>Flow [m3/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, NaN, or the flow would be above 10 m3/s.</exception>
    /// <exception cref="ArithmeticException">The search did not settle.</exception>
    /// <source>Weisbach 1845, Darcy 1857, solved for the flow; root by regula falsi, Illinois form (Dowell and Jarratt 1971)</source>
    public static double M3PerS(PipeRun run, double headM, double kinematicViscosityM2PerS)
    {
        Within.Require(headM, 1e-6, 1000, "m");
        double Left(double flowM3PerS) => headM - DarcyWeisbach.Loss(run, flowM3PerS, kinematicViscosityM2PerS).TotalM;
        var high = Math.Min(MostM3PerS, 1e-6 * run.BoreM * run.BoreM);
        while (Left(high) > 0)
        {
            if (high >= MostM3PerS)
            {
                throw new ArgumentOutOfRangeException(nameof(headM), headM, "the flow would be above 10 m3/s");
            }

            high = Math.Min(MostM3PerS, 2 * high);
        }

        return Crossing.Of(Left, (0, headM), high, 1e-12 * headM).X;
    }
}
