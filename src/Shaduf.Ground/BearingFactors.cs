using System.Reflection;
using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>The three factors of the bearing resistance of a footing.</summary>
/// <param name="CohesionFactor">N_c, for the cohesion.</param>
/// <param name="SurchargeFactor">N_q, for the ground beside the footing.</param>
/// <param name="WeightFactor">N_γ, for the weight of the ground below it.</param>
public readonly record struct BearingFactorSet(double CohesionFactor, double SurchargeFactor, double WeightFactor);

/// <summary>Factors of the bearing resistance by author; N_γ differs most between them.</summary>
public static class BearingFactors
{
    // Below it the quotient for N_c is one of two vanishing figures; its limit is taken.
    private const double LeastDeg = 0.01;

    // N_γ that belong to Terzaghi's mechanism, by Kumbhojkar.
    private static IReadOnlyList<(double Deg, double Weight)> Kumbhojkar { get; } =
    [
        .. Csv.Embedded(Assembly.GetExecutingAssembly(), "BearingFactors.csv")
            .Select(row => (row.Number("friction_deg"), row.Number("n_gamma"))),
    ];

    /// <summary>Factors of a rough base.</summary>
    /// <param name="frictionDeg">Angle of friction [deg], 0 to 45.</param>
    /// <returns>N_c, N_q, N_γ.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1997-1:2004, annex D.4</source>
    public static BearingFactorSet En1997(double frictionDeg)
    {
        Within.Require(frictionDeg, 0, 45, "deg");
        var tan = Tan(frictionDeg);
        var passive = Tan(45 + (frictionDeg / 2));
        var surcharge = Math.Exp(Math.PI * tan) * passive * passive;
        return new(frictionDeg < LeastDeg ? Math.PI + 2 : (surcharge - 1) / tan, surcharge, 2 * (surcharge - 1) * tan);
    }

    /// <summary>Factors of Terzaghi, with N_γ between the figures of the table beside this file in equal shares for each degree.</summary>
    /// <param name="frictionDeg">Angle of friction [deg], 0 to 40.</param>
    /// <returns>N_c, N_q, N_γ.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>Terzaghi 1943; N_γ by Kumbhojkar 1993</source>
    public static BearingFactorSet Terzaghi(double frictionDeg)
    {
        Within.Require(frictionDeg, 0, 40, "deg");
        var (tan, cos) = (Tan(frictionDeg), Math.Cos((45 + (frictionDeg / 2)) * Math.PI / 180));
        var surcharge = Math.Exp(((1.5 * Math.PI) - (frictionDeg * Math.PI / 180)) * tan) / (2 * cos * cos);
        return new(
            frictionDeg < LeastDeg ? (1.5 * Math.PI) + 1 : (surcharge - 1) / tan,
            surcharge,
            Weight(frictionDeg)
        );
    }

    private static double Weight(double frictionDeg)
    {
        var above = Kumbhojkar.TakeWhile(row => row.Deg < frictionDeg).Count();
        if (above == 0)
        {
            return Kumbhojkar[0].Weight;
        }

        var (from, to) = (Kumbhojkar[above - 1], Kumbhojkar[above]);
        var share = (frictionDeg - from.Deg) / (to.Deg - from.Deg);
        return from.Weight == 0 ? share * to.Weight : from.Weight * Math.Pow(to.Weight / from.Weight, share);
    }

    private static double Tan(double deg) => Math.Tan(deg * Math.PI / 180);
}
