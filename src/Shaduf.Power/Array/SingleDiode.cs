using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>The five numbers of a module as one diode, at one light and one temperature.</summary>
/// <param name="LightA">Current that the light makes [A], 0 to 100.</param>
/// <param name="SaturationA">Saturation current of the diode [A], above 0 to 1.</param>
/// <param name="SeriesOhm">Resistance in series [ohm], 0 to 100.</param>
/// <param name="ShuntPerOhm">Conductance beside the diode [1/ohm], 0 (none) to 10.</param>
/// <param name="IdealityV">Ideality factor times cells in series times kT/q [V], 0.005 to 50.</param>
public readonly record struct DiodeState(
    double LightA,
    double SaturationA,
    double SeriesOhm,
    double ShuntPerOhm,
    double IdealityV
);

/// <summary>Where a module gives its most.</summary>
/// <param name="VoltageV">Voltage [V].</param>
/// <param name="CurrentA">Current [A].</param>
/// <param name="PowerW">Power [W].</param>
/// <param name="ResidualA">Slope of power over voltage that is left there [A].</param>
/// <param name="RoundCount">Rounds that it took.</param>
public readonly record struct PowerPoint(
    double VoltageV,
    double CurrentA,
    double PowerW,
    double ResidualA,
    int RoundCount
);

/// <summary>
/// The current-voltage curve of a module as one diode. Everything is a function of the diode's own voltage u = V + I Rs,
/// in which no equation is implicit.
/// </summary>
public static class SingleDiode
{
    // A halving a round would be done in 60; Newton needs about 6.
    private const int MostRounds = 100;

    /// <summary>Open-circuit voltage.</summary>
    /// <param name="diode">The module's five numbers.</param>
    /// <returns>Voltage [V]; 0 without light.</returns>
    /// <exception cref="ArgumentOutOfRangeException">One of the five numbers is outside its range, or NaN.</exception>
    /// <source>De Soto, Klein, Beckman, Solar Energy 80, 2006, equation 1 at I = 0.</source>
    public static double OpenCircuitV(DiodeState diode)
    {
        Require(diode);
        return OpenV(diode);
    }

    /// <summary>Short-circuit current.</summary>
    /// <param name="diode">The module's five numbers.</param>
    /// <returns>Current [A].</returns>
    /// <exception cref="ArgumentOutOfRangeException">One of the five numbers is outside its range, or NaN.</exception>
    /// <source>De Soto, Klein, Beckman, Solar Energy 80, 2006, equation 1 at V = 0.</source>
    public static double ShortCircuitA(DiodeState diode)
    {
        Require(diode);
        return Current(diode, AtVoltage(diode, 0, OpenV(diode)));
    }

    /// <summary>Current at a voltage.</summary>
    /// <param name="diode">The module's five numbers.</param>
    /// <param name="voltageV">Voltage [V], 0 to the open-circuit voltage.</param>
    /// <returns>Current [A].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>De Soto, Klein, Beckman, Solar Energy 80, 2006, equation 1.</source>
    public static double CurrentA(DiodeState diode, double voltageV)
    {
        Require(diode);
        var openV = OpenV(diode);
        Within.Require(voltageV, 0, openV, "V");
        return Current(diode, AtVoltage(diode, voltageV, openV));
    }

    /// <summary>
    /// The point of maximum power: the one zero of dP/du between short circuit and open circuit, by Newton's steps that
    /// are replaced by a halving of the bracket whenever they leave it or do not halve the step before. It cannot fail.
    /// </summary>
    /// <param name="diode">The module's five numbers.</param>
    /// <returns>The point; all zero without light.</returns>
    /// <exception cref="ArgumentOutOfRangeException">One of the five numbers is outside its range, or NaN.</exception>
    /// <source>De Soto, Klein, Beckman, Solar Energy 80, 2006, equation 1; the parameter u is this project's own.</source>
    public static PowerPoint MaximumPower(DiodeState diode)
    {
        Require(diode);
        return Peak(diode);
    }

    internal static PowerPoint Peak(DiodeState diode)
    {
        var high = OpenV(diode);
        if (!(high > 0))
        {
            return default;
        }

        var (low, step, accuracyV) = (AtVoltage(diode, 0, high), high, 1e-14 * high);

        // Without resistances the maximum lies near here.
        var u = Math.Max(low, high - (diode.IdealityV * Math.Log(1 + (high / diode.IdealityV))));
        for (var round = 1; ; round++)
        {
            var turn = Turn.At(diode, u);
            (low, high) = turn.Rate > 0 ? (u, high) : (low, u);
            var next = u - (turn.Rate / turn.RateSlope);
            if (!(next > low && next < high && Math.Abs(next - u) <= step / 2))
            {
                next = (low + high) / 2;
            }

            step = Math.Abs(next - u);
            if (step <= accuracyV || round == MostRounds)
            {
                return new(turn.V, turn.I, turn.V * turn.I, turn.Rate / turn.VSlope, round);
            }

            u = next;
        }
    }

    internal static void Require(DiodeState diode)
    {
        Within.Require(diode.LightA, 0, 100, "A");
        Within.Require(diode.SaturationA, double.Epsilon, 1, "A");
        Within.Require(diode.SeriesOhm, 0, 100, "ohm");
        Within.Require(diode.ShuntPerOhm, 0, 10, "1/ohm");
        Within.Require(diode.IdealityV, 0.005, 50, "V");
    }

    // Falling and concave in u: Newton from the right comes down to the zero and never passes it.
    private static double OpenV(DiodeState diode)
    {
        var u = diode.IdealityV * Math.Log(1 + (diode.LightA / diode.SaturationA));
        while (true)
        {
            var grown = diode.SaturationA * Math.Exp(u / diode.IdealityV);
            var current = diode.LightA + diode.SaturationA - grown - (diode.ShuntPerOhm * u);
            var next = u + (current / ((grown / diode.IdealityV) + diode.ShuntPerOhm));
            if (!(next < u))
            {
                return u;
            }

            u = Math.Max(next, 0);
        }
    }

    // The diode's voltage at a voltage of the module: rising and convex, so again from the right.
    private static double AtVoltage(DiodeState diode, double voltageV, double openV)
    {
        var u = Math.Min(openV, voltageV + (diode.SeriesOhm * diode.LightA));
        while (true)
        {
            var turn = Turn.At(diode, u);
            var next = u - ((turn.V - voltageV) / turn.VSlope);
            if (!(next < u))
            {
                return u;
            }

            u = next;
        }
    }

    private static double Current(DiodeState diode, double u) => Turn.At(diode, u).I;

    // Current, voltage and their slopes over u at one place of the curve.
    private readonly record struct Turn(double I, double V, double VSlope, double Rate, double RateSlope)
    {
        public static Turn At(DiodeState diode, double u)
        {
            var grown = diode.SaturationA * Math.Exp(u / diode.IdealityV);
            var i = diode.LightA + diode.SaturationA - grown - (diode.ShuntPerOhm * u);
            var iSlope = -(grown / diode.IdealityV) - diode.ShuntPerOhm;
            var iCurve = -grown / (diode.IdealityV * diode.IdealityV);
            var v = u - (diode.SeriesOhm * i);
            var vSlope = 1 - (diode.SeriesOhm * iSlope);
            return new(
                i,
                v,
                vSlope,
                (iSlope * v) + (i * vSlope),
                (iCurve * (v - (diode.SeriesOhm * i))) + (2 * iSlope * vSlope)
            );
        }
    }
}
