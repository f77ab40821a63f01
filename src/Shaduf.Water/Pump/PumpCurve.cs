using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>One point of a maker's curve at the curve's own speed.</summary>
/// <param name="FlowM3PerS">Flow [m3/s].</param>
/// <param name="HeadM">Head [m].</param>
/// <param name="EfficiencyShare">Efficiency of the pump alone, water over shaft [share].</param>
public readonly record struct PumpPoint(double FlowM3PerS, double HeadM, double EfficiencyShare);

/// <summary>A centrifugal pump: head and efficiency over flow at any speed. Not for pumps that displace a fixed volume.</summary>
/// <source>H = r2 H0 - a1 r Q - a2 Q2, the affinity laws put into a square fit; common practice, no source</source>
public sealed record PumpCurve : IPumpCurve
{
    // Below this the correction of the efficiency is not trusted and kept as it is there.
    private const double SlowestTrustedRatio = 0.5;

    private readonly HeadFit fit;
    private readonly EfficiencyCurve efficiency;

    private PumpCurve(IReadOnlyList<PumpPoint> points, HeadFit fit, double noHeadFlowM3PerS)
    {
        this.fit = fit;
        Points = points;
        NoHeadFlowM3PerS = noHeadFlowM3PerS;
        LargestFlowM3PerS = Math.Min(points[^1].FlowM3PerS, noHeadFlowM3PerS);
        BestShare = points.Max(point => point.EfficiencyShare);
        BestFlowM3PerS = points.MaxBy(point => point.EfficiencyShare).FlowM3PerS;
        LargestMisfitM = points.Max(point => Math.Abs(point.HeadM - HeadM(point.FlowM3PerS, 1)));
        PumpPoint[] inner =
        [
            .. points.Where(point => point.EfficiencyShare > 0 && point.FlowM3PerS < noHeadFlowM3PerS),
        ];
        efficiency = new(
            [0, .. inner.Select(point => point.FlowM3PerS), noHeadFlowM3PerS],
            [0, .. inner.Select(point => point.EfficiencyShare), 0]
        );
    }

    /// <summary>The maker's points, by rising flow.</summary>
    public IReadOnlyList<PumpPoint> Points { get; }

    /// <summary>H0: head at no flow and the curve's own speed [m].</summary>
    public double ShutOffHeadM => fit.ShutOffHeadM;

    /// <summary>Largest head lifted at the curve's own speed [m].</summary>
    public double ReachM => fit.ShutOffHeadM;

    /// <summary>a1 of H = H0 - a1 Q - a2 Q2 [s/m2].</summary>
    public double LinearSPerM2 => fit.LinearSPerM2;

    /// <summary>a2 of H = H0 - a1 Q - a2 Q2 [s2/m5].</summary>
    public double SquareS2PerM5 => fit.SquareS2PerM5;

    /// <summary>End of the maker's curve at its own speed [m3/s]; beyond it the fit is an extension.</summary>
    public double LargestFlowM3PerS { get; }

    /// <summary>Flow at which the fit has fallen to no head, at the curve's own speed [m3/s].</summary>
    public double NoHeadFlowM3PerS { get; }

    /// <summary>Flow of the maker's most efficient point, at the curve's own speed [m3/s].</summary>
    public double BestFlowM3PerS { get; }

    /// <summary>Largest distance of a maker's head from the fit [m].</summary>
    public double LargestMisfitM { get; }

    /// <summary>Fits a curve to a maker's points.</summary>
    /// <param name="points">
    /// At least four different flows, 0 to 1 [m3/s]; heads 0 to 2000 [m]; efficiencies above 0 to 1, but 0 at no flow.
    /// </param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentException">
    /// Too few points, two at one flow, an efficiency that contradicts its point, or heads that do not fall from a
    /// tenth of the best flow on down to no head.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range, or NaN.</exception>
    /// <source>least squares, Forsythe 1957; efficiency between points: Fritsch and Butland 1984</source>
    public static PumpCurve Fit(IReadOnlyList<PumpPoint> points)
    {
        PumpPoint[] rising = [.. points.OrderBy(point => point.FlowM3PerS)];
        foreach (var point in rising)
        {
            Within.Require(point.FlowM3PerS, 0, 1, "m3/s", nameof(points));
            Within.Require(point.HeadM, 0, 2000, "m", nameof(points));
            Within.Require(point.EfficiencyShare, 0, 1, "of the shaft power", nameof(points));
            if (point.EfficiencyShare > 0 != point.FlowM3PerS > 0 && point.HeadM > 0)
            {
                throw Refused(
                    $"the point at {point.FlowM3PerS} m3/s has efficiency {point.EfficiencyShare}: it is 0 at no flow and above 0 else"
                );
            }
        }

        if (rising.DistinctBy(point => point.FlowM3PerS).Count() != rising.Length || rising.Length < 4)
        {
            throw Refused($"{rising.Length} points; a curve needs at least 4, each at its own flow");
        }

        if (rising.Max(point => point.EfficiencyShare) < 0.1)
        {
            throw Refused($"no point has an efficiency of 0.1 or more");
        }

        var square = HeadFit.Of(rising);
        var noHeadFlowM3PerS = square.FlowM3PerS(0);
        var bestM3PerS = rising.MaxBy(point => point.EfficiencyShare).FlowM3PerS;

        // The slope of a square is a straight line: falling at both ends is falling between them.
        if (
            !(
                bestM3PerS > 0
                && noHeadFlowM3PerS > bestM3PerS
                && Falls(square, 0.1 * bestM3PerS)
                && Falls(square, noHeadFlowM3PerS)
            )
        )
        {
            throw Refused(
                $"the head does not fall from {0.1 * bestM3PerS:G4} m3/s on down to none: look for a wrong point"
            );
        }

        return new(rising, square, noHeadFlowM3PerS);
    }

    /// <summary>Head of the pump; negative beyond the flow of no head.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="speedRatio">Speed over the curve's own, 0.1 to 1.5.</param>
    /// <returns>Head [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>H = r2 H0 - a1 r Q - a2 Q2</source>
    public double HeadM(double flowM3PerS, double speedRatio)
    {
        Checked(flowM3PerS, speedRatio);
        return (speedRatio * speedRatio * ShutOffHeadM)
            - (((LinearSPerM2 * speedRatio) + (SquareS2PerM5 * flowM3PerS)) * flowM3PerS);
    }

    /// <summary>
    /// Efficiency of the pump: that of the similar flow Q/r on the curve, lowered for slow running as that of the best point is; below half speed
    /// no further, and not raised above the curve's own speed.
    /// </summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="speedRatio">Speed over the curve's own, 0.1 to 1.5.</param>
    /// <returns>Efficiency [share]; 0 at no flow, and from the flow of no head on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>affinity laws, Sarbu and Borza 1998; between points Fritsch and Butland 1984</source>
    public double EfficiencyShare(double flowM3PerS, double speedRatio)
    {
        Checked(flowM3PerS, speedRatio);
        return efficiency.At(flowM3PerS / speedRatio) * SlowFactor(speedRatio);
    }

    // The formula is for the best point, and gives nonsense near no flow: the whole curve is lowered by the same factor.
    private double SlowFactor(double speedRatio) =>
        Affinity.EfficiencyShare(BestShare, Math.Clamp(speedRatio, SlowestTrustedRatio, 1)) / BestShare;

    private double BestShare { get; }

    /// <summary>Power at the shaft; at no flow the power of the churning, as the limit of ever less flow.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to less than r times <see cref="NoHeadFlowM3PerS"/>.</param>
    /// <param name="speedRatio">Speed over the curve's own, 0.1 to 1.5.</param>
    /// <param name="densityKgPerM3">Density [kg/m3], 500 to 1500.</param>
    /// <returns>Power [W].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>P = rho g Q H/eta</source>
    public double ShaftW(double flowM3PerS, double speedRatio, double densityKgPerM3)
    {
        Checked(flowM3PerS, speedRatio);
        Within.Require(flowM3PerS, 0, Math.BitDecrement(NoHeadFlowM3PerS * speedRatio), "m3/s");
        Within.Require(densityKgPerM3, 500, 1500, "kg/m3");
        var similarFlow = flowM3PerS / speedRatio;
        var flowOverEfficiency =
            similarFlow > 0 ? similarFlow / efficiency.At(similarFlow) : 1 / efficiency.StartSlopeSPerM3;
        return densityKgPerM3
            * Gravity.MPerS2
            * speedRatio
            * flowOverEfficiency
            / SlowFactor(speedRatio)
            * HeadM(flowM3PerS, speedRatio);
    }

    /// <summary>Speed at which the pump gives a flow at a head.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="headM">Head [m], 0 to 2000.</param>
    /// <returns>Speed over the curve's own.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>H = r2 H0 - a1 r Q - a2 Q2 solved for r</source>
    public double SpeedRatio(double flowM3PerS, double headM)
    {
        Within.Require(flowM3PerS, 0, 10, "m3/s");
        Within.Require(headM, 0, 2000, "m");
        var half = LinearSPerM2 * flowM3PerS / 2;
        var lifted = headM + (SquareS2PerM5 * flowM3PerS * flowM3PerS);
        return (half + Math.Sqrt((half * half) + (ShutOffHeadM * lifted))) / ShutOffHeadM;
    }

    /// <summary>Whether an operating point lies beyond the end of the maker's curve.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="headM">Head [m], 0 to 2000; it does not matter here.</param>
    /// <param name="speedRatio">Speed over the curve's own, 0.1 to 1.5.</param>
    /// <returns>True when it does.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>affinity laws</source>
    public bool IsBeyond(double flowM3PerS, double headM, double speedRatio)
    {
        Checked(flowM3PerS, speedRatio);
        return flowM3PerS > LargestFlowM3PerS * speedRatio;
    }

    /// <summary>How far an operating point lies within the maker's points; it falls as the speed rises, below 0 beyond them.</summary>
    /// <param name="lift">The system.</param>
    /// <param name="speedRatio">Speed over the curve's own, 0.1 to 1.5.</param>
    /// <returns>Head of the system less that of the pump at the end of its curve [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument or a part of the system is outside its range, or NaN.</exception>
    /// <source>affinity laws</source>
    public double RoomM(LiftSystem lift, double speedRatio) =>
        lift.HeadM(LargestFlowM3PerS * speedRatio) - (speedRatio * speedRatio * HeadM(LargestFlowM3PerS, 1));

    private static bool Falls(HeadFit square, double flowM3PerS) =>
        square.LinearSPerM2 + (2 * square.SquareS2PerM5 * flowM3PerS) > 0;

    private static void Checked(double flowM3PerS, double speedRatio)
    {
        Within.Require(flowM3PerS, 0, 10, "m3/s");
        Within.Require(speedRatio, 0.1, 1.5, "of the curve's speed");
    }

    private static ArgumentException Refused(FormattableString reason) =>
        new("pump curve refused: " + reason.ToString(CultureInfo.InvariantCulture));
}
