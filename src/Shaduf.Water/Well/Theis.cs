using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Fall of the water round a pumped well in an aquifer of even thickness under pressure.</summary>
public static class Theis
{
    private const double EulerGamma = 0.57721566490153286;

    /// <summary>The well function W(u), the exponential integral.</summary>
    /// <param name="argumentRatio">u = r2 S/(4 T t), above 0 to 50.</param>
    /// <returns>W(u) [ratio].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>Theis 1935; series for u at most 1, continued fraction (Lentz) above; table of Wenzel 1942</source>
    public static double WellFunctionRatio(double argumentRatio)
    {
        Within.Require(argumentRatio, double.Epsilon, 50, "");
        var u = argumentRatio;
        if (u <= 1)
        {
            var (sum, term) = (-EulerGamma - Math.Log(u), 1.0);
            for (var n = 1; n <= 30; n++)
            {
                term *= -u / n;
                sum -= term / n;
            }

            return sum;
        }

        var (b, c) = (u + 1, 1e300);
        var d = 1 / b;
        var fraction = d;
        for (var i = 1; i <= 200; i++)
        {
            var a = -(double)i * i;
            b += 2;
            d = 1 / ((a * d) + b);
            c = b + (a / c);
            var step = c * d;
            fraction *= step;
            if (Math.Abs(step - 1) < 1e-14)
            {
                break;
            }
        }

        return fraction * Math.Exp(-u);
    }

    /// <summary>Drawdown at a distance from the well.</summary>
    /// <param name="flowM3PerS">Rate [m3/s], 0 to 1.</param>
    /// <param name="transmissivityM2PerS">Transmissivity [m2/s], 0.0000001 to 1.</param>
    /// <param name="storageCoefficient">Storage coefficient, 0.0000001 to 0.5.</param>
    /// <param name="distanceM">Distance from the well's axis [m], 0.01 to 100000.</param>
    /// <param name="timeS">Time since pumping began [s], above 0 to 1e11.</param>
    /// <returns>Drawdown [m]; 0 where u is above 50.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Theis 1935, s = Q W(u)/(4 pi T)</source>
    public static double DrawdownM(
        double flowM3PerS,
        double transmissivityM2PerS,
        double storageCoefficient,
        double distanceM,
        double timeS
    )
    {
        Within.Require(flowM3PerS, 0, 1, "m3/s");
        Within.Require(transmissivityM2PerS, 1e-7, 1, "m2/s");
        Within.Require(storageCoefficient, 1e-7, 0.5, "");
        Within.Require(distanceM, 0.01, 100_000, "m");
        Within.Require(timeS, double.Epsilon, 1e11, "s");
        var u = distanceM * distanceM * storageCoefficient / (4 * transmissivityM2PerS * timeS);
        return u > 50 ? 0 : flowM3PerS * WellFunctionRatio(u) / (4 * Math.PI * transmissivityM2PerS);
    }
}
