using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>A footing turned about its edge: what holds it is its weight, and nothing of the ground beside it.</summary>
public static class Tipping
{
    /// <summary>Moment about the edge that the weight holds.</summary>
    /// <param name="weightKN">Weight of footing and what stands on it, without wind [kN], 0 to 10000.</param>
    /// <param name="widthM">Width of the base across that edge [m], 0.1 to 30.</param>
    /// <returns>Moment, with the factor for what holds [kN m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1990:2002, table A1.2(A) (EQU): 0.9</source>
    public static double HeldKNm(double weightKN, double widthM)
    {
        Within.Require(weightKN, 0, 10_000, "kN");
        Within.Require(widthM, 0.1, 30, "m");
        return Uplift.HoldingFactor * weightKN * widthM / 2;
    }

    /// <summary>Moment of the wind about the edge.</summary>
    /// <param name="momentKNm">Moment at the ground [kN m], 0 to 100000.</param>
    /// <param name="sideKN">Side load at the ground [kN], 0 to 10000.</param>
    /// <param name="depthM">Depth of the base [m], 0 to 5.</param>
    /// <param name="liftKN">Lift at the middle [kN], 0 to 10000.</param>
    /// <param name="widthM">Width of the base across that edge [m], 0.1 to 30.</param>
    /// <returns>Moment, with the factor for what turns [kN m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1990:2002, table A1.2(A) (EQU): 1.5</source>
    public static double TurningKNm(double momentKNm, double sideKN, double depthM, double liftKN, double widthM)
    {
        Within.Require(momentKNm, 0, 100_000, "kN m");
        Within.Require(sideKN, 0, 10_000, "kN");
        Within.Require(depthM, 0, 5, "m");
        Within.Require(liftKN, 0, 10_000, "kN");
        Within.Require(widthM, 0.1, 30, "m");
        return Uplift.LiftingFactor * (momentKNm + (sideKN * depthM) + (liftKN * widthM / 2));
    }
}
