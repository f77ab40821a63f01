using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>One point of the data sheet of a pump with a helical rotor.</summary>
/// <param name="FlowM3PerS">Flow [m3/s].</param>
/// <param name="HeadM">Head [m].</param>
/// <param name="ShaftW">Power at the shaft [W].</param>
/// <param name="SpeedRatio">Speed over the rated one at which the point was taken.</param>
public readonly record struct RotorPoint(double FlowM3PerS, double HeadM, double ShaftW, double SpeedRatio);

/// <summary>
/// A progressive-cavity pump: each turn of its rotor carries the same volume, less what slips back through the stator
/// under the pressure. Its torque hardly depends on the speed, so it lifts from little sun on.
/// </summary>
/// <source>Q = V n - k H; T = V p/(2 pi) + friction; common practice, no source</source>
public sealed record HelicalRotor : IPumpCurve
{
    private const double FreshKgPerM3 = 1000;

    private HelicalRotor(IReadOnlyList<RotorPoint> points, double slipM2PerS, double frictionW, double wattsPerM)
    {
        Points = points;
        SlipM2PerS = slipM2PerS;
        FrictionW = frictionW;
        WPerM = wattsPerM;
    }

    /// <summary>The maker's points.</summary>
    public IReadOnlyList<RotorPoint> Points { get; }

    /// <summary>Volume displaced at rated speed [m3/s]: the flow at no head.</summary>
    public required double NoHeadFlowM3PerS { get; init; }

    /// <summary>Flow that slips back for each metre of head [m2/s].</summary>
    public double SlipM2PerS { get; }

    /// <summary>Power at rated speed that friction takes at no head [W].</summary>
    public double FrictionW { get; }

    // Power at rated speed for each metre of head in fresh water.
    private double WPerM { get; }

    /// <summary>Opening head of the relief valve [m]; no point of the pump lies above it.</summary>
    public required double ShutOffHeadM { get; init; }

    /// <summary>Largest head of the maker's points [m].</summary>
    public double ReachM => Points.Max(point => point.HeadM);

    /// <summary>Flow of the most efficient point at rated speed [m3/s].</summary>
    public double BestFlowM3PerS => NoHeadFlowM3PerS - (SlipM2PerS * ReachM);

    /// <summary>Largest flow at rated speed [m3/s].</summary>
    public double LargestFlowM3PerS => NoHeadFlowM3PerS;

    /// <summary>Volume that one turn carries, from the rotor's sizes.</summary>
    /// <param name="eccentricityM">Eccentricity of the rotor [m], 0.0001 to 0.1.</param>
    /// <param name="rotorDiameterM">Diameter of the rotor [m], 0.001 to 0.5.</param>
    /// <param name="statorPitchM">Pitch of the stator [m], 0.001 to 2.</param>
    /// <returns>Volume [m3].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>V = 4 e D P; geometry of the single-lobe rotor</source>
    public static double DisplacementM3(double eccentricityM, double rotorDiameterM, double statorPitchM)
    {
        Within.Require(eccentricityM, 0.0001, 0.1, "m");
        Within.Require(rotorDiameterM, 0.001, 0.5, "m");
        Within.Require(statorPitchM, 0.001, 2, "m");
        return 4 * eccentricityM * rotorDiameterM * statorPitchM;
    }

    /// <summary>Torque that the pressure alone asks for.</summary>
    /// <param name="displacementM3">Volume of a turn [m3], 0 to 0.1.</param>
    /// <param name="pressurePa">Pressure difference [Pa], 0 to 20000000.</param>
    /// <returns>Torque [Nm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>T = V p/(2 pi): work of one turn over its angle</source>
    public static double PressureTorqueNm(double displacementM3, double pressurePa)
    {
        Within.Require(displacementM3, 0, 0.1, "m3");
        Within.Require(pressurePa, 0, 20_000_000, "Pa");
        return displacementM3 * pressurePa / (2 * Math.PI);
    }

    /// <summary>Fits slip and friction to a maker's points.</summary>
    /// <param name="points">At least two heads, 0 to 1000 [m]; flows above 0 to 1 [m3/s]; speeds 0.3 to 1.2 of the rated one.</param>
    /// <param name="reliefHeadM">Opening head of the relief valve [m], above the points' heads to 2000.</param>
    /// <returns>The pump.</returns>
    /// <exception cref="ArgumentException">
    /// Too few points, a flow that does not fall with the head, a slip above two fifths of the flow, a power that does not rise, or more power in
    /// the water than at the shaft.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range, or NaN.</exception>
    /// <source>least squares of Q = r Q0 - k H and P = r (P_f + c H)</source>
    public static HelicalRotor Fit(IReadOnlyList<RotorPoint> points, double reliefHeadM)
    {
        Check(points);
        Within.Require(reliefHeadM, points.Max(point => point.HeadM), 2000, "m");
        var (rr, rh, hh) = (
            points.Sum(point => point.SpeedRatio * point.SpeedRatio),
            points.Sum(point => point.SpeedRatio * point.HeadM),
            points.Sum(point => point.HeadM * point.HeadM)
        );
        var (rq, hq) = (
            points.Sum(point => point.SpeedRatio * point.FlowM3PerS),
            points.Sum(point => point.HeadM * point.FlowM3PerS)
        );
        var determinant = (rr * hh) - (rh * rh);
        var displaced = ((rq * hh) - (hq * rh)) / determinant;
        var slip = ((rq * rh) - (hq * rr)) / determinant;

        // Power over speed is a straight line over the head: torque does not know the speed.
        double[] torque = [.. points.Select(point => point.ShaftW / point.SpeedRatio)];
        var (meanHead, meanTorque) = (points.Average(point => point.HeadM), torque.Average());
        var spread = points.Sum(point => Math.Pow(point.HeadM - meanHead, 2));
        var perM = points.Select((point, i) => (point.HeadM - meanHead) * (torque[i] - meanTorque)).Sum() / spread;
        var rotor = new HelicalRotor(points, slip, meanTorque - (perM * meanHead), perM)
        {
            NoHeadFlowM3PerS = displaced,
            ShutOffHeadM = reliefHeadM,
        };
        RefuseImpossible(rotor);
        return rotor;
    }

    /// <summary>Head of the pump at a flow: what lets the rest slip back.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="speedRatio">Speed over the rated one, 0.1 to 1.5.</param>
    /// <returns>Head [m]; negative beyond the flow of no head.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>H = (r Q0 - Q)/k</source>
    public double HeadM(double flowM3PerS, double speedRatio)
    {
        Checked(flowM3PerS, speedRatio);
        return ((speedRatio * NoHeadFlowM3PerS) - flowM3PerS) / SlipM2PerS;
    }

    /// <summary>Efficiency of the pump: water over shaft.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="speedRatio">Speed over the rated one, 0.1 to 1.5.</param>
    /// <returns>Efficiency [share]; 0 at no flow, and from the flow of no head on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>rho g Q H/P</source>
    public double EfficiencyShare(double flowM3PerS, double speedRatio) =>
        flowM3PerS > 0 && flowM3PerS < speedRatio * NoHeadFlowM3PerS
            ? HydraulicPower.W(flowM3PerS, HeadM(flowM3PerS, speedRatio), FreshKgPerM3)
                / ShaftW(flowM3PerS, speedRatio, FreshKgPerM3)
            : 0;

    /// <summary>Power at the shaft: torque that hardly knows the speed, times the speed.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to r times <see cref="NoHeadFlowM3PerS"/>.</param>
    /// <param name="speedRatio">Speed over the rated one, 0.1 to 1.5.</param>
    /// <param name="densityKgPerM3">Density [kg/m3], 500 to 1500.</param>
    /// <returns>Power [W].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>P = r (P_f + c H)</source>
    public double ShaftW(double flowM3PerS, double speedRatio, double densityKgPerM3)
    {
        Within.Require(densityKgPerM3, 500, 1500, "kg/m3");
        return speedRatio * (FrictionW + (WPerM * densityKgPerM3 / FreshKgPerM3 * HeadM(flowM3PerS, speedRatio)));
    }

    /// <summary>Speed at which the pump gives a flow at a head; with no flow, the speed from which water comes.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="headM">Head [m], 0 to 2000.</param>
    /// <returns>Speed over the rated one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>r = (Q + k H)/Q0</source>
    public double SpeedRatio(double flowM3PerS, double headM)
    {
        Within.Require(flowM3PerS, 0, 10, "m3/s");
        Within.Require(headM, 0, 2000, "m");
        return (flowM3PerS + (SlipM2PerS * headM)) / NoHeadFlowM3PerS;
    }

    /// <summary>Whether an operating point lies above the largest head of the maker's points.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10; it does not matter here.</param>
    /// <param name="headM">Head [m], 0 to 2000.</param>
    /// <param name="speedRatio">Speed over the rated one, 0.1 to 1.5; it does not matter here.</param>
    /// <returns>True when it does.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>maker's points</source>
    public bool IsBeyond(double flowM3PerS, double headM, double speedRatio)
    {
        Checked(flowM3PerS, speedRatio);
        return headM > ReachM;
    }

    /// <summary>How far the operating point stays below the largest head of the maker's points; it falls as the speed rises.</summary>
    /// <param name="lift">The system.</param>
    /// <param name="speedRatio">Speed over the rated one, 0.1 to 1.5.</param>
    /// <returns>Head between them [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument or a part of the system is outside its range, or NaN.</exception>
    /// <source>crossing of pump and system</source>
    public double RoomM(LiftSystem lift, double speedRatio) =>
        ReachM - OperatingPoint.Solve(this, lift, speedRatio).HeadM;

    private static void Check(IReadOnlyList<RotorPoint> points)
    {
        foreach (var point in points)
        {
            Within.Require(point.FlowM3PerS, double.Epsilon, 1, "m3/s", nameof(points));
            Within.Require(point.HeadM, 0, 1000, "m", nameof(points));
            Within.Require(point.ShaftW, double.Epsilon, 1e6, "W", nameof(points));
            Within.Require(point.SpeedRatio, 0.3, 1.2, "of the rated speed", nameof(points));
        }

        if (points.Select(point => point.HeadM).Distinct().Count() < 2)
        {
            throw Refused($"{points.Count} points; slip needs at least two heads");
        }
    }

    private static void RefuseImpossible(HelicalRotor rotor)
    {
        var lost = rotor.SlipM2PerS * rotor.ReachM / rotor.NoHeadFlowM3PerS;
        if (!(lost is > 0.001 and < 0.4))
        {
            throw Refused(
                $"{lost * 100:0.#} % of the flow slips back at {rotor.ReachM:0.#} m, and 0.1 to 40 % is possible: look for a wrong point"
            );
        }

        if (!(rotor.FrictionW > 0 && rotor.WPerM > 0))
        {
            throw Refused($"the power does not rise from friction alone at no head: look for a wrong point");
        }

        if (rotor.EfficiencyShare(rotor.BestFlowM3PerS, 1) is var best && !(best < 0.9))
        {
            throw Refused($"an efficiency of {best * 100:0.#} % at {rotor.ReachM:0.#} m is more than a rotor has");
        }
    }

    private static void Checked(double flowM3PerS, double speedRatio)
    {
        Within.Require(flowM3PerS, 0, 10, "m3/s");
        Within.Require(speedRatio, 0.1, 1.5, "of the curve's speed");
    }

    private static ArgumentException Refused(FormattableString reason) =>
        new("helical rotor refused: " + reason.ToString(CultureInfo.InvariantCulture));
}
