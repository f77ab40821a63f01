using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>Poles that carry a hoist: three on a head, or one leaning against a guy.</summary>
public static class LiftingPole
{
    /// <summary>Steepest sum of a single pole's lean and its guy's slope [deg]; beyond it guy and pole force run away.</summary>
    /// <source>judgement, no source</source>
    public const double MostSumDeg = 70;

    /// <summary>Force in a leg of a tripod.</summary>
    /// <param name="weightKN">Load at its head, doubled where a rope is led down over a block there [kN], 0 to 1000.</param>
    /// <param name="legDeg">Lean of a leg from upright [deg], 15 to 30.</param>
    /// <returns>Force [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics: W/(3 cos β)</source>
    public static double TripodLegKN(double weightKN, double legDeg) => Weight(weightKN) / (3 * Math.Cos(Leg(legDeg)));

    /// <summary>Force with which each foot of a tripod slides outwards: what ties between the feet hold.</summary>
    /// <param name="weightKN">Load at its head [kN], 0 to 1000.</param>
    /// <param name="legDeg">Lean of a leg from upright [deg], 15 to 30.</param>
    /// <returns>Force [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics: W tan β/3</source>
    public static double TripodThrustKN(double weightKN, double legDeg) => Weight(weightKN) * Math.Tan(Leg(legDeg)) / 3;

    /// <summary>Pull of the back guy of a single pole.</summary>
    /// <param name="weightKN">Load at its head [kN], 0 to 1000.</param>
    /// <param name="leanDeg">Lean of the pole from upright [deg], 0 to 30.</param>
    /// <param name="guyDeg">Slope of the guy below level [deg], 20 to 60; no more than 70 with the lean.</param>
    /// <returns>Pull [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, NaN, or lean and guy are more than 70 deg together.</exception>
    /// <source>Statics: W sin δ/cos(δ + γ)</source>
    public static double GuyKN(double weightKN, double leanDeg, double guyDeg) =>
        Weight(weightKN) * Math.Sin(leanDeg * Math.PI / 180) / Math.Cos(Sum(leanDeg, guyDeg));

    /// <summary>Force along a single pole, the rope not led down along it.</summary>
    /// <param name="weightKN">Load at its head [kN], 0 to 1000.</param>
    /// <param name="leanDeg">Lean of the pole from upright [deg], 0 to 30.</param>
    /// <param name="guyDeg">Slope of the guy below level [deg], 20 to 60; no more than 70 with the lean.</param>
    /// <returns>Force [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, NaN, or lean and guy are more than 70 deg together.</exception>
    /// <source>Statics: W cos γ/cos(δ + γ)</source>
    public static double PoleKN(double weightKN, double leanDeg, double guyDeg) =>
        Weight(weightKN) * Math.Cos(guyDeg * Math.PI / 180) / Math.Cos(Sum(leanDeg, guyDeg));

    private static double Weight(double weightKN)
    {
        Within.Require(weightKN, 0, 1000, "kN");
        return weightKN;
    }

    private static double Leg(double legDeg)
    {
        Within.Require(legDeg, 15, 30, "deg");
        return legDeg * Math.PI / 180;
    }

    private static double Sum(double leanDeg, double guyDeg)
    {
        Within.Require(leanDeg, 0, 30, "deg");
        Within.Require(guyDeg, 20, 60, "deg");
        Within.Require(leanDeg + guyDeg, 20, MostSumDeg, "deg");
        return (leanDeg + guyDeg) * Math.PI / 180;
    }
}
