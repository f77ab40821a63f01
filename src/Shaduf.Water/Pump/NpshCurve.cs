using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>A point of a pump's required net positive suction head.</summary>
/// <param name="FlowM3PerS">Flow [m3/s], 0 to 10.</param>
/// <param name="HeadM">Head required at rated speed [m], 0 to 50.</param>
public readonly record struct NpshPoint(double FlowM3PerS, double HeadM);

/// <summary>Head that a pump asks for at its inlet, by flow, from the points of its data sheet at rated speed.</summary>
/// <param name="Points">The points, smallest flow first.</param>
public sealed record NpshCurve(IReadOnlyList<NpshPoint> Points)
{
    /// <summary>Largest flow that the sheet tells of [m3/s].</summary>
    public double LargestFlowM3PerS => Points[^1].FlowM3PerS;

    /// <summary>Takes the points of a data sheet.</summary>
    /// <param name="points">Two points or more, each of another flow, in any order.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentException">Fewer than two points, a flow twice, or a head that falls as the flow grows.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A flow or head is outside its range, or NaN.</exception>
    /// <source>data sheet of the pump, test of ISO 9906</source>
    public static NpshCurve Of(IReadOnlyList<NpshPoint> points)
    {
        foreach (var point in points)
        {
            Within.Require(point.FlowM3PerS, 0, 10, "m3/s");
            Within.Require(point.HeadM, 0, 50, "m");
        }

        NpshPoint[] sorted = [.. points.OrderBy(point => point.FlowM3PerS)];
        if (sorted.Length < 2)
        {
            throw new ArgumentException("two points of the required suction head are needed", nameof(points));
        }

        for (var i = 1; i < sorted.Length; i++)
        {
            if (sorted[i].FlowM3PerS <= sorted[i - 1].FlowM3PerS || sorted[i].HeadM < sorted[i - 1].HeadM)
            {
                throw new ArgumentException("the required suction head does not grow with the flow", nameof(points));
            }
        }

        return new(sorted);
    }

    /// <summary>Head required at a flow: a straight line between the points, the first one's below it.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10; beyond the last point the last straight line goes on.</param>
    /// <returns>Head at rated speed [m]; a slower pump asks for less.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The flow is outside its range, or NaN.</exception>
    /// <source>straight lines between points of the data sheet; that a slower pump asks for less: affinity laws</source>
    public double RequiredM(double flowM3PerS)
    {
        Within.Require(flowM3PerS, 0, 10, "m3/s");
        if (flowM3PerS <= Points[0].FlowM3PerS)
        {
            return Points[0].HeadM;
        }

        var above = 1;
        while (above < Points.Count - 1 && Points[above].FlowM3PerS < flowM3PerS)
        {
            above++;
        }

        var (low, high) = (Points[above - 1], Points[above]);
        var share = (flowM3PerS - low.FlowM3PerS) / (high.FlowM3PerS - low.FlowM3PerS);
        return low.HeadM + (share * (high.HeadM - low.HeadM));
    }
}
