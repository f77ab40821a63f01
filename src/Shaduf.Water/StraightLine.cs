namespace Shaduf.Water;

internal static class StraightLine
{
    // The caller has checked that x lies between the first and the last of the rising xs.
    public static double Between(double[] xs, double[] ys, double x)
    {
        var upper = 1;
        while (upper < xs.Length - 1 && xs[upper] < x)
        {
            upper++;
        }

        var share = (x - xs[upper - 1]) / (xs[upper] - xs[upper - 1]);
        return ys[upper - 1] + (share * (ys[upper] - ys[upper - 1]));
    }
}
