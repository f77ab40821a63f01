using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>How concrete gains strength: a published curve for a kind of cement, moist cured at 20 degrees C.</summary>
public enum StrengthGain
{
    /// <summary>ACI 209 form for ordinary cement.</summary>
    Aci209,

    /// <summary>EN 1992-1-1, rapid cement (class R, s = 0.20).</summary>
    En1992ClassR,

    /// <summary>EN 1992-1-1, normal cement (class N, s = 0.25).</summary>
    En1992ClassN,

    /// <summary>EN 1992-1-1, slow cement (class S, s = 0.38); take it for blended or unknown cement.</summary>
    En1992ClassS,
}

/// <summary>Strength of young concrete.</summary>
public static class ConcreteStrength
{
    /// <summary>
    /// Compressive strength at an age as a share of that at 28 days, moist cured at 20 degrees C. Cold concrete is
    /// younger than its date. The ACI form gives 1.007 at 28 days.
    /// </summary>
    /// <param name="ageDays">Age [d], 1 to 365; below 3 days both forms are an indication only.</param>
    /// <param name="gain">The curve.</param>
    /// <returns>Share of the strength at 28 days.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The age is outside the range, or NaN; the curve is not one of the enumeration.</exception>
    /// <source>ACI 209R-92 (t/(4 + 0.85 t), clause 2.2.1 from memory); EN 1992-1-1:2004, 3.1.2(6), equation 3.2 (from memory)</source>
    public static double ShareAtDays(double ageDays, StrengthGain gain)
    {
        Within.Require(ageDays, 1, 365, "d");
        return gain switch
        {
            StrengthGain.Aci209 => ageDays / (4 + 0.85 * ageDays),
            StrengthGain.En1992ClassR => En1992(ageDays, 0.20),
            StrengthGain.En1992ClassN => En1992(ageDays, 0.25),
            StrengthGain.En1992ClassS => En1992(ageDays, 0.38),
            _ => throw new ArgumentOutOfRangeException(nameof(gain), gain, "There is no such curve."),
        };
    }

    private static double En1992(double ageDays, double s) => Math.Exp(s * (1 - Math.Sqrt(28 / ageDays)));
}
