namespace Shaduf.Water;

// Where a falling function crosses zero: regula falsi in the Illinois form (Dowell and Jarratt 1971), which keeps the
// root between its two ends and still closes in faster than a straight line.
internal readonly record struct Crossing(double X, double Residual, int Rounds)
{
    private const int MostRounds = 100;

    public static Crossing Of(
        Func<double, double> falling,
        (double X, double Value) low,
        double highX,
        double tolerance
    )
    {
        var high = (X: highX, Value: falling(highX));
        if (Math.Abs(high.Value) <= tolerance)
        {
            return new(high.X, high.Value, 0);
        }

        var lastMoved = 0;
        for (var round = 1; round <= MostRounds; round++)
        {
            var x = ((low.X * high.Value) - (high.X * low.Value)) / (high.Value - low.Value);
            var value = falling(x);
            if (Math.Abs(value) <= tolerance)
            {
                return new(x, value, round);
            }

            // An end that stays put twice running has its value halved, else it would stay for ever.
            if (value > 0)
            {
                low = (x, value);
                high.Value /= lastMoved == 1 ? 2 : 1;
                lastMoved = 1;
            }
            else
            {
                high = (x, value);
                low.Value /= lastMoved == -1 ? 2 : 1;
                lastMoved = -1;
            }
        }

        throw new ArithmeticException(
            FormattableString.Invariant($"no crossing found in {MostRounds} rounds between {low.X} and {high.X}.")
        );
    }
}
