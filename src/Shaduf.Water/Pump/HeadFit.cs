namespace Shaduf.Water;

// H = H0 - a1 Q - a2 Q2 by least squares on orthogonal polynomials (Forsythe 1957), which needs no matrix.
internal readonly record struct HeadFit(double ShutOffHeadM, double LinearSPerM2, double SquareS2PerM5)
{
    public static HeadFit Of(IReadOnlyList<PumpPoint> points)
    {
        var count = points.Count;
        var scale = points.Max(point => point.FlowM3PerS);
        var mean = points.Average(point => point.FlowM3PerS) / scale;
        double[] u = [.. points.Select(point => (point.FlowM3PerS / scale) - mean)];
        var second = u.Sum(x => x * x);
        var tilt = u.Sum(x => x * x * x) / second;
        double[] bow = [.. u.Select(x => (x * x) - (tilt * x) - (second / count))];

        var level = points.Average(point => point.HeadM);
        var slope = points.Select((point, i) => point.HeadM * u[i]).Sum() / second;
        var curve = points.Select((point, i) => point.HeadM * bow[i]).Sum() / bow.Sum(x => x * x);
        return new(
            level - (slope * mean) + (curve * ((mean * mean) + (tilt * mean) - (second / count))),
            -(slope - (curve * (tilt + (2 * mean)))) / scale,
            -curve / (scale * scale)
        );
    }

    // Flow at which the head has fallen to headM at this speed; NaN when the curve never gets there.
    public double FlowM3PerS(double headM)
    {
        var (half, rise) = (LinearSPerM2 / 2, ShutOffHeadM - headM);

        // The root that stays exact when either coefficient vanishes.
        return rise / (half + Math.Sqrt((half * half) + (SquareS2PerM5 * rise)));
    }
}
