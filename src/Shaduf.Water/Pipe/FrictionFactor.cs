using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Darcy friction factor of a full round pipe.</summary>
public static class FrictionFactor
{
    private const double LaminarEndNumber = 2000;
    private const double TurbulentStartNumber = 4000;

    /// <summary>Laminar flow.</summary>
    /// <param name="reynoldsNumber">Reynolds number on the bore, 1e-9 to 2000.</param>
    /// <returns>Darcy friction factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>Hagen 1839, Poiseuille 1840: f = 64/Re</source>
    public static double Laminar(double reynoldsNumber)
    {
        Within.Require(reynoldsNumber, 1e-9, LaminarEndNumber, "(Reynolds)");
        return 64 / reynoldsNumber;
    }

    /// <summary>Turbulent flow, the implicit equation solved to rounding.</summary>
    /// <param name="reynoldsNumber">Reynolds number on the bore, 4000 to 1e9.</param>
    /// <param name="relativeRoughnessRatio">Roughness over bore, 0 to 0.1.</param>
    /// <returns>Darcy friction factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <exception cref="ArithmeticException">The iteration did not settle.</exception>
    /// <source>Colebrook 1939: 1/sqrt f = -2 log10(eps/(3.7 D) + 2.51/(Re sqrt f))</source>
    public static double Colebrook(double reynoldsNumber, double relativeRoughnessRatio)
    {
        Within.Require(reynoldsNumber, TurbulentStartNumber, 1e9, "(Reynolds)");
        Within.Require(relativeRoughnessRatio, 0, 0.1, "of the bore");
        var rough = relativeRoughnessRatio / 3.7;
        var smooth = 2.51 / reynoldsNumber;

        // Newton on x = 1/sqrt f, from Haaland's explicit form (within 1.5 %). The function is rising and hollow
        // downwards, so the steps cannot leave the root; each doubles the digits, and one below 1e-9 is the last.
        var x = -1.8 * Math.Log10(Math.Pow(rough, 1.11) + (6.9 / reynoldsNumber));
        for (var round = 1; round <= 10; round++)
        {
            var inner = rough + (smooth * x);
            var step = (x + (2 * Math.Log10(inner))) / (1 + (2 / Math.Log(10) * smooth / inner));
            x -= step;
            if (Math.Abs(step) <= 1e-9 * x)
            {
                return 1 / (x * x);
            }
        }

        throw new ArithmeticException("Colebrook's equation did not settle in 10 rounds.");
    }

    /// <summary>Any flow: laminar to 2000, Colebrook from 4000, a straight line between the two ends.</summary>
    /// <param name="reynoldsNumber">Reynolds number on the bore, 1e-9 to 1e9.</param>
    /// <param name="relativeRoughnessRatio">Roughness over bore, 0 to 0.1.</param>
    /// <returns>Darcy friction factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>64/Re and Colebrook 1939; the line between 2000 and 4000 is this project's choice, no source</source>
    public static double At(double reynoldsNumber, double relativeRoughnessRatio)
    {
        Within.Require(reynoldsNumber, 1e-9, 1e9, "(Reynolds)");
        Within.Require(relativeRoughnessRatio, 0, 0.1, "of the bore");
        if (reynoldsNumber <= LaminarEndNumber)
        {
            return Laminar(reynoldsNumber);
        }

        if (reynoldsNumber >= TurbulentStartNumber)
        {
            return Colebrook(reynoldsNumber, relativeRoughnessRatio);
        }

        var (low, high) = (Laminar(LaminarEndNumber), Colebrook(TurbulentStartNumber, relativeRoughnessRatio));
        var share = (reynoldsNumber - LaminarEndNumber) / (TurbulentStartNumber - LaminarEndNumber);
        return low + (share * (high - low));
    }
}
