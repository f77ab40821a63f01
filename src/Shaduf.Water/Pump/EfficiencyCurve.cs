namespace Shaduf.Water;

// Piecewise cubic through rising flows that keeps between its neighbours (Fritsch and Butland 1984): it cannot
// overshoot, so an efficiency stays in 0 to 1 and its best point is a point of the maker's.
internal sealed class EfficiencyCurve
{
    private readonly double[] flows;
    private readonly double[] shares;
    private readonly double[] slopes;

    public EfficiencyCurve(double[] flows, double[] shares)
    {
        (this.flows, this.shares) = (flows, shares);
        slopes = Slopes(flows, shares);
    }

    public double StartSlopeSPerM3 => slopes[0];

    public double At(double flow)
    {
        if (flow >= flows[^1])
        {
            return 0;
        }

        var upper = 1;
        while (flows[upper] < flow)
        {
            upper++;
        }

        var width = flows[upper] - flows[upper - 1];
        var t = (flow - flows[upper - 1]) / width;
        var (low, high) = (shares[upper - 1], shares[upper]);
        var (lowSlope, highSlope) = (slopes[upper - 1] * width, slopes[upper] * width);
        var rise = high - low;
        return low
            + (
                t
                * (
                    lowSlope
                    + (t * ((3 * rise) - (2 * lowSlope) - highSlope + (t * (lowSlope + highSlope - (2 * rise)))))
                )
            );
    }

    private static double[] Slopes(double[] x, double[] y)
    {
        var last = x.Length - 1;
        double Secant(int i) => (y[i + 1] - y[i]) / (x[i + 1] - x[i]);

        var found = new double[x.Length];
        for (var i = 1; i < last; i++)
        {
            var (before, after) = (Secant(i - 1), Secant(i));
            if (before * after > 0)
            {
                var (left, right) = (x[i] - x[i - 1], x[i + 1] - x[i]);
                var (w1, w2) = ((2 * right) + left, right + (2 * left));
                found[i] = (w1 + w2) / ((w1 / before) + (w2 / after));
            }
        }

        // At zero flow the slope stays between one and three secants: above zero, so that the shaft power of a pump
        // that spins without flow is finite, and not so steep that the curve overshoots.
        var (first, width, next) = (Secant(0), x[1] - x[0], x[2] - x[1]);
        var threePoint = ((((2 * width) + next) * first) - (width * Secant(1))) / (width + next);
        found[0] = Math.Clamp(threePoint, first, 3 * first);
        found[last] = Secant(last - 1);
        return found;
    }
}
