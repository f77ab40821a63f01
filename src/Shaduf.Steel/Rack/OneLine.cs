using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>Movement of a column's head under characteristic wind.</summary>
/// <param name="HeadMm">Sideways [mm].</param>
/// <param name="TurnRad">Turning [rad].</param>
public readonly record struct HeadMovement(double HeadMm, double TurnRad);

/// <summary>
/// A rack on one line of columns under the middle of its plane: across the line every column stands alone, a
/// cantilever in its own footing, and carries the couple of a wind force that acts at a quarter of the slope.
/// </summary>
public static class OneLine
{
    /// <summary>Buckling length of the column over its length.</summary>
    /// <source>EN 1993-1-1:2005, 5.2; a cantilever with a little give in its footing: 2.1, common practice, no source</source>
    public const double BucklingFactor = 2.1;

    /// <summary>How far below firm ground the column is held [mm]; 500 in loose soil.</summary>
    /// <source>common practice, no source</source>
    public const double FirmFixityMm = 300;

    /// <summary>Height of the middle of the plane.</summary>
    /// <param name="topEdgeM">Height of the top edge above ground [m], 0.5 to 10.</param>
    /// <param name="slopeM">Length of the plane up its slope d' [m], 0.5 to 20.</param>
    /// <param name="tiltDeg">Tilt [deg], 0 to 60.</param>
    /// <returns>h_c [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN, or the low edge lies below ground.</exception>
    /// <source>Plane geometry</source>
    public static double CentreM(double topEdgeM, double slopeM, double tiltDeg)
    {
        Within.Require(topEdgeM, 0.5, 10, "m");
        var riseM = RequireSlope(slopeM, tiltDeg);
        Within.Require(topEdgeM - riseM, 0, 10, "m");
        return topEdgeM - (riseM / 2);
    }

    /// <summary>Moment at the head of the columns: force at a quarter of the slope, about the middle.</summary>
    /// <param name="forceN">Wind force square to the plane, by size [N], 0 to 1,000,000.</param>
    /// <param name="slopeM">Length of the plane up its slope [m], 0.5 to 20.</param>
    /// <returns>F d'/4 [N·m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, figure 7.16; statics</source>
    public static double PlaneNm(double forceN, double slopeM)
    {
        Within.Require(forceN, 0, 1e6, "N");
        RequireSlope(slopeM, 0);
        return forceN * slopeM / 4;
    }

    /// <summary>Moment at the ground, wind from the high side: couple and sideways push turn the same way. It governs.</summary>
    /// <param name="forceN">Wind force square to the plane, by size [N], 0 to 1,000,000.</param>
    /// <param name="slopeM">Length of the plane up its slope [m], 0.5 to 20.</param>
    /// <param name="centreM">Height of the plane's middle [m], 0.3 to 10.</param>
    /// <param name="tiltDeg">Tilt [deg], 0 to 60.</param>
    /// <returns>F (d'/4 + h_c sin α) [N·m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics</source>
    public static double HighSideNm(double forceN, double slopeM, double centreM, double tiltDeg) =>
        PlaneNm(forceN, slopeM) + PushNm(forceN, centreM, tiltDeg);

    /// <summary>Moment at the ground, wind from the low side: couple and sideways push turn against each other.</summary>
    /// <param name="forceN">Wind force square to the plane, by size [N], 0 to 1,000,000.</param>
    /// <param name="slopeM">Length of the plane up its slope [m], 0.5 to 20.</param>
    /// <param name="centreM">Height of the plane's middle [m], 0.3 to 10.</param>
    /// <param name="tiltDeg">Tilt [deg], 0 to 60.</param>
    /// <returns>F |d'/4 - h_c sin α| [N·m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics</source>
    public static double LowSideNm(double forceN, double slopeM, double centreM, double tiltDeg) =>
        Math.Abs(PlaneNm(forceN, slopeM) - PushNm(forceN, centreM, tiltDeg));

    /// <summary>Sideways force on an end column when gusts come uneven along the row: the resultant lies a tenth of the width off.</summary>
    /// <param name="horizontalN">Sideways force on the rack [N], 0 to 1,000,000.</param>
    /// <param name="widthM">Width of the plane along the row [m], 0.5 to 100.</param>
    /// <param name="betweenM">Distance of the end columns [m], 0.5 to 100.</param>
    /// <returns>Force that adds to the end column's share [N].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics; 0.10 b common practice, no source</source>
    public static double EndColumnN(double horizontalN, double widthM, double betweenM)
    {
        Within.Require(horizontalN, 0, 1e6, "N");
        Within.Require(widthM, 0.5, 100, "m");
        Within.Require(betweenM, 0.5, 100, "m");
        return horizontalN * 0.10 * widthM / betweenM;
    }

    /// <summary>Upright forces on two lines of columns at the quarters of the slope instead: the windward line takes the whole wind.</summary>
    /// <param name="forceN">Wind force square to the plane, up above 0 [N], -1,000,000 to 1,000,000.</param>
    /// <param name="tiltDeg">Tilt [deg], 0 to 60.</param>
    /// <returns>Forces on the windward and the leeward line, up above 0 [N]: V/2 ± F/(2 cos α).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics</source>
    public static (double WindwardN, double LeewardN) TwoLines(double forceN, double tiltDeg)
    {
        Within.Require(forceN, -1e6, 1e6, "N");
        Within.Require(tiltDeg, 0, 60, "deg");
        var cosine = Math.Cos(tiltDeg * Math.PI / 180);
        var (half, couple) = (forceN * cosine / 2, forceN / (2 * cosine));
        return (half + couple, half - couple);
    }

    /// <summary>Movement of a column's head.</summary>
    /// <param name="horizontalN">The column's share of the sideways force [N], 0 to 1,000,000.</param>
    /// <param name="planeNm">The column's share of the moment at its head [N·m], 0 to 1,000,000.</param>
    /// <param name="lengthMm">From the head down to where it is held L [mm], 100 to 10,000.</param>
    /// <param name="inertiaMm4">Second moment of the column [mm4], 1,000 to 1e9.</param>
    /// <returns>H L³/(3EI) + M L²/(2EI), H L²/(2EI) + M L/(EI).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Theory of elastic beams, cantilever</source>
    public static HeadMovement Head(double horizontalN, double planeNm, double lengthMm, double inertiaMm4)
    {
        Within.Require(horizontalN, 0, 1e6, "N");
        Within.Require(planeNm, 0, 1e6, "N·m");
        var stiffness = Stiffness(lengthMm, inertiaMm4);
        var momentNMm = planeNm * 1000;
        return new(
            lengthMm * lengthMm * ((horizontalN * lengthMm / 3) + (momentNMm / 2)) / stiffness,
            lengthMm * ((horizontalN * lengthMm / 2) + momentNMm) / stiffness
        );
    }

    /// <summary>First frequency of the plane as it rocks on its columns across the line.</summary>
    /// <param name="massKg">Mass of plane and frame that belongs to one column [kg], 1 to 100,000.</param>
    /// <param name="slopeM">Length of the plane up its slope [m], 0.5 to 20.</param>
    /// <param name="lengthMm">From the head down to where the column is held [mm], 100 to 10,000.</param>
    /// <param name="inertiaMm4">Second moment of the column [mm4], 1,000 to 1e9.</param>
    /// <returns>Frequency [Hz].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Two freedoms: mass m and m d'²/12, stiffness EI [12/L³, -6/L²; -6/L², 4/L]; lower eigenvalue</source>
    public static double FirstHz(double massKg, double slopeM, double lengthMm, double inertiaMm4)
    {
        Within.Require(massKg, 1, 100_000, "kg");
        RequireSlope(slopeM, 0);
        // N, m, kg.
        var (stiffness, length) = (Stiffness(lengthMm, inertiaMm4) * 1e-6, lengthMm / 1000);
        var turning = massKg * slopeM * slopeM / 12;
        var sway = 12 * stiffness / (Math.Pow(length, 3) * massKg);
        var rock = 4 * stiffness / (length * turning);
        var coupling = 36 * stiffness * stiffness / (Math.Pow(length, 4) * massKg * turning);
        // The smaller root as product over the larger one keeps its digits.
        var larger = ((sway + rock) / 2) + Math.Sqrt((Math.Pow(sway - rock, 2) / 4) + coupling);
        return Math.Sqrt(((sway * rock) - coupling) / larger) / (2 * Math.PI);
    }

    /// <summary>Load at which a column buckles across the line.</summary>
    /// <param name="lengthMm">From the head down to where it is held [mm], 100 to 10,000.</param>
    /// <param name="inertiaMm4">Second moment of the column [mm4], 1,000 to 1e9.</param>
    /// <returns>π² EI/(2.1 L)² [N]; over the design load it is α_cr.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Euler; EN 1993-1-1:2005, 5.2.1</source>
    public static double CriticalN(double lengthMm, double inertiaMm4) =>
        Math.PI * Math.PI * Stiffness(lengthMm, inertiaMm4) / Math.Pow(BucklingFactor * lengthMm, 2);

    /// <summary>Second moment that keeps the head's turning within a limit.</summary>
    /// <param name="horizontalN">The column's share of the sideways force [N], 0 to 1,000,000.</param>
    /// <param name="planeNm">The column's share of the moment at its head [N·m], 0 to 1,000,000.</param>
    /// <param name="lengthMm">From the head down to where it is held [mm], 100 to 10,000.</param>
    /// <param name="turnRad">Largest turning [rad], 0.001 to 0.1.</param>
    /// <returns>Second moment [mm4].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Theory of elastic beams, cantilever</source>
    public static double RequiredMm4(double horizontalN, double planeNm, double lengthMm, double turnRad)
    {
        Within.Require(turnRad, 0.001, 0.1, "rad");
        const double unitMm4 = 1e6;
        return unitMm4 * Head(horizontalN, planeNm, lengthMm, unitMm4).TurnRad / turnRad;
    }

    /// <summary>The working of the moment at the ground, wind from the high side.</summary>
    /// <param name="forceN">Wind force square to the plane, by size [N].</param>
    /// <param name="slopeM">Length of the plane up its slope [m].</param>
    /// <param name="centreM">Height of the plane's middle [m].</param>
    /// <param name="tiltDeg">Tilt [deg].</param>
    /// <returns>The lines.</returns>
    public static IReadOnlyList<Line> Lines(double forceN, double slopeM, double centreM, double tiltDeg) =>
        [
            new(
                "M_plane",
                "F d'/4",
                Invariant($"{forceN / 1000:0.000} · {slopeM:0.000}/4"),
                PlaneNm(forceN, slopeM) / 1000,
                "kNm",
                "steel/one-line",
                "EN 1991-1-4:2005, figure 7.16"
            ),
            new(
                "M_ground",
                "F (d'/4 + h_c sin α)",
                Invariant($"{forceN / 1000:0.000} · ({slopeM:0.000}/4 + {centreM:0.000} · sin {tiltDeg:0.0}°)"),
                HighSideNm(forceN, slopeM, centreM, tiltDeg) / 1000,
                "kNm",
                "steel/one-line",
                "statics"
            ),
        ];

    private static double PushNm(double forceN, double centreM, double tiltDeg)
    {
        Within.Require(centreM, 0.3, 10, "m");
        Within.Require(tiltDeg, 0, 60, "deg");
        return forceN * centreM * Math.Sin(tiltDeg * Math.PI / 180);
    }

    // The rise of the plane [m].
    private static double RequireSlope(double slopeM, double tiltDeg)
    {
        Within.Require(slopeM, 0.5, 20, "m");
        Within.Require(tiltDeg, 0, 60, "deg");
        return slopeM * Math.Sin(tiltDeg * Math.PI / 180);
    }

    private static double Stiffness(double lengthMm, double inertiaMm4)
    {
        Within.Require(lengthMm, 100, 10_000, "mm");
        Within.Require(inertiaMm4, 1_000, 1e9, "mm4");
        return FrameModel.SteelElasticModulusNPerMm2 * inertiaMm4;
    }
}
