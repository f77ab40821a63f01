using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>Age of concrete by its warmth: cold concrete is younger than its date.</summary>
public static class ConcreteAge
{
    /// <summary>Days at 20 degrees C that a day at another temperature is worth.</summary>
    /// <param name="temperatureDegC">Temperature of the concrete [degC], 0 to 50.</param>
    /// <returns>Factor; 1 at 20 degC.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1992-1-1:2004, equation B.10, from memory</source>
    public static double WarmthFactor(double temperatureDegC)
    {
        Within.Require(temperatureDegC, 0, 50, "degC");
        return Math.Exp(13.65 - (4000 / (273 + temperatureDegC)));
    }

    /// <summary>Days at 20 degrees C that concrete of another temperature is worth.</summary>
    /// <param name="ageDays">Days since it was cast [d], 0 to 365.</param>
    /// <param name="temperatureDegC">Its mean temperature [degC], 0 to 50.</param>
    /// <returns>Age at 20 degC [d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1992-1-1:2004, equation B.10, from memory</source>
    public static double At20Days(double ageDays, double temperatureDegC)
    {
        Within.Require(ageDays, 0, 365, "d");
        return ageDays * WarmthFactor(temperatureDegC);
    }

    /// <summary>Days after which concrete of a temperature has a share of its strength at 28 days.</summary>
    /// <param name="strengthShare">Share, 0.1 to 1.</param>
    /// <param name="cementFactor">s of the cement, 0.20 rapid, 0.25 normal, 0.38 slow or unknown, 0.2 to 0.4.</param>
    /// <param name="temperatureDegC">Its mean temperature [degC], 0 to 50.</param>
    /// <returns>Days [d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1992-1-1:2004, equations 3.2 and B.10 solved for the age; from memory</source>
    public static double DaysToShare(double strengthShare, double cementFactor, double temperatureDegC)
    {
        Within.Require(strengthShare, 0.1, 1, "");
        Within.Require(cementFactor, 0.2, 0.4, "");
        var root = 1 - (Math.Log(strengthShare) / cementFactor);
        return 28 / (root * root) / WarmthFactor(temperatureDegC);
    }
}
