using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>What keeps an empty tank on its platform in the wind.</summary>
public static class TankHold
{
    /// <summary>Friction of a tank on its deck.</summary>
    /// <source>judgement, no source</source>
    public const double FrictionCoefficient = 0.3;

    /// <summary>Push of the wind on a tank.</summary>
    /// <param name="peakNPerM2">Pressure of the gust q_p [N/m2], 0 to 50,000.</param>
    /// <param name="dragCoefficient">c_f, 0 to 3.</param>
    /// <param name="widthM">Width across the wind [m], 0.1 to 60.</param>
    /// <param name="heightM">Height of the tank [m], 0.1 to 20.</param>
    /// <returns>Force at half the height [N].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, 5.3</source>
    public static double PushN(double peakNPerM2, double dragCoefficient, double widthM, double heightM)
    {
        Within.Require(peakNPerM2, 0, 50_000, "N/m2");
        Within.Require(dragCoefficient, 0, 3, "");
        Within.Require(widthM, 0.1, 60, "m");
        Within.Require(heightM, 0.1, 20, "m");
        return peakNPerM2 * dragCoefficient * widthM * heightM;
    }

    /// <summary>Pull that straps must take on the windward side of an empty tank.</summary>
    /// <param name="pushN">Push of the wind at half the height [N], 0 to 1e7.</param>
    /// <param name="weightN">Weight of the empty tank [N], 0 to 1e7.</param>
    /// <param name="heightM">Height of the tank [m], 0.1 to 20.</param>
    /// <param name="widthM">Width along the wind, between the straps [m], 0.1 to 60.</param>
    /// <param name="national">Partial factors; null: the recommended ones.</param>
    /// <returns>(1.5 F h/2 - 0.9 G D/2)/D, 0 when none is needed [N].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics; EN 1990:2002, table A1.2(A)</source>
    public static double StrapN(
        double pushN,
        double weightN,
        double heightM,
        double widthM,
        NationalChoices? national = null
    )
    {
        Within.Require(pushN, 0, 1e7, "N");
        Within.Require(weightN, 0, 1e7, "N");
        Within.Require(heightM, 0.1, 20, "m");
        Within.Require(widthM, 0.1, 60, "m");
        var (wind, holding) = Factors(national);
        return Math.Max(0, ((wind * pushN * heightM / 2) - (holding * weightN * widthM / 2)) / widthM);
    }

    /// <summary>Water that must stay in a tank so that it does not slide without stops.</summary>
    /// <param name="pushN">Push of the wind [N], 0 to 1e7.</param>
    /// <param name="weightN">Weight of the empty tank [N], 0 to 1e7.</param>
    /// <param name="national">Partial factors; null: the recommended ones.</param>
    /// <returns>Water [kg]; 0 when none is needed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>1.5 F at most 0.9 μ (G + w), μ = 0.3: judgement</source>
    public static double StayKg(double pushN, double weightN, NationalChoices? national = null)
    {
        Within.Require(pushN, 0, 1e7, "N");
        Within.Require(weightN, 0, 1e7, "N");
        var (wind, holding) = Factors(national);
        return Math.Max(0, (wind * pushN / (holding * FrictionCoefficient)) - weightN) / 9.80665;
    }

    private static (double Wind, double Holding) Factors(NationalChoices? national)
    {
        var choices = national ?? NationalChoices.Recommended;
        return (choices.VariableFactor, choices.LeastWeightFactor);
    }
}
