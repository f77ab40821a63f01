using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>A point set out with two tapes from two pegs: the pegs A and B lie on the x axis, A at its origin.</summary>
public static class PegPlace
{
    /// <summary>Least angle at which the tapes may cross [deg]; judgement.</summary>
    public const double LeastCrossingDeg = 30;

    /// <summary>The point from its two tape lengths, on the left of the way from A to B.</summary>
    /// <param name="baseM">From peg to peg [m], 0.5 to 500.</param>
    /// <param name="fromAM">Tape from A [m], 0.01 to 1000.</param>
    /// <param name="fromBM">Tape from B [m], 0.01 to 1000.</param>
    /// <returns>Along the base from A, and square off it [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <exception cref="ArgumentException">The tapes do not meet.</exception>
    /// <source>Two circles; geometry</source>
    public static (double AlongM, double OffM) Of(double baseM, double fromAM, double fromBM)
    {
        Within.Require(baseM, 0.5, 500, "m");
        Within.Require(fromAM, 0.01, 1000, "m");
        Within.Require(fromBM, 0.01, 1000, "m");
        var alongM = ((fromAM * fromAM) - (fromBM * fromBM) + (baseM * baseM)) / (2 * baseM);
        var offM2 = (fromAM * fromAM) - (alongM * alongM);
        return offM2 >= 0
            ? (alongM, Math.Sqrt(offM2))
            : throw new ArgumentException("the two tapes do not meet", nameof(fromBM));
    }

    /// <summary>Tape lengths of a point.</summary>
    /// <param name="baseM">From peg to peg [m], 0.5 to 500.</param>
    /// <param name="alongM">Along the base from A [m], -500 to 1000.</param>
    /// <param name="offM">Square off the base [m], -500 to 500.</param>
    /// <returns>Tape from A and tape from B [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Pythagoras</source>
    public static (double FromAM, double FromBM) TapesM(double baseM, double alongM, double offM)
    {
        Within.Require(baseM, 0.5, 500, "m");
        Within.Require(alongM, -500, 1000, "m");
        Within.Require(offM, -500, 500, "m");
        return (double.Hypot(alongM, offM), double.Hypot(alongM - baseM, offM));
    }

    /// <summary>Angle at which the tapes cross at a point.</summary>
    /// <param name="baseM">From peg to peg [m], 0.5 to 500.</param>
    /// <param name="alongM">Along the base from A [m], -500 to 1000.</param>
    /// <param name="offM">Square off the base [m], -500 to 500.</param>
    /// <returns>Angle [deg], 0 to 90.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Two directions; geometry</source>
    public static double CrossingDeg(double baseM, double alongM, double offM)
    {
        Within.Require(baseM, 0.5, 500, "m");
        Within.Require(alongM, -500, 1000, "m");
        Within.Require(offM, -500, 500, "m");
        var turn = Math.Abs(Math.Atan2(offM, alongM) - Math.Atan2(offM, alongM - baseM)) * 180 / Math.PI;
        return Math.Min(turn, Math.Abs(180 - turn));
    }
}
